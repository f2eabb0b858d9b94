package org.fadeline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Mixture of negative binomials, as when the rate's posterior is itself a mixture over the length
 * of the current run (Adams &amp; MacKay 2007, arXiv:0710.3742). Quantiles are those of the
 * mixture, not averages of quantiles.
 */
public final class PredictiveCountMixture implements PredictiveCount {
  /** Log below which a term may have lost digits or be 0. */
  private static final double SMALLEST_LOG = -600;

  /** Rates of a run below this weight are left out and the others scaled up. */
  private static final double NEGLIGIBLE = 1e-12;

  private final double[] weights;
  private final List<NegativeBinomialPredictive> parts;

  private PredictiveCountMixture(double[] weights, List<NegativeBinomialPredictive> parts) {
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
  public static PredictiveCountMixture of(
      double[] weights, List<NegativeBinomialPredictive> parts) {
    Guard.sameLength(weights.length, parts.size(), "weights and parts");
    double sum = 0;
    for (double weight : weights) {
      sum += Guard.notNegative(weight, "weight");
    }
    Guard.positive(sum, "sum of the weights");
    double[] shares = new double[weights.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = weights[i] / sum;
    }
    return new PredictiveCountMixture(shares, List.copyOf(parts));
  }

  /**
   * Count over a further exposure at the present rate, whatever it is.
   *
   * @param rates what the present rate may be; at least one with a weight above 0
   * @param exposure finite and in [0, ∞)
   * @throws IllegalArgumentException if there is no weight or the exposure is out of range
   */
  public static PredictiveCountMixture of(List<RunLengthRate> rates, double exposure) {
    List<RunLengthRate> kept = rates.stream().filter(r -> r.weight() > NEGLIGIBLE).toList();
    List<NegativeBinomialPredictive> parts = new ArrayList<>(kept.size());
    for (RunLengthRate rate : kept) {
      parts.add(NegativeBinomialPredictive.of(rate.shape(), rate.rate(), exposure));
    }
    return of(kept.stream().mapToDouble(RunLengthRate::weight).toArray(), parts);
  }

  /**
   * This count with some probability, else another.
   *
   * @param other what it is otherwise
   * @param share probability of the other, in [0, 1]
   * @throws IllegalArgumentException if it is not
   */
  public PredictiveCountMixture mixedWith(PredictiveCountMixture other, double share) {
    Guard.probability(share, "share");
    double[] all = new double[weights.length + other.weights.length];
    for (int i = 0; i < all.length; i++) {
      all[i] =
          i < weights.length ? (1 - share) * weights[i] : share * other.weights[i - weights.length];
    }
    List<NegativeBinomialPredictive> both = new ArrayList<>(parts);
    both.addAll(other.parts);
    return of(all, both);
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

  /**
   * Probabilities of the counts 0, 1, 2, … until they sum to at least {@code coverage}, by the
   * recursion p(k+1) = p(k)·(k + A)/(k + 1)·f/(B + f): what many quantiles of one distribution
   * need.
   *
   * @param coverage in (0, 1)
   * @throws IllegalArgumentException if it is not
   */
  public double[] probabilities(double coverage) {
    Guard.insideUnit(coverage, "coverage");
    double[] logs = new double[weights.length];
    double[] terms = new double[weights.length];
    for (int i = 0; i < terms.length; i++) {
      logs[i] = Math.log(weights[i]) + parts.get(i).logNone();
      terms[i] = Math.exp(logs[i]);
    }
    double mean = mean();
    double[] result = new double[(int) Math.ceil(4 * (mean + 8))];
    double most = 100 + 1000 * (mean + 1);
    double sum = 0;
    int k = 0;
    while (k < most && sum < coverage) {
      if (k == result.length) {
        result = Arrays.copyOf(result, 2 * k);
      }
      for (int i = 0; i < terms.length; i++) {
        result[k] += terms[i];
        double ratio = parts.get(i).ratio(k);
        // With many fish to come the first terms are too small for a double: they grow in logs.
        if (logs[i] < SMALLEST_LOG && ratio > 0) {
          logs[i] += Math.log(ratio);
          terms[i] = Math.exp(logs[i]);
        } else {
          terms[i] *= ratio;
        }
      }
      sum += result[k];
      k++;
    }
    return Arrays.copyOf(result, k);
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
