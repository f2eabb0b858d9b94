package org.fadeline.analysis;

import org.jspecify.annotations.Nullable;

/**
 * How long a stay on a line pays, as a guide (the marginal value theorem, Charnov 1976): where
 * bites fall off while a line is fished and every visit starts afresh, the overall rate is best
 * when a line is left as its rate comes down to it. Times are minutes with a bait in; a handling
 * time that is the same for every fish changes nothing, for it adds the same to each.
 *
 * @param visits stays of the line with a bait in
 * @param bites what was counted in them, by the measure of fades
 * @param movingMinutes the cost of a move it was worked out for
 * @param decline how the rate falls over a visit, or null where it was not looked for
 * @param leaveAfter when to leave, or null where none can be given
 * @param withheld why none can be given, or null where one is
 * @param wording the words, as read on screen
 */
public record LeavingRule(
    int visits,
    int bites,
    double movingMinutes,
    @Nullable Decline decline,
    @Nullable LeaveAfter leaveAfter,
    @Nullable Withheld withheld,
    String wording) {
  /** Visits that it takes to tell. */
  public static final int LEAST_VISITS = 3;

  /** One-sided p of a rate that does not fall, below which it is taken to fall. */
  public static final double LEVEL_OF_TEST = 0.05;

  /** Why no leaving time can be given. */
  public enum Withheld {
    /** Fewer visits than it takes. */
    FEW_VISITS("few-visits"),
    /** Nothing came. */
    NO_BITES("no-bites"),
    /** The record does not say when stays began and ended. */
    ENDS_UNKNOWN("ends-unknown"),
    /** The record does not show that the rate falls. */
    NO_DECLINE("no-decline"),
    /** Moves are set to cost nothing: then no stay is too short. */
    NO_COST("no-cost");

    private final String word;

    Withheld(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /**
   * The rate as λ₀·e^(−cx) over x minutes of a visit.
   *
   * @param startingRate λ₀, per bait hour
   * @param decay c per bait minute; negative where the rate rises
   * @param limits of c at 95%, as if bites came independently
   * @param wide the same allowing for bunching; what is told rests on these
   * @param bunching factor allowed for, 1 or more
   */
  public record Decline(
      double startingRate, double decay, Tested limits, Tested wide, double bunching) {
    /** Returns the minutes in which the rate halves, or null where it does not fall. */
    public @Nullable Double halfLifeMinutes() {
      return decay > 0 ? Math.log(2) / decay : null;
    }
  }

  /**
   * Limits and test of the decline.
   *
   * @param low lower limit of c, per bait minute
   * @param high upper limit
   * @param p one-sided, of a rate that does not fall
   */
  public record Tested(double low, double high, double p) {}

  /**
   * When to leave, minutes of a visit with a bait in.
   *
   * @param minutes x*
   * @param limits from the limits of c as if bites came independently
   * @param wide the same allowing for bunching; what is told
   * @param level of the limits, in (0, 1)
   */
  public record LeaveAfter(double minutes, Limits limits, Limits wide, double level) {}

  /**
   * Limits of a leaving time.
   *
   * @param low lower limit, minutes
   * @param high upper limit, or null where a rate that does not fall is not ruled out
   */
  public record Limits(double low, @Nullable Double high) {}
}
