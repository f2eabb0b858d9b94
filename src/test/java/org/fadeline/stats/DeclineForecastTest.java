package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** What a declining rate has still to give, against the decline's own posterior. */
class DeclineForecastTest {
  private static final double MEAN = 6;

  private static DeclineForecast after(double... counts) {
    DeclineForecast forecast = new DeclineForecast(MEAN);
    for (int i = 0; i < counts.length; i++) {
      forecast.add(counts[i], 1 / 60.0, i + 0.5);
    }
    return forecast;
  }

  private static double[] doubles(List<Integer> counts) {
    return counts.stream().mapToDouble(Integer::doubleValue).toArray();
  }

  @Property(tries = 60, seed = "20260401")
  void evidenceAndMeanAreThoseOfTheDeclineModel(
      @ForAll @Size(min = 1, max = 90) List<@IntRange(max = 4) Integer> seen,
      @ForAll @DoubleRange(min = 1, max = 300) double minutes) {
    double[] counts = doubles(seen);
    double[] middles = new double[counts.length];
    Arrays.setAll(middles, i -> i + 0.5);
    DeclineModel model = DeclineModel.of(ChangePointBins.of(counts, 1 / 60.0), middles, MEAN);
    DeclineForecast forecast = after(counts);
    assertEquals(model.logEvidence(), forecast.logEvidence(), 1e-9);
    // The mean to come is the integral of the mean rate: Simpson's rule over 400 stretches.
    int n = 400;
    double width = minutes / n;
    double integral = 0;
    for (int i = 0; i <= n; i++) {
      double weight = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
      integral += weight * model.meanRate(counts.length + i * width) * width / 3 / 60;
    }
    assertEquals(
        integral, forecast.predictive(counts.length, minutes).mean(), 1e-5 * (1 + integral));
  }

  @Property(tries = 60, seed = "20260402")
  void noMoreComesThanIfTheDeclineStoppedNow(
      @ForAll @Size(min = 1, max = 90) List<@IntRange(max = 4) Integer> seen,
      @ForAll @DoubleRange(min = 1, max = 300) double minutes) {
    double[] counts = doubles(seen);
    double[] middles = new double[counts.length];
    Arrays.setAll(middles, i -> i + 0.5);
    double now =
        DeclineModel.of(ChangePointBins.of(counts, 1 / 60.0), middles, MEAN)
            .meanRate(counts.length);
    DeclineForecast forecast = after(counts);
    double mean = forecast.predictive(counts.length, minutes).mean();
    assertTrue(mean < now * minutes / 60, () -> mean + " against " + now * minutes / 60);
    assertTrue(mean < forecast.predictive(counts.length, minutes + 10).mean());
  }

  @Property(tries = 60, seed = "20260403")
  void quantilesOfTwoMixedLieBetweenTheirs(
      @ForAll @Size(min = 1, max = 60) List<@IntRange(max = 3) Integer> seen,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double p) {
    PredictiveCountMixture one = after(doubles(seen)).predictive(seen.size(), 120);
    PredictiveCountMixture other =
        PredictiveCountMixture.of(List.of(new RunLengthRate(0, 1, 5, 1)), 2);
    long mixed = one.mixedWith(other, share).quantile(p);
    assertTrue(mixed >= Math.min(one.quantile(p), other.quantile(p)));
    assertTrue(mixed <= Math.max(one.quantile(p), other.quantile(p)));
  }

  @Test
  void nothingSeenHasTheEvidenceOfNothing() {
    assertEquals(0, new DeclineForecast(MEAN).logEvidence(), 1e-12);
    assertEquals(0, new DeclineForecast(MEAN).predictive(0, 0).mean());
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    DeclineForecast forecast = new DeclineForecast(MEAN);
    assertThrows(IllegalArgumentException.class, () -> new DeclineForecast(0));
    assertThrows(IllegalArgumentException.class, () -> forecast.add(-1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> forecast.add(1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> forecast.add(1, 1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> forecast.predictive(-1, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> forecast.predictive(0, 1).mixedWith(forecast.predictive(0, 1), 1.5));
  }

  @Test
  void extremeRecordsStayFinite() {
    for (double count : new double[] {0, 25_000}) {
      double[] counts = new double[600];
      Arrays.fill(counts, count);
      DeclineForecast forecast = after(counts);
      assertTrue(Double.isFinite(forecast.logEvidence()));
      assertTrue(Double.isFinite(forecast.predictive(600, 180).mean()));
    }
  }
}
