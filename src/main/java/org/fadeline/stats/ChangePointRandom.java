package org.fadeline.stats;

/**
 * Seeded random numbers for exact draws: the same seed gives the same draws on every machine and
 * release. The generator is SplitMix64 (Steele, Lea and Flood 2014, OOPSLA); gamma variates follow
 * Marsaglia and Tsang 2000, ACM TOMS 26:363–372; normal ones Marsaglia's polar method.
 */
final class ChangePointRandom {
  private static final double UNIT = 0x1.0p-53;

  private long state;
  private double spare = Double.NaN;

  ChangePointRandom(long seed) {
    state = mix(seed);
  }

  /** A stream of its own for one cell of a table, independent of the order cells are visited in. */
  static ChangePointRandom forCell(long seed, long first, long second) {
    return new ChangePointRandom(mix(mix(seed) + first) + second);
  }

  private static long mix(long value) {
    long z = value + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Uniform in [0, 1). */
  double uniform() {
    long z = mix(state);
    state += 0x9E3779B97F4A7C15L;
    return (z >>> 11) * UNIT;
  }

  /** Standard normal. */
  double normal() {
    if (!Double.isNaN(spare)) {
      double kept = spare;
      spare = Double.NaN;
      return kept;
    }
    while (true) {
      double u = 2 * uniform() - 1;
      double v = 2 * uniform() - 1;
      double s = u * u + v * v;
      if (s < 1 && s > 0) {
        double scale = Math.sqrt(-2 * Math.log(s) / s);
        spare = v * scale;
        return u * scale;
      }
    }
  }

  /**
   * Gamma with this shape and rate 1.
   *
   * @param shape above 0
   */
  double gamma(double shape) {
    if (shape < 1) {
      // One uniform above 0: the power of 0 would be 0 for every shape.
      double u = 1 - uniform();
      return gamma(shape + 1) * Math.pow(u, 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double x = normal();
      double v = 1 + c * x;
      if (v <= 0) {
        continue;
      }
      v = v * v * v;
      double u = 1 - uniform();
      if (u < 1 - 0.0331 * x * x * x * x || Math.log(u) < 0.5 * x * x + d * (1 - v + Math.log(v))) {
        return d * v;
      }
    }
  }
}
