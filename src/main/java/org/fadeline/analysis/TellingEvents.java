package org.fadeline.analysis;

import java.util.HashSet;
import java.util.Set;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * Picks the events at which more can be told than at the minute before: signs of a move, counts,
 * first bites after a feed, fish in a net near its limit, and what comes after all out.
 */
final class TellingEvents {
  private final long allOut;
  private final MatchRules.@Nullable NetLimit limit;
  private final Set<String> bittenSinceFed = new HashSet<>();
  private String fishing = "";
  private double inNet;

  TellingEvents(Session session) {
    allOut = session.match().allOut();
    limit = session.match().rules().netLimit();
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
      default -> {
        if (event.kind() == EventKind.NET) {
          inNet = 0;
        }
        yield false;
      }
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
    return another || first || nearLimit(event) || event.at() > allOut;
  }

  private boolean nearLimit(SessionEvent event) {
    Fish fish = event.fishOrNull();
    if (limit == null || fish == null || fish.grams() == null) {
      return false;
    }
    double before = inNet;
    inNet += fish.grams();
    double near = TurningPoints.NEAR_LIMIT * limit.grams();
    // Not every fish counts: the weight that does may reach the mark a few fish later.
    return inNet >= near && before < 2 * near;
  }
}
