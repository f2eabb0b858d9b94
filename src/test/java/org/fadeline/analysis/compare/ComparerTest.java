package org.fadeline.analysis.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.ComparisonSetup.DayToDay;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.stats.Interval;
import org.junit.jupiter.api.Test;

/** Two sessions side by side: by hand, with themselves, and the other way round. */
class ComparerTest {
  private static final Session A = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 7);
  private static final Session B =
      DemoMatch.generate(DemoWaters.waterASecondDay(), DemoWaters.planASecondDay(), 8);

  private static Comparison compare(Session first, Session second, ComparisonSetup setup) {
    return Comparer.compare(review(first), review(second), setup, Units.LB_OZ_AND_METRES);
  }

  private static Comparison compare(Session first, Session second) {
    return compare(first, second, ComparisonSetup.usual(first, second));
  }

  private static Review review(Session session) {
    return Reviewer.review(session, ReviewSettings.DEFAULT);
  }

  private static List<RatePair> rates(Comparison comparison) {
    List<RatePair> all = new ArrayList<>();
    List<Comparison.PairRates> sets = new ArrayList<>();
    sets.add(comparison.lines().whole());
    comparison.lines().pairs().forEach(p -> sets.add(p.rates()));
    for (Comparison.PairRates set : sets) {
      all.add(set.fish());
      all.add(set.weight());
      RatePair bites = set.bites();
      if (bites != null) {
        all.add(bites);
      }
    }
    return all;
  }

  private static RatePair.Ratio ratio(RatePair pair) {
    RatePair.Ratio ratio = pair.ratio();
    assertNotNull(ratio);
    return ratio;
  }

  private static double value(RatePair pair) {
    Double value = ratio(pair).value();
    assertNotNull(value);
    return value;
  }

  @Test
  void aSessionAgainstItselfGivesOneEverywhereAndNothingThatDiffered() {
    Comparison comparison = compare(A, A);
    assertEquals(18, rates(comparison).size());
    for (RatePair pair : rates(comparison)) {
      assertEquals(1, value(pair), 1e-12);
      Interval limits = ratio(pair).fishing();
      assertEquals(1, limits.low() * limits.high(), 1e-9);
      assertEquals(pair.first(), pair.second());
    }
    for (PairedLines pair : comparison.lines().pairs()) {
      assertEquals(LinePair.By.NAME, pair.pair().by());
      assertEquals(pair.first(), pair.second());
      assertEquals(pair.firstBites().expected(), pair.firstBites().observed(), 1e-9);
    }
    for (RunningCatch.Point point : comparison.running().points()) {
      assertEquals(0, point.fishDifference());
      assertEquals(0.0, point.gramsDifference());
    }
    assertEquals(2, comparison.findings().sentences().size());
    assertTrue(comparison.findings().sentences().get(1).text().startsWith("No line differed"));
  }

  @Test
  void exchangingTheSessionsTurnsEveryRatioOver() {
    Comparison there = compare(A, B);
    Comparison back = compare(B, A);
    assertEquals(rates(there).size(), rates(back).size());
    for (int i = 0; i < rates(there).size(); i++) {
      RatePair one = rates(there).get(i);
      RatePair other = rates(back).get(i);
      assertEquals(one.first(), other.second());
      assertEquals(one.second(), other.first());
      assertEquals(1, value(one) * value(other), 1e-9);
      assertEquals(1, ratio(one).fishing().low() * ratio(other).fishing().high(), 1e-9);
      assertEquals(1, ratio(one).days().high() * ratio(other).days().low(), 1e-9);
    }
    assertEquals(there.lines().firstBites().observed(), back.lines().firstBites().observedOther());
    Double p = there.lines().firstBites().p();
    Double turned = back.lines().firstBites().p();
    assertNotNull(p);
    assertNotNull(turned);
    assertEquals(p, turned, 1e-12);
    assertEquals(there.running().points().size(), back.running().points().size());
    for (int i = 0; i < there.running().points().size(); i++) {
      Double one = there.running().points().get(i).gramsDifference();
      Double other = back.running().points().get(i).gramsDifference();
      assertNotNull(one);
      assertNotNull(other);
      assertEquals(0, one + other, 1e-9);
    }
  }

  /**
   * Eleven fish in an hour against five in two, with limits found here by summing binomial terms
   * (Clopper and Pearson 1934: the shares at which a tail holds 2.5%).
   */
  @Test
  void ratesAreFishOverHoursWithTheExactLimits() {
    Comparison comparison =
        compare(
            SmallMatch.from("10:00", "12:00").fish("short", "10:00", "11:00", 11, 500).session(),
            SmallMatch.from("10:00", "12:00").fish("short", "10:00", "12:00", 5, 500).session());
    RatePair fish = comparison.lines().pairs().get(0).rates().fish();
    assertEquals(11, fish.first().amount());
    assertEquals(1, fish.first().hours(), 1e-12);
    assertEquals(2, fish.second().hours(), 1e-12);
    assertEquals(4.4, value(fish), 1e-12);
    // Given 16 in all, the first count is binomial with share r / (r + 2).
    assertEquals(exactByBisection(11, 16, true) * 2, ratio(fish).fishing().low(), 1e-6);
    assertEquals(exactByBisection(11, 16, false) * 2, ratio(fish).fishing().high(), 1e-6);
    // exp(log 4.4 ± 1.959964·√(1/11 + 1/5 + 2·0.25)), the formula of docs/methods.md.
    double half = 1.959963984540054 * Math.sqrt(1 / 11.0 + 1 / 5.0 + 0.5);
    assertEquals(Math.log(4.4) - half, Math.log(ratio(fish).days().low()), 1e-9);
    assertEquals(Math.log(4.4) + half, Math.log(ratio(fish).days().high()), 1e-9);
    assertNull(ratio(fish).p());
    // Equal weights: the limits of the weights are those of the counts.
    RatePair weight = comparison.lines().pairs().get(0).rates().weight();
    assertEquals(4.4, value(weight), 1e-9);
    assertEquals(ratio(fish).fishing().low(), ratio(weight).fishing().low(), 1e-9);
    assertEquals(ratio(fish).days().high(), ratio(weight).days().high(), 1e-6);
  }

  /** Odds at which a tail of the binomial holds 2.5%, by summing its terms. */
  private static double exactByBisection(int count, int total, boolean lower) {
    double low = 1e-9;
    double high = 1 - 1e-9;
    for (int i = 0; i < 200; i++) {
      double share = (low + high) / 2;
      double tail = 0;
      for (int k = lower ? count : 0; k <= (lower ? total : count); k++) {
        double term = 1;
        for (int j = 1; j <= k; j++) {
          term *= (total - k + j) / (double) j;
        }
        tail += term * Math.pow(share, k) * Math.pow(1 - share, total - k);
      }
      if (tail < 0.025 == lower) {
        low = share;
      } else {
        high = share;
      }
    }
    return low / (1 - low);
  }

  @Test
  void aProbabilityIsGivenOnlyWithALearnedSpreadAndAgreesWithTheLimits() {
    Session one =
        SmallMatch.from("10:00", "12:00").fish("short", "10:00", "11:00", 11, 500).session();
    Session other =
        SmallMatch.from("10:00", "12:00").fish("short", "10:00", "12:00", 5, 500).session();
    for (double sigma : new double[] {0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.8}) {
      ComparisonSetup setup = ComparisonSetup.usual(one, other).withDays(new DayToDay(sigma, true));
      RatePair.Ratio ratio = ratio(compare(one, other, setup).lines().whole().fish());
      assertNotNull(ratio.p());
      assertEquals(ratio.p() >= 0.05, ratio.days().contains(1), "sigma " + sigma);
    }
  }

  @Test
  void aLineNotFishedOrWithoutFishHasNoInventedNumbers() {
    Session fished =
        SmallMatch.from("10:00", "12:00").fish("short", "10:00", "11:00", 3, 500).session();
    Session none =
        SmallMatch.from("10:00", "12:00").fish("short", "10:00", "11:00", 0, 500).session();
    Session elsewhere =
        SmallMatch.from("10:00", "12:00")
            .line("short")
            .fish("edge", "10:00", "11:00", 2, 500)
            .session();
    PairedLines blank = compare(fished, none).lines().pairs().get(0);
    assertNull(ratio(blank.rates().fish()).value());
    assertEquals(Double.POSITIVE_INFINITY, ratio(blank.rates().fish()).fishing().high());
    assertNull(blank.rates().weight().ratio());
    Comparison apart = compare(fished, elsewhere);
    assertNull(apart.lines().pairs().get(0).rates().fish().ratio());
    assertNull(apart.lines().pairs().get(0).rates().fish().second().rate());
    assertEquals("edge", apart.lines().onlySecond().get(0).line().line().name());
  }

  @Test
  void theRunningCatchIsTheCatchSoFarOfBoth() {
    Session one =
        SmallMatch.from("10:00", "12:00").fish("short", "10:00", "10:40", 2, 500).session();
    Session other =
        SmallMatch.from("10:30", "12:30").fish("short", "10:30", "11:30", 3, 400).session();
    // Fish come at the end of equal parts: 10:20, 10:40 and 10:50, 11:10, 11:30.
    RunningCatch byAllIn = compare(one, other).running();
    assertEquals(
        List.of(0.0, 20.0, 40.0, 60.0, 120.0),
        byAllIn.points().stream().map(RunningCatch.Point::minutes).toList());
    assertEquals(
        List.of(0.0, 100.0, 200.0, -200.0, -200.0),
        byAllIn.points().stream().map(RunningCatch.Point::gramsDifference).toList());
    RunningCatch byClock =
        compare(
                one,
                other,
                ComparisonSetup.usual(one, other).withAlignment(Alignment.byClock(one, other)))
            .running();
    RunningCatch.Point atTenTwenty = byClock.points().get(1);
    assertEquals(620, atTenTwenty.minutes());
    assertNull(atTenTwenty.second());
    assertNull(atTenTwenty.fishDifference());
    RunningCatch.Point last = byClock.points().get(byClock.points().size() - 1);
    assertEquals(-1, last.fishDifference());
  }

  @Test
  void theSharesOfTheDifferenceAddUpToIt() {
    // Short: 4 fish in 1 h against 4 in 2 h; edge in the first alone.
    Session one =
        SmallMatch.from("10:00", "14:00")
            .fish("short", "10:00", "11:00", 4, 1000)
            .fish("edge", "11:00", "12:00", 6, 2000)
            .session();
    Session other =
        SmallMatch.from("10:00", "14:00").fish("short", "10:00", "12:00", 4, 1000).session();
    List<Comparison.Finding> told = compare(one, other).findings().sentences();
    assertEquals(3, told.size());
    assertTrue(told.get(0).text().contains("10 fish for 35 lb 4 oz"), told.get(0).text());
    // 12 kg of the edge come before the 3 kg (2 kg/h over 1.5 h) that the short line's rate makes.
    assertEquals("edge", told.get(1).firstLine());
    assertTrue(told.get(1).text().contains("6 fish for 26 lb 7 oz"), told.get(1).text());
    assertTrue(told.get(2).text().contains("6 lb 10 oz of the difference"), told.get(2).text());
    assertTrue(told.get(2).text().contains("it rests on 4 fish and 4 fish"), told.get(2).text());
  }

  @Test
  void aPatternIsFedEverySoOftenToItsEnd() {
    Feed pattern =
        new Feed(
            "6 mm pellets",
            new Feed.Amount(7, Feed.Unit.PIECES),
            "catapult",
            new Feed.Pattern(40, SmallMatch.millis("10:02")));
    Session session =
        SmallMatch.from("10:00", "12:00")
            .fed("10:00", "shallow", pattern)
            .fed("10:30", "shallow", Feed.UNKNOWN)
            .fed("12:00", "shallow", pattern)
            .session();
    FeedPut feed = FeedPut.on(session, "shallow");
    // 10:00:00, 10:00:40, 10:01:20, 10:02:00, and one of no known amount; none after all out.
    assertEquals(5, feed.feeds());
    assertEquals(1, feed.withoutAmount());
    assertEquals(28, feed.amounts().get(Feed.Unit.PIECES));
  }
}
