package org.fadeline.analysis.merge;

/**
 * How far the second record's clock is ahead of the first's.
 *
 * @param millis what is taken off the second record's times
 * @param inStep how many events of both records this rests on; 0 where it was given or not found
 * @param spreadMillis how far those lie from it, the middle one
 */
public record ClockOffset(long millis, int inStep, long spreadMillis) {
  /** Returns an offset that rests on nothing in the records. */
  public static ClockOffset given(long millis) {
    return new ClockOffset(millis, 0, 0);
  }
}
