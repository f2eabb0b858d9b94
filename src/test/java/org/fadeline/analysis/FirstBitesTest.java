package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.List;
import org.fadeline.analysis.FirstBite.Stretch;
import org.junit.jupiter.api.Test;

/** Rows, tallies and curves of the time to first bite after feeding. */
class FirstBitesTest {
  private static FirstBite of(Log log, String line) {
    Effort effort = log.effort();
    return new FirstBites(effort).of(effort.line(line).orElseThrow());
  }

  private static Stretch row(String fed, double entry, double exit, boolean bite) {
    return new Stretch(Log.millis(fed), entry, exit, bite);
  }

  @Test
  void aLineFedAtTenAndFishedAtHalfPastElevenEntersLate() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .cast("10:00", "short")
            .cast("11:30", "edge")
            .bite("11:34", "edge");
    FirstBite first = of(log, "edge");
    assertEquals(List.of(row("10:00", 90, 94, true)), first.rows());
    assertEquals(new FirstBite.Tally(1, 1, 0, 1, 0), first.tally());
  }

  @Test
  void leavingBeforeABiteIsCensoredNotDropped() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .cast("10:05", "edge")
            .move("10:25", "edge")
            .cast("10:25", "short")
            .cast("10:40", "edge")
            .move("10:50", "edge");
    FirstBite first = of(log, "edge");
    assertEquals(List.of(row("10:00", 5, 25, false), row("10:00", 40, 50, false)), first.rows());
    assertEquals(1, first.tally().censored());
  }

  @Test
  void feedsUpToFiveMinutesApartAreOneEpisodeAndAPatternIsOne() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .fed("10:05", "edge")
            .fed("10:10", "edge")
            .fed("10:15:01", "edge")
            .fed("11:00", "edge", 40, "11:30")
            .fed("11:34", "edge")
            .fed("11:40", "edge");
    assertEquals(
        List.of(
            Log.millis("10:00"), Log.millis("10:15:01"), Log.millis("11:00"), Log.millis("11:40")),
        FeedingEpisodes.bySpot(log.session()).getOrDefault("edge", List.of()).stream()
            .map(LogPlace::at)
            .toList());
  }

  /** At one instant the order in the log decides. */
  @Test
  void aBiteLoggedJustAfterAFeedAtTheSameInstantEndsTheEpisodeAtOnce() {
    Log log =
        Log.from("10:00", "15:00")
            .cast("10:00", "edge")
            .fed("10:20", "edge")
            .bite("10:20", "edge")
            .bite("10:30", "edge");
    FirstBite first = of(log, "edge");
    assertEquals(List.of(), first.rows());
    assertEquals(new FirstBite.Tally(1, 1, 0, 0, 0), first.tally());
    assertEquals(2, bites(first, 0) + bites(first, 10));
    assertEquals(0, bites(first, -5));
  }

  @Test
  void aBiteLoggedJustBeforeAFeedAtTheSameInstantBelongsToTheEpisodeBefore() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .cast("10:00", "edge")
            .bite("10:20", "edge")
            .fed("10:20", "edge")
            .bite("10:30", "edge");
    FirstBite first = of(log, "edge");
    assertEquals(List.of(row("10:00", 0, 20, true), row("10:20", 0, 10, true)), first.rows());
    assertEquals(1, bites(first, -5));
    assertEquals(0, bites(first, 0));
  }

  @Test
  void aBiteLoggedJustAfterTheNextFeedBelongsToIt() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .cast("10:00", "edge")
            .fed("10:20", "edge")
            .bite("10:20", "edge");
    FirstBite first = of(log, "edge");
    assertEquals(List.of(row("10:00", 0, 20, false)), first.rows());
    assertEquals(new FirstBite.Tally(2, 1, 1, 0, 0), first.tally());
  }

  private static int bites(FirstBite first, double fromMinute) {
    return first.feedResponse().stream()
        .filter(bin -> bin.fromMinute() == fromMinute)
        .mapToInt(FirstBite.ResponseBin::bites)
        .sum();
  }

  @Test
  void theNextFeedEndsTheEpisode() {
    Log log =
        Log.from("10:00", "15:00")
            .cast("10:00", "short")
            .fed("10:10", "short")
            .fed("10:30", "short")
            .bite("10:33", "short");
    assertEquals(
        List.of(row("10:10", 0, 20, false), row("10:30", 0, 3, true)), of(log, "short").rows());
  }

  @Test
  void linesOnOneSpotShareItsFeedAndItsFirstBite() {
    Log log =
        Log.from("10:00", "15:00")
            .spot("deck", "swim")
            .spot("shallow", "swim")
            .fed("10:00", "deck")
            .cast("10:00", "shallow")
            .bite("10:06", "shallow")
            .cast("10:10", "deck")
            .bite("10:12", "deck");
    assertEquals(List.of(row("10:00", 0, 6, true)), of(log, "shallow").rows());
    assertEquals(List.of(), of(log, "deck").rows());
  }

  @Test
  void handlingAtTheFeedDelaysTheEntry() {
    Log log =
        Log.from("10:00", "15:00")
            .cast("10:00", "short")
            .hooked("10:08", "short")
            .fed("10:09", "short")
            .landed("10:10", "short", 400)
            .cast("10:11", "short")
            .bite("10:15", "short");
    assertEquals(List.of(row("10:09", 2, 6, true)), of(log, "short").rows());
  }

  @Test
  void withFewerThanFiveFeedsAtRiskThereAreOnlyThePoints() {
    Log log =
        Log.from("10:00", "15:00")
            .cast("10:00", "short")
            .fed("10:10", "short")
            .bite("10:12", "short");
    FirstBite first = of(log, "short");
    assertNull(first.fromMinute());
    assertTrue(first.curve().isEmpty());
    assertEquals(1, first.rows().size());
  }

  @Test
  void theCurveStartsWhereFiveAreAtRisk() {
    // Six feeds half an hour apart, bitten after 2, 4, 6, 8, 10 and 12 min.
    Log log = Log.from("10:00", "15:00").cast("10:00", "short");
    for (int i = 0; i < 6; i++) {
      LocalTime fed = LocalTime.of(10, 10).plusMinutes(30L * i);
      log.fed(fed.toString(), "short");
      log.bite(fed.plusMinutes(2L * (i + 1)).toString(), "short");
    }
    FirstBite first = of(log, "short");
    assertEquals(0, first.fromMinute());
    assertEquals(6, first.curve().get(0).atRisk());
    // The product limit of six uncensored times falls by sixths; the median by the midpoint rule.
    assertEquals(0.5, first.curve().get(2).survival(), 1e-12);
    FirstBite.Median median = first.median();
    assertNotNull(median);
    assertEquals(7, median.minutes(), 1e-9);
  }
}
