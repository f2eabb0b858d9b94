package org.fadeline.analysis;

/**
 * A stretch of time.
 *
 * @param from first instant, epoch milliseconds, included
 * @param to last instant, epoch milliseconds, excluded; not before {@code from}
 */
public record TimeSpan(long from, long to) {
  /** Milliseconds in an hour, for turning spans into exposures. */
  public static final double MILLIS_PER_HOUR = 3_600_000.0;

  /** Milliseconds in a minute, for telling spans in minutes. */
  public static final double MILLIS_PER_MINUTE = 60_000.0;

  /** Checks the order. */
  public TimeSpan {
    if (to < from) {
      throw new IllegalArgumentException("a span must not end before it starts");
    }
  }

  /** Returns the length in milliseconds. */
  public long millis() {
    return to - from;
  }

  /** Returns the length in hours. */
  public double hours() {
    return millis() / MILLIS_PER_HOUR;
  }

  /** Returns the length in minutes. */
  public double minutes() {
    return millis() / MILLIS_PER_MINUTE;
  }

  /** Returns the milliseconds of this span that lie in [start, end). */
  public long overlapMillis(long start, long end) {
    return Math.max(0, Math.min(to, end) - Math.max(from, start));
  }
}
