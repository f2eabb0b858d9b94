package org.fadeline.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.fadeline.log.RecordingAlignment.Point;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Outcome;
import org.junit.jupiter.api.Test;

/** A recording against the match: offset, drift, and what a session keeps of them. */
class RecordingAlignmentTest {
  private static final long ALL_IN = 1_786_179_600_000L;
  private static final long HOUR = 3_600_000;
  private static final Match MATCH = new Match(ALL_IN, ALL_IN + 5 * HOUR, MatchRules.UNSTATED);

  /** To the millisecond, the unit of an instant. */
  private static void assertNear(long expected, long actual) {
    assertTrue(Math.abs(expected - actual) <= 1, () -> expected + " but " + actual);
  }

  @Test
  void oneMomentGivesTheOffset() {
    // The camera was switched on before the call: all in is heard 12 min 30 s into the film.
    RecordingAlignment film = new RecordingAlignment(0, 1).through(new Point(750_000, ALL_IN));
    assertEquals(ALL_IN - 750_000, film.start());
    assertEquals(ALL_IN + 60_000, film.instantAt(810_000));
    assertEquals(810_000.0, recordingAt(film, ALL_IN + 60_000), 1e-9);
    assertEquals(0, film.driftSecondsAnHour());
  }

  @Test
  void twoMomentsGiveTheDrift() {
    // By hand: after four hours the film shows 4 h 0 min 8 s, so that it gains 2 s an hour.
    RecordingAlignment film =
        RecordingAlignment.through(
            new Point(60_000, ALL_IN), new Point(60_000 + 4 * HOUR + 8_000, ALL_IN + 4 * HOUR));
    assertEquals(2, film.driftSecondsAnHour(), 1e-9);
    assertEquals(ALL_IN, film.instantAt(60_000));
    assertEquals(ALL_IN + 2 * HOUR, film.instantAt(60_000 + 2 * HOUR + 4_000));
    assertFalse(film.isDoubtful());
  }

  @Test
  void theOrderOfTheTwoMomentsDoesNotMatter() {
    Point early = new Point(10_000, ALL_IN);
    Point late = new Point(3_700_000, ALL_IN + HOUR);
    RecordingAlignment film = RecordingAlignment.through(late, early);
    assertEquals(RecordingAlignment.through(early, late).rate(), film.rate(), 1e-12);
    assertNear(ALL_IN, film.instantAt(10_000));
  }

  @Test
  void momentsTooCloseOrAgainstEachOtherAreRefusedWithWords() {
    Point one = new Point(100_000, ALL_IN);
    String close =
        assertThrows(
                IllegalArgumentException.class,
                () -> RecordingAlignment.through(one, new Point(150_000, ALL_IN + 50_000)))
            .getMessage();
    assertTrue(String.valueOf(close).contains("less than a minute"), close);
    String against =
        assertThrows(
                IllegalArgumentException.class,
                () -> RecordingAlignment.through(one, new Point(900_000, ALL_IN - 900_000)))
            .getMessage();
    assertTrue(String.valueOf(against).contains("check both"), against);
  }

  @Test
  void aDriftThatNoCameraHasIsDoubted() {
    Point one = new Point(0, ALL_IN);
    assertTrue(RecordingAlignment.through(one, new Point(HOUR, ALL_IN + 2 * HOUR)).isDoubtful());
  }

  @Test
  void aSessionKeepsItRelativeToAllIn() {
    RecordingAlignment film = new RecordingAlignment(ALL_IN - 750_000, 1.0005);
    Outcome.Media media = film.media("film/day.mp4", MATCH);
    assertEquals(new Outcome.Media("film/day.mp4", -750_000, 1.0005), media);
    assertEquals(film, RecordingAlignment.of(media, MATCH));
  }

  @Property
  void placeAndInstantAreInverse(
      @ForAll @LongRange(min = 0, max = 30_000_000) long recording,
      @ForAll @DoubleRange(min = 0.5, max = 20) double rate) {
    RecordingAlignment film = new RecordingAlignment(ALL_IN, rate);
    // The instant is a whole millisecond, half of one off at most.
    assertEquals(
        (double) recording,
        recordingAt(film, film.instantAt((double) recording)),
        0.5 * rate + 1e-6);
  }

  @Property
  void throughTwoPointsGoesThroughBoth(
      @ForAll @LongRange(min = 0, max = 1_000_000) long first,
      @ForAll @LongRange(min = 100_000, max = 18_000_000) long passed,
      @ForAll @DoubleRange(min = 0.9, max = 1.1) double rate) {
    Point one = new Point(first, ALL_IN);
    Point other = new Point(first + Math.round(passed * rate), ALL_IN + passed);
    RecordingAlignment film = RecordingAlignment.through(one, other);
    assertNear(one.instant(), film.instantAt((double) one.recordingMillis()));
    assertNear(other.instant(), film.instantAt((double) other.recordingMillis()));
  }

  /** The place in the recording, milliseconds, that shows an instant. */
  private static double recordingAt(RecordingAlignment film, long instant) {
    return (instant - film.start()) * film.rate();
  }
}
