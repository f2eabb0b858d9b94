package org.fadeline.stats;

import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * Logarithm of the gamma function and the lower regularised incomplete gamma function, as fast as
 * the recursions need them.
 */
final class ChangePointGamma {
  private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  /** Shape from which the incomplete gamma function is left to the library's uniform expansion. */
  private static final double LARGE_SHAPE = 400;

  private static final double PRECISION = 1e-14;
  private static final int MOST_TERMS = 10_000;

  private ChangePointGamma() {}

  /**
   * log Γ(x) by Stirling's series, after shifting small arguments up.
   *
   * @param x above 0
   */
  static double logGamma(double x) {
    double shift = 1;
    double z = x;
    while (z < 10) {
      shift *= z;
      z++;
    }
    double r = 1 / z;
    double r2 = r * r;
    double series =
        r
            * (1.0 / 12
                - r2
                    * (1.0 / 360
                        - r2 * (1.0 / 1260 - r2 * (1.0 / 1680 - r2 * (1.0 / 1188 - r2 / 527)))));
    return (z - 0.5) * Math.log(z) - z + HALF_LOG_TWO_PI + series - Math.log(shift);
  }

  /**
   * Pr(G ≤ x) for G of a gamma distribution with this shape and rate 1.
   *
   * @param shape above 0
   * @param x any number; 0 or less gives 0, +∞ gives 1
   * @param logGammaOfShape log Γ(shape), which callers keep in a table
   */
  static double lower(double shape, double x, double logGammaOfShape) {
    if (!(x > 0)) {
      return 0;
    }
    if (x > 1e3 + 4 * shape) {
      return 1;
    }
    if (shape > LARGE_SHAPE) {
      return RegularizedGamma.P.value(shape, x);
    }
    double front = Math.exp(shape * Math.log(x) - x - logGammaOfShape);
    if (front == 0) {
      return x < shape ? 0 : 1;
    }
    return x < shape + 1
        ? Math.min(1, front * series(shape, x))
        : Math.max(0, 1 - front * fraction(shape, x));
  }

  /**
   * y·log e − log y!: what a Poisson count adds to the log evidence whatever its rate.
   *
   * @param count y, whole or fractional, 0 or more
   * @param exposure e, above 0 where there is a count
   */
  static double logPoissonConstant(double count, double exposure) {
    return count > 0 ? count * Math.log(exposure) - logGamma(count + 1) : 0;
  }

  private static double series(double shape, double x) {
    double term = 1 / shape;
    double sum = term;
    for (int k = 1; k < MOST_TERMS && term > sum * PRECISION; k++) {
      term *= x / (shape + k);
      sum += term;
    }
    return sum;
  }

  // Modified Lentz evaluation of Legendre's continued fraction.
  private static double fraction(double shape, double x) {
    double b = x + 1 - shape;
    double c = 1e300;
    double d = 1 / b;
    double h = d;
    for (int k = 1; k < MOST_TERMS; k++) {
      double an = k * (shape - k);
      b += 2;
      d = 1 / (an * d + b);
      c = b + an / c;
      double change = c * d;
      h *= change;
      if (Math.abs(change - 1) < PRECISION) {
        break;
      }
    }
    return h;
  }
}
