package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.Arrays;
import org.fadeline.analysis.LeavingRule.Withheld;
import org.fadeline.stats.DeclineFit;
import org.fadeline.stats.MarginalValue;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The leaving rule of a line: when one is given, of what, and what is said where none is. */
class LeavingRulesTest {
  /** Minutes after the first cast of bites that thin out: 8 in 15 minutes, 3 in the next 25. */
  private static final int[] FALLING = {1, 2, 4, 5, 8, 10, 12, 14, 19, 26, 37};

  private static final int[] EVEN = {3, 7, 11, 15, 19, 23, 27, 31, 35, 39};

  /** Visits of forty minutes with a quarter of an hour elsewhere between. */
  private static Log visits(int count, int[] bites) {
    Log log = Log.from("10:00", "15:00");
    for (int i = 0; i < count; i++) {
      LocalTime start = LocalTime.of(10, 0).plusMinutes(55L * i);
      log.cast(start.toString(), "short");
      for (int bite : bites) {
        log.bite(start.plusMinutes(bite).toString(), "short");
        log.cast(start.plusMinutes(bite).plusSeconds(20).toString(), "short");
      }
      log.move(start.plusMinutes(40).toString(), "short");
      log.cast(start.plusMinutes(40).toString(), "edge");
      log.move(start.plusMinutes(55).toString(), "edge");
    }
    return log;
  }

  private static LeavingRule rule(Log log, ReviewSettings settings) {
    Review review = Reviewer.review(log.session(), settings);
    LeavingRule rule = review.line("short").orElseThrow().leaving();
    assertNotNull(rule);
    return rule;
  }

  private static LeavingRule withheld(Withheld why, Log log, ReviewSettings settings) {
    LeavingRule rule = rule(log, settings);
    assertEquals(why, rule.withheld());
    assertNull(rule.leaveAfter());
    assertTrue(rule.wording().startsWith("No leaving time can be given for the short line: "));
    return rule;
  }

  private static <T> T present(@Nullable T value) {
    assertNotNull(value);
    return value;
  }

  @Test
  void fallingBitesOverFourVisitsGiveALeavingTime() {
    ReviewSettings settings = ReviewSettings.DEFAULT.withMoveCostMinutes(12);
    LeavingRule rule = rule(visits(4, FALLING), settings);
    assertNull(rule.withheld(), rule.wording());
    assertEquals(4, rule.visits());
    assertEquals(44, rule.bites());
    LeavingRule.Decline decline = present(rule.decline());
    LeavingRule.LeaveAfter leave = present(rule.leaveAfter());
    // The rule itself: the rate on leaving is that of the whole round, moving included.
    double x = leave.minutes();
    double gained = (1 - Math.exp(-decline.decay() * x)) / decline.decay();
    assertEquals(Math.exp(-decline.decay() * x), gained / (x + 12), 1e-9);
    assertTrue(leave.limits().low() < x && x < present(leave.limits().high()));
    assertTrue(decline.limits().low() < decline.decay());
    assertEquals(
        MarginalValue.exponential(1, decline.limits().high(), 12).leaveAfter(),
        leave.limits().low(),
        1e-12);
    assertTrue(
        rule.wording()
            .matches(
                "The short line starts at \\d+ bites an hour with a bait in and halves about every"
                    + " \\d+ min \\(4 visits\\). Where a move costs 12 min: leave after about \\d+"
                    + " min with a bait in \\(\\d+–\\d+\\), if the line moved to starts as well as"
                    + " this one did\\."),
        rule.wording());
  }

  /** Bins of all visits put together fit as each visit's own do. */
  @Test
  void visitsPutTogetherFitAsTheyWouldApart() {
    double[] lengths = {2.5, 4, 3.25};
    double[][] bites = {{0.2, 2.4}, {0.9, 1.1, 3.9, 4}, {3.1}};
    Visits visits = Visits.of(lengths, bites);
    double[] middles = new double[11];
    double[] counts = new double[11];
    double[] hours = new double[11];
    int bin = 0;
    for (int v = 0; v < 3; v++) {
      for (int minute = 0; minute < Math.ceil(lengths[v]); minute++, bin++) {
        double width = Math.min(1, lengths[v] - minute);
        int from = minute;
        double to = minute + width;
        double end = lengths[v];
        middles[bin] = minute + width / 2;
        hours[bin] = width / 60;
        counts[bin] =
            Arrays.stream(bites[v]).filter(b -> b >= from && (b < to || to == end)).count();
      }
    }
    assertEquals(11, bin);
    DeclineFit apart = DeclineFit.of(org.fadeline.stats.ChangePointBins.of(counts, hours), middles);
    DeclineFit together = visits.fit(1);
    assertEquals(apart.decay(), together.decay(), 1e-9);
    assertEquals(apart.startingRate(), together.startingRate(), 1e-6);
    assertEquals(apart.pDecline(), together.pDecline(), 1e-9);
    assertEquals(7, visits.bites());
  }

  @Test
  void twoVisitsAreTooFew() {
    LeavingRule rule = withheld(Withheld.FEW_VISITS, visits(2, FALLING), ReviewSettings.DEFAULT);
    assertNull(rule.decline());
    assertTrue(rule.wording().endsWith("that takes 3 visits, and there were 2."), rule.wording());
  }

  @Test
  void evenBitesGiveNone() {
    LeavingRule rule = withheld(Withheld.NO_DECLINE, visits(4, EVEN), ReviewSettings.DEFAULT);
    assertTrue(present(rule.decline()).limits().p() >= 0.05);
    assertTrue(rule.wording().contains("over 4 visits the record does not show that bites fall"));
  }

  @Test
  void movesThatCostNothingGiveNone() {
    withheld(Withheld.NO_COST, visits(4, FALLING), ReviewSettings.DEFAULT.withMoveCostMinutes(0));
  }

  @Test
  void noBitesGiveNone() {
    withheld(Withheld.NO_BITES, visits(4, new int[0]), ReviewSettings.DEFAULT);
  }

  /** A stay known by its first and last fish alone has no end to leave at. */
  @Test
  void fishAloneGiveNone() {
    Log log = Log.from("10:00", "15:00");
    for (int i = 0; i < 4; i++) {
      LocalTime start = LocalTime.of(10, 0).plusMinutes(55L * i);
      for (int fish : FALLING) {
        log.landed(start.plusMinutes(fish).plusSeconds(7).toString(), "short", 500);
      }
      log.landed(start.plusMinutes(50).plusSeconds(3).toString(), "edge", 500);
    }
    withheld(Withheld.ENDS_UNKNOWN, log, ReviewSettings.DEFAULT);
  }

  @Test
  void aLineNeverFishedHasNoRule() {
    Log log = visits(1, EVEN).fed("10:00", "far");
    Review review = Reviewer.review(log.session(), ReviewSettings.DEFAULT);
    assertNull(review.line("far").orElseThrow().leaving());
  }
}
