package org.fadeline.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The log clock is a function of the machine's time and of what was done to it. */
class LogClockTest {
  private static final long ALL_IN = 1_000_000_000L;
  private static final LogClock STANDING =
      LogClock.recording(new RecordingAlignment(ALL_IN - 60_000, 1), 500);

  @Test
  void aRecordingStandsUntilItIsPlayedAndGoesAtItsSpeed() {
    assertEquals(ALL_IN - 60_000, STANDING.instantAt(99_999));
    LogClock playing = STANDING.playing(true, 10_000);
    assertEquals(ALL_IN - 60_000 + 4_000, playing.instantAt(14_000));
    LogClock fast = playing.atSpeed(4, 14_000);
    assertEquals(ALL_IN - 60_000 + 4_000 + 8_000, fast.instantAt(16_000));
    LogClock paused = fast.playing(false, 16_000);
    assertEquals(12_000, paused.positionAt(1_000_000));
  }

  @Test
  void jumpsStayInTheRecordingAndKeepItPlaying() {
    LogClock playing = STANDING.playing(true, 0).at(30_000, 0);
    assertEquals(31_000, playing.positionAt(1_000));
    assertEquals(0, playing.at(-5, 1_000).positionAt(1_000));
  }

  @Test
  void realigningMovesTheMatchAndNotTheRecording() {
    LogClock playing = STANDING.playing(true, 0);
    LogClock aligned =
        playing.aligned(
            playing.alignment().through(new RecordingAlignment.Point(5_000, ALL_IN)), 5_000);
    assertEquals(ALL_IN, aligned.instantAt(5_000));
    assertEquals(5_000, aligned.positionAt(5_000));
  }

  @Test
  void liveIsNowAndTheRecordingWaitsWhereItWas() {
    LogClock live = STANDING.playing(true, 0).live(7_000);
    assertEquals(123_456, live.instantAt(123_456));
    assertEquals(7_000, live.fromRecording(200_000).positionAt(300_000));
  }

  @Test
  void speedsAreBroughtIntoRangeAndBadOnesRefused() {
    assertEquals(16, STANDING.atSpeed(100, 0).speed());
    assertThrows(
        IllegalArgumentException.class,
        () -> new LogClock(LogClock.Source.LIVE, STANDING.alignment(), 0, Double.NaN, false, 0));
  }
}
