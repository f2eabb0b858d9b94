package org.fadeline.stats;

import org.jspecify.annotations.Nullable;

/**
 * Scale on which pointwise limits of a survival curve (or of a cumulative incidence) are symmetric;
 * Kalbfleisch &amp; Prentice 1980, The Statistical Analysis of Failure Time Data, section 1.3.
 */
public enum SurvivalBand {
  /** S·exp(±z·s), s the standard error of log S; capped at 1. The usual choice here. */
  LOG {
    @Override
    double limit(double value, double relativeError, double z) {
      return value * Math.exp(z * relativeError);
    }
  },
  /** S^exp(±z·s/log S), which stays inside (0, 1). */
  LOG_LOG {
    @Override
    double limit(double value, double relativeError, double z) {
      double log = Math.log(value);
      return Math.exp(log * Math.exp(z * relativeError / log));
    }
  },
  /** S ± z·S·s, cut to [0, 1]. */
  PLAIN {
    @Override
    double limit(double value, double relativeError, double z) {
      return value * (1 + z * relativeError);
    }
  };

  abstract double limit(double value, double relativeError, double z);

  /**
   * Limits of a probability, or null where it is 0 or 1 and they are not defined.
   *
   * @param relativeError standard error divided by the value
   * @param z half-width of the standard normal interval at {@code level}
   */
  @Nullable Interval around(double value, double relativeError, double z, double level) {
    if (!(value > 0 && value < 1)) {
      return null;
    }
    double low = Math.max(0, limit(value, relativeError, -z));
    double high = Math.min(1, limit(value, relativeError, z));
    return new Interval(low, high, level);
  }
}
