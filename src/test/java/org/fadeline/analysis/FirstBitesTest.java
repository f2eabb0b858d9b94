package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.List;
import org.fadeline.analysis.FirstBite.End;
import org.fadeline.analysis.FirstBite.Stretch;
import org.junit.jupiter.api.Test;

/** Rows, tallies and curves of the time to first bite after feeding. */
class FirstBitesTest {
  private static FirstBite of(Log log, String line) {
    Effort effort = log.effort();
    return new FirstBites(effort).of(effort.line(line).orElseThrow());
  }

  private static Stretch row(String fed, double entry, double exit, boolean bite) {
    return row(fed, entry, exit, bite ? End.BITE : End.CUT_OFF);
  }

  private static Stretch row(String fed, double entry, double exit, End end) {
    return new Stretch(Log.millis(fed), entry, exit, end);
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
    assertEquals(
        List.of(row("10:00", 5, 25, End.LEFT), row("10:00", 40, 50, End.LEFT)), first.rows());
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

  /** A line fed at ten and fished from half past eleven had no bait in before. */
  @Test
  void theSecondClockRunsWhileABaitIsIn() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .cast("10:00", "short")
            .cast("11:30", "edge")
            .bite("11:34", "edge");
    assertEquals(List.of(row("10:00", 0, 4, true)), of(log, "edge").baitIn().rows());
  }

  @Test
  void theSecondClockStandsStillWhileTheLineIsRested() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "edge")
            .cast("10:05", "edge")
            .move("10:25", "edge")
            .cast("10:25", "short")
            .cast("10:40", "edge")
            .bite("10:46", "edge");
    assertEquals(
        List.of(row("10:00", 0, 20, End.LEFT), row("10:00", 20, 26, true)),
        of(log, "edge").baitIn().rows());
  }

  /** The rig out for two minutes: one stay, its pieces joined on the second clock. */
  @Test
  void piecesOfOneStayJoinOnTheSecondClock() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "short")
            .cast("10:00", "short")
            .off("10:10", "short")
            .cast("10:12", "short")
            .bite("10:15", "short");
    FirstBite first = of(log, "short");
    assertEquals(
        List.of(row("10:00", 0, 10, End.CUT_OFF), row("10:00", 12, 15, true)), first.rows());
    assertEquals(List.of(row("10:00", 0, 13, true)), first.baitIn().rows());
  }

  /** The feed is the spot's: minutes on either line over it count. */
  @Test
  void linesOnOneSpotShareTheSecondClock() {
    Log log =
        Log.from("10:00", "15:00")
            .spot("deck", "swim")
            .spot("shallow", "swim")
            .fed("10:00", "deck")
            .cast("10:02", "deck")
            .cast("10:12", "shallow")
            .bite("10:15", "shallow");
    assertEquals(List.of(row("10:00", 2, 12, End.LEFT)), of(log, "deck").rows());
    assertEquals(List.of(row("10:00", 10, 13, true)), of(log, "shallow").baitIn().rows());
  }

  @Test
  void allOutAStoppedMatchAndTheNextFeedAreNotLeaving() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "short")
            .cast("10:00", "short")
            .fed("10:30", "short")
            .stopped("10:45")
            .cast("14:50", "short");
    assertEquals(
        List.of(
            row("10:00", 0, 30, End.CUT_OFF),
            row("10:30", 0, 15, End.CUT_OFF),
            row("10:30", 260, 270, End.CUT_OFF)),
        of(log, "short").rows());
  }

  /**
   * Six feeds, bitten after 2, 6 and 10 min and left after 4, 8 and 12: with leaving an end of its
   * own the share bitten is simply the count, 1/6, 2/6, 3/6; taking those left as if they would
   * have bitten like the rest makes it 1 − (5/6)(3/4)(1/2).
   */
  @Test
  void leavingCountsAsAnEndOfItsOwn() {
    FirstBite first = of(sixFeeds(), "short");
    List<FirstBite.LeavingStep> steps = first.sinceFeed().leaving().steps();
    assertEquals(6, steps.size());
    double[] bitten = {1, 1, 2, 2, 3, 3};
    double[] left = {0, 1, 1, 2, 2, 3};
    for (int i = 0; i < 6; i++) {
      assertEquals(2 * (i + 1), steps.get(i).minutes(), 1e-12);
      assertEquals(6 - i, steps.get(i).atRisk());
      assertEquals(bitten[i] / 6, steps.get(i).bitten(), 1e-12);
      assertEquals(left[i] / 6, steps.get(i).left(), 1e-12);
    }
    assertEquals(5.0 / 6 * 3 / 4 / 2, first.curve().get(2).survival(), 1e-12);
    assertEquals(steps, first.baitIn().leaving().steps(), "fished from the feed on: one clock");
  }

  private static Log sixFeeds() {
    Log log = Log.from("10:00", "15:00");
    for (int i = 0; i < 6; i++) {
      LocalTime fed = LocalTime.of(10, 0).plusMinutes(40L * i);
      log.fed(fed.toString(), "short");
      log.cast(fed.toString(), "short");
      String end = fed.plusMinutes(2L * (i + 1)).toString();
      if (i % 2 == 0) {
        log.bite(end, "short");
        log.move(fed.plusMinutes(15).toString(), "short");
      } else {
        log.move(end, "short");
      }
    }
    return log;
  }

  /** Come back to after it was left, a feed has ended already where leaving is an end. */
  @Test
  void whatComesAfterTheFirstLeavingOfAFeedIsNotCountedAgain() {
    Log log = sixFeeds();
    log.cast("14:20", "short").bite("14:25", "short");
    FirstBite first = of(log, "short");
    assertEquals(7, first.rows().size());
    FirstBite.LeavingStep last = first.sinceFeed().leaving().last();
    assertNotNull(last);
    assertEquals(0.5, last.bitten(), 1e-12);
    assertEquals(0.5, last.left(), 1e-12);
  }

  /** Nothing finer than its reports: a count tells no first bite, then or with hindsight. */
  @Test
  void clickerCountsTellNoFirstBite() {
    Log log =
        Log.from("10:00", "15:00")
            .fed("10:00", "short")
            .count("10:30", "short", 5, 2000)
            .fed("10:40", "short")
            .count("11:00", "short", 7, 3000)
            .count("11:30", "short", 2, 900);
    Review review = Reviewer.review(log.session(), ReviewSettings.DEFAULT);
    assertEquals(Grade.COUNTS, review.summary().grade());
    assertEquals(FirstBite.NONE, review.line("short").orElseThrow().firstBite());
    assertTrue(
        review.course().turningPoints().stream()
            .noneMatch(t -> t.kind() == Course.TurningKind.FIRST_BITE));
  }
}
