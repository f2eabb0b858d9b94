package org.fadeline.figure;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Moves marks that would lie over each other apart, no further than they need. */
final class PegSpots {
  private static final int MOST_ROUNDS = 60;

  private PegSpots() {}

  /**
   * Returns where round marks stand: on their spots, or beside them where marks would overlap. Two
   * on one spot stand side by side, the spot between them.
   *
   * @param spots where they belong, pixels
   * @param radii of the marks, pixels, one for each spot
   */
  static List<Point2D> apart(List<Point2D> spots, List<Double> radii) {
    List<Point2D> places = new ArrayList<>();
    spots.forEach(spot -> places.add((Point2D) spot.clone()));
    boolean moved = true;
    for (int round = 0; moved && round < MOST_ROUNDS; round++) {
      moved = false;
      for (int i = 0; i < places.size(); i++) {
        for (int j = i + 1; j < places.size(); j++) {
          moved |= push(places.get(i), places.get(j), radii.get(i) + radii.get(j));
        }
      }
    }
    return places;
  }

  private static boolean push(Point2D one, Point2D other, double needed) {
    double distance = one.distance(other);
    if (distance >= needed - 0.5) {
      return false;
    }
    double half = (needed - distance) / 2;
    double across = distance < 0.01 ? 1 : (other.getX() - one.getX()) / distance;
    double down = distance < 0.01 ? 0 : (other.getY() - one.getY()) / distance;
    one.setLocation(one.getX() - half * across, one.getY() - half * down);
    other.setLocation(other.getX() + half * across, other.getY() + half * down);
    return true;
  }
}
