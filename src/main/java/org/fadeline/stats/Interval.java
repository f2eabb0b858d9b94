package org.fadeline.stats;

/**
 * A closed interval estimate [low, high] with the level it was built for, in the unit of what it
 * estimates.
 *
 * @param low lower limit, any number or −∞; at most {@code high}
 * @param high upper limit, any number or +∞ where the data set no upper limit
 * @param level intended coverage, strictly between 0 and 1 (0.95 means 95%)
 */
public record Interval(double low, double high, double level) {
  /**
   * Validates the limits.
   *
   * @throws IllegalArgumentException if a limit is NaN, {@code low > high} or the level is not in
   *     (0, 1)
   */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "the lower limit must be at most the upper limit, got " + low + " and " + high);
    }
    Guard.insideUnit(level, "level");
  }

  /** Whether {@code value} lies in [low, high]; false for NaN. */
  public boolean contains(double value) {
    return low <= value && value <= high;
  }

  /** Upper limit less lower limit; +∞ where there is no upper limit. */
  public double width() {
    return high - low;
  }

  /**
   * The same interval in other units.
   *
   * @param factor what both limits are multiplied by, finite and above 0
   * @throws IllegalArgumentException if the factor is not finite and positive
   */
  public Interval scaledBy(double factor) {
    Guard.positive(factor, "factor");
    return new Interval(low * factor, high * factor, level);
  }
}
