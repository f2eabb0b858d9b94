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

    /** Returns this place with another distance. */
    public Place withDistanceM(@Nullable Double newDistanceM) {
      return new Place(newDistanceM, sections, bearingDegrees, depthM);
    }

    /** Returns this place with another number of sections. */
    public Place withSections(@Nullable String newSections) {
      return new Place(distanceM, newSections, bearingDegrees, depthM);
    }

    /** Returns this place with another bearing. */
    public Place withBearingDegrees(@Nullable Double newBearingDegrees) {
      return new Place(distanceM, sections, newBearingDegrees, depthM);
    }

    /** Returns this place with another depth. */
    public Place withDepthM(@Nullable Double newDepthM) {
      return new Place(distanceM, sections, bearingDegrees, newDepthM);
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

    /** Returns this rig with another float. */
    public Rig withFloatG(@Nullable Double newFloatG) {
      return new Rig(newFloatG, shotting, mainLineMm, hooklengthMm, hookSize, hookbait);
    }

    /** Returns this rig with another shotting. */
    public Rig withShotting(@Nullable String newShotting) {
      return new Rig(floatG, newShotting, mainLineMm, hooklengthMm, hookSize, hookbait);
    }

    /** Returns this rig with another main line. */
    public Rig withMainLineMm(@Nullable Double newMainLineMm) {
      return new Rig(floatG, shotting, newMainLineMm, hooklengthMm, hookSize, hookbait);
    }

    /** Returns this rig with another hooklength. */
    public Rig withHooklengthMm(@Nullable Double newHooklengthMm) {
      return new Rig(floatG, shotting, mainLineMm, newHooklengthMm, hookSize, hookbait);
    }

    /** Returns this rig with another hook. */
    public Rig withHookSize(@Nullable String newHookSize) {
      return new Rig(floatG, shotting, mainLineMm, hooklengthMm, newHookSize, hookbait);
    }

    /** Returns this rig with another hookbait. */
    public Rig withHookbait(@Nullable String newHookbait) {
      return new Rig(floatG, shotting, mainLineMm, hooklengthMm, hookSize, newHookbait);
    }
  }

  /** Returns this line with another name. */
  public Line withName(String newName) {
    return new Line(id, newName, kind, spot, place, rig);
  }

  /** Returns this line with another kind. */
  public Line withKind(@Nullable String newKind) {
    return new Line(id, name, newKind, spot, place, rig);
  }

  /** Returns this line with another spot. */
  public Line withSpot(String newSpot) {
    return new Line(id, name, kind, newSpot, place, rig);
  }

  /** Returns this line with another place. */
  public Line withPlace(Place newPlace) {
    return new Line(id, name, kind, spot, newPlace, rig);
  }

  /** Returns this line with another rig. */
  public Line withRig(Rig newRig) {
    return new Line(id, name, kind, spot, place, newRig);
  }
}
