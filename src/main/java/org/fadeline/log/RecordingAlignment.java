package org.fadeline.log;

import org.fadeline.model.Match;
import org.fadeline.model.Outcome;

/**
 * How a recording lies against the match.
 *
 * @param start instant of the match at which the recording starts, epoch milliseconds
 * @param rate seconds of the recording for each second of the match, in [0.001, 1000]; 1 where the
 *     camera's clock is true
 */
public record RecordingAlignment(long start, double rate) {
  /** Two points must lie this far apart to show a drift, milliseconds. */
  public static final long LEAST_APART_MILLIS = 60_000;

  /** Clocks of cameras drift by a few seconds a day; more than this share is another mistake. */
  private static final double MOST_DRIFT = 0.02;

  private static final double SECONDS_AN_HOUR = 3600;

  /** Checks the rate. */
  public RecordingAlignment {
    if (!(rate >= 0.001 && rate <= 1000)) {
      throw new IllegalArgumentException("rate must be 0.001 to 1000: " + rate);
    }
  }

  /**
   * A moment seen in the recording whose time in the match is known, such as the all-in call.
   *
   * @param recordingMillis place in the recording, milliseconds from its start
   * @param instant in the match, epoch milliseconds
   */
  public record Point(long recordingMillis, long instant) {}

  /** Returns how a session says that its footage lies. */
  public static RecordingAlignment of(Outcome.Media media, Match match) {
    return new RecordingAlignment(match.allIn() + media.offsetMillis(), media.rate());
  }

  /** Returns this alignment as a session keeps it, for footage at a path. */
  public Outcome.Media media(String path, Match match) {
    return new Outcome.Media(path, start - match.allIn(), rate);
  }

  /** Returns this alignment moved so that it goes through a point; its rate stays. */
  public RecordingAlignment through(Point point) {
    return new RecordingAlignment(point.instant - Math.round(point.recordingMillis / rate), rate);
  }

  /**
   * Returns the alignment that goes through two points, which tell the recording's drift.
   *
   * @throws IllegalArgumentException if they lie less than a minute apart, or run against each
   *     other; the message says what to do
   */
  public static RecordingAlignment through(Point one, Point other) {
    long recorded = other.recordingMillis - one.recordingMillis;
    long passed = other.instant - one.instant;
    if (Math.abs(recorded) < LEAST_APART_MILLIS || Math.abs(passed) < LEAST_APART_MILLIS) {
      throw new IllegalArgumentException(
          "the two moments lie less than a minute apart; choose one early and one late");
    }
    if (recorded > 0 != passed > 0) {
      throw new IllegalArgumentException(
          "the later moment of the recording has the earlier clock time; check both");
    }
    return new RecordingAlignment(one.instant, recorded / (double) passed).through(one);
  }

  /** Returns the instant of the match seen at a place of the recording. */
  public long instantAt(double recordingMillis) {
    return start + Math.round(recordingMillis / rate);
  }

  /** Returns how many seconds the recording gains on the match in an hour; negative if it loses. */
  public double driftSecondsAnHour() {
    return (rate - 1) * SECONDS_AN_HOUR;
  }

  /** Returns whether the drift is more than a camera's clock can have. */
  public boolean isDoubtful() {
    return Math.abs(rate - 1) > MOST_DRIFT;
  }
}
