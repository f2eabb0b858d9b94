package org.fadeline.stats;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A rate whose logarithm is normally distributed.
 *
 * @param logMean mean of the log rate, finite
 * @param logSd standard deviation of the log rate, finite, above 0
 */
public record LogNormalRate(double logMean, double logSd) {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Guard the ranges. */
  public LogNormalRate {
    if (!(Math.abs(logMean) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("mean of the log must be finite, got " + logMean);
    }
    if (!(logSd > 0 && logSd < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("sd of the log must be finite and above 0, got " + logSd);
    }
  }

  /** Mean of the rate: exp(μ + σ²/2). */
  public double mean() {
    return Math.exp(logMean + logSd * logSd / 2);
  }

  /**
   * Pr(rate &gt; x).
   *
   * @param x at least 0
   */
  public double probabilityAbove(double x) {
    return x <= 0 ? 1 : NORMAL.survivalProbability((Math.log(x) - logMean) / logSd);
  }

  /**
   * Central interval.
   *
   * @param level in (0, 1)
   * @throws IllegalArgumentException if the level is not in (0, 1)
   */
  public Interval interval(double level) {
    Guard.insideUnit(level, "level");
    double z = NORMAL.inverseSurvivalProbability((1 - level) / 2);
    return new Interval(Math.exp(logMean - z * logSd), Math.exp(logMean + z * logSd), level);
  }

  /** Precision-weighted combination with an independent opinion of the same rate. */
  public LogNormalRate combinedWith(LogNormalRate other) {
    double own = 1 / (logSd * logSd);
    double others = 1 / (other.logSd * other.logSd);
    return new LogNormalRate(
        (logMean * own + other.logMean * others) / (own + others), 1 / Math.sqrt(own + others));
  }
}
