package org.fadeline.stats;

/**
 * Posterior of the place of exactly one change of a Poisson rate, with gamma rates on both sides
 * (Carlin, Gelfand and Smith 1992, Applied Statistics 41:389–405; Raftery and Akman 1986,
 * Biometrika 73:85–89). O(n).
 */
public final class ChangePointSingle {
  private final double[] probabilities;
  private final double before;
  private final double after;
  private final double logEvidence;

  private ChangePointSingle(
      double[] probabilities, double before, double after, double logEvidence) {
    this.probabilities = probabilities;
    this.before = before;
    this.after = after;
    this.logEvidence = logEvidence;
  }

  /**
   * Works the posterior out.
   *
   * @param bins at least two
   * @param shape of the gamma prior of both rates, in (0, ∞)
   * @param rate of that prior, in [0, ∞); 0 gives the improper prior λ^(shape − 1), whose log
   *     evidence is known up to a constant only
   * @param weights prior weight of a change at boundary i at index i, each in [0, ∞), some above 0;
   *     index 0 is not read
   * @throws IllegalArgumentException if a value is out of range or there are fewer than two bins
   */
  public static ChangePointSingle of(
      ChangePointBins bins, double shape, double rate, double[] weights) {
    int n = bins.size();
    if (n < 2) {
      throw new IllegalArgumentException("a change needs at least 2 bins, got " + n);
    }
    Guard.sameLength(n, weights.length, "bins and weights");
    Guard.positive(shape, "prior shape");
    Guard.notNegative(rate, "prior rate");
    double[] logs = new double[n];
    logs[0] = Double.NEGATIVE_INFINITY;
    double total = 0;
    for (int i = 1; i < n; i++) {
      total += Guard.notNegative(weights[i], "weight of boundary " + i);
      logs[i] =
          Math.log(weights[i])
              + logSegment(shape, rate, bins, 0, i)
              + logSegment(shape, rate, bins, i, n);
    }
    Guard.positive(total, "the sum of the weights");
    double[] probabilities = new double[n];
    double logSum = ChangePointMixture.normalise(logs, probabilities);
    double before = 0;
    double after = 0;
    for (int i = 1; i < n; i++) {
      if (probabilities[i] > 0) {
        before += probabilities[i] * mean(shape, rate, bins, 0, i);
        after += probabilities[i] * mean(shape, rate, bins, i, n);
      }
    }
    double prior = rate == 0 ? 0 : 2 * (shape * Math.log(rate) - ChangePointGamma.logGamma(shape));
    double constant = 0;
    for (int i = 0; i < n; i++) {
      constant += ChangePointGamma.logPoissonConstant(bins.count(i), bins.exposure(i));
    }
    return new ChangePointSingle(
        probabilities, before, after, logSum - Math.log(total) + prior + constant);
  }

  /** Probability of the change lying at boundary i, by boundary; index 0 holds 0. */
  public double[] probabilities() {
    return probabilities.clone();
  }

  /** Posterior mean rate before the change. */
  public double before() {
    return before;
  }

  /** Posterior mean rate after the change. */
  public double after() {
    return after;
  }

  /** Log of the probability of all counts, given that there is one change. */
  public double logEvidence() {
    return logEvidence;
  }

  /** Boundary with the highest probability, the first of equals. */
  public int mode() {
    int best = 1;
    for (int i = 2; i < probabilities.length; i++) {
      if (probabilities[i] > probabilities[best]) {
        best = i;
      }
    }
    return best;
  }

  /**
   * Smallest boundary whose cumulative probability is at least {@code p}.
   *
   * @param p in (0, 1)
   * @throws IllegalArgumentException if it is not
   */
  public int quantile(double p) {
    Guard.insideUnit(p, "p");
    double sum = 0;
    for (int i = 1; i < probabilities.length; i++) {
      sum += probabilities[i];
      if (sum >= p) {
        return i;
      }
    }
    return probabilities.length - 1;
  }

  private static double logSegment(
      double shape, double rate, ChangePointBins bins, int from, int to) {
    double a = shape + bins.countBetween(from, to);
    return ChangePointGamma.logGamma(a) - a * Math.log(rate + bins.exposureBetween(from, to));
  }

  private static double mean(double shape, double rate, ChangePointBins bins, int from, int to) {
    return (shape + bins.countBetween(from, to)) / (rate + bins.exposureBetween(from, to));
  }
}
