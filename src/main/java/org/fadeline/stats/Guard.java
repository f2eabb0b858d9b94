package org.fadeline.stats;

/**
 * Argument guards that state what is allowed, so that NaN, which no comparison allows, is refused.
 */
final class Guard {
  private Guard() {}

  /** Returns {@code value} if it is a finite number. */
  static double finite(double value, String name) {
    if (Math.abs(value) <= Double.MAX_VALUE) {
      return value;
    }
    throw refused(name, "a finite number", value);
  }

  /** Returns {@code value} if it is finite and in [0, ∞). */
  static double notNegative(double value, String name) {
    if (value >= 0 && value <= Double.MAX_VALUE) {
      return value;
    }
    throw refused(name, "a finite number of at least 0", value);
  }

  /** Returns {@code value} if it is finite and in (0, ∞). */
  static double positive(double value, String name) {
    if (value > 0 && value <= Double.MAX_VALUE) {
      return value;
    }
    throw refused(name, "a finite number above 0", value);
  }

  /** Returns {@code value} if it lies strictly between 0 and 1. */
  static double insideUnit(double value, String name) {
    if (value > 0 && value < 1) {
      return value;
    }
    throw refused(name, "above 0 and below 1", value);
  }

  /** Returns {@code value} if it lies in [0, 1]. */
  static double probability(double value, String name) {
    if (value >= 0 && value <= 1) {
      return value;
    }
    throw refused(name, "from 0 to 1", value);
  }

  /** Refuses arrays that are not all of one length. */
  static void sameLength(int first, int second, String names) {
    if (first != second) {
      throw new IllegalArgumentException(
          names + " must have the same length, got " + first + " and " + second);
    }
  }

  private static IllegalArgumentException refused(String name, String allowed, double value) {
    return new IllegalArgumentException(name + " must be " + allowed + ", got " + value);
  }
}
