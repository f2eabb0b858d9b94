package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;

/** Reda and Andreas, NREL/TP-560-34302 (2008), worked example of table A5.1. */
class SunPositionTest {
  private static final ZonedDateTime EXAMPLE =
      ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));

  @Test
  void theLibraryReproducesThePublishedExample() {
    SolarPosition position =
        SPA.calculateSolarPosition(EXAMPLE, 39.742476, -105.1786, 1830.14, 67, 820, 11);
    assertEquals(50.111622, position.zenithAngle(), 1e-6);
    assertEquals(194.340241, position.azimuth(), 1e-6);
  }

  /** At sea level and its pressure the example moves by less than a hundredth of a degree. */
  @Test
  void theSunStandsWhereTheExampleSays() {
    SunPosition sun = SunPosition.at(EXAMPLE, 39.742476, -105.1786);
    assertEquals(90 - 50.111622, sun.elevationDegrees(), 0.01);
    assertEquals(194.340241, sun.azimuthDegrees(), 0.001);
  }

  /** 2 m / tan 53.959° = 1.46 m. */
  @Test
  void aPoleTipThrowsItsShadow() {
    SunPosition sun = new SunPosition(180, 53.959);
    assertEquals(1.46, sun.shadowM(2), 0.005);
    assertEquals(Double.POSITIVE_INFINITY, new SunPosition(0, -3).shadowM(2));
  }
}
