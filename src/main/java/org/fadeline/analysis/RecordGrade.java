package org.fadeline.analysis;

import java.util.HashMap;
import java.util.Map;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * Works out what kind of record a session is and how finely its times are told, from its events one
 * after the other.
 */
public final class RecordGrade {
  /** Share of times that must fall on the clock's marks for the clock to count as coarse. */
  private static final double COARSE_SHARE = 0.9;

  private static final int LEAST_FOR_MINUTES = 10;

  private final Map<String, Boolean> castSeen = new HashMap<>();
  private int water;
  private int covered;
  private boolean leavings;
  private int counted;
  private int landed;
  private String fishing = "";
  private int times;
  private int onFiveMinutes;
  private int onMinutes;
  private int onSeconds;

  RecordGrade() {}

  /**
   * Grades a record: counts where clicker counts hold more fish than landings do; full where at
   * least half of the water events are casts or follow one on their line with no other fish in
   * between.
   */
  public static Grade of(Session session) {
    return ofAll(session).grade();
  }

  /**
   * Returns the precision of the clock in seconds: 300 or 60 where at least 90% of the times fall
   * on such marks and there are more than ten, else 1, or 0.001 where milliseconds are told.
   */
  static double clockPrecisionSeconds(Session session) {
    return ofAll(session).clockPrecisionSeconds();
  }

  private static RecordGrade ofAll(Session session) {
    RecordGrade grade = new RecordGrade();
    session.events().forEach(grade::add);
    return grade;
  }

  /** Takes in the next event. */
  void add(SessionEvent event) {
    EventKind kind = event.kind();
    Fish fish = event.fishOrNull();
    switch (kind.group()) {
      case COUNT -> counted += fish == null ? 0 : fish.count();
      case MOVE -> leavings |= kind == EventKind.MOVE || kind == EventKind.OFF;
      case WATER -> addWater(event, kind, fish);
      default -> {}
    }
    if (kind.group() != EventKind.Group.FRAME) {
      times++;
      onFiveMinutes += isOn(event, 300_000);
      onMinutes += isOn(event, 60_000);
      onSeconds += isOn(event, 1000);
    }
  }

  private void addWater(SessionEvent event, EventKind kind, @Nullable Fish fish) {
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

  private static int isOn(SessionEvent event, long millis) {
    return Math.floorMod(event.at(), millis) == 0 ? 1 : 0;
  }

  /** The grade of what was taken in. */
  Grade grade() {
    if (counted > landed) {
      return Grade.COUNTS;
    }
    if (water > 0 && 2 * covered >= water) {
      return Grade.FULL;
    }
    return leavings ? Grade.MOVES_AND_FISH : Grade.FISH_ONLY;
  }

  /** The precision of the clock of what was taken in, seconds. */
  double clockPrecisionSeconds() {
    if (times > 0 && onFiveMinutes / (double) times >= COARSE_SHARE) {
      return 300;
    }
    if (times > LEAST_FOR_MINUTES && onMinutes / (double) times >= COARSE_SHARE) {
      return 60;
    }
    return onSeconds == times ? 1 : 0.001;
  }
}
