package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RatioBootstrapTest {
  /** All 4⁴ resamples of four units are listed; the drawn limits must settle on their quantiles. */
  @Test
  void settlesOnTheListedResamples() {
    double[] y = {3, 11, 4, 7};
    double[] x = {2, 3, 5, 1};
    double[] ratios = new double[256];
    for (int code = 0; code < 256; code++) {
      double top = 0;
      double bottom = 0;
      for (int rest = code, i = 0; i < 4; i++, rest /= 4) {
        top += y[rest % 4];
        bottom += x[rest % 4];
      }
      ratios[code] = top / bottom;
    }
    Arrays.sort(ratios);
    RatioBootstrap drawn = RatioBootstrap.of(y, x, 0.8, 200_000, 5);
    assertEquals(25 / 11.0, drawn.estimate(), 1e-15);
    // The tenth and ninetieth hundredths of the listed ratios, which tie over several places.
    assertEquals(ratios[25], drawn.percentile().low(), 1e-9);
    assertEquals(ratios[230], drawn.percentile().high(), 1e-9);
  }

  /**
   * Bias-corrected and percentile limits of a skewed sample against scipy 1.17.1,
   * scipy.stats.bootstrap with 200,000 paired resamples (src/test/python/bootstrap.py).
   */
  @Test
  void agreesWithScipy() {
    double[] y = {12, 3, 30, 7, 18, 2, 44, 9, 15, 5};
    double[] x = {4.5, 5, 5, 4, 5, 3.5, 6, 5, 4.5, 5};
    RatioBootstrap drawn = RatioBootstrap.of(y, x, 0.95, 200_000, 6);
    assertEquals(1.6566, drawn.percentile().low(), 0.02);
    assertEquals(4.5631, drawn.percentile().high(), 0.02);
    assertNotNull(drawn.corrected());
    assertEquals(1.8462, drawn.corrected().low(), 0.02);
    assertEquals(4.8824, drawn.corrected().high(), 0.03);
    assertTrue(drawn.corrected().low() > drawn.percentile().low());
  }

  @Test
  void refusesWhatCannotBeResampled() {
    double[] one = {1};
    double[] two = {1, 2};
    double[] zero = {0, 1};
    assertThrows(IllegalArgumentException.class, () -> RatioBootstrap.of(one, one, 0.9, 500, 1));
    assertThrows(IllegalArgumentException.class, () -> RatioBootstrap.of(two, zero, 0.9, 500, 1));
    assertThrows(IllegalArgumentException.class, () -> RatioBootstrap.of(two, two, 1, 500, 1));
    assertThrows(IllegalArgumentException.class, () -> RatioBootstrap.of(two, two, 0.9, 9, 1));
  }
}
