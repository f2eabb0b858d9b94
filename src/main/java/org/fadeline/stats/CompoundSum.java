package org.fadeline.stats;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A compound distribution, the sum of a random number of independent amounts (Feller 1968, An
 * Introduction to Probability Theory and Its Applications, vol. 1, section XII.1): given k of them
 * it is taken as normal with mean kμ and variance kσ², and never below 0 (the central limit for
 * each k; for few and very skewed amounts the tails are approximate).
 */
public final class CompoundSum {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int HALVINGS = 50;

  private final double[] probabilities;
  private final double mean;
  private final double variance;

  /**
   * A compound sum.
   *
   * @param probabilities of the counts 0, 1, 2, …, each at least 0; what they lack to 1 is taken to
   *     lie above the last
   * @param mean μ of one amount, finite, at least 0
   * @param variance σ² of one amount, finite, at least 0
   * @throws IllegalArgumentException if an argument is out of range
   */
  public CompoundSum(double[] probabilities, double mean, double variance) {
    Guard.notNegative(mean, "mean amount");
    Guard.notNegative(variance, "variance of an amount");
    for (double p : probabilities) {
      Guard.notNegative(p, "probability of a count");
    }
    this.probabilities = probabilities.clone();
    this.mean = mean;
    this.variance = variance;
  }

  /** Pr(sum ≤ x); 0 below 0. */
  public double cumulative(double x) {
    if (x < 0 || probabilities.length == 0) {
      return 0;
    }
    double sum = probabilities[0];
    for (int k = 1; k < probabilities.length; k++) {
      double sd = Math.sqrt(k * variance);
      double above = x - k * mean;
      if (sd > 0) {
        double z = above / sd;
        sum += probabilities[k] * (z > 8 ? 1 : z < -8 ? 0 : NORMAL.cumulativeProbability(z));
      } else if (above >= 0) {
        sum += probabilities[k];
      }
    }
    return sum;
  }

  /**
   * Smallest sum, to within one part in 2⁵⁰ of the range, whose cumulative probability is at least
   * p.
   *
   * @param p in (0, 1)
   * @throws IllegalArgumentException if it is not
   */
  public double quantile(double p) {
    Guard.insideUnit(p, "p");
    if (cumulative(0) >= p) {
      return 0;
    }
    double low = 0;
    double most = probabilities.length + 1.0;
    double high = most * mean + 10 * Math.sqrt(most * variance);
    for (int i = 0; i < HALVINGS && high - low > 1e-9 * high; i++) {
      double middle = (low + high) / 2;
      if (cumulative(middle) >= p) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
