package org.fadeline.stats;

/**
 * The lower real branch of Lambert's W: w ≤ −1 with w·e^w = x (Corless et al. 1996, Advances in
 * Computational Mathematics 5:329–359). With w = −1 − s − u and x = −e^(−1−s) the equation reads
 * e^u − 1 − u = s, which is convex in u and free of cancellation at the branch point.
 */
final class LambertW {
  /** e less the double nearest to it. */
  private static final double E_REST = 1.4456468917292502e-16;

  private LambertW() {}

  /**
   * W₋₁(x).
   *
   * @param x in [−1/e, 0); values up to 1e-16 below −1/e, the reach of rounding, count as −1/e
   * @return w in (−∞, −1] with w·e^w = x
   * @throws IllegalArgumentException if x is outside its range
   */
  static double minusOne(double x) {
    if (!(x >= -1 / Math.E - 1e-16 && x < 0)) {
      throw new IllegalArgumentException("x must be at least -1/e and below 0, got " + x);
    }
    double s = Math.max(0, depth(x));
    return -1 - s - excess(s);
  }

  /** s with x = −e^(−1−s). */
  private static double depth(double x) {
    if (x > -0.2) {
      return -1 - Math.log(-x);
    }
    // Near the branch point −x·e is nearly 1: e is taken to twice double precision.
    return -Math.log1p(Math.fma(-x, Math.E, -1) - x * E_REST);
  }

  /**
   * The u ≥ 0 with e^u − 1 − u = s, that is −1 − s − W₋₁(−e^(−1−s)), to full relative accuracy.
   *
   * @param s in [0, ∞)
   * @throws IllegalArgumentException if s is outside its range
   */
  static double excess(double s) {
    Guard.notNegative(s, "s");
    if (s == 0) {
      return 0;
    }
    // e^u − 1 − u ≥ u²/2, so √(2s) is at or above the root, and so is log(1 + s + √(2s)).
    double u = Math.log1p(s + Math.sqrt(2 * s));
    for (int i = 0; i < 60; i++) {
      double step = (expLessLine(u) - s) / Math.expm1(u);
      u -= step;
      if (Math.abs(step) <= 1e-9 * u) {
        break;
      }
    }
    return u;
  }

  /** e^u − 1 − u for u ≥ 0. */
  private static double expLessLine(double u) {
    if (u > 0.5) {
      return Math.expm1(u) - u;
    }
    double term = u * u / 2;
    double sum = term;
    for (int k = 3; term > sum * 1e-17; k++) {
      term *= u / k;
      sum += term;
    }
    return sum;
  }
}
