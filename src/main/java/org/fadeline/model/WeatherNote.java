package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * The weather at one instant; each part may be missing.
 *
 * @param at epoch milliseconds, in the years 1900 to 2199
 * @param wind the wind, or null
 * @param cloudOktas eighths of the sky covered, in [0, 8], or null
 * @param airC air temperature in degrees Celsius, in [-60, 60], or null
 * @param waterC water temperature in degrees Celsius, in [-2, 50], or null
 * @param note anything else, or null
 */
public record WeatherNote(
    long at,
    @Nullable Wind wind,
    @Nullable Double cloudOktas,
    @Nullable Double airC,
    @Nullable Double waterC,
    @Nullable String note) {
  /** Checks the ranges. */
  public WeatherNote {
    Checks.instant(at);
    Checks.optionalBetween("cloud", cloudOktas, 0, 8);
    Checks.optionalBetween("air temperature", airC, -60, 60);
    Checks.optionalBetween("water temperature", waterC, -2, 50);
  }

  /**
   * Wind.
   *
   * @param fromDegrees compass direction it blows from, in [0, 360]
   * @param force Beaufort force, 0 to 12, or null
   */
  public record Wind(double fromDegrees, @Nullable Integer force) {
    /** Checks the ranges. */
    public Wind {
      Checks.between("wind direction", fromDegrees, 0, 360);
      if (force != null && (force < 0 || force > 12)) {
        throw new IllegalArgumentException("wind force must be 0 to 12: " + force);
      }
    }
  }
}
