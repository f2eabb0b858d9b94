package org.fadeline.stats;

import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * Predictive distribution of a Poisson count over a future exposure f when its rate has a Gamma(A,
 * B) posterior: negative binomial with size A, not necessarily whole, and probability B/(B + f)
 * (Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.6). Pr(K = 0) = (B/(B + f))^A.
 */
public final class NegativeBinomialPredictive implements PredictiveCount {
  private final double size;
  private final double stay;
  private final double go;

  private NegativeBinomialPredictive(double size, double stay, double go) {
    this.size = size;
    this.stay = stay;
    this.go = go;
  }

  /**
   * Count over a future exposure.
   *
   * @param shape A, shape of the rate's gamma distribution, in (0, ∞)
   * @param rate B, its rate, in units of exposure, in (0, ∞)
   * @param exposure f, exposure to come, in [0, ∞); with 0 the count is surely 0
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static NegativeBinomialPredictive of(double shape, double rate, double exposure) {
    Guard.positive(shape, "shape");
    Guard.positive(rate, "rate");
    Guard.notNegative(exposure, "exposure");
    double total = rate + exposure;
    return new NegativeBinomialPredictive(shape, rate / total, exposure / total);
  }

  @Override
  public double probability(long k) {
    if (k < 0) {
      return 0;
    }
    if (k == 0) {
      return Math.exp(logNone());
    }
    if (go == 0) {
      return 0;
    }
    // Γ(A+k)/(Γ(A)k!) is 1/((A+k)·B(A, k+1)); take the density at the smaller of the two.
    double density =
        stay < go
            ? RegularizedBeta.derivative(stay, size, k + 1.0) * stay
            : RegularizedBeta.derivative(go, k + 1.0, size) * stay;
    return density / (size + k);
  }

  /** log Pr(K = 0). */
  double logNone() {
    return size * logStay();
  }

  /** Pr(K = k + 1) / Pr(K = k), for k from 0. */
  double ratio(long k) {
    return (k + size) / (k + 1.0) * go;
  }

  private double logStay() {
    return go < stay ? Math.log1p(-go) : Math.log(stay);
  }

  @Override
  public double cumulative(long k) {
    if (k < 0) {
      return 0;
    }
    return stay < go
        ? RegularizedBeta.value(stay, size, k + 1.0)
        : RegularizedBeta.complement(go, k + 1.0, size);
  }

  @Override
  public double survival(long k) {
    if (k < 0) {
      return 1;
    }
    return stay < go
        ? RegularizedBeta.complement(stay, size, k + 1.0)
        : RegularizedBeta.value(go, k + 1.0, size);
  }

  @Override
  public double mean() {
    return size * go / stay;
  }

  @Override
  public double variance() {
    return size * go / stay / stay;
  }
}
