package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Change-point posteriors under several prior mean rates, one for the whole record, weighted by
 * their evidence: which scale of rate a record is on need not be known beforehand.
 */
public final class ChangePointMixture {
  /** Prior mean rates per hour of exposure that cover what a line pays: 1.5 to 48 per hour. */
  private static final double[] HOURLY_MEANS = {1.5, 3, 6, 12, 24, 48};

  private final double[] weights;
  private final List<ChangePointPosterior> components;
  private final double logEvidence;

  private ChangePointMixture(List<ChangePointPosterior> components) {
    this.components = List.copyOf(components);
    double[] logs = components.stream().mapToDouble(ChangePointPosterior::logEvidence).toArray();
    weights = new double[logs.length];
    logEvidence = normalise(logs, weights) - Math.log(logs.length);
  }

  /**
   * Posterior with equal prior weights on each mean.
   *
   * @param bins counts and exposures
   * @param prior whose shape, hazard and minimum length all components share
   * @param means prior mean rates, at least one, each in (0, ∞)
   * @throws IllegalArgumentException if there is no mean or one is out of range
   */
  public static ChangePointMixture of(
      ChangePointBins bins, ChangePointPrior prior, double... means) {
    if (means.length == 0) {
      throw new IllegalArgumentException("at least one prior mean rate is needed");
    }
    List<ChangePointPosterior> components = new ArrayList<>();
    for (double mean : means) {
      components.add(ChangePointPosterior.of(bins, prior.withMean(mean)));
    }
    return new ChangePointMixture(components);
  }

  /** Prior mean rates 1.5, 3, 6, 12, 24 and 48 per hour. */
  public static double[] hourlyMeans() {
    return HOURLY_MEANS.clone();
  }

  /** Log evidence of the mixture. */
  public double logEvidence() {
    return logEvidence;
  }

  /** Posterior mean rate in each bin. */
  public double[] meanRates() {
    return mixed(ChangePointPosterior::meanRates);
  }

  /** Probability that the last segment starts with bin s, by s. */
  public double[] lastStartProbabilities() {
    return mixed(ChangePointPosterior::lastStartProbabilities);
  }

  /**
   * Exact draws, the components in proportion to their weights (systematic sampling, so that each
   * is met as often as its weight says, to within one draw).
   *
   * @param count how many, 0 or more
   * @param seed the same seed gives the same draws
   */
  public List<ChangePointDraw> draws(int count, long seed) {
    List<ChangePointDraw> draws = new ArrayList<>(count);
    double sum = 0;
    for (int m = 0; m < weights.length; m++) {
      sum += weights[m];
      int upTo = m == weights.length - 1 ? count : (int) Math.min(count, Math.round(sum * count));
      if (upTo > draws.size()) {
        draws.addAll(components.get(m).draws(upTo - draws.size(), seed + m));
      }
    }
    return draws;
  }

  /**
   * Fills {@code weights} with the normalised exponentials of {@code logs}.
   *
   * @return log of their sum
   */
  static double normalise(double[] logs, double[] weights) {
    double top = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      top = Math.max(top, log);
    }
    double sum = 0;
    for (int i = 0; i < logs.length; i++) {
      weights[i] = Math.exp(logs[i] - top);
      sum += weights[i];
    }
    for (int i = 0; i < logs.length; i++) {
      weights[i] /= sum;
    }
    return top + Math.log(sum);
  }

  private double[] mixed(Function<ChangePointPosterior, double[]> part) {
    double[] result = part.apply(components.get(0)).clone();
    for (int i = 0; i < result.length; i++) {
      result[i] *= weights[0];
    }
    for (int m = 1; m < weights.length; m++) {
      double[] values = part.apply(components.get(m));
      for (int i = 0; i < result.length; i++) {
        result[i] += weights[m] * values[i];
      }
    }
    return result;
  }
}
