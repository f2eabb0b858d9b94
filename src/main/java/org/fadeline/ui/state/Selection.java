package org.fadeline.ui.state;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is picked.
 *
 * @param events ids of the events picked, in the order they were
 * @param lead the event picked last, from which Shift extends, or null
 * @param mark a second cursor, epoch milliseconds, or null
 */
public record Selection(Set<String> events, @Nullable String lead, @Nullable Long mark) {
  /** Nothing picked. */
  public static final Selection NONE = new Selection(Set.of(), null, null);

  /** Copies the set, keeping its order. */
  public Selection {
    events = Collections.unmodifiableSet(new LinkedHashSet<>(events));
  }

  /** Returns a selection of other events, the mark kept. */
  public Selection withEvents(Set<String> newEvents, @Nullable String newLead) {
    return new Selection(newEvents, newLead, mark);
  }

  /** Returns this selection with another second cursor, or none. */
  public Selection withMark(@Nullable Long newMark) {
    return new Selection(events, lead, newMark);
  }
}
