package org.fadeline.log;

/**
 * The clock that a press is logged at: the present, or the instant that a recording shows.
 *
 * @param source where the time comes from
 * @param alignment how the recording lies against the match; of no account while live
 * @param position place in the recording at {@code since}, milliseconds, 0 or later
 * @param speed how fast the recording is played, in [{@value #SLOWEST}, {@value #FASTEST}]
 * @param running whether the recording plays
 * @param since when {@code position} held, epoch milliseconds of the machine
 */
public record LogClock(
    Source source,
    RecordingAlignment alignment,
    double position,
    double speed,
    boolean running,
    long since) {
  /** The slowest a recording is played. */
  public static final double SLOWEST = 0.25;

  /** The fastest a recording is played. */
  public static final double FASTEST = 16;

  /** Where the time comes from. */
  public enum Source {
    /** The match is on: the time is now. */
    LIVE,
    /** A recording is looked through. */
    RECORDING
  }

  /** Checks the ranges. */
  public LogClock {
    if (!(speed >= SLOWEST && speed <= FASTEST)) {
      throw new IllegalArgumentException("speed must be 0.25 to 16: " + speed);
    }
    if (!(position >= 0)) {
      throw new IllegalArgumentException("a recording starts at 0: " + position);
    }
  }

  /**
   * Returns a clock that stands at the start of a recording.
   *
   * @param now epoch milliseconds of the machine
   */
  public static LogClock recording(RecordingAlignment alignment, long now) {
    return new LogClock(Source.RECORDING, alignment, 0, 1, false, now);
  }

  /** Returns this clock going by the present; it remembers the recording's place. */
  public LogClock live(long now) {
    return new LogClock(Source.LIVE, alignment, positionAt(now), speed, false, now);
  }

  /** Returns this clock going by the recording, which stands. */
  public LogClock fromRecording(long now) {
    return new LogClock(Source.RECORDING, alignment, positionAt(now), speed, false, now);
  }

  /** Returns the place in the recording, milliseconds. */
  public double positionAt(long now) {
    return running ? position + (now - since) * speed : position;
  }

  /** Returns the instant of the match that a press is logged at, epoch milliseconds. */
  public long instantAt(long now) {
    return source == Source.LIVE ? now : alignment.instantAt(positionAt(now));
  }

  /** Returns this clock with the recording playing or standing. */
  public LogClock playing(boolean play, long now) {
    return new LogClock(source, alignment, positionAt(now), speed, play, now);
  }

  /** Returns this clock at another speed, brought into its range. */
  public LogClock atSpeed(double newSpeed, long now) {
    double in = Math.max(SLOWEST, Math.min(FASTEST, newSpeed));
    return new LogClock(source, alignment, positionAt(now), in, running, now);
  }

  /** Returns this clock at another place of the recording; before its start is its start. */
  public LogClock at(double newPosition, long now) {
    return new LogClock(source, alignment, Math.max(0, newPosition), speed, running, now);
  }

  /** Returns this clock with the recording lying otherwise against the match. */
  public LogClock aligned(RecordingAlignment newAlignment, long now) {
    return new LogClock(source, newAlignment, positionAt(now), speed, running, now);
  }
}
