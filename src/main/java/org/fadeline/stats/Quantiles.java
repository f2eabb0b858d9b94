package org.fadeline.stats;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.gamma.InverseErfc;
import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * Quantiles of the gamma, beta and normal distributions to about 1e-14 relative.
 *
 * <p>The gamma density of log x and the beta density of logit x are log-concave, so the logarithm
 * of either tail is concave on that scale and Newton's method on it converges from any start on the
 * far side of the root; a bracket catches the other starts. Working on the log of the small tail
 * keeps full relative accuracy however small the tail or the quantile.
 */
final class Quantiles {
  private static final int MOST_STEPS = 400;

  private Quantiles() {}

  /** z with Pr(|Z| ≤ z) = level for a standard normal Z; level in (0, 1). */
  static double normalHalfWidth(double level) {
    return Math.sqrt(2) * InverseErfc.value(1 - level);
  }

  /** Standard normal quantile; p in (0, 1). */
  static double normal(double p) {
    return -Math.sqrt(2) * InverseErfc.value(2 * p);
  }

  /** x with P(shape, x) = p for Gamma(shape, scale 1); shape above 0, p in (0, 1). */
  static double gammaLower(double shape, double p) {
    if (p > 0.5) {
      return gammaUpper(shape, 1 - p);
    }
    // P(a, x) ≤ x^a / Γ(a+1), so this lies at or below the root, and on it as x goes to 0.
    double start = (Math.log(p) + LogGamma.value(shape + 1)) / shape;
    if (start < -600) {
      return Math.exp(start);
    }
    if (shape > 3) {
      start = Math.max(start, Math.log(Math.max(wilsonHilferty(shape, normal(p)), 1e-300)));
    }
    return Math.exp(
        solve(
            t -> RegularizedGamma.P.value(shape, Math.exp(t)),
            t -> gammaDensityOfLog(shape, t),
            true,
            start,
            p));
  }

  /** x with Q(shape, x) = q for Gamma(shape, scale 1); shape above 0, q in (0, 1). */
  static double gammaUpper(double shape, double q) {
    if (q > 0.5) {
      return gammaLower(shape, 1 - q);
    }
    double start = Math.log(Math.max(wilsonHilferty(shape, normal(1 - q)), 1e-3));
    return Math.exp(
        solve(
            t -> RegularizedGamma.Q.value(shape, Math.exp(t)),
            t -> gammaDensityOfLog(shape, t),
            false,
            start,
            q));
  }

  /**
   * Odds x/(1−x) of the point where the Beta(a, b) distribution function equals p; a, b above 0, p
   * in (0, 1). Odds rather than x keep their accuracy at both ends.
   */
  static double betaOddsLower(double a, double b, double p) {
    if (p > 0.5) {
      return 1 / betaOddsLower(b, a, 1 - p);
    }
    double start = Math.log(a / b) + normal(p) * Math.sqrt(1 / a + 1 / b);
    return Math.exp(
        solve(
            t -> betaBelow(a, b, t),
            t -> betaDensityOfLogit(a, b, t),
            true,
            Math.max(-600, Math.min(600, start)),
            p));
  }

  private static double wilsonHilferty(double shape, double z) {
    double root = 1 - 1 / (9 * shape) + z / (3 * Math.sqrt(shape));
    return shape * root * root * root;
  }

  private static double gammaDensityOfLog(double shape, double logX) {
    double x = Math.exp(logX);
    return x * RegularizedGamma.P.derivative(shape, x);
  }

  private static double betaBelow(double a, double b, double logit) {
    return logit <= 0
        ? RegularizedBeta.value(logistic(logit), a, b)
        : RegularizedBeta.complement(logistic(-logit), b, a);
  }

  private static double betaDensityOfLogit(double a, double b, double logit) {
    double x = logistic(logit);
    double y = logistic(-logit);
    return logit <= 0
        ? x * y * RegularizedBeta.derivative(x, a, b)
        : x * y * RegularizedBeta.derivative(y, b, a);
  }

  private static double logistic(double t) {
    return 1 / (1 + Math.exp(-t));
  }

  /** The point where a tail probability equals {@code target}, by safeguarded Newton steps. */
  private static double solve(
      DoubleUnaryOperator tail,
      DoubleUnaryOperator density,
      boolean rising,
      double start,
      double target) {
    double sign = rising ? 1 : -1;
    double logTarget = Math.log(target);
    double at = start;
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_STEPS; i++) {
      double value = tail.applyAsDouble(at);
      double excess = Math.log(value) - logTarget;
      if (excess == 0) {
        return at;
      }
      if (excess < 0 == rising) {
        low = at;
      } else {
        high = at;
      }
      double step = -sign * excess * value / density.applyAsDouble(at);
      double next = at + step;
      if (!(next > low && next < high)) {
        if (Math.abs(step) <= 1e-9 * (1 + Math.abs(at))) {
          return at;
        }
        next = fallback(low, high, at);
      } else if (Math.abs(step) <= 1e-9) {
        return next;
      }
      at = next;
    }
    throw new ArithmeticException("no quantile found at probability " + target);
  }

  private static double fallback(double low, double high, double at) {
    if (Double.isInfinite(low)) {
      return at - 1 - Math.abs(at);
    }
    if (Double.isInfinite(high)) {
      return at + 1 + Math.abs(at);
    }
    return low + (high - low) / 2;
  }
}
