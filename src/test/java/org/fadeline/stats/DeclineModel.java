package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Posterior of an exponentially declining Poisson rate λ₀·e^(−cx): half-life uniform on a log scale
 * from 10 to 480 minutes by a grid of 40 points, starting rate exponential with a mean mixed
 * equally over given values. Closed form at each grid point, a gamma prior being conjugate (Gelman
 * et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.6); section 4 of the methods document.
 * The whole of it at once, for the tests to hold {@link FadeDeclines} and {@link DeclineForecast}
 * against, which go bin by bin.
 */
final class DeclineModel {
  private final DeclineSums sums;
  private final FadeOptions.PriorMeans means;
  private final double[] weights;
  private final double logEvidence;

  private DeclineModel(DeclineSums sums, FadeOptions.PriorMeans means, double constant) {
    this.sums = sums;
    this.means = means;
    weights = new double[means.size() * DeclineSums.GRID];
    logEvidence = sums.weigh(means, 1, weights) + constant;
  }

  /**
   * Posterior for counts in bins.
   *
   * @param bins counts and exposures in hours, any number
   * @param minutes middle of each bin, minutes since the decline began, each finite and in [0, ∞)
   * @param means prior means of the starting rate per hour, at least one, each in (0, ∞)
   * @throws IllegalArgumentException if a value is out of range or lengths differ
   */
  static DeclineModel of(ChangePointBins bins, double[] minutes, double... means) {
    Guard.sameLength(bins.size(), minutes.length, "bins and minutes");
    DeclineSums sums = new DeclineSums();
    double constant = 0;
    for (int i = 0; i < minutes.length; i++) {
      Guard.notNegative(minutes[i], "middle of bin " + (i + 1));
      double y = bins.count(i);
      sums.add(y, bins.exposure(i), minutes[i]);
      constant += ChangePointGamma.logPoissonConstant(y, bins.exposure(i));
    }
    return new DeclineModel(sums, new FadeOptions.PriorMeans(means), constant);
  }

  /** Log of the probability of all counts. */
  double logEvidence() {
    return logEvidence;
  }

  /** The half-lives told apart, minutes, ascending. */
  double[] halfLives() {
    double[] result = new double[DeclineSums.GRID];
    for (int i = 0; i < result.length; i++) {
      result[i] = Math.log(2) / sums.decay(i);
    }
    return result;
  }

  /** Posterior probability of each half-life; they sum to 1. */
  double[] halfLifeProbabilities() {
    double[] result = new double[DeclineSums.GRID];
    for (int k = 0; k < weights.length; k++) {
      result[k % DeclineSums.GRID] += weights[k];
    }
    return result;
  }

  /**
   * Posterior mean rate at {@code minute}, events per hour.
   *
   * @param minute since the decline began, in [0, ∞)
   */
  double meanRate(double minute) {
    double sum = 0;
    for (int k = 0; k < weights.length; k++) {
      sum += weights[k] * shape() / rate(k) * Math.exp(-decay(k) * minute);
    }
    return sum;
  }

  /**
   * Exact draws, each grid point as often as its probability says to within one draw.
   *
   * @param count how many, 0 or more
   * @param seed the same seed gives the same draws
   */
  List<DeclineDraw> draws(int count, long seed) {
    ChangePointRandom random = new ChangePointRandom(seed);
    List<DeclineDraw> draws = new ArrayList<>(count);
    double sum = 0;
    for (int k = 0; k < weights.length; k++) {
      sum += weights[k];
      while (draws.size() < count
          && (draws.size() + 0.5 < sum * count || k == weights.length - 1)) {
        draws.add(new DeclineDraw(random.gamma(shape()) / rate(k), decay(k)));
      }
    }
    return draws;
  }

  private double shape() {
    return sums.shape(1);
  }

  private double rate(int k) {
    return sums.rate(means.get(k / DeclineSums.GRID), k % DeclineSums.GRID, 1);
  }

  private double decay(int k) {
    return sums.decay(k % DeclineSums.GRID);
  }
}
