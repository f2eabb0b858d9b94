package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * How often limits hold the true rate in seeded simulations. Exact limits cover at least their
 * level; three standard errors of the simulation are allowed below it. Upper bounds show that the
 * limits are not merely wide.
 */
class LimitsCoverageTest {
  private static final int DRAWS = 20_000;
  private static final double SLACK = 3 * Math.sqrt(0.95 * 0.05 / DRAWS);

  /** Events of a unit-rate process before {@code mean}. */
  private static int poisson(SplittableRandom random, double mean) {
    int count = 0;
    double at = -Math.log(1 - random.nextDouble());
    while (at < mean) {
      count++;
      at -= Math.log(1 - random.nextDouble());
    }
    return count;
  }

  @Test
  void poissonLimitsCover() {
    PoissonInterval limits = PoissonInterval.atLevel(0.95);
    for (double mean : new double[] {0.3, 2, 7.5, 40}) {
      SplittableRandom random = new SplittableRandom(11);
      int held = 0;
      for (int i = 0; i < DRAWS; i++) {
        held += limits.ofCount(poisson(random, mean)).contains(mean) ? 1 : 0;
      }
      double share = held / (double) DRAWS;
      assertTrue(share >= 0.95 - SLACK, mean + ": " + share);
      assertTrue(share <= 0.998, mean + ": " + share);
    }
  }

  /** Exact coverage by summing the Poisson probabilities, for many means: never below the level. */
  @Test
  void poissonLimitsCoverExactly() {
    PoissonInterval limits = PoissonInterval.atLevel(0.9);
    for (double mean = 0.05; mean < 30; mean += 0.05) {
      double covered = 0;
      double p = Math.exp(-mean);
      for (int n = 0; n < 120; n++) {
        covered += limits.ofCount(n).contains(mean) ? p : 0;
        p *= mean / (n + 1);
      }
      assertTrue(covered >= 0.9 - 1e-12, mean + ": " + covered);
    }
  }

  /**
   * Weights log-normal with σ 0.6, given at least one event. Measured: 94.3% at 4 expected events
   * (the largest weight is then often not among those seen), 96.1% at 10, 96.7% at 30.
   */
  @Test
  void fayAndFeuerLimitsCover() {
    assertEquals(0.943, weightCoverage(4, DRAWS, LimitsCoverageTest::fayFeuer), 0.006);
    assertEquals(0.961, weightCoverage(10, DRAWS, LimitsCoverageTest::fayFeuer), 0.006);
    assertEquals(0.966, weightCoverage(30, DRAWS, LimitsCoverageTest::fayFeuer), 0.006);
  }

  /** Resampling the weights alone takes their number for granted: why it is not used for this. */
  @Test
  void resamplingTheWeightsAloneDoesNotCover() {
    double share =
        weightCoverage(
            10,
            500,
            weights -> {
              double[] each = new double[weights.length];
              Arrays.fill(each, 1.0 / weights.length);
              return weights.length < 2
                  ? new Interval(weights[0], weights[0], 0.95)
                  : RatioBootstrap.of(weights, each, 0.95, 400, 1).percentile();
            });
    assertTrue(share < 0.75, "covered " + share);
  }

  private static Interval fayFeuer(double[] weights) {
    return WeightedPoissonInterval.of(weights, 1, 0.95).orElseThrow();
  }

  private static double weightCoverage(
      double mean, int draws, Function<double[], Interval> limits) {
    double truth = mean * Math.exp(0.6 * 0.6 / 2);
    SplittableRandom random = new SplittableRandom(12);
    int judged = 0;
    int held = 0;
    while (judged < draws) {
      double[] weights = new double[poisson(random, mean)];
      for (int i = 0; i < weights.length; i++) {
        weights[i] = Math.exp(0.6 * normal(random));
      }
      if (weights.length > 0) {
        judged++;
        held += limits.apply(weights).contains(truth) ? 1 : 0;
      }
    }
    return held / (double) judged;
  }

  @Test
  void rateRatioLimitsCover() {
    SplittableRandom random = new SplittableRandom(13);
    int held = 0;
    int rejected = 0;
    for (int i = 0; i < DRAWS; i++) {
      RateRatio ratio = RateRatio.of(poisson(random, 12), 2, poisson(random, 9), 1.5, 0.95);
      held += ratio.limits().contains(1) ? 1 : 0;
      rejected += ratio.p() < 0.05 ? 1 : 0;
    }
    assertEquals(DRAWS, held + rejected);
    double share = held / (double) DRAWS;
    assertTrue(share >= 0.95 - SLACK && share <= 0.99, "covered " + share);
  }

  /** Days that differ by σ = 0.5 in the log rate: the plain limits fail, the widened ones hold. */
  @Test
  void widenedLimitsCoverDaysThatDiffer() {
    SplittableRandom random = new SplittableRandom(14);
    int plain = 0;
    int widened = 0;
    for (int i = 0; i < DRAWS; i++) {
      double one = 20 * Math.exp(0.5 * normal(random));
      double two = 20 * Math.exp(0.5 * normal(random));
      RateRatio ratio = RateRatio.of(poisson(random, one), 1, poisson(random, two), 1, 0.95);
      plain += ratio.limits().contains(1) ? 1 : 0;
      widened += ratio.widened(0.5).contains(1) ? 1 : 0;
    }
    assertTrue(plain / (double) DRAWS < 0.75, "plain " + plain);
    assertEquals(0.95, widened / (double) DRAWS, 0.01);
  }

  private static double normal(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }
}
