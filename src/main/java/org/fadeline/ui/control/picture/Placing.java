package org.fadeline.ui.control.picture;

import org.fadeline.figure.PegLayout;
import org.fadeline.model.Line;
import org.fadeline.model.Units;

/** Puts a line where the pointer stands on the peg diagram, and says where that is. */
public final class Placing {
  private static final double FARTHEST_M = 200;

  private Placing() {}

  /**
   * Returns the place under a point: half metres and whole degrees, for a pointer is no finer. The
   * depth stays; pole sections do not, since the distance is no longer the one they told.
   *
   * @param x pixels
   * @param y pixels
   */
  public static Line.Place at(Line line, PegLayout layout, double x, double y) {
    double distance = Math.round(layout.distanceAt(x, y) * 2) / 2.0;
    double bearing = Math.rint(layout.bearingAt(x, y));
    return new Line.Place(
        Math.max(0.5, Math.min(FARTHEST_M, distance)), null, bearing, line.place().depthM());
  }

  /** Returns a place in words: "13 m, 20° left", "5 m, straight out". */
  public static String words(Line.Place place, Units units) {
    double distance = place.distanceM() == null ? 0 : place.distanceM();
    double bearing = place.bearingDegrees() == null ? 0 : place.bearingDegrees();
    String side = bearing < 0 ? "° left" : "° right";
    return units.distance(distance)
        + (bearing == 0 ? ", straight out" : ", " + Math.round(Math.abs(bearing)) + side);
  }
}
