package org.fadeline.model;

import java.util.List;
import java.util.Locale;

/** Directions as anglers write them: "SW", "225", "225°". */
public final class CompassText {
  /** The sixteen points, clockwise from north, 22.5° apart. */
  private static final List<String> POINTS =
      List.of(
          "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
          "NW", "NNW");

  private static final double STEP = 22.5;

  private CompassText() {}

  /**
   * Returns the direction in degrees clockwise from north, in [0, 360).
   *
   * @throws IllegalArgumentException if the text is no direction; the message says what would be
   */
  public static double degrees(String text) {
    String typed = text.strip().toUpperCase(Locale.ROOT).replaceFirst("\\s*°$", "");
    int point = POINTS.indexOf(typed);
    if (point >= 0) {
      return point * STEP;
    }
    if (!typed.matches("\\d{1,3}(?:\\.\\d{1,2})?") || Double.parseDouble(typed) > 360) {
      throw new IllegalArgumentException(
          "\"" + text.strip() + "\" is no direction; write it as SW or as degrees from 0 to 360");
    }
    return Double.parseDouble(typed) % 360;
  }

  /** Returns the compass point nearest to a direction in degrees, any finite number of them. */
  public static String nearestPoint(double degrees) {
    return POINTS.get(Math.floorMod(Math.round(degrees / STEP), POINTS.size()));
  }

  /** Returns a direction as a compass point where it is one exactly, else as degrees. */
  public static String format(double degrees) {
    if (degrees % STEP == 0) {
      return nearestPoint(degrees);
    }
    return String.format(Locale.ROOT, "%.1f", degrees).replaceFirst("\\.0$", "") + "°";
  }
}
