package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Predictive distribution of a count over a further exposure: a mixture of negative binomials, each
 * of size A and probability B/(B + f) for a rate known as Gamma(A, B) and exposure f (Gelman et
 * al., Bayesian Data Analysis, section 2.6).
 */
public final class RunLengthPredictive {
  /** Log below which a term may have lost digits or be 0. */
  private static final double SMALLEST_LOG = -600;

  /** Components below this weight are left out and the others scaled up. */
  private static final double NEGLIGIBLE = 1e-12;

  private final List<RunLengthRate> rates;
  private final double exposure;
  private final double total;

  private RunLengthPredictive(List<RunLengthRate> rates, double exposure) {
    this.rates = rates;
    this.exposure = exposure;
    total = rates.stream().mapToDouble(RunLengthRate::weight).sum();
  }

  /**
   * Predictive of a mixture of gamma rates.
   *
   * @param rates at least one with a weight above 0
   * @param exposure finite and in [0, ∞)
   * @throws IllegalArgumentException if there is no weight or the exposure is out of range
   */
  public static RunLengthPredictive of(List<RunLengthRate> rates, double exposure) {
    Checks.notNegative(exposure, "exposure");
    List<RunLengthRate> kept = new ArrayList<>();
    for (RunLengthRate rate : rates) {
      if (rate.weight() > NEGLIGIBLE) {
        kept.add(rate);
      }
    }
    if (kept.isEmpty()) {
      throw new IllegalArgumentException("a predictive needs at least one rate with some weight");
    }
    return new RunLengthPredictive(kept, exposure);
  }

  /** Mean count. */
  public double mean() {
    double sum = 0;
    for (RunLengthRate rate : rates) {
      sum += rate.weight() * rate.shape() / rate.rate() * exposure;
    }
    return sum / total;
  }

  /** Probability of exactly {@code count}; 0 below 0. */
  public double probability(int count) {
    if (count < 0) {
      return 0;
    }
    double sum = 0;
    for (RunLengthRate rate : rates) {
      sum += rate.weight() * Math.exp(logProbability(rate, count));
    }
    return sum / total;
  }

  /** Probability of at most {@code count}. */
  public double cumulative(int count) {
    double sum = 0;
    for (int k = 0; k <= count; k++) {
      sum += probability(k);
    }
    return Math.min(1, sum);
  }

  /**
   * Smallest count whose cumulative probability is at least {@code p}.
   *
   * @param p in (0, 1)
   * @throws IllegalArgumentException if it is not
   */
  public int quantile(double p) {
    Checks.insideUnit(p, "p");
    double sum = 0;
    int count = 0;
    double most = 100 + 1000 * (mean() + 1);
    while (true) {
      sum += probability(count);
      if (sum >= p || count >= most) {
        return count;
      }
      count++;
    }
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
    Checks.insideUnit(coverage, "coverage");
    double[] logs = new double[rates.size()];
    double[] terms = new double[rates.size()];
    for (int i = 0; i < terms.length; i++) {
      logs[i] = Math.log(rates.get(i).weight() / total) + logProbability(rates.get(i), 0);
      terms[i] = Math.exp(logs[i]);
    }
    double[] result = new double[(int) Math.ceil(4 * (mean() + 8))];
    double sum = 0;
    double most = 100 + 1000 * (mean() + 1);
    int k = 0;
    for (; k < most; k++) {
      if (k == result.length) {
        result = java.util.Arrays.copyOf(result, 2 * k);
      }
      for (int i = 0; i < terms.length; i++) {
        result[k] += terms[i];
        RunLengthRate rate = rates.get(i);
        double ratio = (k + rate.shape()) / (k + 1.0) * exposure / (rate.rate() + exposure);
        // With many fish to come the first terms are too small for a double: they grow in logs.
        if (logs[i] < SMALLEST_LOG && ratio > 0) {
          logs[i] += Math.log(ratio);
          terms[i] = Math.exp(logs[i]);
        } else {
          terms[i] *= ratio;
        }
      }
      sum += result[k];
      if (sum >= coverage) {
        k++;
        break;
      }
    }
    return java.util.Arrays.copyOf(result, k);
  }

  private double logProbability(RunLengthRate rate, int count) {
    if (exposure == 0) {
      return count == 0 ? 0 : Double.NEGATIVE_INFINITY;
    }
    double a = rate.shape();
    double b = rate.rate();
    return ChangePointGamma.logGamma(a + count)
        - ChangePointGamma.logGamma(a)
        - ChangePointGamma.logGamma(count + 1.0)
        - a * Math.log1p(exposure / b)
        - count * Math.log1p(b / exposure);
  }
}
