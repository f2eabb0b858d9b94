package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Declining rates: the closed form against numerical integration, and the fit's test and limits.
 */
class DeclineTest {
  /** Evidence against a sum over a fine grid of starting rates, half-lives as defined. */
  @Test
  void evidenceEqualsIntegration() {
    double[] counts = {3, 2, 4, 1, 0, 1, 0};
    double[] minutes = {5, 15, 25, 35, 45, 55, 65};
    ChangePointBins bins = ChangePointBins.of(counts, 1.0 / 6);
    double sum = 0;
    double factorials = 6 * 2 * 24;
    for (int g = 0; g < 40; g++) {
      double decay = Math.log(2) / (10 * Math.pow(48, g / 39.0));
      for (double mean : new double[] {3, 12}) {
        for (double start = 0.005; start < 200; start += 0.01) {
          double likelihood = 1 / factorials;
          for (int i = 0; i < counts.length; i++) {
            double expected = start * Math.exp(-decay * minutes[i]) / 6;
            likelihood *= Math.pow(expected, counts[i]) * Math.exp(-expected);
          }
          sum += likelihood * Math.exp(-start / mean) / mean * 0.01 / 80;
        }
      }
    }
    DeclineModel model = DeclineModel.of(bins, minutes, 3, 12);
    assertEquals(Math.log(sum), model.logEvidence(), 1e-5);
    assertEquals(1, Arrays.stream(model.halfLifeProbabilities()).sum(), 1e-12);
    assertEquals(10, model.halfLives()[0], 1e-9);
    assertEquals(480, model.halfLives()[39], 1e-9);
    double mean =
        model.draws(20_000, 5).stream().mapToDouble(d -> d.rateAt(30)).average().orElse(0);
    assertEquals(model.meanRate(30), mean, 0.1);
  }

  /** Where all exposure is at two times the fit is the ratio of two rates. */
  @Test
  void fitOfTwoTimesIsTheirRatio() {
    ChangePointBins bins = ChangePointBins.of(new double[] {40, 10}, 1);
    DeclineFit fit = DeclineFit.of(bins, new double[] {0, 60});
    assertEquals(Math.log(4) / 60, fit.decay(), 1e-9);
    assertEquals(40, fit.startingRate(), 1e-6);
    // Twice the log likelihood ratio of 40 and 10 against 25 and 25.
    assertEquals(2 * (40 * Math.log(1.6) + 10 * Math.log(0.4)), fit.likelihoodRatio(), 1e-9);
    assertTrue(fit.pDecline() < 1e-4);
    assertTrue(fit.decayLimits().contains(fit.decay()));
  }

  @Test
  void testHoldsItsLevelAndLimitsCover() {
    SplittableRandom random = new SplittableRandom(3);
    int small = 0;
    int covered = 0;
    int runs = 2000;
    for (int k = 0; k < runs; k++) {
      double[] counts = new double[60];
      double[] minutes = new double[60];
      double[] falling = new double[60];
      for (int i = 0; i < 60; i++) {
        minutes[i] = i % 20 + 0.5;
        counts[i] = poisson(random, 0.3);
        falling[i] = poisson(random, 0.5 * Math.exp(-0.05 * minutes[i]));
      }
      falling[0] += Arrays.stream(falling).sum() == 0 ? 1 : 0;
      if (Arrays.stream(counts).sum() > 0
          && DeclineFit.of(ChangePointBins.of(counts, 1.0 / 60), minutes).pDecline() < 0.05) {
        small++;
      }
      DeclineFit fit = DeclineFit.of(ChangePointBins.of(falling, 1.0 / 60), minutes);
      covered += fit.decayLimits().contains(0.05) ? 1 : 0;
    }
    assertEquals(0.05, small / (double) runs, 0.02);
    assertEquals(0.95, covered / (double) runs, 0.02);
  }

  private static int poisson(SplittableRandom random, double mean) {
    int k = 0;
    double product = random.nextDouble();
    double limit = Math.exp(-mean);
    while (product > limit) {
      product *= random.nextDouble();
      k++;
    }
    return k;
  }

  @Test
  void eventsAtTheStartOnlySetNoUpperLimit() {
    double[] counts = new double[30];
    counts[0] = 3;
    double[] minutes = new double[30];
    Arrays.setAll(minutes, i -> i + 0.5);
    DeclineFit fit = DeclineFit.of(ChangePointBins.of(counts, 1.0 / 60), minutes);
    assertEquals(2, fit.decayLimits().high(), 1e-9);
    assertTrue(Double.isFinite(fit.startingRate()) && fit.startingRate() > 0);
    assertThrows(
        IllegalArgumentException.class,
        () -> DeclineFit.of(ChangePointBins.of(new double[30], 1.0 / 60), minutes));
  }

  @Test
  void bunchingIsOneForEvenCountsAndMoreForClumps() {
    double[] even = new double[100];
    double[] clumped = new double[100];
    for (int i = 0; i < 100; i++) {
      even[i] = i % 5 == 0 ? 1 : 0;
      clumped[i] = i / 10 % 2 == 0 && i % 10 < 6 ? 1 : 0;
    }
    assertEquals(1, Bunching.factor(even, 0, 100));
    // Nine pairs of 6 and 0: (10 + 9·6)/(10 + 9).
    assertEquals(64.0 / 19, Bunching.factor(clumped, 0, 100), 1e-12);
    assertEquals(1, Bunching.factor(clumped, 0, 9));
    Bunching rested = new Bunching();
    rested.add(6);
    rested.rest();
    rested.add(0);
    assertEquals(1, rested.factor());
  }
}
