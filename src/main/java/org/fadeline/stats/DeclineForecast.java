package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * What a Poisson rate that declines as λ₀·e^(−cx) since a visit began has still to give, bin by bin
 * as they are seen: half-life uniform on a log scale from 10 to 480 minutes by a grid of 40 points,
 * λ₀ exponential. Given a half-life, the count over a time to come is Poisson with λ₀ times the
 * integral of the decline over it, so that with λ₀ summed out it is negative binomial (as in {@link
 * NegativeBinomialPredictive}); the grid mixes them by evidence. Not safe for use by many threads.
 */
public final class DeclineForecast {
  private final FadeOptions.PriorMeans mean;
  private final DeclineSums sums = new DeclineSums();
  private final double[] weights = new double[DeclineSums.GRID];
  private double constant;
  private double logEvidence;

  /**
   * Nothing seen yet.
   *
   * @param mean of λ₀ beforehand, per hour, in (0, ∞)
   * @throws IllegalArgumentException if it is not
   */
  public DeclineForecast(double mean) {
    this.mean = new FadeOptions.PriorMeans(new double[] {Guard.positive(mean, "mean rate")});
    logEvidence = sums.weigh(this.mean, 1, weights);
  }

  /**
   * Takes in a bin.
   *
   * @param count events in it, finite and in [0, ∞)
   * @param hours its exposure, finite and in (0, ∞)
   * @param minute its middle, minutes since the visit began, finite and in [0, ∞)
   * @throws IllegalArgumentException if a value is out of range
   */
  public void add(double count, double hours, double minute) {
    Guard.notNegative(count, "count");
    Guard.positive(hours, "exposure");
    Guard.notNegative(minute, "middle of the bin");
    sums.add(count, hours, minute);
    constant += ChangePointGamma.logPoissonConstant(count, hours);
    logEvidence = sums.weigh(mean, 1, weights) + constant;
  }

  /** Log of the probability of all counts so far; 0 before the first. */
  public double logEvidence() {
    return logEvidence;
  }

  /**
   * Count from {@code minute} on if the visit goes on.
   *
   * @param minute since the visit began, finite and in [0, ∞)
   * @param minutes to come, finite and in [0, ∞)
   * @throws IllegalArgumentException if a value is out of range
   */
  public PredictiveCountMixture predictive(double minute, double minutes) {
    Guard.notNegative(minute, "minute");
    Guard.notNegative(minutes, "minutes to come");
    List<NegativeBinomialPredictive> parts = new ArrayList<>(DeclineSums.GRID);
    for (int i = 0; i < DeclineSums.GRID; i++) {
      double c = sums.decay(i);
      double hours = Math.exp(-c * minute) * -Math.expm1(-c * minutes) / c / 60;
      parts.add(NegativeBinomialPredictive.of(sums.shape(1), sums.rate(mean.get(0), i, 1), hours));
    }
    return PredictiveCountMixture.of(weights, parts);
  }
}
