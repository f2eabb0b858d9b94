package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The moment a line faded, against a second, slow working of the definition: whole curves are drawn
 * and each is searched bin by bin.
 */
class FadePosteriorTest {
  private static final double[] MEANS = ChangePointMixture.hourlyMeans();

  /** Bite times of a rate per hour that is constant between the given minutes. */
  static double[] times(long seed, double[] untilMinutes, double[] rates) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] times = new double[4096];
    int n = 0;
    double from = 0;
    for (int k = 0; k < rates.length; k++) {
      double t = from;
      while (true) {
        t -= Math.log(1 - random.nextDouble()) * 60 / rates[k];
        if (t >= untilMinutes[k]) {
          break;
        }
        times[n++] = t;
      }
      from = untilMinutes[k];
    }
    return Arrays.copyOf(times, n);
  }

  /** A block of ten bins that ends with a part bin is not whole, whatever is fished afterwards. */
  @Test
  void bunchingOfASpellDoesNotDependOnALaterVisit() {
    double[] times = times(5, new double[] {29.085}, new double[] {40});
    double alone =
        FadePosterior.review(FadeRecord.ofTimes(times, new double[] {29.085}), FadeOptions.DEFAULT)
            .get(0)
            .verdict()
            .bunching();
    double revisited =
        FadePosterior.review(
                FadeRecord.ofTimes(times, new double[] {29.085, 30.085}), FadeOptions.DEFAULT)
            .get(0)
            .verdict()
            .bunching();
    double[] blocks = new double[2];
    for (double time : times) {
      if (time < 20) {
        blocks[(int) (time / 10)]++;
      }
    }
    double difference = blocks[1] - blocks[0];
    double expected = Math.max(1, (10 + difference * difference / (blocks[0] + blocks[1])) / 11);
    assertEquals(expected, alone, 1e-12);
    assertEquals(expected, revisited, 1e-12);
  }

  private static double[] counts(double[] times, int bins) {
    double[] counts = new double[bins];
    for (double time : times) {
      counts[(int) time]++;
    }
    return counts;
  }

  /** First bin at which a curve has faded, straight from the definition; −1 if never. */
  private static int firstFade(double[] curve, double[] counts) {
    double[] highestFrom = new double[curve.length + 1];
    for (int i = curve.length - 1; i >= 0; i--) {
      highestFrom[i] = Math.max(curve[i], highestFrom[i + 1]);
    }
    double[] sums = new double[curve.length + 1];
    for (int i = 0; i < curve.length; i++) {
      sums[i + 1] = sums[i] + curve[i];
    }
    double events = 0;
    double going = 0;
    for (int t = 0; t < curve.length; t++) {
      if (t >= 20) {
        int window = Math.min(60, t);
        going = Math.max(going, (sums[t] - sums[t - window]) / window);
        if (events >= 5 && highestFrom[t] <= going / 2) {
          return t;
        }
      }
      events += counts[t];
    }
    return -1;
  }

  private record Slow(double probability, double notComeBack, double logStepOverDecline) {}

  private static double bunching(double[] counts, int[] ends) {
    Bunching bunching = new Bunching();
    int from = 0;
    for (int end : ends) {
      for (int i = from; i + 10 <= end; i += 10) {
        bunching.add(Arrays.stream(counts, i, i + 10).sum());
      }
      bunching.rest();
      from = end;
    }
    return bunching.factor();
  }

  private static Slow slow(double[] all, int[] ends, int draws) {
    int to = ends[ends.length - 1];
    int from = ends.length > 1 ? ends[ends.length - 2] : 0;
    double[] counts = Arrays.copyOf(all, to);
    double phi = bunching(counts, ends);
    double h = 1 - Math.exp(-0.25 / 60);
    ChangePointPrior prior = new ChangePointPrior(1, 1, h, 10);
    ChangePointBins bins = ChangePointBins.of(counts, 1.0 / 60).dividedBy(phi);
    ChangePointBins earlier =
        ChangePointBins.of(Arrays.copyOf(counts, from), 1.0 / 60).dividedBy(phi);
    ChangePointMixture joined = ChangePointMixture.of(bins, prior, MEANS);
    ChangePointMixture before = ChangePointMixture.of(earlier, prior, MEANS);
    double[] minutes = new double[to - from];
    Arrays.setAll(minutes, i -> i + 0.5);
    DeclineModel decline =
        DeclineModel.of(
            ChangePointBins.of(Arrays.copyOfRange(counts, from, to), 1.0 / 60).dividedBy(phi),
            minutes,
            MEANS);
    double evidence = joined.logEvidence() - before.logEvidence() - decline.logEvidence();
    double[] share = new double[4];
    for (ChangePointDraw draw : joined.draws(draws, 1)) {
      double[] curve = new double[to];
      Arrays.setAll(curve, draw::rateAt);
      count(firstFade(curve, counts), from, share, 0);
    }
    List<ChangePointDraw> histories = before.draws(draws, 2);
    List<DeclineDraw> declines = decline.draws(draws, 3);
    SplittableRandom random = new SplittableRandom(4);
    for (DeclineDraw draw : declines) {
      ChangePointDraw history = histories.get(random.nextInt(draws));
      double[] curve = new double[to];
      Arrays.setAll(curve, i -> i < from ? history.rateAt(i) : draw.rateAt(i - from + 0.5));
      count(firstFade(curve, counts), from, share, 2);
    }
    double w = 1 / (1 + Math.exp(-evidence));
    return new Slow(
        (w * share[0] + (1 - w) * share[2]) / draws,
        (w * share[1] + (1 - w) * share[3]) / draws,
        evidence);
  }

  private static void count(int moment, int from, double[] share, int at) {
    if (moment >= from) {
      share[at]++;
    } else if (moment >= 0) {
      share[at + 1]++;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1, 150, 14, 3, 240",
    "2, 100, 12, 4, 180",
    "3, 60, 20, 9, 130",
    "4, 30, 8, 30, 90",
    "5, 80, 10, 10, 160",
    "6, 25, 30, 2, 70",
    "7, 15, 25, 6, 60",
    "8, 25, 30, 8, 75",
    "9, 22, 24, 9, 120"
  })
  void oneSpellAgreesWithDrawnCurves(
      long seed, double change, double first, double second, int end) {
    double[] times = times(seed, new double[] {change, end}, new double[] {first, second});
    FadePosterior fast =
        FadePosterior.review(FadeRecord.ofTimes(times, new double[] {end}), FadeOptions.DEFAULT)
            .get(0);
    Slow slow = slow(counts(times, end), new int[] {end}, 3000);
    assertEquals(slow.probability(), fast.probability(), 0.03);
    assertEquals(slow.logStepOverDecline(), fast.verdict().logStepOverDecline(), 1e-6);
    assertEquals(0, fast.verdict().notComeBack());
  }

  @ParameterizedTest
  @CsvSource({
    "11, 14, 3, 12, 12",
    "12, 14, 4, 4, 4",
    "13, 10, 10, 10, 3",
    "14, 20, 20, 8, 3",
    "15, 6, 3, 20, 7",
    "16, 30, 9, 16, 12"
  })
  void laterSpellAgreesWithDrawnCurves(long seed, double a, double b, double c, double d) {
    double[] times = times(seed, new double[] {40, 75, 100, 140}, new double[] {a, b, c, d});
    int[] ends = {75, 140};
    FadePosterior fast =
        FadePosterior.review(FadeRecord.ofTimes(times, new double[] {75, 140}), FadeOptions.DEFAULT)
            .get(1);
    Slow slow = slow(counts(times, 140), ends, 3000);
    assertEquals(slow.probability(), fast.probability(), 0.03);
    assertEquals(slow.notComeBack(), fast.verdict().notComeBack(), 0.03);
    assertEquals(slow.logStepOverDecline(), fast.verdict().logStepOverDecline(), 1e-6);
  }

  @Test
  void everyLookIsWhatAReviewOfTheRecordUpToThenSays() {
    double[] times = times(21, new double[] {70, 140}, new double[] {18, 4});
    FadeOptions options = FadeOptions.DEFAULT;
    FadePosterior whole =
        FadePosterior.review(FadeRecord.ofTimes(times, new double[] {140}), options).get(0);
    double[] minutes = whole.watchedMinutes();
    assertEquals(20, minutes[0]);
    assertEquals(121, minutes.length);
    for (int i = 0; i < minutes.length; i += 7) {
      double end = minutes[i];
      double[] then = Arrays.stream(times).filter(t -> t < end).toArray();
      FadePosterior cut =
          FadePosterior.review(FadeRecord.ofTimes(then, new double[] {end}), options).get(0);
      assertEquals(cut.probability(), whole.watchedProbabilities()[i], 0.03, "at " + end);
    }
  }

  @Test
  void clearFadeIsFoundDatedAndCalled() {
    double[] times = times(31, new double[] {120, 240}, new double[] {20, 1});
    FadePosterior fade =
        FadePosterior.review(FadeRecord.ofTimes(times, new double[] {240}), FadeOptions.DEFAULT)
            .get(0);
    assertTrue(fade.probability() > 0.95);
    FadeMoment moment = momentOf(fade);
    assertTrue(moment.low() <= 120 && 120 <= moment.high(), moment.toString());
    assertEquals(120, moment.median(), 6);
    Double plain = fade.plainAt();
    assertTrue(plain != null && plain > 120 && plain < 165, "plain at " + plain);
    double before = fade.verdict().goingRate() == null ? 0 : fade.verdict().goingRate();
    double after = fade.verdict().rateAfter() == null ? 99 : fade.verdict().rateAfter();
    assertTrue(before > 14 && before < 28 && after < 3, before + " then " + after);
    assertEquals(1, Arrays.stream(fade.momentProbabilities()).sum(), 1e-9);
    assertEquals(240, fade.meanRates().length);
  }

  private static FadeMoment momentOf(FadePosterior fade) {
    FadeMoment moment = fade.moment();
    if (moment == null) {
      throw new AssertionError("no moment");
    }
    return moment;
  }

  @Test
  void sameSeedSameFigures() {
    double[] times = times(41, new double[] {60, 130}, new double[] {15, 5});
    FadeRecord record = FadeRecord.ofTimes(times, new double[] {60.5, 130});
    FadePosterior one = FadePosterior.review(record, FadeOptions.DEFAULT).get(1);
    FadePosterior two = FadePosterior.review(record, FadeOptions.DEFAULT).get(1);
    assertEquals(one.verdict(), two.verdict());
    assertEquals(one.crossings(), two.crossings());
    FadePosterior end = FadePosterior.atEnd(record, FadeOptions.DEFAULT).get(1);
    assertEquals(one.probability(), end.probability(), 1e-12);
    assertEquals(one.verdict().bunching(), end.verdict().bunching());
    assertEquals(1, end.watchedMinutes().length);
    assertFalse(Double.isNaN(one.probability()));
  }

  @Test
  void laterSpellsDoNotChangeEarlierOnes() {
    double[] first = times(51, new double[] {50, 90.4}, new double[] {15, 3});
    double[] both = times(51, new double[] {50, 90.4, 150}, new double[] {15, 3, 12});
    FadePosterior alone =
        FadePosterior.review(FadeRecord.ofTimes(first, new double[] {90.4}), FadeOptions.DEFAULT)
            .get(0);
    FadePosterior followed =
        FadePosterior.review(
                FadeRecord.ofTimes(both, new double[] {90.4, 150}), FadeOptions.DEFAULT)
            .get(0);
    assertEquals(
        alone.verdict().logStepOverDecline(), followed.verdict().logStepOverDecline(), 1e-9);
    assertEquals(alone.probability(), followed.probability(), 1e-6);
    assertEquals(alone.crossings(), followed.crossings());
  }

  @Test
  void reportsPlaceChangesOnlyBetweenThem() {
    double[] edges = {0, 30, 60, 90, 120, 150, 180, 210};
    double[] counts = {9, 11, 10, 9, 2, 1, 1};
    FadeRecord record = FadeRecord.ofReports(edges, counts, new int[] {7});
    FadePosterior fade = FadePosterior.review(record, FadeOptions.DEFAULT).get(0);
    assertTrue(fade.probability() > 0.8, "Pr " + fade.probability());
    FadeMoment moment = momentOf(fade);
    assertEquals(120, moment.median());
    assertEquals(7, fade.watchedMinutes().length);
  }

  @ParameterizedTest
  @CsvSource({"0.01, 300", "1000, 120", "60000, 40", "3, 20", "10, 20.5", "10, 61.2"})
  void extremeRatesStayFinite(double rate, double end) {
    SplittableRandom random = new SplittableRandom(7);
    double[] times =
        random.doubles(Math.round(rate * end / 60)).map(u -> u * end).sorted().toArray();
    for (FadePosterior fade :
        FadePosterior.review(FadeRecord.ofTimes(times, new double[] {end}), FadeOptions.DEFAULT)) {
      assertTrue(fade.probability() >= 0 && fade.probability() <= 1);
      for (double p : fade.watchedProbabilities()) {
        assertTrue(p >= 0 && p <= 1);
      }
      for (double r : fade.meanRates()) {
        assertTrue(r >= -1e-6 && r < 1e9, "rate " + r);
      }
      assertTrue(Double.isFinite(fade.verdict().logStepOverDecline()));
    }
  }

  @Test
  void countsOfTwentyFiveThousandStayFinite() {
    double[] counts = new double[60];
    Arrays.fill(counts, 0, 30, 25_000);
    double[] edges = new double[61];
    Arrays.setAll(edges, i -> i);
    FadePosterior fade =
        FadePosterior.review(
                FadeRecord.ofReports(edges, counts, new int[] {60}), FadeOptions.DEFAULT)
            .get(0);
    assertEquals(1, fade.probability(), 1e-6);
    FadeMoment moment = momentOf(fade);
    assertEquals(30, moment.median());
  }

  @Test
  void nothingToJudgeGivesNothing() {
    assertTrue(review(new double[0], 0).isEmpty());
    assertTrue(review(new double[] {0, 0, 0}, 0).isEmpty());
    assertTrue(review(new double[] {1, 2}, 19.5).isEmpty());
    FadePosterior blank = review(new double[0], 200).get(0);
    assertEquals(0, blank.probability());
    assertNull(blank.moment());
    assertNull(blank.plainAt());
    assertNull(blank.verdict().goingRate());
    double[] together = new double[10_000];
    Arrays.fill(together, 5);
    assertTrue(review(together, 60).get(0).probability() <= 1);
  }

  private static List<FadePosterior> review(double[] times, double end) {
    return FadePosterior.review(FadeRecord.ofTimes(times, new double[] {end}), FadeOptions.DEFAULT);
  }

  @Test
  void refusesTimesOutOfOrder() {
    assertThrows(
        IllegalArgumentException.class,
        () -> FadeRecord.ofTimes(new double[] {3, 2}, new double[] {30}));
    assertThrows(
        IllegalArgumentException.class,
        () -> FadeRecord.ofTimes(new double[] {31}, new double[] {30}));
    assertThrows(
        IllegalArgumentException.class,
        () -> FadeRecord.ofTimes(new double[] {Double.NaN}, new double[] {30}));
    assertThrows(
        IllegalArgumentException.class,
        () -> FadeRecord.ofTimes(new double[] {1}, new double[] {30, 20}));
  }
}
