package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Recursions against enumeration of every segmentation, and what must hold for any data. */
class ChangePointPropertyTest {
  @SuppressWarnings("ArrayRecordComponent") // Test data, never compared.
  record Data(double[] counts, double[] exposures, ChangePointPrior prior, double bunching) {}

  @Provide
  Arbitrary<Data> small() {
    return Arbitraries.integers()
        .between(1, 12)
        .flatMap(
            n ->
                Combinators.combine(
                        Arbitraries.integers()
                            .between(0, 30)
                            .map(Double::valueOf)
                            .array(Double[].class)
                            .ofSize(n),
                        Arbitraries.doubles().between(0.05, 2).array(Double[].class).ofSize(n),
                        Arbitraries.doubles().between(0.01, 0.6),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.of(0.3, 1.0, 20.0),
                        Arbitraries.of(1.0, 1.7))
                    .as(
                        (y, e, h, minimum, mean, bunching) ->
                            new Data(
                                unbox(y),
                                unbox(e),
                                new ChangePointPrior(1.3, 1.3 / mean, h, minimum),
                                bunching)));
  }

  private static double[] unbox(Double[] values) {
    return Arrays.stream(values).mapToDouble(Double::doubleValue).toArray();
  }

  /** log of prior times likelihood of one segmentation, worked out from the definition. */
  private static double logWeight(Data data, ChangePointBins bins, List<Integer> starts) {
    int n = bins.size();
    double h = data.prior.hazard();
    int minimum = data.prior.minimumLength();
    double log = 0;
    for (int k = 0; k < starts.size(); k++) {
      int from = starts.get(k);
      int to = k + 1 < starts.size() ? starts.get(k + 1) : n;
      int d = to - from;
      if (k + 1 < starts.size()) {
        if (d < minimum) {
          return Double.NEGATIVE_INFINITY;
        }
        log += Math.log(h) + (d - minimum) * Math.log(1 - h);
      } else {
        log += Math.max(0, d - minimum) * Math.log(1 - h);
      }
      double a = data.prior.shape();
      double b = data.prior.rate();
      double y = 0;
      double e = 0;
      for (int i = from; i < to; i++) {
        y += bins.count(i);
        e += bins.exposure(i);
        log += bins.count(i) * Math.log(bins.exposure(i)) - LogGamma.value(bins.count(i) + 1);
      }
      log +=
          a * Math.log(b) - LogGamma.value(a) + LogGamma.value(a + y) - (a + y) * Math.log(b + e);
    }
    return log;
  }

  @Property(tries = 150)
  void recursionEqualsEnumeration(@ForAll("small") Data data) {
    ChangePointBins bins = ChangePointBins.of(data.counts, data.exposures).dividedBy(data.bunching);
    int n = bins.size();
    ChangePointPosterior fit = ChangePointPosterior.of(bins, data.prior);
    double top = Double.NEGATIVE_INFINITY;
    double[] logs = new double[1 << (n - 1)];
    List<List<Integer>> all = new ArrayList<>();
    for (int mask = 0; mask < logs.length; mask++) {
      List<Integer> starts = new ArrayList<>(List.of(0));
      for (int i = 1; i < n; i++) {
        if ((mask >> (i - 1) & 1) == 1) {
          starts.add(i);
        }
      }
      all.add(starts);
      logs[mask] = logWeight(data, bins, starts);
      top = Math.max(top, logs[mask]);
    }
    double sum = 0;
    double[] changes = new double[n];
    double[] rates = new double[n];
    double[] numbers = new double[n + 1];
    for (int mask = 0; mask < logs.length; mask++) {
      double w = Math.exp(logs[mask] - top);
      sum += w;
      List<Integer> starts = all.get(mask);
      numbers[starts.size() - 1] += w;
      for (int k = 0; k < starts.size(); k++) {
        int from = starts.get(k);
        int to = k + 1 < starts.size() ? starts.get(k + 1) : n;
        changes[from] += from > 0 ? w : 0;
        for (int i = from; i < to; i++) {
          rates[i] +=
              w
                  * (data.prior.shape() + bins.countBetween(from, to))
                  / (data.prior.rate() + bins.exposureBetween(from, to));
        }
      }
    }
    double total = sum;
    assertEquals(top + Math.log(total), fit.logEvidence(), 1e-9);
    assertArrayEquals(
        Arrays.stream(changes).map(x -> x / total).toArray(), fit.changeProbabilities(), 1e-10);
    assertArrayEquals(
        Arrays.stream(rates).map(x -> x / total).toArray(), fit.meanRates(), 1e-9 * max(rates));
    assertArrayEquals(
        Arrays.stream(numbers).map(x -> x / total).toArray(),
        fit.changeCountProbabilities(n - 1),
        1e-10);
    List<Integer> likeliest =
        fit.likeliestSegments().stream().map(ChangePointSegment::from).toList();
    assertEquals(top, logWeight(data, bins, likeliest), 1e-9);
  }

