package org.fadeline.stats;

import org.jspecify.annotations.Nullable;

/**
 * When a line faded, in bait minutes along it: quantiles of the posterior of the moment among the
 * curves that faded, each at the start of its bin, as section 4 of the methods document defines a
 * fade; each in [0, ∞), low ≤ median ≤ high.
 *
 * @param low 5% point
 * @param median 50% point
 * @param high 95% point
 */
public record FadeMoment(double low, double median, double high) {
  /** The quantiles of masses by bin; null where there is no mass. */
  static @Nullable FadeMoment of(double[] masses, FadeRecord record) {
    double total = 0;
    for (double mass : masses) {
      total += mass;
    }
    if (!(total > 0)) {
      return null;
    }
    return new FadeMoment(
        quantile(masses, total, 0.05, record),
        quantile(masses, total, 0.5, record),
        quantile(masses, total, 0.95, record));
  }

  private static double quantile(double[] masses, double total, double p, FadeRecord record) {
    double sum = 0;
    int last = 0;
    for (int i = 0; i < masses.length; i++) {
      if (masses[i] > 0) {
        sum += masses[i];
        last = i;
        if (sum >= p * total) {
          break;
        }
      }
    }
    return record.edge(last);
  }
}
