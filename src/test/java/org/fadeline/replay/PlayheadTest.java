package org.fadeline.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.fadeline.replay.Playhead.Motion;
import org.fadeline.replay.Playhead.Range;
import org.junit.jupiter.api.Test;

/** Arithmetic of the playhead; every expected value is worked out by hand. */
class PlayheadTest {
  private static final Range MATCH = new Range(1_000_000, 19_000_000);
  private static final long SECOND = 1_000_000_000L;

  private static Playhead playing(int speed, boolean reverse) {
    return new Playhead(10_000_000, 0, MATCH, new Motion(true, speed, reverse, null));
  }

  @Test
  void oneSecondAtSixtyIsAMinute() {
    assertEquals(10_060_000, playing(60, false).advance(SECOND).at());
    assertEquals(9_940_000, playing(60, true).advance(SECOND).at());
  }

  @Test
  void aSixtiethOfASecondAtRealTimeKeepsItsFraction() {
    Playhead p = playing(1, false);
    for (int i = 0; i < 60; i++) {
      p = p.advance(16_666_667);
    }
    assertEquals(10_001_000, p.at());
    assertEquals(20, p.nanos());
  }

  @Test
  void standingDoesNotMove() {
    Playhead p = Playhead.startOf(MATCH);
    assertEquals(p, p.advance(SECOND));
  }

  @Test
  void stopsAtBothEnds() {
    Playhead end = playing(600, false).advance(3600 * SECOND);
    assertEquals(MATCH.to(), end.at());
    assertFalse(end.motion().playing());
    Playhead start = playing(600, true).advance(3600 * SECOND);
    assertEquals(MATCH.from(), start.at());
    assertFalse(start.motion().playing());
  }

  @Test
  void playingAtTheEndStartsAgain() {
    Playhead again = Playhead.startOf(MATCH).seek(Long.MAX_VALUE).play();
    assertEquals(MATCH.from(), again.at());
    assertTrue(again.motion().playing());
    Playhead back = Playhead.startOf(MATCH).with(new Motion(false, 60, true, null)).play();
    assertEquals(MATCH.to(), back.at());
  }

  @Test
  void loopsBothWays() {
    Range loop = new Range(10_000_000, 10_010_000);
    Playhead p = playing(1, false).with(new Motion(true, 1, false, loop));
    assertEquals(10_003_000, p.advance(13 * SECOND).at());
    Playhead back = p.with(new Motion(true, 1, true, loop)).seek(10_004_000);
    assertEquals(10_009_000, back.advance(5 * SECOND).at());
    assertEquals(10_000_000, p.seek(2_000_000).advance(SECOND).at());
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThrows(IllegalArgumentException.class, () -> new Motion(true, 0, false, null));
    assertThrows(IllegalArgumentException.class, () -> new Motion(true, 601, false, null));
    assertThrows(IllegalArgumentException.class, () -> new Range(2, 1));
    assertThrows(IllegalArgumentException.class, () -> playing(1, false).advance(-1));
    assertThrows(IllegalArgumentException.class, () -> new Playhead(0, 0, MATCH, Motion.STANDING));
    assertEquals(600, Motion.STANDING.withSpeed(9000).speed());
  }

  @Property(tries = 200, seed = "20260101")
  void theSameTimeInPiecesOrAtOnceEndsAtTheSameInstant(
      @ForAll @Size(min = 1, max = 30) List<@LongRange(min = 0, max = 50_000_000) Long> pieces,
      @ForAll @IntRange(min = 1, max = 600) int speed,
      @ForAll boolean reverse) {
    Playhead pieced = playing(speed, reverse);
    long total = 0;
    for (long piece : pieces) {
      pieced = pieced.advance(piece);
      total += piece;
    }
    assertEquals(playing(speed, reverse).advance(total), pieced);
  }

  @Property(tries = 300, seed = "20260102")
  void neverLeavesItsRangeOrLoop(
      @ForAll @LongRange(min = 0, max = 40_000_000_000L) long elapsed,
      @ForAll @IntRange(min = 1, max = 600) int speed,
      @ForAll boolean reverse,
      @ForAll @LongRange(min = 1_000_000, max = 18_000_000) long from,
      @ForAll @LongRange(min = 1, max = 1_000_000) long length) {
    assertTrue(MATCH.holds(playing(speed, reverse).advance(elapsed).at()));
    Range loop = new Range(from, from + length);
    Playhead looped =
        playing(speed, reverse).seek(from).with(new Motion(true, speed, reverse, loop));
    assertTrue(loop.holds(looped.advance(elapsed).at()));
  }
}
