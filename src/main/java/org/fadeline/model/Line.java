package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * A line: a spot fed and fished as a unit.
 *
 * @param id unique in the session
 * @param name what the angler calls it
 * @param kind the usual kind in trade words ("shallow", "edge", "waggler", …), or null
 * @param spot lines with the same spot share its feed; the line's own id where it has its own
 * @param place where it lies
 * @param rig what it is fished with
 */
public record Line(
    String id, String name, @Nullable String kind, String spot, Place place, Rig rig) {
  /** Returns a line with a name alone, on a spot of its own. */
  public static Line named(String id, String name) {
    return new Line(id, name, null, id, Place.UNKNOWN, Rig.UNKNOWN);
  }

  /**
   * Where a line lies, seen from the angler.
   *
   * @param distanceM metres, in [0, 200], or null
   * @param sections the distance as told in pole sections, such as "top kit + 2", or null
   * @param bearingDegrees from straight out, left negative, in [-180, 180], or null
   * @param depthM metres fished, in [0, 100], or null
   */
  public record Place(
      @Nullable Double distanceM,
      @Nullable String sections,
      @Nullable Double bearingDegrees,
      @Nullable Double depthM) {
    /** Nothing known. */
    public static final Place UNKNOWN = new Place(null, null, null, null);

    /** Checks the ranges. */
    public Place {
      Checks.optionalBetween("distance", distanceM, 0, 200);
      Checks.optionalBetween("bearing", bearingDegrees, -180, 180);
      Checks.optionalBetween("depth", depthM, 0, 100);
    }
  }

  /**
   * What a line is fished with.
   *
   * @param floatG float size by the shot it takes, grams, in [0, 100], or null
   * @param shotting the shot pattern as written, such as "6x8", or null
   * @param mainLineMm main line diameter, millimetres, in [0, 2], or null
   * @param hooklengthMm hooklength diameter, millimetres, in [0, 2], or null
   * @param hookSize as printed on the packet, or null
   * @param hookbait or null
   */
  public record Rig(
      @Nullable Double floatG,
      @Nullable String shotting,
      @Nullable Double mainLineMm,
      @Nullable Double hooklengthMm,
      @Nullable String hookSize,
      @Nullable String hookbait) {
    /** Nothing known. */
    public static final Rig UNKNOWN = new Rig(null, null, null, null, null, null);

    /** Checks the ranges. */
    public Rig {
      Checks.optionalBetween("float", floatG, 0, 100);
      Checks.optionalBetween("main line", mainLineMm, 0, 2);
      Checks.optionalBetween("hooklength", hooklengthMm, 0, 2);
    }
  }
}
