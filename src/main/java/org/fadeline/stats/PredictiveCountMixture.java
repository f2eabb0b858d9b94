package org.fadeline.stats;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Mixture of predictive counts, as when the rate's posterior is itself a mixture over the length of
 * the current run. Quantiles are those of the mixture, not averages of quantiles.
 */
public final class PredictiveCountMixture implements PredictiveCount {
  private final double[] weights;
  private final List<PredictiveCount> parts;

  private PredictiveCountMixture(double[] weights, List<PredictiveCount> parts) {
    this.weights = weights;
    this.parts = parts;
  }

  /**
   * Mixes predictive counts.
   *
   * @param weights weight of each part, each in [0, ∞), not all 0; scaled to sum to 1
   * @param parts as many as there are weights
   * @throws IllegalArgumentException if the lengths differ or a weight is outside its range
   */
  public static PredictiveCountMixture of(double[] weights, List<? extends PredictiveCount> parts) {
    Checks.sameLength(weights.length, parts.size(), "weights and parts");
    double sum = 0;
    for (double weight : weights) {
      sum += Checks.notNegative(weight, "weight");
    }
    Checks.positive(sum, "sum of the weights");
    double[] shares = new double[weights.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = weights[i] / sum;
    }
    return new PredictiveCountMixture(shares, List.copyOf(parts));
  }

  private double mix(ToDoubleFunction<PredictiveCount> of) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        sum += weights[i] * of.applyAsDouble(parts.get(i));
      }
    }
    return sum;
  }

  @Override
  public double probability(long k) {
    return mix(part -> part.probability(k));
  }

  @Override
  public double cumulative(long k) {
    return Math.min(1, mix(part -> part.cumulative(k)));
  }

  @Override
  public double survival(long k) {
    return Math.min(1, mix(part -> part.survival(k)));
  }

  @Override
  public double mean() {
    return mix(PredictiveCount::mean);
  }

  @Override
  public double variance() {
    double mean = mean();
    return mix(
        part -> {
          double off = part.mean() - mean;
          return part.variance() + off * off;
        });
  }
}
