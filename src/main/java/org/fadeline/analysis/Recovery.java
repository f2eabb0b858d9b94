package org.fadeline.analysis;

import org.jspecify.annotations.Nullable;

/**
 * What a line gave when it was come back to, beside what it gave after it had faded: a comparison
 * of two stretches, never a claim of what brought the bites back. The stretch before was picked for
 * being low, so the going rate before the fade stands beside it.
 *
 * @param before after the line had faded, to leaving it
 * @param after the first 30 bait minutes of the next stay, or all of a shorter one
 * @param awayMinutes from leaving to coming back
 * @param ratio after over before, or null where one of the counts is 0 and it is not a number
 * @param low lower limit of the ratio, exact, given the total
 * @param high upper limit, or null where nothing came before and none can be given
 * @param level of the limits, in (0, 1)
 * @param goingRate bites per bait hour before the fade, or null
 * @param wording the words, as read on screen
 */
public record Recovery(
    Stretch before,
    Stretch after,
    double awayMinutes,
    @Nullable Double ratio,
    double low,
    @Nullable Double high,
    double level,
    @Nullable Double goingRate,
    String wording) {
  /** Bait minutes looked at after coming back. */
  public static final double LONGEST_MINUTES = 30;

  /**
   * Bites and the time they came in.
   *
   * @param bites by the measure of fades
   * @param baitMinutes time with a bait in, above 0
   */
  public record Stretch(int bites, double baitMinutes) {}
}
