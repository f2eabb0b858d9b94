package org.fadeline.analysis;

import org.fadeline.analysis.Effort.Became;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.model.Checks;
import org.jspecify.annotations.Nullable;

/**
 * Every setting that the numbers of a review rest on.
 *
 * @param windowMinutes window of the rolling catch rate, minutes, in [5, 240]
 * @param callLevel probability at which a fade counts as plain, in [0.5, 0.99]
 * @param changeHazard changes of rate per bait hour expected beforehand, in (0, 10]
 * @param measure what a fade is judged on
 * @param moveCostMinutes cost of moving to a line other than the one fished next, in [0, 60]
 * @param seed seed of all draws
 * @param handling time a fish takes on lines whose casts are not logged
 * @param learned what other sessions taught, or null where the usual values stand
 */
public record ReviewSettings(
    double windowMinutes,
    double callLevel,
    double changeHazard,
    Measure measure,
    double moveCostMinutes,
    long seed,
    HandlingTimes handling,
    @Nullable LearnedPriors learned) {
  /** The defaults of the methods document. */
  public static final ReviewSettings DEFAULT =
      new ReviewSettings(30, 0.8, 0.25, Measure.BITES, 4, 20_260_101L, HandlingTimes.NONE, null);

  /** Share of the going rate at or below which a line has faded. */
  public static final double FADED_SHARE = 0.5;

  /** Fished minutes below which no rolling rate is told. */
  public static final double LEAST_RATED_MINUTES = 3;

  /** Probability of a fade below which there is no sign of one. */
  public static final double NO_SIGN_BELOW = 0.2;

  /** Probability from which a line probably faded; below it the record cannot tell. */
  public static final double PROBABLE_FROM = 0.5;

  /** Probability from which a line faded and charts mark it; below it, words only. */
  public static final double MARKED_FROM = 0.8;

  /** Level of every interval but those of fades and finishes. */
  public static final double LEVEL = 0.95;

  /** Level of the intervals of fades, gains and finishes. */
  public static final double FADE_LEVEL = 0.90;

  /** Returns these settings with another window of the rolling catch rate, minutes. */
  public ReviewSettings withWindowMinutes(double minutes) {
    return new ReviewSettings(
        minutes, callLevel, changeHazard, measure, moveCostMinutes, seed, handling, learned);
  }

  /** Returns these settings with another probability at which a fade counts as plain. */
  public ReviewSettings withCallLevel(double level) {
    return new ReviewSettings(
        windowMinutes, level, changeHazard, measure, moveCostMinutes, seed, handling, learned);
  }

  /** Returns these settings with other changes of rate expected, per bait hour. */
  public ReviewSettings withChangeHazard(double perHour) {
    return new ReviewSettings(
        windowMinutes, callLevel, perHour, measure, moveCostMinutes, seed, handling, learned);
  }

  /** Returns these settings with a fade judged on something else. */
  public ReviewSettings withMeasure(Measure newMeasure) {
    return new ReviewSettings(
        windowMinutes,
        callLevel,
        changeHazard,
        newMeasure,
        moveCostMinutes,
        seed,
        handling,
        learned);
  }

  /** Returns these settings with another cost of moving, minutes. */
  public ReviewSettings withMoveCostMinutes(double minutes) {
    return new ReviewSettings(
        windowMinutes, callLevel, changeHazard, measure, minutes, seed, handling, learned);
  }

  /** Returns these settings with other handling times. */
  public ReviewSettings withHandling(HandlingTimes times) {
    return new ReviewSettings(
        windowMinutes, callLevel, changeHazard, measure, moveCostMinutes, seed, times, learned);
  }

  /** Returns these settings with what other sessions taught, their rate of change among it. */
  public ReviewSettings withLearned(LearnedPriors priors) {
    return new ReviewSettings(
        windowMinutes,
        callLevel,
        priors.changeHazard(),
        measure,
        moveCostMinutes,
        seed,
        handling,
        priors);
  }

  /** Returns how far estimates are taken to run off in a match that is not weighed yet. */
  public EstimateError estimates() {
    EstimateError error = learned == null ? null : learned.estimates();
    return error == null ? EstimateError.USUAL : error;
  }

  /** Checks the ranges. */
  public ReviewSettings {
    Checks.between("window", windowMinutes, 5, 240);
    Checks.between("call level", callLevel, 0.5, 0.99);
    Checks.between("change hazard", changeHazard, Double.MIN_VALUE, 10);
    Checks.between("cost of moving", moveCostMinutes, 0, 60);
  }

  /** What a fade is judged on. */
  public enum Measure {
    /** Bites where the record is full, else hook-ups. */
    BITES("bites"),
    /** Hook-ups: landed, lost, foul-hooked. */
    HOOK_UPS("hook-ups"),
    /** Fish landed. */
    FISH("fish");

    private final String word;

    Measure(String word) {
      this.word = word;
    }

    /** Returns the word used in files and on screen. */
    public String word() {
      return word;
    }

    /** Returns what a record of a grade can be judged on: without casts, bites are hook-ups. */
    public Measure carriedBy(Grade grade) {
      return this == BITES && grade != Grade.FULL ? HOOK_UPS : this;
    }

    boolean counts(BiteMark bite) {
      return switch (this) {
        case BITES -> true;
        case HOOK_UPS -> bite.became() != Became.MISSED;
        case FISH -> bite.became() == Became.LANDED;
      };
    }
  }
}
