package org.fadeline.figure;

import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands (Reda and Andreas, Solar Position Algorithm for Solar Radiation
 * Applications, NREL/TP-560-34302, revised 2008; computed by the solarpositioning library).
 *
 * @param azimuthDegrees compass direction, clockwise from north, in [0, 360)
 * @param elevationDegrees above the horizon, refraction included, in [-90, 90]
 */
public record SunPosition(double azimuthDegrees, double elevationDegrees) {
  /** Air pressure at sea level and a mild day, for the small correction of refraction. */
  private static final double HECTOPASCALS = 1013;

  private static final double CELSIUS = 15;

  /**
   * Returns the sun's place.
   *
   * @param time the instant
   * @param latitude degrees north, in [-90, 90]
   * @param longitude degrees east, in [-180, 180]
   */
  public static SunPosition at(ZonedDateTime time, double latitude, double longitude) {
    SolarPosition position =
        SPA.calculateSolarPosition(
            time,
            latitude,
            longitude,
            0,
            DeltaT.estimate(time.toLocalDate()),
            HECTOPASCALS,
            CELSIUS);
    return new SunPosition(position.azimuth(), 90 - position.zenithAngle());
  }

  /**
   * Returns the length of the shadow that something of a given height throws on level water, in
   * metres; infinite when the sun is down.
   *
   * @param heightM metres above the water, 0 or more
   */
  public double shadowM(double heightM) {
    return elevationDegrees <= 0
        ? Double.POSITIVE_INFINITY
        : heightM / Math.tan(Math.toRadians(elevationDegrees));
  }
}
