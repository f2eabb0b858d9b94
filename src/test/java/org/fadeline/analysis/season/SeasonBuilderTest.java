package org.fadeline.analysis.season;

import static org.fadeline.analysis.season.Summaries.bites;
import static org.fadeline.analysis.season.Summaries.line;
import static org.fadeline.analysis.season.Summaries.session;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.fadeline.analysis.season.Season.Basis;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.Season.Limits;
import org.fadeline.analysis.season.Season.PerHour;
import org.fadeline.analysis.season.SeasonFilter.Span;
import org.fadeline.analysis.season.SeasonFilter.WindWanted;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.BunchingFound;
import org.fadeline.analysis.season.SessionSummary.Day;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.analysis.season.SessionSummary.PastPlain;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A season's tables, by hand. */
class SeasonBuilderTest {
  private static Season all(SessionSummary... sessions) {
    return SeasonBuilder.build(List.of(sessions), SeasonFilter.ALL);
  }

  private static double value(@Nullable Double value) {
    assertNotNull(value);
    return value;
  }

  /**
   * Catch per effort over five days, the ratio of means: C = 6, 0, 9, 2, 12 over L = 1, 0.5, 2,
   * 0.25, 5 is 3.314286, and not the mean of ratios, 4.18.
   */
  @Test
  void aRateIsAllThatCameOverAllTheTime() {
    double[] fish = {6, 0, 9, 2, 12};
    double[] hours = {1, 0.5, 2, 0.25, 5};
    List<SessionSummary> sessions = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      sessions.add(
          session(
              "2026-06-0" + (i + 1),
              "Pond",
              line("pole", new Hour(1, hours[i] * 60, (int) fish[i], fish[i] * 500))));
    }
    Season season = SeasonBuilder.build(sessions, SeasonFilter.ALL);
    Cell cell = season.lines().get(0).hours().get(0);
    assertEquals(1, cell.hour());
    assertEquals(3.314286, value(cell.fish().perHour()), 1e-6);
    assertEquals(3.314286 * 500, value(cell.weight().perHour()), 1e-3);
    assertEquals(List.of(0, 1, 2, 3, 4), cell.sessions());
    Limits limits = cell.fish().limits();
    assertNotNull(limits);
    assertEquals(Basis.BOOTSTRAP, limits.basis());
    // Any draw lies between the least and the greatest rate of one day.
    assertTrue(limits.low() >= 0 && limits.low() < 3.31 && limits.high() > 3.32);
    assertTrue(limits.high() <= 8, limits.toString());
  }

  @Test
  void smallNumbersStaySmall() {
    Season season =
        all(
            session("2026-06-01", "Pond", line("pole", new Hour(0, 60, 4, 2000))),
            session("2026-06-02", "Pond", line("pole", new Hour(0, 60, 6, 3000))),
            session("2026-06-03", "Pond", line("edge", new Hour(4, 30, 0, 0))));
    PerHour pole = season.lines().get(1).whole().fish();
    assertEquals(5, value(pole.perHour()), 1e-12);
    assertEquals(2, pole.sessions());
    assertNull(pole.limits());
    PerHour edge = season.lines().get(0).whole().fish();
    assertEquals(0, value(edge.perHour()));
    Limits none = edge.limits();
    assertNotNull(none);
    assertEquals(Basis.NONE_CAUGHT, none.basis());
    // Garwood 1936: none seen, upper limit 3.6889 (Pearson and Hartley, table 40), in half an hour.
    assertEquals(2 * 3.6889, none.high(), 1e-3);
    assertNull(season.lines().get(0).whole().weight().limits());
  }

  @Test
  void aSessionWithAMissingWeightIsLeftOutOfWeightsAlone() {
    Season season =
        all(
            session("2026-06-01", "Pond", line("pole", new Hour(0, 60, 4, 2000))),
            session("2026-06-02", "Pond", Day.UNKNOWN, 1, line("pole", new Hour(0, 60, 6, 500))));
    Cell whole = season.lines().get(0).whole();
    assertEquals(5, value(whole.fish().perHour()), 1e-12);
    assertEquals(1, whole.weight().sessions());
    assertEquals(2000, value(whole.weight().perHour()), 1e-12);
  }

  /** With many sessions the large-sample form must agree with the draws it stands for. */
  @Test
  void theLargeSampleFormAgreesWithDraws() {
    Random random = new Random(5);
    double[] amounts = new double[200];
    double[] hours = new double[200];
    for (int i = 0; i < 200; i++) {
      hours[i] = 0.5 + random.nextDouble();
      amounts[i] = Math.round(hours[i] * 8 * (0.5 + random.nextDouble()));
    }
    Limits drawn = SessionDraws.perHour(amounts, hours, true, 1).limits();
    double[] twice = new double[400];
    double[] twiceHours = new double[400];
    for (int i = 0; i < 400; i++) {
      twice[i] = amounts[i % 200];
      twiceHours[i] = hours[i % 200];
    }
    Limits linear = SessionDraws.perHour(twice, twiceHours, true, 1).limits();
    assertNotNull(drawn);
    assertNotNull(linear);
    assertEquals(Basis.LINEARISED, linear.basis());
    double expected = (drawn.high() - drawn.low()) / Math.sqrt(2);
    assertEquals(expected, linear.high() - linear.low(), 0.08 * expected);
  }

  @Test
  void theOrderOfFilesDoesNotMatter() {
    List<SessionSummary> sessions = new ArrayList<>();
    for (int i = 1; i <= 9; i++) {
      sessions.add(
          session(
              "2026-06-0" + i,
              "Pond",
              line("pole", new Hour(0, 60, i, i * 400.0)),
              line("edge", bites("corn", i, i + 2.0))));
    }
    Season sorted = SeasonBuilder.build(sessions, SeasonFilter.ALL);
    Collections.shuffle(sessions, new Random(3));
    assertEquals(sorted, SeasonBuilder.build(sessions, SeasonFilter.ALL));
  }

  @Test
  void lessThanAMinuteGivesNoRate() {
    Season season =
        all(
            session(
                "2026-06-01",
                "Pond",
                line("pole", new Hour(1, 0.5, 1, 500), new Hour(2, 1, 0, 0))));
    List<Season.Cell> hours = season.lines().get(0).hours();
    // One fish in half a minute is one fish, not 120 an hour.
    assertEquals(new PerHour(1, 1, null, null), hours.get(0).fish());
    assertEquals(new PerHour(500, 1, null, null), hours.get(0).weight());
    assertEquals(0, value(hours.get(1).fish().perHour()));
    assertEquals(40, value(season.lines().get(0).whole().fish().perHour()), 1e-9);
  }

  @Test
  void aWaterKeepsItsCapitals() {
    Season season =
        all(
            session("2026-06-01", "Great Pond ", line("pole", bites("corn", 2, 4, 6))),
            session("2026-06-02", "great pond", line("pole", bites("corn", 8, 10, 12))));
    assertEquals(List.of(0, 1), group(season, By.WATER, "Great Pond").sessions());
  }

  @Test
  void firstBitesArePutTogetherByLineBaitAndWater() {
    Season season =
        all(
            session(
                "2026-06-01",
                "Pond",
                line("pole", bites("corn", 2, 4, 6)),
                line("edge", bites("pellets", 12, 14))),
            session("2026-06-02", "Lake", line("pole", bites("pellets", 8, 10, 12))));
    FirstBiteGroup pole = group(season, By.LINE, "pole");
    assertEquals(6, pole.tally().feeds());
    assertEquals(6, pole.tally().bites());
    assertNotNull(pole.curve());
    // 2 4 6 8 10 12: exactly one half on [6, 8), so 7 (midpoint rule).
    assertEquals(7, value(pole.curve().medianMinutes()), 1e-12);
    assertNull(pole.curve().low());
    assertEquals(List.of(0, 1), group(season, By.BAIT, "pellets").sessions());
    assertNull(group(season, By.BAIT, "corn").curve());
    assertEquals(3, group(season, By.WATER, "Lake").tally().bites());
    // Two waters are never in one session: nothing to tell within it.
    assertNull(group(season, By.WATER, "Lake").againstOthers().chiSquare());
  }

  /** Exponential times with a median of 10 min: 200 sessions drawn, 400 in random groups. */
  @Test
  void theMedianHasLimitsFromDrawsAndFromGroupsThatAgree() {
    Random random = new Random(9);
    List<SessionSummary> sessions = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      double[] minutes = new double[6];
      for (int k = 0; k < 6; k++) {
        minutes[k] = -Math.log(random.nextDouble()) * 10 / Math.log(2);
      }
      String date = LocalDate.of(2024, 1, 1).plusDays(i).toString();
      sessions.add(session(date, "Pond", line("pole", bites("corn", minutes))));
    }
    Season.Curve drawn = curve(sessions.subList(0, 200));
    Season.Curve grouped = curve(sessions);
    assertEquals(10, value(drawn.medianMinutes()), 1.2);
    assertEquals(10, value(grouped.medianMinutes()), 0.9);
    // Standard error of a median of n exponential times: 10/ln 2/√n.
    double error = 10 / Math.log(2) / Math.sqrt(1200);
    assertEquals(2 * 1.96 * error, value(drawn.high()) - value(drawn.low()), 0.35 * 4 * error);
    double less = error / Math.sqrt(2);
    assertEquals(2 * 2.09 * less, value(grouped.high()) - value(grouped.low()), 0.5 * 4 * less);
    assertTrue(value(grouped.low()) < 10 && value(grouped.high()) > 10, grouped.toString());
  }

  private static Season.Curve curve(List<SessionSummary> sessions) {
    Season.Curve curve =
        group(SeasonBuilder.build(sessions, SeasonFilter.ALL), By.LINE, "pole").curve();
    assertNotNull(curve);
    return curve;
  }

  /**
   * Within one session: 2, 4 against 6. At 2: 3 at risk, 2 of the first, expected 2/3, variance
   * 2/9; at 4: 1 of 2, expected 1/2, variance 1/4; at 6 only the other is left. A session of one
   * group alone adds nothing.
   */
  @Test
  void groupsAreTestedWithinSessions() {
    Season season =
        all(
            session(
                "2026-06-01",
                "Pond",
                line("pole", bites(null, 2, 4)),
                line("edge", bites(null, 6))),
            session("2026-06-02", "Pond", line("pole", bites(null, 50, 60))));
    FirstBiteGroup pole = group(season, By.LINE, "pole");
    double variance = 2 / 9.0 + 1 / 4.0;
    double difference = 2 - (2 / 3.0 + 1 / 2.0);
    assertEquals(
        difference * difference / variance, value(pole.againstOthers().chiSquare()), 1e-12);
  }

  private static FirstBiteGroup group(Season season, By by, String name) {
    return season.firstBites().stream()
        .filter(g -> g.by() == by && g.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void fadesAndStaysAreCountedByKindOfLine() {
    BunchingFound none = new BunchingFound(0, 0);
    Behind early =
        new Behind(
            List.of(
                new FadeFound(0.9, 80.0, 95.0, 110, new PastPlain(15, 2, 1500)),
                new FadeFound(0.3, 200.0, null, 230, null)),
            List.of(),
            none);
    Behind late =
        new Behind(
            List.of(new FadeFound(0.85, 120.0, 150.0, 155, new PastPlain(5, 0, 0))),
            List.of(),
            none);
    Season season =
        all(
            session("2026-06-01", "Pond", Summaries.behind("pole", early)),
            session("2026-06-02", "Pond", Summaries.behind("pole", late)));
    Season.FadeGroup pole = season.fades().get(0);
    assertEquals(3, pole.spells());
    assertEquals(2, pole.faded());
    assertEquals(List.of(80.0, 120.0), pole.minutes());
    assertEquals(100, value(pole.medianMinute()), 1e-12);
    assertEquals(new Season.PastPlainTally(2, 20, 2, 1500), pole.past());
    assertEquals(15, season.pastPlain(season.sessions().get(0)).minutes(), 1e-12);
  }

  @Test
  void filtersLeaveOutWhatTheRecordDoesNotTell() {
    Day warm = new Day(22.0, 25.0, 225.0, 3.0);
    Day cold = new Day(6.0, null, 10.0, 5.0);
    List<SessionSummary> sessions =
        List.of(
            session("2026-08-01", "Pond", warm, 0, line("pole", new Hour(0, 60, 4, 2000))),
            session("2026-12-01", "Lake", cold, 0, line("feeder", new Hour(0, 60, 4, 2000))),
            session("2026-08-02", null, line("pole", new Hour(0, 60, 4, 2000))));
    assertEquals(
        1, held(sessions, new SeasonFilter(Set.of("pond"), Set.of(), Set.of(), null, null)));
    assertEquals(2, held(sessions, new SeasonFilter(Set.of(), Set.of(8), Set.of(), null, null)));
    assertEquals(
        1, held(sessions, new SeasonFilter(Set.of(), Set.of(), Set.of("feeder"), null, null)));
    assertEquals(
        1, held(sessions, new SeasonFilter(Set.of(), Set.of(), Set.of(), new Span(20, 22), null)));
    assertEquals(1, held(sessions, wind(new WindWanted(new Span(0, 4), null))));
    // North, 350°, holds 10°; south-west does not.
    assertEquals(1, held(sessions, wind(new WindWanted(null, 350.0))));
    assertEquals(0, held(sessions, wind(new WindWanted(new Span(0, 4), 350.0))));
    assertEquals(3, held(sessions, SeasonFilter.ALL));
  }

  private static SeasonFilter wind(WindWanted wanted) {
    return new SeasonFilter(Set.of(), Set.of(), Set.of(), null, wanted);
  }

  private static int held(List<SessionSummary> sessions, SeasonFilter filter) {
    return SeasonBuilder.build(sessions, filter).sessions().size();
  }

  @Test
  void aFilteredSeasonHoldsTheLinesAskedForOnly() {
    SessionSummary session =
        session(
            "2026-08-01",
            "Pond",
            line("pole", new Hour(0, 60, 4, 2000)),
            line("edge", new Hour(4, 60, 9, 9000)));
    Season season =
        SeasonBuilder.build(
            List.of(session), new SeasonFilter(Set.of(), Set.of(), Set.of("edge"), null, null));
    assertEquals(List.of("edge"), season.lines().stream().map(Season.LineHours::group).toList());
  }
}
