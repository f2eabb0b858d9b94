package org.fadeline.demo;

import java.util.List;

/**
 * Bites per hour of bait time on a line: perHour · course(t) · response(feeds) · condition.
 *
 * <p>The condition starts at 1, falls as e^(−t/fade) while the line is fished and recovers towards
 * 1 with the time constant rest while it is not.
 *
 * @param perHour bites per hour of a line in full swing
 * @param response how the line answers feed
 * @param course usual course over the match, at minutes 0, 60, 120 …; straight between, level after
 * @param fadeMinutes time constant of the fall while fished
 * @param restMinutes time constant of the recovery while not fished
 */
public record BiteRate(
    double perHour,
    FeedResponse response,
    List<Double> course,
    double fadeMinutes,
    double restMinutes) {
  /** Copies the course. */
  public BiteRate {
    course = List.copyOf(course);
  }

  /** Returns the usual course at a minute after all in. */
  public double courseAt(double minute) {
    double knot = Math.min(Math.max(minute / 60, 0), course.size() - 1.0);
    int before = (int) knot;
    if (before == course.size() - 1) {
      return course.get(before);
    }
    return course.get(before) + (knot - before) * (course.get(before + 1) - course.get(before));
  }

  /** Returns the condition after some minutes, fished or not, starting from a condition. */
  public double conditionAfter(double condition, double minutes, boolean fished) {
    return fished
        ? condition * Math.exp(-minutes / fadeMinutes)
        : 1 - (1 - condition) * Math.exp(-minutes / restMinutes);
  }

  /**
   * Returns the bites per hour.
   *
   * @param minute minutes after all in
   * @param condition in [0, 1]
   * @param feeds minutes of the line's feeds, ascending
   * @param feedCount how many of them have been given
   */
  public double perHourAt(double minute, double condition, double[] feeds, int feedCount) {
    return perHour * courseAt(minute) * response.at(minute, feeds, feedCount) * condition;
  }
}
