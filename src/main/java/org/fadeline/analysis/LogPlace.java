package org.fadeline.analysis;

/**
 * A place in the log: at one instant the order in the file decides.
 *
 * @param at epoch milliseconds
 * @param order place in the file, from 0; less than that comes before all that was logged then
 */
record LogPlace(long at, int order) {
  /** Returns the place just before everything logged at an instant. */
  static LogPlace startOf(long at) {
    return new LogPlace(at, -1);
  }

  /** Returns the place just after everything logged at an instant. */
  static LogPlace endOf(long at) {
    return new LogPlace(at, Integer.MAX_VALUE);
  }

  boolean before(LogPlace other) {
    return at < other.at || (at == other.at && order < other.order);
  }
}
