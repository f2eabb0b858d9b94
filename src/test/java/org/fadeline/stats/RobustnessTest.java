package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Extremes: each answer is a number or an acknowledged absence, never NaN. */
class RobustnessTest {
  private static final double NAN = Double.NaN;
  private static final double INFINITE = Double.POSITIVE_INFINITY;
  private static final FollowUp NOBODY = FollowUp.of(new double[0], new double[0], new boolean[0]);

  private static void assertRefused(Executable... calls) {
    for (Executable call : calls) {
      IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, call);
      assertTrue(refused.getMessage() != null && refused.getMessage().contains("must"));
    }
  }

  @Test
  void refusesWhatIsNotAllowed() {
    PoissonInterval limits = PoissonInterval.atLevel(0.95);
    double[] one = {1};
    double[] none = {};
    assertRefused(
        () -> PoissonInterval.atLevel(NAN),
        () -> PoissonInterval.atLevel(0),
        () -> PoissonInterval.atLevel(1),
        () -> limits.ofCount(NAN),
        () -> limits.ofCount(-1),
        () -> limits.ofCount(INFINITE),
        () -> limits.ofRate(3, 0),
        () -> limits.ofRate(3, NAN),
        () -> limits.ofRate(3, INFINITE),
        () -> WeightedPoissonInterval.of(one, 0, 0.95),
        () -> WeightedPoissonInterval.of(new double[] {0}, 1, 0.95),
        () -> WeightedPoissonInterval.of(new double[] {NAN}, 1, 0.95),
        () -> WeightedPoissonInterval.ofSums(0, 1, 1, 1, 0.95),
        () -> WeightedPoissonInterval.ofSums(1, 1, 0, 1, 0.95),
        () -> RateRatio.of(NAN, 1, 1, 1, 0.95),
        () -> RateRatio.of(1, 0, 1, 1, 0.95),
        () -> RateRatio.of(1, 1, 1, 1, 0.95).widened(NAN),
        () -> new Interval(2, 1, 0.9),
        () -> new Interval(NAN, 1, 0.9),
        () -> new Interval(0, NAN, 0.9),
        () -> new GammaPosterior(NAN, 1),
        () -> new GammaPosterior(1, 1).quantile(0),
        () -> NegativeBinomialPredictive.of(0, 1, 1),
        () -> NegativeBinomialPredictive.of(1, 1, NAN),
        () -> NegativeBinomialPredictive.of(1, 1, 1).quantile(1),
        () -> NegativeBinomialPredictive.of(1, 1, 1).quantile(NAN),
        () -> PredictiveCountMixture.of(none, List.of()),
        () -> MarginalValue.exponential(1, 0, 1),
        () -> MarginalValue.exponential(1, 1, NAN),
        () -> LambertW.minusOne(0),
        () -> LambertW.minusOne(-0.4),
        () -> LambertW.minusOne(NAN),
        () -> FollowUp.of(one, none, new boolean[1]),
        () -> FollowUp.of(new double[] {NAN}, one, new boolean[1]),
        () -> FollowUp.of(one, new double[] {INFINITE}, new boolean[1]),
        () -> FollowUp.of(new double[] {2}, one, new boolean[1]),
        () -> AalenJohansen.of(none, none, new int[0], 0, 0.95),
        () -> AalenJohansen.of(none, one, new int[0], 1, 0.95),
        () -> AalenJohansen.of(new double[1], one, new int[] {2}, 1, 0.95),
        () -> KaplanMeier.of(NOBODY).from(NAN),
        () -> KaplanMeier.of(NOBODY).firstWithAtRisk(0, 0, 1));
    assertThrows(IllegalStateException.class, () -> new GammaPosterior(0, 0).mean());
  }

  @Test
  void noEvents() {
    // 3/n rule at 95% one-sided, 3.689 two-sided: 15 minutes blank leaves up to 14.8 an hour.
    Interval blank = PoissonInterval.atLevel(0.95).ofRate(0, 0.25);
    assertEquals(0, blank.low());
    assertEquals(14.8, blank.high(), 0.05);
    assertTrue(WeightedPoissonInterval.of(new double[0], 1, 0.95).isEmpty());
    Interval weight = WeightedPoissonInterval.of(new double[0], 500, 2, 0.95).orElseThrow();
    assertEquals(0, weight.low());
    assertEquals(250 * 3.68887945411394, weight.high(), 1e-9);
    RateRatio neither = RateRatio.of(0, 1, 0, 2, 0.95);
    assertNull(neither.ratio());
    assertEquals(new Interval(0, INFINITE, 0.95), neither.limits());
    assertEquals(1, neither.p());
    assertEquals(neither.limits(), neither.widened(0.5));
    RateRatio first = RateRatio.of(4, 1, 0, 1, 0.95);
    assertEquals(INFINITE, first.ratio());
    assertEquals(INFINITE, first.limits().high());
    // Clopper and Pearson at 4 of 4: π above (α/2)^(1/4).
    double share = Math.pow(0.025, 0.25);
    assertEquals(share / (1 - share), first.limits().low(), 1e-12);
    assertTrue(first.widened(0.5).low() < first.limits().low());
  }

  @Test
  void largeCountsAndFarRatesAreFinite() {
    PoissonInterval limits = PoissonInterval.atLevel(0.95);
    for (double count : new double[] {0, 1, 25_000, 1e6, 0.001, 24_999.5}) {
      for (double exposure : new double[] {1e-3, 0.01, 1, 2_500_000}) {
        Interval rate = limits.ofRate(count, exposure);
        assertTrue(rate.low() >= 0 && rate.high() < INFINITE);
        assertTrue(rate.contains(count / exposure));
      }
    }
    // Where the count is large the limits go over to count ± 1.96 √count and a little.
    Interval many = limits.ofCount(25_000);
    assertEquals(25_000 - 1.96 * Math.sqrt(25_000), many.low(), 2);
    assertEquals(25_000 + 1.96 * Math.sqrt(25_000), many.high(), 3);
    RateRatio ratio = RateRatio.of(25_000, 25, 250, 25_000, 0.95);
    assertNotNull(ratio.ratio());
    assertEquals(1e5, ratio.ratio(), 1e-6);
    assertTrue(ratio.limits().contains(1e5) && ratio.limits().high() < 1.2e5);
    PredictiveCount next = new GammaPosterior(25_000, 25).predictive(25);
    assertEquals(25_000.0, (double) next.quantile(0.5), 10);
    assertTrue(next.probability(25_000) > 0.001);
    assertEquals(0, next.survival(30_000), 1e-12);
    assertTrue(next.survival(30_000) > 0);
  }

  @Test
  void nothingToCome() {
    PredictiveCount none = NegativeBinomialPredictive.of(3, 2, 0);
    assertEquals(1, none.probability(0));
    assertEquals(0, none.probability(1));
    assertEquals(0, none.quantile(0.999));
    assertEquals(0, none.mean());
    assertEquals(1, none.survival(-1));
    assertEquals(0, none.cumulative(-1));
  }

  @Test
  void nobodyAtRisk() {
    KaplanMeier curve = KaplanMeier.of(NOBODY);
    assertTrue(curve.steps().isEmpty());
    assertEquals(1, curve.survivalAt(5));
    assertNull(curve.stepAt(5));
    assertEquals(new KaplanMeier.Median(null, null, null, 0.95), curve.median());
    assertEquals(OptionalDouble.empty(), curve.firstWithAtRisk(1, 0, 1));
    LogRank test = LogRank.of(NOBODY, NOBODY);
    assertNull(test.p());
    assertNull(LogRank.stratified(List.of()).chiSquare());
    AalenJohansen none = AalenJohansen.of(new double[0], new double[0], new int[0], 2, 0.9);
    assertTrue(none.steps(2).isEmpty());
    assertEquals(0, none.incidenceAt(1, 10));
  }

  @Test
  void tenThousandTies() {
    int n = 10_000;
    double[] exit = new double[n];
    boolean[] event = new boolean[n];
    int[] cause = new int[n];
    Arrays.fill(exit, 7);
    for (int i = 0; i < n; i++) {
      event[i] = i % 2 == 0;
      cause[i] = i % 3;
    }
    FollowUp rows = FollowUp.fromZero(exit, event);
    KaplanMeier curve = KaplanMeier.of(rows);
    assertEquals(1, curve.steps().size());
    KaplanMeier.Step step = curve.steps().get(0);
    assertEquals(n, step.atRisk());
    assertEquals(0.5, step.survival());
    assertNotNull(step.standardError());
    assertEquals(0.005, step.standardError(), 1e-15);
    assertEquals(7.0, curve.median().time());
    assertNull(curve.median().high());
    LogRank same = LogRank.of(rows, rows);
    assertNotNull(same.p());
    assertEquals(1, same.p(), 1e-12);
    AalenJohansen.Step share =
        AalenJohansen.of(new double[n], exit, cause, 2, 0.95).steps(1).get(0);
    assertEquals(0.3333, share.incidence(), 1e-12);
    assertEquals(Math.sqrt(0.3333 * 0.6667 / n), share.standardError(), 1e-12);
  }

  @Test
  void everyoneHasTheEvent() {
    KaplanMeier curve =
        KaplanMeier.of(FollowUp.fromZero(new double[] {2, 2}, new boolean[] {true, true}));
    KaplanMeier.Step last = curve.steps().get(0);
    assertEquals(0, last.survival());
    assertNull(last.standardError());
    assertNull(last.limits());
    assertEquals(new KaplanMeier.Median(2.0, null, null, 0.95), curve.median());
  }

  @Test
  void medianOnAStretchIsItsMidpoint() {
    FollowUp rows =
        FollowUp.fromZero(new double[] {3, 5, 9, 11}, new boolean[] {true, true, true, true});
    assertEquals(7.0, KaplanMeier.of(rows).median().time());
  }

  @Test
  void curveStartsWhereEnoughAreAtRisk() {
    FollowUp rows =
        FollowUp.of(
            new double[] {0, 2.5, 2.5, 4},
            new double[] {20, 20, 6, 20},
            new boolean[] {true, false, true, false});
    KaplanMeier curve = KaplanMeier.of(rows);
    assertEquals(OptionalDouble.of(3), curve.firstWithAtRisk(3, 0, 1));
    assertEquals(OptionalDouble.of(5), curve.firstWithAtRisk(4, 0, 1));
    assertEquals(OptionalDouble.empty(), curve.firstWithAtRisk(5, 0, 1));
    assertEquals(3, curve.atRisk(3));
    assertEquals(0, curve.atRisk(0));
  }

  @Test
  void zeroEntryOfEitherSignIsOne() {
    FollowUp rows =
        FollowUp.of(
            new double[] {-1, -0.0, 0.0},
            new double[] {0.0, 3, 3},
            new boolean[] {true, true, true});
    assertEquals(1, rows.atRisk(0));
    assertEquals(2, KaplanMeier.of(rows).steps().size());
    assertEquals(0, KaplanMeier.of(rows).survivalAt(-0.0));
  }

  @Test
  void lambertWAtItsBranchPointAndFarAway() {
    // Corless et al. 1996: W₋₁(−1/e) = −1; W₋₁(−ln 2 / 2) = −2 ln 2, exactly.
    assertEquals(-1, LambertW.minusOne(-1 / Math.E), 2e-8);
    assertEquals(-2 * Math.log(2), LambertW.minusOne(-Math.log(2) / 2), 1e-15);
    // Beside the branch point, by Newton's method in 60 decimal digits.
    assertEquals(-1.0071814889510784, LambertW.minusOne(-0.36787), 1e-15);
    assertEquals(-1.0000028002418166, LambertW.minusOne(-0.36787944117), 1e-15);
    assertEquals(-1.000000479789748, LambertW.minusOne(-0.3678794411714), 1e-15);
    assertTrue(LambertW.minusOne(-Double.MIN_VALUE) > -760);
    assertAll(
        () -> assertEquals(0, MarginalValue.exponential(5, 0.1, 0).leaveAfter()),
        () -> assertEquals(0.5, MarginalValue.exponential(5, 0.1, 0).rate(), 1e-15),
        // For short moves cx* goes to √(2cT).
        () ->
            assertEquals(
                1, MarginalValue.exponential(5, 1e-9, 1e-3).leaveAfter() / Math.sqrt(2e6), 1e-6));
  }

  @Test
  void intervalTellsItsExtent() {
    Interval interval = new Interval(2, INFINITE, 0.9);
    assertTrue(interval.contains(1e300) && interval.contains(2));
    assertFalse(interval.contains(NAN) || interval.contains(1.9));
    assertEquals(INFINITE, interval.width());
    assertEquals(new Interval(1, INFINITE, 0.9), interval.scaledBy(0.5));
  }

  @Test
  void optionsOfTheSameNumbersAreEqual() {
    FadeOptions same =
        new FadeOptions(
            FadeOptions.DEFAULT.share(),
            FadeOptions.DEFAULT.hazard(),
            FadeOptions.DEFAULT.minimumSegment(),
            new FadeOptions.PriorMeans(ChangePointMixture.hourlyMeans()),
            FadeOptions.DEFAULT.callLevel(),
            FadeOptions.DEFAULT.draws(),
            FadeOptions.DEFAULT.seed(),
            FadeOptions.DEFAULT.bunching());
    assertEquals(FadeOptions.DEFAULT, same);
    assertEquals(FadeOptions.DEFAULT.hashCode(), same.hashCode());
    assertNotEquals(
        new FadeOptions.PriorMeans(3, 6), new FadeOptions.PriorMeans(6, 3), "in their order");
  }
}