  private static double max(double[] values) {
    return Math.max(1, Arrays.stream(values).max().orElse(1));
  }

  @Property(tries = 100)
  void filterSumsToTheEvidence(@ForAll("small") Data data) {
    ChangePointBins bins = ChangePointBins.of(data.counts, data.exposures);
    RunLengthPosterior online = RunLengthPosterior.of(bins, data.prior);
    double sum = 0;
    for (int t = 1; t <= bins.size(); t++) {
      sum += online.logPredictive(t);
      assertEquals(1, Arrays.stream(online.runLengthProbabilities(t)).sum(), 1e-12);
      ChangePointBins upTo =
          ChangePointBins.of(Arrays.copyOf(data.counts, t), Arrays.copyOf(data.exposures, t));
      ChangePointPosterior fit = ChangePointPosterior.of(upTo, data.prior);
      assertEquals(fit.logEvidence(), sum, 1e-9);
    }
  }

  @Property(tries = 100)
  void filteringOnIsFilteringAfresh(@ForAll("small") Data data) {
    ChangePointBins bins = ChangePointBins.of(data.counts, data.exposures);
    RunLengthPosterior afresh = RunLengthPosterior.of(bins, data.prior);
    RunLengthPosterior on = RunLengthPosterior.of(start(data, 1), data.prior);
    for (int t = 2; t <= bins.size(); t++) {
      on = on.with(start(data, t));
    }
    assertEquals(afresh.size(), on.size());
    for (int t = 0; t <= bins.size(); t++) {
      assertEquals(afresh.logEvidence(t), on.logEvidence(t), 1e-12);
      assertArrayEquals(afresh.runLengthProbabilities(t), on.runLengthProbabilities(t), 1e-12);
    }
  }

  @Property(tries = 20)
  void filteringOnNeedsTheSameStart(@ForAll("small") Data data) {
    RunLengthPosterior some = RunLengthPosterior.of(start(data, 1), data.prior);
    double[] other = data.counts.clone();
    other[0]++;
    ChangePointBins bins = ChangePointBins.of(other, data.exposures);
    assertThrows(IllegalArgumentException.class, () -> some.with(bins));
  }

  private static ChangePointBins start(Data data, int bins) {
    return ChangePointBins.of(
        Arrays.copyOf(data.counts, bins), Arrays.copyOf(data.exposures, bins));
  }

  @Property(tries = 100)
  void unitsOfExposureDoNotMatter(@ForAll("small") Data data, @ForAll("factors") double factor) {
    ChangePointPrior scaled =
        new ChangePointPrior(
            data.prior.shape(),
            data.prior.rate() * factor,
            data.prior.hazard(),
            data.prior.minimumLength());
    ChangePointPosterior one =
        ChangePointPosterior.of(ChangePointBins.of(data.counts, data.exposures), data.prior);
    double[] exposures = Arrays.stream(data.exposures).map(e -> e * factor).toArray();
    ChangePointPosterior other =
        ChangePointPosterior.of(ChangePointBins.of(data.counts, exposures), scaled);
    assertArrayEquals(one.changeProbabilities(), other.changeProbabilities(), 1e-9);
    assertEquals(one.logEvidence(), other.logEvidence(), 1e-8);
  }

  @Provide
  Arbitrary<Double> factors() {
    return Arbitraries.of(60.0, 1.0 / 24, 3600.0);
  }

