package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/** What must hold of limits, predictive counts and the leaving rule whatever the figures. */
class LimitsPropertiesTest {
  private static final String SEED = "20260103";

  @Property(seed = SEED, tries = 500)
  void limitsHoldTheRate(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30_000) double count,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 100) double exposure,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.999) double level) {
    PoissonInterval limits = PoissonInterval.atLevel(level);
    for (double n : new double[] {count, Math.floor(count), count / 1000}) {
      Interval rate = limits.ofRate(n, exposure);
      assertTrue(rate.contains(n / exposure), n + " in " + rate);
      assertTrue(rate.high() < Double.POSITIVE_INFINITY);
    }
  }

  @Property(seed = SEED, tries = 500)
  void limitsRiseWithTheCount(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 5000) double count,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 20) double more) {
    PoissonInterval limits = PoissonInterval.atLevel(0.95);
    assertTrue(limits.lower(count) <= limits.lower(count + more));
    assertTrue(limits.upper(count) < limits.upper(count + more));
  }

  @Property(seed = SEED, tries = 500)
  void tailsAreWhatTheLevelSays(
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 30_000) double count,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.9999) double level) {
    Interval limits = PoissonInterval.atLevel(level).ofCount(count);
    double tail = (1 - level) / 2;
    assertEquals(1, RegularizedGamma.P.value(count, limits.low()) / tail, 1e-10);
    assertEquals(1, RegularizedGamma.Q.value(count + 1, limits.high()) / tail, 1e-10);
  }

  @Property(seed = SEED, tries = 300)
  void equalWeightsGiveThePoissonLimits(
      @ForAll @IntRange(min = 1, max = 60) int count,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 4000) double weight,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 6) double exposure) {
    double[] weights = new double[count];
    Arrays.fill(weights, weight);
    Interval got = WeightedPoissonInterval.of(weights, exposure, 0.95).orElseThrow();
    Interval plain = PoissonInterval.atLevel(0.95).ofRate(count, exposure).scaledBy(weight);
    assertEquals(plain.low(), got.low(), 1e-11 * plain.low());
    assertEquals(plain.high(), got.high(), 1e-11 * plain.high());
  }

  @Property(seed = SEED, tries = 300)
  void weightLimitsHoldTheRate(
      @ForAll @Size(min = 1, max = 40)
          List<@Scale(6) @DoubleRange(min = 1, max = 6000) Double> weights,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 6) double exposure) {
    double[] values = weights.stream().mapToDouble(Double::doubleValue).toArray();
    Interval got = WeightedPoissonInterval.of(values, exposure, 0.95).orElseThrow();
    assertTrue(got.contains(Arrays.stream(values).sum() / exposure));
  }

  @Property(seed = SEED, tries = 500)
  void swappingTheRatesTurnsTheRatioOver(
      @ForAll @IntRange(min = 0, max = 200) int count1,
      @ForAll @IntRange(min = 0, max = 200) int count2,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 50) double exposure1,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 50) double exposure2) {
    RateRatio one = RateRatio.of(count1, exposure1, count2, exposure2, 0.9);
    RateRatio other = RateRatio.of(count2, exposure2, count1, exposure1, 0.9);
    assertEquals(one.p(), other.p(), 1e-12);
    assertEquals(
        1, one.limits().low() == 0 ? 1 : one.limits().low() * other.limits().high(), 1e-11);
    assertEquals(one.limits().low() == 0, other.limits().high() == Double.POSITIVE_INFINITY);
    if (one.p() < 0.1 - 1e-9 || one.p() > 0.1 + 1e-9) {
      assertEquals(one.p() > 0.1, one.limits().contains(1));
    }
    Double ratio = one.ratio();
    assertTrue(ratio == null ? count1 + count2 == 0 : one.limits().contains(ratio));
  }

  @Property(seed = SEED, tries = 500)
  void betaQuantilesInvert(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 30_000) double a,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 300) double b,
      @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 0.9999) double p) {
    double odds = Quantiles.betaOddsLower(a, b, p);
    double share = odds / (1 + odds);
    // Where nearly all odds are above 1, the share of the other end keeps the digits.
    double got =
        odds < 1
            ? RegularizedBeta.value(share, a, b)
            : RegularizedBeta.complement(1 / (1 + odds), b, a);
    assertEquals(p, got, 1e-10);
  }

  @Property(seed = SEED, tries = 300)
  void widerDaysWidenTheRatio(
      @ForAll @IntRange(min = 0, max = 50) int count1,
      @ForAll @IntRange(min = 0, max = 50) int count2,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double sigma) {
    RateRatio ratio = RateRatio.of(count1, 2, count2, 3, 0.95);
    Interval narrow = ratio.widened(sigma);
    Interval wide = ratio.widened(sigma + 0.1);
    assertTrue(wide.low() <= narrow.low() && narrow.high() <= wide.high());
  }

  @Property(seed = SEED, tries = 200)
  void predictiveQuantilesInvertTheDistribution(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 3000) double shape,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 20) double rate,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double exposure,
      @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 0.9999) double p) {
    NegativeBinomialPredictive one = NegativeBinomialPredictive.of(shape, rate, exposure);
    PredictiveCount mixed =
        PredictiveCountMixture.of(
            new double[] {2, 1}, List.of(one, NegativeBinomialPredictive.of(1.5, 0.5, exposure)));
    for (PredictiveCount count : List.of(one, mixed)) {
      long k = count.quantile(p);
      assertTrue(count.cumulative(k) >= p - 1e-12);
      assertTrue(k == 0 || count.cumulative(k - 1) < p + 1e-12);
      assertEquals(1, count.cumulative(k) + count.survival(k), 1e-12);
    }
  }

  @Property(seed = SEED, tries = 100)
  void predictiveMomentsAreThoseOfTheProbabilities(
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 30) double shape,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 10) double rate) {
    PredictiveCount count =
        PredictiveCountMixture.of(
            new double[] {1, 3},
            List.of(
                NegativeBinomialPredictive.of(shape, rate, 1.3),
                NegativeBinomialPredictive.of(2 * shape, rate, 0.4)));
    double sum = 0;
    double mean = 0;
    double square = 0;
    for (long k = 0; k < 3000; k++) {
      double p = count.probability(k);
      sum += p;
      mean += k * p;
      square += (double) k * k * p;
    }
    assertEquals(1, sum, 1e-9);
    assertEquals(count.mean(), mean, 1e-7 * (1 + mean));
    assertEquals(count.variance(), square - mean * mean, 1e-6 * (1 + square));
  }

  @Property(seed = SEED, tries = 500)
  void lambertWInverts(@ForAll @Scale(6) @DoubleRange(min = -690, max = -1) double logMinusX) {
    double x = -Math.exp(logMinusX);
    double w = LambertW.minusOne(x);
    assertTrue(w <= -1);
    assertEquals(1, w * Math.exp(w) / x, 2e-13 * Math.max(1, -w / 100));
  }

  @Property(seed = SEED, tries = 500)
  void leavingTimeMeetsCharnovsCondition(
      @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 2) double decay,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 100) double moving) {
    MarginalValue rule = MarginalValue.exponential(20, decay, moving);
    double x = rule.leaveAfter();
    double overall = 20 * -Math.expm1(-decay * x) / (x + moving);
    assertEquals(1, overall / rule.rate(), 1e-12);
    assertEquals(1, 20 * decay * Math.exp(-decay * x) / rule.rate(), 1e-12);
  }

  @Property(seed = SEED, tries = 300)
  void saturatingLeavingTimeMeetsCharnovsCondition(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 200) double half,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100) double moving) {
    MarginalValue rule = MarginalValue.saturating(20, half, moving);
    double x = rule.leaveAfter();
    assertEquals(1, 20 * x / (x + half) / (x + moving) / rule.rate(), 1e-12);
    assertEquals(1, 20 * half / (x + half) / (x + half) / rule.rate(), 1e-12);
  }

  @Property(seed = SEED, tries = 200)
  void gammaQuantilesInvert(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 3000) double shape,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.999) double p) {
    GammaPosterior rate = new GammaPosterior(shape, 2.5);
    assertEquals(p, rate.probabilityAtMost(rate.quantile(p)), 1e-12);
  }

  @Property(seed = SEED, tries = 100)
  void bootstrapHoldsItsEstimateAndRepeats(
      @ForAll @Size(min = 3, max = 12)
          List<@Scale(6) @DoubleRange(min = 0.1, max = 9) Double> values,
      @ForAll @LongRange(min = 0) long seed) {
    double[] y = values.stream().mapToDouble(Double::doubleValue).toArray();
    double[] x = values.stream().mapToDouble(v -> 1 + v * v % 3).toArray();
    RatioBootstrap one = RatioBootstrap.of(y, x, 0.9, 400, seed);
    assertEquals(one, RatioBootstrap.of(y, x, 0.9, 400, seed));
    assertNotNull(one.percentile());
    double most = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < y.length; i++) {
      most = Math.max(most, y[i] / x[i]);
      least = Math.min(least, y[i] / x[i]);
    }
    assertTrue(least - 1e-9 <= one.percentile().low() && one.percentile().high() <= most + 1e-9);
  }
}
