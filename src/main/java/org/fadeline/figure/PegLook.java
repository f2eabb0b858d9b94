package org.fadeline.figure;

import java.util.Map;

/**
 * What sets a peg diagram apart where two stand side by side.
 *
 * @param hues place among the hues by line id; a line not named has its place in the session
 * @param mostPixelsPerMetre the scale is no larger than this
 * @param outlined whether catches are outlined, as a second session's are, instead of filled
 */
record PegLook(Map<String, Integer> hues, double mostPixelsPerMetre, boolean outlined) {
  /** A diagram by itself. */
  static final PegLook ALONE = new PegLook(Map.of(), Double.POSITIVE_INFINITY, false);

  /** Copies the map. */
  PegLook {
    hues = Map.copyOf(hues);
  }

  PegLook withMostPixelsPerMetre(double most) {
    return new PegLook(hues, most, outlined);
  }
}
