package org.fadeline.analysis;

import java.util.HashSet;
import java.util.Set;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * Picks the events at which more can be told than at the minute before: signs of a move, counts,
 * first bites after a feed, and what comes after all out.
 */
final class TellingEvents {
  private final long allOut;
  private final Set<String> bittenSinceFed = new HashSet<>();
  private String fishing = "";

  TellingEvents(Session session) {
    allOut = session.match().allOut();
  }

  /** Returns whether an event is one; each event of the record is asked once, in order. */
  boolean tells(SessionEvent event) {
    return switch (event.kind().group()) {
      case MOVE, COUNT -> true;
      case FEED -> {
        bittenSinceFed.clear();
        yield false;
      }
      case WATER -> water(event);
      default -> false;
    };
  }

  private boolean water(SessionEvent event) {
    String line = event.lineId() == null ? fishing : event.lineId();
    boolean another = !line.equals(fishing);
    fishing = line;
    if (another) {
      bittenSinceFed.remove(line);
    }
    boolean first = event.kind() != EventKind.CAST && bittenSinceFed.add(line);
    return another || first || event.at() > allOut;
  }
}
