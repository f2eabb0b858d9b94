package org.fadeline.stats;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What counts as a fade and what is believed beforehand. The defaults are those of the methods
 * document; {@link #DEFAULT} and the {@code with} methods are the way to make one.
 *
 * @param share of the going rate at or below which a line has faded, in (0, 1)
 * @param hazard changes of rate per bait hour expected beforehand, in (0, ∞)
 * @param minimumSegment fewest bins of a segment that has ended, at least 1
 * @param means prior mean rates per hour that the steps and declines are mixed over
 * @param callLevel probability at which a fade counts as plain, in (0, 1)
 * @param draws paths that final figures rest on, at least 100; while watching, an eighth of them
 * @param seed of the draws
 * @param bunching the factor expected before any record of the line, at least 1
 */
public record FadeOptions(
    double share,
    double hazard,
    int minimumSegment,
    PriorMeans means,
    double callLevel,
    int draws,
    long seed,
    double bunching) {
  /** The defaults. */
  public static final FadeOptions DEFAULT =
      new FadeOptions(
          0.5,
          0.25,
          10,
          new PriorMeans(ChangePointMixture.hourlyMeans()),
          0.8,
          2000,
          20_260_101L,
          1);

  /** The going rate is the highest mean over this many bait minutes. */
  public static final double GOING_RATE_MINUTES = 60;

  /** Bait minutes below which there is no going rate, and below which a spell is not judged. */
  public static final double FEWEST_MINUTES = 20;

  /** Events of the record that must come before a fade. */
  public static final double FEWEST_EVENTS = 5;

  /**
   * Guard the ranges.
   *
   * @throws IllegalArgumentException if a value is out of range
   */
  public FadeOptions {
    Guard.insideUnit(share, "share of the going rate");
    Guard.positive(hazard, "changes per bait hour");
    Guard.insideUnit(callLevel, "call level");
    if (!(bunching >= 1 && Double.isFinite(bunching))) {
      throw new IllegalArgumentException("a bunching factor must be finite and at least 1");
    }
    if (minimumSegment < 1 || draws < 100) {
      throw new IllegalArgumentException(
          "a segment needs at least 1 bin and a review at least 100 draws, got "
              + minimumSegment
              + " and "
              + draws);
    }
  }

  /** The same with another number of changes per bait hour, in (0, ∞). */
  public FadeOptions withHazard(double changesPerHour) {
    return new FadeOptions(
        share, changesPerHour, minimumSegment, means, callLevel, draws, seed, bunching);
  }

  /** The same with another call level, in (0, 1). */
  public FadeOptions withCallLevel(double level) {
    return new FadeOptions(share, hazard, minimumSegment, means, level, draws, seed, bunching);
  }

  /** The same with another seed. */
  public FadeOptions withSeed(long newSeed) {
    return new FadeOptions(
        share, hazard, minimumSegment, means, callLevel, draws, newSeed, bunching);
  }

  /** The same with another number of draws, at least 100. */
  public FadeOptions withDraws(int count) {
    return new FadeOptions(share, hazard, minimumSegment, means, callLevel, count, seed, bunching);
  }

  /** The same with another bunching factor expected beforehand, at least 1. */
  public FadeOptions withBunching(double factor) {
    return new FadeOptions(share, hazard, minimumSegment, means, callLevel, draws, seed, factor);
  }

  /** Prior mean rates per hour, equally likely beforehand. */
  public static final class PriorMeans {
    private final double[] values;

    /**
     * Means in any order.
     *
     * @param values at least one, each in (0, ∞)
     * @throws IllegalArgumentException if there is none or one is out of range
     */
    public PriorMeans(double... values) {
      if (values.length == 0) {
        throw new IllegalArgumentException("at least one prior mean rate is needed");
      }
      for (double value : values) {
        Guard.positive(value, "prior mean rate");
      }
      this.values = values.clone();
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof PriorMeans means && Arrays.equals(values, means.values);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
      return Arrays.toString(values);
    }

    /** How many. */
    public int size() {
      return values.length;
    }

    /** The {@code i}-th, from 0. */
    public double get(int i) {
      return values[i];
    }
  }
}
