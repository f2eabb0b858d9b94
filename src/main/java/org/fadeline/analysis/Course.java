package org.fadeline.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What runs along the whole match.
 *
 * @param rolling rolling catch rate of every line
 * @param pace the finish as it could be told at each minute
 * @param turningPoints the moments worth seeking to, in time order
 * @param quarters catch by quarter-hour
 * @param lessons at most three, the one that cost or paid most first
 * @param warnings about the record
 * @param nets how the nets filled: by the scales where they are known and may be told
 */
public record Course(
    List<Rolling> rolling,
    List<Pace> pace,
    List<TurningPoint> turningPoints,
    List<Quarter> quarters,
    List<Lesson> lessons,
    List<Warning> warnings,
    NetCourse nets) {
  /** Copies the lists. */
  public Course {
    rolling = List.copyOf(rolling);
    pace = List.copyOf(pace);
    turningPoints = List.copyOf(turningPoints);
    quarters = List.copyOf(quarters);
    lessons = List.copyOf(lessons);
    warnings = List.copyOf(warnings);
  }

  /**
   * Rolling catch rate of one line.
   *
   * @param lineId the line
   * @param points one a minute from all in + 1 minute
   * @param untold stretches after a stay that turned out to belong to no line, with the rate as it
   *     stood while the line still seemed to be fished
   */
  public record Rolling(String lineId, List<RollingPoint> points, List<Untold> untold) {
    /** Copies the lists. */
    public Rolling {
      points = List.copyOf(points);
      untold = List.copyOf(untold);
    }
  }

  /**
   * A stretch after a stay of which only the next sign of another line told that it belongs to
   * neither; until then the line seemed to be fished.
   *
   * @param span from the last water event of the stay to that sign
   * @param next the line fished after it
   * @param points the rate at each minute inside it, as it stood then
   */
  public record Untold(TimeSpan span, String next, List<RollingPoint> points) {
    /** Copies the list. */
    public Untold {
      points = List.copyOf(points);
    }
  }

  /**
   * The window ending at one minute.
   *
   * @param at end of the window, epoch milliseconds, included
   * @param fishedMinutes minutes of the window fished on the line
   * @param caught what they gave
   * @param fish landed per fished hour with exact limits; null with under 3 fished minutes
   * @param fishWide the same limits allowing for bunching; equal to {@code fish} where there is
   *     none
   * @param weight grams per fished hour with Fay–Feuer limits; null with under 3 fished minutes or
   *     without a weight
   */
  public record RollingPoint(
      long at,
      double fishedMinutes,
      Caught caught,
      @Nullable Rate fish,
      @Nullable Rate fishWide,
      @Nullable Rate weight) {}

  /**
   * The finish as it could be told at one minute, staying on the line being fished.
   *
   * @param at epoch milliseconds
   * @param fishSoFar fish landed by then
   * @param fish fish at all out
   * @param weightSoFarG weight by then, grams
   * @param weight grams at all out, or null without weights
   * @param tiring the same where the line may be tiring
   */
  public record Pace(
      long at,
      int fishSoFar,
      Finish fish,
      double weightSoFarG,
      @Nullable Finish weight,
      Tiring tiring) {
    private static final double MATERIAL = 0.1;

    /** Whether tiring would make a difference worth telling: a tenth of the finish or more. */
    public boolean tiringTells() {
      double least = MATERIAL * fish.median();
      return fish.low() - tiring.fish.low() >= least
          || Math.abs(fish.median() - tiring.fish.median()) >= least;
    }
  }

  /**
   * The finish where the line either keeps its present rate or goes on declining as over this visit
   * so far, each as likely beforehand, weighed by the fish of the visit.
   *
   * @param chance probability that it declines, in [0, 1]
   * @param fish fish at all out
   * @param weight grams at all out, or null without weights
   */
  public record Tiring(double chance, Finish fish, @Nullable Finish weight) {}

  /**
   * A predictive interval for the finish.
   *
   * @param low lower limit
   * @param median middle
   * @param high upper limit
   * @param level of the interval, in (0, 1)
   */
  public record Finish(double low, double median, double high, double level) {}

  /** What a turning point is about. */
  public enum TurningKind {
    /** First bite after feeding. */
    FIRST_BITE,
    /** A line faded: known in hindsight. */
    FADED,
    /** It was plain that a line had faded: known then. */
    PLAIN,
    /** A call withdrawn: known then. */
    WITHDRAWN,
    /** A move. */
    MOVE,
    /** The best spells: known in hindsight. */
    BEST_SPELL,
    /** A net near its limit: known then. */
    NET
  }

  /**
   * A moment worth seeking to.
   *
   * @param at epoch milliseconds
   * @param kind what it is about
   * @param lineId the line, or null
   * @param hindsight whether it could only be known afterwards; hidden in "as known then"
   * @param title a few words
   * @param detail what it rests on
   */
  public record TurningPoint(
      long at,
      TurningKind kind,
      @Nullable String lineId,
      boolean hindsight,
      String title,
      String detail) {}

  /**
   * A quarter-hour of the match.
   *
   * @param span on the clock
   * @param lines what each line gave in it, in the session's order
   * @param fishedMinutes minutes fished in it
   */
  public record Quarter(TimeSpan span, List<Caught> lines, double fishedMinutes) {
    /** Copies the list. */
    public Quarter {
      lines = List.copyOf(lines);
    }

    /** Returns what all lines gave in it. */
    public Caught caught() {
      return lines.stream().reduce(Caught.NOTHING, Caught::plus);
    }
  }

  /**
   * A lesson in one sentence.
   *
   * @param at the minute it is linked to, epoch milliseconds
   * @param lineId the line, or null
   * @param text the sentence with its figures
   */
  public record Lesson(long at, @Nullable String lineId, String text) {}

  /**
   * A warning about the record.
   *
   * @param at epoch milliseconds, or null where it concerns the whole record
   * @param text what it is and what follows from it
   */
  public record Warning(@Nullable Long at, String text) {}
}
