package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.Line;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The definitions of spells, fished time, bait time and bites, one by one. */
class EffortTest {
  private static LineEffort line(Log log, String name) {
    return log.effort().line(name).orElseThrow();
  }

  private static TimeSpan span(String from, String to) {
    return new TimeSpan(Log.millis(from), Log.millis(to));
  }

  @Test
  void aSpellStartsAtTheFirstWaterEventAndEndsAtTheMove() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "short")
            .cast("10:05", "short")
            .move("10:40", "short")
            .cast("10:45", "long");
    assertEquals(span("10:05", "10:40"), line(log, "short").spells().get(0).span());
    assertEquals(span("10:45", "15:00"), line(log, "long").spells().get(0).span());
  }

  @Test
  void aCastOnAnotherLineEndsTheSpell() {
    Log log = Log.from("10:00", "15:00").cast("10:00", "short").cast("10:30", "long");
    assertEquals(span("10:00", "10:30"), line(log, "short").spells().get(0).span());
  }

  @Test
  void stoppedEndsTheSpell() {
    Log log =
        Log.from("10:00", "15:00").cast("10:00", "short").stopped("10:20").cast("11:00", "short");
    List<Spell> spells = line(log, "short").spells();
    assertEquals(span("10:00", "10:20"), spells.get(0).span());
    assertEquals(span("11:00", "15:00"), spells.get(1).span());
  }

  @Test
  void aRigOutForUpToTenMinutesIsAGapInTheSpell() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .off("10:20", "short")
            .cast("10:30", "short");
    List<Spell> spells = line(log, "short").spells();
    assertEquals(1, spells.size());
    assertEquals(50 / 60.0, spells.get(0).fishedHours(), 1e-12);
    assertEquals(
        List.of(span("10:00", "10:20"), span("10:30", "11:00")), spells.get(0).baitSpans());
  }

  @Test
  void aRigOutForLongerEndsTheSpellWhereItCameOut() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .off("10:20", "short")
            .cast("10:30:01", "short");
    List<Spell> spells = line(log, "short").spells();
    assertEquals(span("10:00", "10:20"), spells.get(0).span());
    assertEquals(span("10:30:01", "11:00"), spells.get(1).span());
  }

  @Test
  void aFishOnAnotherLineWithNoMoveLeavesTheTimeBetweenUnassigned() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .landed("10:30", "long", 800);
    Effort effort = log.effort();
    assertEquals(span("10:00", "10:10"), line(log, "short").spells().get(0).span());
    assertEquals(span("10:30", "11:00"), line(log, "long").spells().get(0).span());
    assertEquals(
        List.of(new Effort.Unassigned(span("10:10", "10:30"), "short", "long")),
        effort.unassigned());
    assertTrue(effort.warnings().get(0).text().contains("20 min belong to neither line"));
    LineReview.Rates rates = Rates.ofLine(line(log, "short"), effort.unassigned());
    assertEquals(6, assertPresent(rates.fish()).perHour(), 1e-12);
    LineReview.WithUnassigned range = rates.withUnassigned();
    assertNotNull(range);
    assertEquals(2, assertPresent(range.fish()).perHour(), 1e-12);
    assertEquals(2, assertPresent(range.bite()).perHour(), 1e-12);
    assertEquals(1000, assertPresent(range.weight()).perHour(), 1e-9);
  }

  /** A bite where no time can be said to have been fished has no rate to go into. */
  @Test
  void bitesOfASpellWithoutBaitTimeStayOutOfRatesAndFades() {
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .bite("10:20", "short")
            .cast("10:30", "long")
            .bite("10:40", "long")
            .bite("10:50", "short")
            .bite("10:55", "long");
    LineEffort line = line(log, "short");
    assertEquals(2, line.spells().size());
    assertEquals(0, line.spells().get(1).baitHours());
    assertEquals(2, line.spells().stream().mapToInt(s -> s.caught().bites()).sum());
    LineReview.Rates rates = Rates.ofLine(line, log.effort().unassigned());
    assertEquals(2, assertPresent(rates.bite()).perHour(), 1e-12);
    LineReview.WithUnassigned range = rates.withUnassigned();
    assertNotNull(range);
    // The bite counts where the time beside it does: 2 in 30 + 10 + 5 min.
    assertEquals(2 / 0.75, assertPresent(range.bite()).perHour(), 1e-12);
    FadeTrack track = new FadeTrack(log.session(), line, ReviewSettings.Measure.BITES, Grade.FULL);
    assertEquals(1, track.record().count(20));
    assertEquals(0, track.record().count(29));
  }

  @Test
  void anOffThatNamesAnotherLineIsTakenForTheLineBeingFishedAndSaid() {
    Log log = Log.from("10:00", "11:00").cast("10:00", "short").fed("10:10", "long");
    log.off("10:20", "long").cast("10:25", "short").move("10:40", "long");
    assertEquals(15 / 60.0 + 20 / 60.0, line(log, "short").spells().get(0).fishedHours(), 1e-12);
    List<Course.Warning> warnings = log.effort().warnings();
    assertEquals(Log.millis("10:20"), warnings.get(0).at());
    assertTrue(warnings.get(0).text().startsWith("2 times"), warnings.get(0).text());
  }

  @Test
  void aCastShortlyBeforeAllInFishesFromAllInOn() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("09:59:50", "short")
            .landed("10:30", "short", 500)
            .landed("10:45", "short", 500);
    LineEffort line = line(log, "short");
    assertEquals(span("10:00", "11:00"), line.spells().get(0).span());
    assertFalse(line.spells().get(0).opensWithFish());
    assertEquals(2, assertPresent(Rates.ofLine(line, List.of()).fish()).perHour(), 1e-12);
    assertTrue(log.effort().warnings().get(0).text().contains("before all in"));
  }

  @Test
  void aCastLongBeforeAllInOrOnALineSinceLeftDoesNotCount() {
    Log early = Log.from("10:00", "11:00").cast("09:49", "short").landed("10:30", "short", 500);
    assertTrue(line(early, "short").spells().get(0).opensWithFish());
    Log left =
        Log.from("10:00", "11:00")
            .cast("09:58", "short")
            .move("09:59", "short")
            .landed("10:30", "short", 500);
    assertTrue(line(left, "short").spells().get(0).opensWithFish());
  }

  @Test
  void aRigOutWhileAFishIsHandledDoesNotLengthenTheGap() {
    // Gaps of 1 min, and of 9 min with the rig out for 8 of them: both 1 min of handling.
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .cast("10:11", "short")
            .landed("10:20", "short", 500)
            .off("10:20:30", "short")
            .cast("10:29", "short")
            .landed("10:40", "short", 500)
            .landed("10:50", "short", 500)
            .cast("10:51", "short");
    // Gaps without the rig out: 1 min, 30 s, 1 min; the forgotten cast costs their median, 1 min.
    Spell spell = line(log, "short").spells().get(0);
    assertEquals((120 - 8.5) / 60, spell.fishedHours(), 1e-12);
    assertEquals((120 - 8.5 - 3.5) / 60, spell.baitHours(), 1e-12);
  }

  private static Rate assertPresent(@Nullable Rate rate) {
    assertNotNull(rate);
    return rate;
  }

  @Test
  void afterAnOffTheNextLineLeavesNothingUnassigned() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .off("10:20", "short")
            .landed("10:30", "long", 800);
    assertEquals(List.of(), log.effort().unassigned());
    assertEquals(span("10:00", "10:20"), line(log, "short").spells().get(0).span());
  }

  @Test
  void theFishThatOpensASpellIsLeftOutOfItsRates() {
    Log log =
        Log.from("10:00", "11:00").landed("10:00", "short", 500).landed("10:30", "short", 700);
    LineEffort line = line(log, "short");
    assertTrue(line.spells().get(0).opensWithFish());
    assertEquals(2, line.spells().get(0).caught().landed());
    LineReview.Rates rates = Rates.ofLine(line, List.of());
    assertEquals(1, assertPresent(rates.fish()).perHour(), 1e-12);
    assertEquals(700, assertPresent(rates.weight()).perHour(), 1e-9);
  }

  @Test
  void handlingRunsFromTheHookUpToTheNextCast() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .hooked("10:10", "short")
            .landed("10:12", "short", 500)
            .cast("10:13", "short")
            .bite("10:20", "short")
            .landed("10:30", "short", 500)
            .cast("10:31", "short");
    Spell spell = line(log, "short").spells().get(0);
    assertEquals(1, spell.fishedHours(), 1e-12);
    assertEquals(56 / 60.0, spell.baitHours(), 1e-12);
  }

  @Test
  void aForgottenCastCostsTheLinesMedianGapAndNoMore() {
    // Logged gaps of 2 and 4 min: the median is 3 min; the fish at 10:40 has no cast after it
    // before the one at 10:50, and the last one none at all.
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .cast("10:12", "short")
            .landed("10:20", "short", 500)
            .cast("10:24", "short")
            .landed("10:40", "short", 500)
            .landed("10:50", "short", 500)
            .cast("10:51", "short");
    // Gaps: 2, 4, median of {2, 4, 1} = 2 for the forgotten one, 1.
    assertEquals((120 - 9) / 60.0, line(log, "short").spells().get(0).baitHours(), 1e-12);
  }

  @Test
  void theMedianGapStopsAtTheNextTake() {
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .cast("10:16", "short")
            .landed("10:40", "short", 500)
            .bite("10:41", "short")
            .cast("10:50", "short");
    assertEquals((120 - 7) / 60.0, line(log, "short").spells().get(0).baitHours(), 1e-12);
  }

  @Test
  void noGapIsLongerThanThreeMedians() {
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .cast("10:11", "short")
            .landed("10:20", "short", 500)
            .cast("10:21", "short")
            .landed("10:30", "short", 500)
            .cast("11:00", "short");
    assertEquals((120 - 5) / 60.0, line(log, "short").spells().get(0).baitHours(), 1e-12);
  }

  @Test
  void withoutLoggedGapsNothingIsTakenOff() {
    Log log =
        Log.from("10:00", "12:00")
            .landed("10:10", "short", 500)
            .landed("10:20", "short", 500)
            .bite("10:30", "short");
    Spell spell = line(log, "short").spells().get(0);
    assertEquals(spell.fishedHours(), spell.baitHours(), 1e-12);
  }

  @Test
  void aBiteJustBeforeAHookUpIsTheSameBite() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .bite("10:10:00", "short")
            .hooked("10:10:10", "short")
            .landed("10:12", "short", 500)
            .cast("10:13", "short")
            .bite("10:20:00", "short")
            .hooked("10:20:11", "short")
            .lost("10:21", "short");
    LineEffort line = line(log, "short");
    assertEquals(3, line.bites().size());
    assertEquals(Log.millis("10:10:10"), line.bites().get(0).at());
    assertEquals(Effort.Became.LANDED, line.bites().get(0).became());
    assertEquals(1, line.spells().get(0).caught().lost());
  }

  @Test
  void anUnresolvedHookUpIsABiteAndALandingOfSeveralIsThatMany() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .hooked("10:05", "short")
            .cast("10:06", "short")
            .landed("10:10", "short", 3, 900);
    LineEffort line = line(log, "short");
    assertEquals(4, line.bites().size());
    assertEquals(3, line.fish().size());
    assertEquals(300.0, line.fish().get(2).grams());
  }

  @Test
  void foulHookedFishCountOnlyWhereTheMatchSaysSo() {
    Log log = Log.from("10:00", "11:00").cast("10:00", "short").foul("10:05", "short", 900);
    assertEquals(0, line(log, "short").fish().size());
    assertEquals(1, line(log, "short").spells().get(0).caught().foul());
    log.rules(new MatchRules(0, true, false, null, null));
    assertEquals(1, line(log, "short").fish().size());
  }

  @Test
  void aFishBeingPlayedAtAllOutJoinsTheLastSpellWhereItCounts() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .hooked("10:59", "short")
            .landed("11:09", "short", 900);
    assertEquals(0, line(log, "short").fish().size());
    assertTrue(log.effort().warnings().get(0).text().contains("after all out"));
    log.rules(new MatchRules(10, false, false, null, null));
    LineEffort line = line(log, "short");
    assertEquals(1, line.fish().size());
    assertEquals(span("10:00", "11:00"), line.spells().get(0).span());
  }

  @Test
  void aWaterEventWithoutALineBelongsToTheLineBeingFished() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .landed("10:10", null, 400)
            .move("10:20", "short")
            .landed("10:30", null, 400);
    assertEquals(1, line(log, "short").fish().size());
    assertTrue(log.effort().warnings().get(0).text().contains("no line being fished"));
  }

  @Test
  void theGradeTellsWhatTheRecordCanCarry() {
    Log full = Log.from("10:00", "11:00");
    for (int m = 10; m < 50; m += 2) {
      full.cast("10:" + m, "short").landed("10:" + (m + 1), "short", 300);
    }
    assertEquals(Grade.FULL, RecordGrade.of(full.session()));
    Log one = Log.from("10:00", "11:00").cast("10:00", "short");
    for (int m = 10; m < 50; m += 2) {
      one.landed("10:" + m, "short", 300);
    }
    assertEquals(Grade.MOVES_AND_FISH, RecordGrade.of(one.session()));
    Log fish = Log.from("10:00", "11:00").landed("10:10", "short", 300);
    assertEquals(Grade.FISH_ONLY, RecordGrade.of(fish.session()));
    Log counts = Log.from("10:00", "11:00").count("10:30", "short", 12, 4000);
    assertEquals(Grade.COUNTS, RecordGrade.of(counts.session()));
  }

  @Test
  void clickerCountsAloneTellOfTheTimeSinceTheLastCount() {
    Log log =
        Log.from("10:00", "12:00")
            .count("10:30", "short", 12, 4000)
            .count("11:00", "short", 6, 2000)
            .move("11:05", "short")
            .count("11:45", "long", 2, 3000);
    LineEffort line = line(log, "short");
    assertEquals(span("10:00", "11:00"), line.spells().get(0).span());
    assertEquals(18, line.fish().size());
    assertEquals(span("11:05", "11:45"), line(log, "long").spells().get(0).span());
  }

  @Test
  void countsBesideCastsKeepTheirFish() {
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .landed("10:20", "short", 900)
            .count("10:30", "short", 5, 2900)
            .count("11:00", "short", 3, 900)
            .count("11:10", "long", 2, 800);
    assertEquals(Grade.COUNTS, RecordGrade.of(log.session()));
    LineEffort line = line(log, "short");
    assertEquals(8, line.fish().size());
    assertEquals(3800, line.spells().get(0).caught().weightG(), 1e-9);
    assertEquals(1, line.spells().size());
    assertEquals(0, line(log, "long").fish().size());
    assertTrue(log.effort().warnings().get(0).text().startsWith("One clicker count on a line"));
  }

  @Test
  void aClockToldToTheMinuteIsSeen() {
    Log log = Log.from("10:00", "12:00");
    for (int m = 10; m < 30; m++) {
      log.landed("10:" + m, "short", 100);
    }
    assertEquals(60, RecordGrade.clockPrecisionSeconds(log.session()));
    Log fine = Log.from("10:00", "12:00").landed("10:10:07", "short", 100);
    assertEquals(1, RecordGrade.clockPrecisionSeconds(fine.session()));
  }

  /** Where casts are not logged each fish costs the time set for that kind of line. */
  @Test
  void aHandlingTimeStandsInWhereNoCastIsLogged() {
    Log log =
        Log.from("10:00", "11:00")
            .bite("10:05", "short")
            .landed("10:10", "short", 500)
            .landed("10:20", "short", 2, 900)
            .bite("10:21", "short")
            .hooked("10:40", "short")
            .lost("10:41", "short")
            .landed("10:59", "short", 500);
    Session session = log.session();
    Line named = session.lines().get(0);
    Session edge =
        session.withLines(
            List.of(
                new Line(
                    named.id(), named.name(), "Edge", named.spot(), named.place(), named.rig())));
    HandlingTimes times = new HandlingTimes(Map.of("edge", 100.0));
    // 100 s; 200 s for two fish, cut at the next bite after 60 s; nothing for the lost one; 60 s to
    // all out for the last.
    Spell spell = Effort.of(edge, times).lines().get(0).spells().get(0);
    assertEquals(55 * 60 - 100 - 60 - 60, spell.baitHours() * 3600, 1e-6);
    Spell unknown = Effort.of(session, times).lines().get(0).spells().get(0);
    assertEquals(unknown.fishedHours(), unknown.baitHours(), 1e-12);
    Spell off = Effort.of(edge).lines().get(0).spells().get(0);
    assertEquals(off.fishedHours(), off.baitHours(), 1e-12);
    Review review = Reviewer.review(edge, ReviewSettings.DEFAULT.withHandling(times));
    assertTrue(
        review.course().warnings().stream().anyMatch(w -> w.text().contains("100 s taken off")));
    assertThrows(IllegalArgumentException.class, () -> new HandlingTimes(Map.of("edge", 1000.0)));
  }

  @Test
  void aLoggedGapIsUsedBeforeTheHandlingTimeSet() {
    Log log =
        Log.from("10:00", "11:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .cast("10:11", "short");
    Session session = log.session();
    Line named = session.lines().get(0);
    Session edge =
        session.withLines(
            List.of(
                new Line(
                    named.id(), named.name(), "edge", named.spot(), named.place(), named.rig())));
    Spell spell =
        Effort.of(edge, new HandlingTimes(Map.of("edge", 100.0))).lines().get(0).spells().get(0);
    assertEquals(59 / 60.0, spell.baitHours(), 1e-12);
  }

  @Test
  void aLineNotFishedHasNoRate() {
    Log log = Log.from("10:00", "11:00").fed("10:00", "edge").cast("10:00", "short");
    LineReview.Rates rates = Rates.ofLine(line(log, "edge"), List.of());
    assertNull(rates.fish());
    assertFalse(line(log, "edge").spells().iterator().hasNext());
  }
}
