package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/** Range checks that say what is allowed, so that NaN fails. */
public final class Checks {
  private Checks() {}

  /**
   * Checks a number.
   *
   * @param what its name in the message
   * @throws IllegalArgumentException if it lies outside [low, high]
   */
  public static void between(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          what + " must be between " + low + " and " + high + ": " + value);
    }
  }

  static void instant(long at) {
    if (at < Stamp.EARLIEST || at > Stamp.LATEST) {
      throw new IllegalArgumentException("instant must lie in the years 1900 to 2199: " + at);
    }
  }

  static void optionalBetween(String what, @Nullable Double value, double low, double high) {
    if (value != null) {
      between(what, value, low, high);
    }
  }
}
