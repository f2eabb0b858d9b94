package org.fadeline.stats;

import java.util.Arrays;

/**
 * Counts in successive bins of exposure: the data of a change-point model with Poisson counts.
 *
 * <p>Counts may be fractional where they were divided by an overdispersion factor. Instances do not
 * change.
 */
public final class ChangePointBins {
  private final double[] counts;
  private final double[] exposures;
  private final double[] cumulativeCounts;
  private final double[] cumulativeExposures;
  private final double divisor;

  private ChangePointBins(double[] counts, double[] exposures, double divisor) {
    this.counts = counts;
    this.exposures = exposures;
    this.divisor = divisor;
    cumulativeCounts = new double[counts.length + 1];
    cumulativeExposures = new double[counts.length + 1];
    for (int i = 0; i < counts.length; i++) {
      cumulativeCounts[i + 1] = cumulativeCounts[i] + counts[i];
      cumulativeExposures[i + 1] = cumulativeExposures[i] + exposures[i];
    }
  }

  /**
   * Bins in order.
   *
   * @param counts events in each bin, each finite and in [0, ∞)
   * @param exposures exposure of each bin (hours, years …), each finite and in [0, ∞); a bin with
   *     events needs some
   * @throws IllegalArgumentException if the lengths differ, a value is out of range, or a bin with
   *     events has no exposure; the message names the bin, counted from 1
   */
  public static ChangePointBins of(double[] counts, double[] exposures) {
    Guard.sameLength(counts.length, exposures.length, "counts and exposures");
    for (int i = 0; i < counts.length; i++) {
      Guard.notNegative(counts[i], "the count of bin " + (i + 1));
      Guard.notNegative(exposures[i], "the exposure of bin " + (i + 1));
      if (counts[i] > 0 && exposures[i] == 0) {
        throw new IllegalArgumentException(
            "bin " + (i + 1) + " has " + counts[i] + " events but no exposure");
      }
    }
    return new ChangePointBins(counts.clone(), exposures.clone(), 1);
  }

  /**
   * Bins of equal exposure.
   *
   * @param counts events in each bin, each finite and in [0, ∞)
   * @param exposure of every bin, finite and in (0, ∞)
   * @throws IllegalArgumentException if a value is out of range
   */
  public static ChangePointBins of(double[] counts, double exposure) {
    double[] exposures = new double[counts.length];
    Arrays.fill(exposures, Guard.positive(exposure, "the exposure of a bin"));
    return of(counts, exposures);
  }

  /**
   * The same bins with counts and exposures divided by an overdispersion factor, which makes the
   * likelihood a quasi-likelihood (McCullagh and Nelder 1989, Generalized Linear Models, 9.2).
   *
   * @param factor in [1, ∞)
   * @throws IllegalArgumentException if the factor is below 1 or not finite
   */
  public ChangePointBins dividedBy(double factor) {
    if (!(factor >= 1 && factor <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "a bunching factor must be finite and at least 1, got " + factor);
    }
    double[] c = counts.clone();
    double[] e = exposures.clone();
    for (int i = 0; i < c.length; i++) {
      c[i] /= factor;
      e[i] /= factor;
    }
    return new ChangePointBins(c, e, divisor * factor);
  }

  /** Number of bins, 0 or more. */
  public int size() {
    return counts.length;
  }

  /** Count of bin {@code i}, from 0, divided by the factor of these bins. */
  public double count(int i) {
    return counts[i];
  }

  /** Exposure of bin {@code i}, from 0, divided by the factor of these bins. */
  public double exposure(int i) {
    return exposures[i];
  }

  /** Events in bins [from, to), counted from 0. */
  public double countBetween(int from, int to) {
    return cumulativeCounts[to] - cumulativeCounts[from];
  }

  /** Exposure of bins [from, to), counted from 0. */
  public double exposureBetween(int from, int to) {
    return cumulativeExposures[to] - cumulativeExposures[from];
  }

  /** What counts and exposures were divided by, 1 or more. */
  public double divisor() {
    return divisor;
  }
}
