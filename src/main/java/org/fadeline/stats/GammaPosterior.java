package org.fadeline.stats;

import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * Gamma distribution of a Poisson rate, before or after seeing counts (conjugate analysis; Gelman
 * et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.6). Density proportional to
 * λ^(shape−1)·e^(−rate·λ).
 *
 * @param shape in [0, ∞); 0 is improper and must be updated with an event before use
 * @param rate in units of exposure, in [0, ∞); 0 is improper and must be updated before use
 */
public record GammaPosterior(double shape, double rate) {
  /**
   * Validates the parameters.
   *
   * @throws IllegalArgumentException if a parameter is not in [0, ∞)
   */
  public GammaPosterior {
    Guard.notNegative(shape, "shape");
    Guard.notNegative(rate, "rate");
  }

  /**
   * After a count over an exposure: Gamma(shape + count, rate + exposure).
   *
   * @param count events, whole or fractional, in [0, ∞)
   * @param exposure in [0, ∞)
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public GammaPosterior updated(double count, double exposure) {
    Guard.notNegative(count, "count");
    Guard.notNegative(exposure, "exposure");
    return new GammaPosterior(shape + count, rate + exposure);
  }

  /**
   * Mean rate.
   *
   * @throws IllegalStateException if the distribution is improper
   */
  public double mean() {
    return proper().shape / rate;
  }

  /**
   * Pr(rate &gt; x), accurate where it is small; 1 for x at or below 0.
   *
   * @throws IllegalStateException if the distribution is improper
   * @throws IllegalArgumentException if x is not finite
   */
  public double probabilityAbove(double x) {
    Guard.finite(x, "x");
    proper();
    return x <= 0 ? 1 : RegularizedGamma.Q.value(shape, rate * x);
  }

  /**
   * Pr(rate ≤ x), accurate where it is small; 0 for x at or below 0.
   *
   * @throws IllegalStateException if the distribution is improper
   * @throws IllegalArgumentException if x is not finite
   */
  public double probabilityAtMost(double x) {
    Guard.finite(x, "x");
    proper();
    return x <= 0 ? 0 : RegularizedGamma.P.value(shape, rate * x);
  }

  /**
   * The rate below which a share p lies.
   *
   * @param p in (0, 1)
   * @throws IllegalArgumentException if p is not in (0, 1)
   * @throws IllegalStateException if the distribution is improper
   */
  public double quantile(double p) {
    Guard.insideUnit(p, "p");
    proper();
    return Quantiles.gammaLower(shape, p) / rate;
  }

  /**
   * Central credible interval.
   *
   * @param level in (0, 1)
   * @throws IllegalArgumentException if the level is not in (0, 1)
   * @throws IllegalStateException if the distribution is improper
   */
  public Interval interval(double level) {
    Guard.insideUnit(level, "level");
    proper();
    double tail = (1 - level) / 2;
    return new Interval(
        Quantiles.gammaLower(shape, tail) / rate, Quantiles.gammaUpper(shape, tail) / rate, level);
  }

  /**
   * The count over an exposure to come.
   *
   * @param exposure in [0, ∞)
   * @throws IllegalArgumentException if the exposure is outside its range
   * @throws IllegalStateException if the distribution is improper
   */
  public NegativeBinomialPredictive predictive(double exposure) {
    proper();
    return NegativeBinomialPredictive.of(shape, rate, exposure);
  }

  private GammaPosterior proper() {
    if (shape > 0 && rate > 0) {
      return this;
    }
    throw new IllegalStateException(
        "shape and rate must be above 0 for this, got " + shape + " and " + rate);
  }
}