  @Test
  void equalBinsGoTheSameWayAsUnequalOnes() {
    double[] counts = new double[200];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = i * 7919 % 13 == 0 ? 2 : i % 5 == 0 ? 1 : 0;
    }
    double[] exposures = new double[200];
    Arrays.fill(exposures, 1.0 / 60);
    exposures[100] = Math.nextUp(exposures[100]);
    ChangePointPrior prior = new ChangePointPrior(1, 1.0 / 12, 0.004, 10);
    ChangePointPosterior even =
        ChangePointPosterior.of(ChangePointBins.of(counts, 1.0 / 60), prior);
    ChangePointPosterior uneven =
        ChangePointPosterior.of(ChangePointBins.of(counts, exposures), prior);
    assertEquals(even.logEvidence(), uneven.logEvidence(), 1e-9);
    assertArrayEquals(even.changeProbabilities(), uneven.changeProbabilities(), 1e-10);
    assertArrayEquals(even.meanRates(), uneven.meanRates(), 1e-8);
  }

  @Test
  void drawsFollowThePosterior() {
    double[] counts = ChangePointReferenceTest.column("coal_annual.csv", "count");
    ChangePointPosterior fit =
        ChangePointPosterior.of(ChangePointBins.of(counts, 1), new ChangePointPrior(1, 1, 0.02, 1));
    List<ChangePointDraw> draws = fit.draws(40_000, 9);
    double[] rates = new double[counts.length];
    double[] changes = new double[counts.length];
    for (ChangePointDraw draw : draws) {
      for (ChangePointSegment segment : draw.segments()) {
        changes[segment.from()]++;
        for (int i = segment.from(); i < segment.to(); i++) {
          rates[i] += segment.rate();
        }
      }
    }
    double[] means = fit.meanRates();
    double[] probabilities = fit.changeProbabilities();
    for (int i = 1; i < counts.length; i++) {
      // Five standard errors of a share and of a mean with coefficient of variation below 1.
      double p = probabilities[i];
      assertEquals(p, changes[i] / 40_000, 5 * Math.sqrt(p * (1 - p) / 40_000) + 1e-4);
      assertEquals(means[i], rates[i] / 40_000, 5 * means[i] / 200);
    }
  }

  @ParameterizedTest
  @CsvSource({"3000, 0.01", "3000, 1000", "1, 5", "2, 0", "500, 1500000"})
  void extremesStayFinite(int n, double perHour) {
    double[] counts = new double[n];
    double events = 0;
    for (int i = 0; i < n; i++) {
      double upTo = Math.floor((i + 1) * perHour / 60);
      counts[i] = upTo - events;
      events = upTo;
    }
    ChangePointMixture fit =
        ChangePointMixture.of(
            ChangePointBins.of(counts, 1.0 / 60), new ChangePointPrior(1, 1, 0.004, 10), 1.5, 48);
    assertTrue(Double.isFinite(fit.logEvidence()));
    for (double rate : fit.meanRates()) {
      assertTrue(rate >= 0 && rate < 1e9, "rate " + rate);
    }
    assertEquals(1, Arrays.stream(fit.lastStartProbabilities()).sum(), 1e-9);
    assertEquals(20, fit.draws(20, 1).size());
  }

  @Test
  void countsOfTwentyFiveThousandPerBinThatStop() {
    double[] counts = new double[3000];
    Arrays.fill(counts, 0, 1500, 25_000);
    ChangePointPosterior fit =
        ChangePointPosterior.of(
            ChangePointBins.of(counts, 1.0 / 60), new ChangePointPrior(1, 0.1, 0.004, 10));
    assertTrue(Double.isFinite(fit.logEvidence()));
    assertEquals(1, fit.changeProbability(1500), 1e-9);
    assertEquals(37_500_001 / 25.1, fit.meanRates()[700], 0.01);
  }

  @Test
  void noBins() {
    ChangePointPosterior fit =
        ChangePointPosterior.of(
            ChangePointBins.of(new double[0], 1), new ChangePointPrior(1, 1, 0.1, 1));
    assertEquals(0, fit.logEvidence());
    assertEquals(0, fit.meanRates().length);
    assertEquals(1, fit.changeCountProbabilities(2)[0]);
    assertTrue(fit.likeliestSegments().isEmpty());
    assertThrows(IndexOutOfBoundsException.class, () -> fit.changeProbability(1));
  }

  @Test
  void binsWithoutExposureCarryNothing() {
    ChangePointPrior prior = new ChangePointPrior(1, 0.5, 0.1, 1);
    ChangePointPosterior none =
        ChangePointPosterior.of(
            ChangePointBins.of(new double[] {0, 0}, new double[] {0, 0}), prior);
    assertEquals(0, none.logEvidence(), 1e-12);
    assertEquals(2, none.meanRates()[1], 1e-12);
    assertThrows(
        IllegalArgumentException.class,
        () -> ChangePointBins.of(new double[] {1}, new double[] {0}));
    assertThrows(
        IllegalArgumentException.class,
        () -> ChangePointBins.of(new double[] {Double.NaN}, new double[] {1}));
    assertThrows(IllegalArgumentException.class, () -> new ChangePointPrior(1, 1, 1, 1));
  }

  /** Incomplete gamma and log gamma against Commons Statistics and Commons Numbers. */
  @ParameterizedTest
  @CsvSource({
    "0.3, 0.1",
    "1, 2",
    "1, 0.001",
    "2.5, 9",
    "40, 25",
    "40, 60",
    "399, 420",
    "5000, 4900"
  })
  void gammaFunctions(double shape, double x) {
    double logGamma = LogGamma.value(shape);
    assertEquals(logGamma, ChangePointGamma.logGamma(shape), 1e-13 * Math.max(1, logGamma));
    assertEquals(
        GammaDistribution.of(shape, 1).cumulativeProbability(x),
        ChangePointGamma.lower(shape, x, logGamma),
        1e-12);
  }

  /** Mean and variance of the gamma variates, and their distribution at the quartiles. */
  @ParameterizedTest
  @CsvSource({"0.4", "1", "7.5"})
  void gammaVariates(double shape) {
    ChangePointRandom random = new ChangePointRandom(3);
    GammaDistribution gamma = GammaDistribution.of(shape, 1);
    int[] below = new int[4];
    for (int i = 0; i < 40_000; i++) {
      below[(int) (4 * Math.min(0.999999, gamma.cumulativeProbability(random.gamma(shape))))]++;
    }
    for (int count : below) {
      assertEquals(10_000, count, 5 * Math.sqrt(40_000 * 0.25 * 0.75));
    }
  }
}
