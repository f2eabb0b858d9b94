package org.fadeline.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/** Works out what kind of record a session is and how finely its times are told. */
public final class RecordGrade {
  /** Share of times that must fall on the clock's marks for the clock to count as coarse. */
  private static final double COARSE_SHARE = 0.9;

  private static final int LEAST_FOR_MINUTES = 10;

  private RecordGrade() {}

  /**
   * Grades a record: counts where clicker counts hold more fish than landings do; full where at
   * least half of the water events are casts or follow one on their line with no other fish in
   * between.
   */
  public static Grade of(Session session) {
    Map<String, Boolean> castSeen = new HashMap<>();
    int water = 0;
    int covered = 0;
    boolean leavings = false;
    int counted = 0;
    int landed = 0;
    String fishing = "";
    for (SessionEvent event : session.events()) {
      EventKind kind = event.kind();
      Fish fish = event.fishOrNull();
      switch (kind.group()) {
        case COUNT -> counted += fish == null ? 0 : fish.count();
        case MOVE -> leavings |= kind == EventKind.MOVE || kind == EventKind.OFF;
        case WATER -> {
          String line = event.lineId() == null ? fishing : event.lineId();
          fishing = line;
          water++;
          if (kind == EventKind.LANDED && fish != null) {
            landed += fish.count();
          }
          if (kind == EventKind.CAST) {
            castSeen.put(line, true);
            leavings = true;
          }
          if (castSeen.getOrDefault(line, false)) {
            covered++;
          }
          if (kind.isOutcome()) {
            castSeen.put(line, false);
          }
        }
        default -> {}
      }
    }
    if (counted > landed) {
      return Grade.COUNTS;
    }
    if (water > 0 && 2 * covered >= water) {
      return Grade.FULL;
    }
    return leavings ? Grade.MOVES_AND_FISH : Grade.FISH_ONLY;
  }

  /**
   * Returns the precision of the clock in seconds: 300 or 60 where at least 90% of the times fall
   * on such marks and there are more than ten, else 1, or 0.001 where milliseconds are told.
   */
  static double clockPrecisionSeconds(Session session) {
    List<SessionEvent> events =
        session.events().stream().filter(e -> e.kind().group() != EventKind.Group.FRAME).toList();
    if (!events.isEmpty() && share(events, 300_000) >= COARSE_SHARE) {
      return 300;
    }
    if (events.size() > LEAST_FOR_MINUTES && share(events, 60_000) >= COARSE_SHARE) {
      return 60;
    }
    return share(events, 1000) == 1 ? 1 : 0.001;
  }

  private static double share(List<SessionEvent> events, long millis) {
    if (events.isEmpty()) {
      return 1;
    }
    long on = events.stream().filter(e -> Math.floorMod(e.at(), millis) == 0).count();
    return on / (double) events.size();
  }
}
