package org.fadeline.analysis.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.fadeline.stats.Interval;
import org.junit.jupiter.api.Test;

class RatioTextTest {
  @Test
  void hundredthsAreToldBelowTen() {
    assertEquals("1.57", RatioText.of(1.571));
    assertEquals("9.94", RatioText.of(9.944));
    assertEquals("10", RatioText.of(9.95));
    assertEquals("12", RatioText.of(12.4));
  }

  @Test
  void anInfiniteLimitIsNone() {
    assertEquals("0.84–no limit", RatioText.of(new Interval(0.84, Double.POSITIVE_INFINITY, 0.95)));
  }
}
