package org.fadeline.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.fadeline.stats.FadeOptions;
import org.junit.jupiter.api.Test;

/** The observers that the engine is held against know what they are said to know. */
class EvidenceTest {
  private static final double HAZARD = FadeOptions.DEFAULT.hazard();

  /** One minute without a bite: before it only the prior, by hand. */
  @Test
  void theObserverToldNeitherRateFollowsBayesRule() {
    SimulatedLine line = SimulatedLine.of(new double[0], new double[] {1}, Double.NaN);
    double h = -Math.expm1(-HAZARD / 60);
    double come = 0;
    double not = 0;
    for (double mean : new double[] {1.5, 3, 6, 12, 24, 48}) {
      double none = 1 / (1 + mean / 60);
      // First rate Exp(1/m), second over the minute Gamma(1, 1/m + 1/60): Pr(second ≤ half first).
      double halved = (1 / mean + 1 / 60.0) / (1 / mean + 1 / 60.0 + 2 / mean);
      come += h * none * 3 * halved;
      not += (1 - h) * none;
    }
    assertEquals(come / (come + not), new RatesUntold(HAZARD).watch(line)[0], 1e-12);
  }

  @Test
  void aFallToATenthIsSeenAndAnEvenLineIsNot() {
    SimulatedLine falling = SimulatedLine.step(new SplittableRandom(5), 20, 2);
    double[] seen = new RatesUntold(HAZARD).watch(falling);
    assertTrue(seen[(int) falling.truth() - 5] < 0.5, () -> "before " + falling.truth());
    assertTrue(seen[seen.length - 1] > 0.95);
    SimulatedLine even = SimulatedLine.uniform(new SplittableRandom(6), 60, 300);
    assertTrue(new RatesUntold(HAZARD).watch(even)[299] < 0.5);
  }

  @Test
  void theTrueCurveOfAStayGoesWithItsBaitTime() {
    WaterAShallow.Stay stay = WaterAShallow.firstStay(3, WaterAShallow.Fed.MAIN_FEEDS);
    assertEquals(Math.ceil(stay.line().minutes()), stay.perHour().length, 0);
    double expected = 0;
    for (int match = 1; match <= 40; match++) {
      WaterAShallow.Stay one = WaterAShallow.firstStay(match, WaterAShallow.Fed.MAIN_FEEDS);
      for (double rate : one.perHour()) {
        expected += rate / 60;
      }
      expected -= one.line().bites().length;
    }
    // 40 stays of about 22 bites: the sum differs from its mean by 30 or so, one standard
    // deviation.
    assertEquals(0, expected, 90);
  }
}
