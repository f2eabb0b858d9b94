package org.fadeline.io.notes;

import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * An event that a note seems to tell, for the angler to accept, change or refuse.
 *
 * @param event the event; its note is what was said
 * @param confidence how sure the reading is, in (0, 1)
 * @param towards id of the line moved to, for a move that says so, or null
 */
public record ProposedEvent(SessionEvent event, double confidence, @Nullable String towards) {
  /** Checks the confidence. */
  public ProposedEvent {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence must lie between 0 and 1: " + confidence);
    }
  }
}
