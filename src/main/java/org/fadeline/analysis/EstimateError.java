package org.fadeline.analysis;

import java.util.Arrays;
import java.util.List;
import org.fadeline.stats.LogNormalRate;

/**
 * How far an angler's estimates run off in a match still to be weighed: the scales over the sum of
 * the estimates, a steady factor of the match whose logarithm is taken as normal.
 *
 * <p>The log factor of a match is the angler's habit, normal about 0 with standard deviation {@link
 * #HABIT}, and the match's own departure from it, standard deviation {@link #MATCH_BY_MATCH} unless
 * earlier matches show another. With no earlier match at the scales the two together let estimates
 * run off by up to a sixth either way nine times in ten. There is no published source for the two:
 * they are allowances.
 *
 * @param factor scales over estimates
 * @param matches earlier matches it was learned from, 0 for the allowance alone
 */
public record EstimateError(LogNormalRate factor, int matches) {
  /** Standard deviation of an angler's habit on the log scale, beforehand. */
  static final double HABIT = 0.08;

  /** Standard deviation between matches of one angler on the log scale, beforehand. */
  static final double MATCH_BY_MATCH = 0.06;

  /** Matches that {@link #MATCH_BY_MATCH} counts as beside those at hand. */
  private static final int COUNTS_AS = 5;

  /** The allowance where nothing is known. */
  public static final EstimateError USUAL = learned(List.of());

  /**
   * Returns what earlier matches teach: the posterior predictive factor of the next.
   *
   * @param factors scales over estimates of each, above 0
   */
  public static EstimateError learned(List<Double> factors) {
    int n = factors.size();
    double[] logs = factors.stream().mapToDouble(Math::log).toArray();
    double mean = n == 0 ? 0 : Arrays.stream(logs).sum() / n;
    double squares = COUNTS_AS * MATCH_BY_MATCH * MATCH_BY_MATCH;
    for (double log : logs) {
      squares += (log - mean) * (log - mean);
    }
    double variance = squares / (COUNTS_AS + Math.max(0, n - 1));
    double precision = 1 / (HABIT * HABIT) + n / variance;
    double habit = n * mean / variance / precision;
    return new EstimateError(new LogNormalRate(habit, Math.sqrt(1 / precision + variance)), n);
  }
}
