package org.fadeline.analysis.season;

import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Season.Basis;
import org.fadeline.analysis.season.Season.Limits;
import org.fadeline.analysis.season.Season.PerHour;
import org.fadeline.stats.Interval;
import org.fadeline.stats.PoissonInterval;
import org.fadeline.stats.RatioBootstrap;
import org.jspecify.annotations.Nullable;

/** Rates over sessions, with limits from drawing whole sessions. */
final class SessionDraws {
  private static final int RESAMPLES = 1000;

  /** From here on the large-sample form differs from draws by less than the draws' own noise. */
  private static final int MANY = 200;

  private static final double Z = 1.959963984540054;

  /** Below a minute a rate an hour is one fish sixty times over. */
  private static final double LEAST_HOURS = 1 / 60.0;

  private SessionDraws() {}

  /**
   * Returns Σ amounts / Σ hours with limits.
   *
   * @param amounts of each session
   * @param hours of each session, above 0
   * @param counts whether amounts are fish: with none at all an upper limit can then be given
   */
  static PerHour perHour(double[] amounts, double[] hours, boolean counts, long seed) {
    double y = sum(amounts);
    double x = sum(hours);
    int n = amounts.length;
    if (x < LEAST_HOURS) {
      return new PerHour(y, n, null, null);
    }
    return new PerHour(y, n, y / x, limits(amounts, hours, counts, seed));
  }

  private static @Nullable Limits limits(
      double[] amounts, double[] hours, boolean counts, long seed) {
    double y = sum(amounts);
    double x = sum(hours);
    double level = ReviewSettings.LEVEL;
    int n = amounts.length;
    if (y == 0) {
      return counts
          ? new Limits(0, PoissonInterval.atLevel(level).upper(0) / x, level, Basis.NONE_CAUGHT)
          : null;
    }
    if (n < Season.FEWEST_FOR_LIMITS) {
      return null;
    }
    if (n > MANY) {
      // Cochran 1977, Sampling Techniques, section 6.4: variance of a ratio of sums.
      double squares = 0;
      for (int i = 0; i < n; i++) {
        double residual = amounts[i] - y / x * hours[i];
        squares += residual * residual;
      }
      double error = Math.sqrt(squares * n / (n - 1.0)) / x;
      return new Limits(Math.max(0, y / x - Z * error), y / x + Z * error, level, Basis.LINEARISED);
    }
    RatioBootstrap drawn = RatioBootstrap.of(amounts, hours, level, RESAMPLES, seed);
    Interval limits = drawn.corrected() == null ? drawn.percentile() : drawn.corrected();
    return new Limits(limits.low(), limits.high(), level, Basis.BOOTSTRAP);
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
