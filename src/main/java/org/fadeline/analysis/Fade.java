package org.fadeline.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether and when a line faded in one spell.
 *
 * @param spell index of the spell on its line, from 0
 * @param probability posterior probability that it faded in this spell, in [0, 1]
 * @param moment when, or null where no curve faded
 * @param call when that was plain
 * @param strength the rates on both sides and what allowances were made
 * @param verdict the words, as read on screen
 */
public record Fade(
    int spell,
    double probability,
    @Nullable Moment moment,
    Call call,
    Strength strength,
    String verdict) {

  /**
   * The moment, on the clock.
   *
   * @param at posterior median, epoch milliseconds
   * @param low lower limit
   * @param high upper limit
   * @param level of the interval, in (0, 1)
   * @param density posterior of the moment minute by minute, for shading
   */
  public record Moment(long at, long low, long high, double level, List<Mass> density) {
    /** Copies the list. */
    public Moment {
      density = List.copyOf(density);
    }
  }

  /**
   * Posterior mass of one bin.
   *
   * @param span on the clock
   * @param probability that the line faded in it, given the record
   */
  public record Mass(TimeSpan span, double probability) {}

  /**
   * When the fade could have been called from what had been seen by then.
   *
   * @param plainAt first minute at which the probability reached the call level, epoch
   *     milliseconds; null if never or where hindsight does not bear it out
   * @param level the call level, in (0, 1)
   * @param crossings every crossing of the call level, the withdrawn ones too, in time order
   */
  public record Call(@Nullable Long plainAt, double level, List<Crossing> crossings) {
    /** Copies the list. */
    public Call {
      crossings = List.copyOf(crossings);
    }
  }

  /**
   * One crossing of the call level.
   *
   * @param at end of the minute, epoch milliseconds
   * @param up whether the level was reached; otherwise the call was withdrawn
   * @param asSeenThen for an upward crossing, the moment as the record up to then places it
   */
  public record Crossing(long at, boolean up, @Nullable Moment asSeenThen) {}

  /** Which shape of fade the record favours. */
  public enum Shape {
    /** At a moment. */
    STEP("step"),
    /** Bit by bit. */
    GRADUAL("gradual"),
    /** The record does not tell which. */
    UNCLEAR("unclear");

    private final String word;

    Shape(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /**
   * Rates around the moment.
   *
   * @param before bites per bait hour before it, or null
   * @param after bites per bait hour after it, or null
   * @param bunching the factor by which counts were discounted for bunching, 1 or more
   * @param shape which shape is favoured
   * @param baitMinutesAfter bait minutes of the spell after the moment: what "stayed there" rests
   *     on
   */
  public record Strength(
      @Nullable Double before,
      @Nullable Double after,
      double bunching,
      Shape shape,
      double baitMinutesAfter) {}
}
