package org.fadeline.analysis;

import org.fadeline.analysis.NetScale.Logged;
import org.fadeline.model.MatchRules.NetLimit;
import org.jspecify.annotations.Nullable;

/**
 * A keepnet as it stood at a moment.
 *
 * @param net its number, from 1
 * @param at when it came to stand so, epoch milliseconds
 * @param logged what the log had put into it
 * @param likely its weight, or null where no weight was known, of it or of other fish
 * @param limit the limit of the match, or null
 * @param byScales whether it is measured by what the scales said of this net after the match
 */
public record NetState(
    int net,
    long at,
    Logged logged,
    @Nullable Likely likely,
    @Nullable NetLimit limit,
    boolean byScales) {
  /**
   * A weight that is not known exactly.
   *
   * @param low lower end, grams
   * @param middle grams
   * @param high upper end, grams
   * @param level of the interval, in (0, 1)
   * @param countedG grams of it for fish without a weight
   * @param over probability that it is over the limit, or null without one
   */
  public record Likely(
      double low,
      double middle,
      double high,
      double level,
      double countedG,
      @Nullable Double over) {}

  /**
   * Returns whether it is near its limit: the upper end of its likely weight reaches it, or one
   * more fish like those in it would bring the middle there.
   */
  public boolean near() {
    return limit != null
        && likely != null
        && logged.fish() > 0
        && (likely.high >= limit.grams()
            || likely.middle * (logged.fish() + 1) / logged.fish() >= limit.grams());
  }
}
