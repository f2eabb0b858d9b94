package org.fadeline.demo;

/**
 * How a line answers feed: nothing for a while, a rise, a slow fall.
 *
 * <p>With u = minutes since a feed less {@code delay}, one feed is worth (1 −
 * e^(−u/up))·e^(−u/down) over its own highest value, 0 before u = 0. Of several feeds the best at
 * the moment counts; the line answers with floor + (1 − floor)·best.
 *
 * @param delay minutes before anything happens, at least 0
 * @param up minutes of the rise, above 0
 * @param down minutes of the fall, above 0
 * @param floor what an unfed line gives, as a share of a well-fed one, in [0, 1]
 */
public record FeedResponse(double delay, double up, double down, double floor) {
  /**
   * Returns the share of the full rate, in [floor, 1].
   *
   * @param minute minutes after all in
   * @param feeds minutes of the feeds, ascending
   * @param count how many of them have been given; the rest is not looked at
   */
  public double at(double minute, double[] feeds, int count) {
    double rise = up * Math.log1p(down / up);
    double best = 0;
    // One feed's worth rises up to `rise` and falls after it: only the newest feed past that point
    // and the oldest before it can be the best.
    int firstRising = 0;
    int end = count;
    while (firstRising < end) {
      int middle = (firstRising + end) >>> 1;
      if (minute - feeds[middle] - delay >= rise) {
        firstRising = middle + 1;
      } else {
        end = middle;
      }
    }
    if (firstRising > 0) {
      best = worth(minute - feeds[firstRising - 1] - delay);
    }
    if (firstRising < count) {
      best = Math.max(best, worth(minute - feeds[firstRising] - delay));
    }
    return floor + (1 - floor) * best / worth(rise);
  }

  private double worth(double u) {
    return u <= 0 ? 0 : -Math.expm1(-u / up) * Math.exp(-u / down);
  }
}
