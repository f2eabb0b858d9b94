package org.fadeline.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Where a water lies and which way a peg faces. */
class PlaceTest {
  @Test
  void halfAPlaceIsNone() {
    assertThrows(IllegalArgumentException.class, () -> new Venue("Pool", 53.0, null));
    assertThrows(IllegalArgumentException.class, () -> new Venue("Pool", null, 0.5));
  }

  @Test
  void aDirectionHasItsNearestPointAllTheWayRound() {
    assertEquals("N", CompassText.nearestPoint(11.24));
    assertEquals("NNE", CompassText.nearestPoint(11.25));
    assertEquals("N", CompassText.nearestPoint(355));
    assertEquals("N", CompassText.format(360));
    assertEquals("W", CompassText.nearestPoint(-90));
    assertEquals("200°", CompassText.format(200));
  }
}
