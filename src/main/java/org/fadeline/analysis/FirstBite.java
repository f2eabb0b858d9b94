package org.fadeline.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Time to first bite after feeding, over one line's feeding episodes (Kaplan–Meier with delayed
 * entry).
 *
 * @param tally how many episodes there were and what became of them
 * @param fromMinute first minute with at least five episodes at risk, from which curve and median
 *     hold ("given none before"); null where there never were five
 * @param median minutes to the first bite, null where the curve does not reach one half
 * @param curve steps of the curve from {@code fromMinute}; empty where that is null
 * @param rows the stretches themselves: what the curve rests on
 * @param feedResponse bites per bait hour by minutes since feeding
 */
public record FirstBite(
    Tally tally,
    @Nullable Double fromMinute,
    @Nullable Median median,
    List<Step> curve,
    List<Stretch> rows,
    List<ResponseBin> feedResponse) {
  /** No episode. */
  public static final FirstBite NONE =
      new FirstBite(new Tally(0, 0, 0, 0, 0), null, null, List.of(), List.of(), List.of());

  /** Copies the lists. */
  public FirstBite {
    curve = List.copyOf(curve);
    rows = List.copyOf(rows);
    feedResponse = List.copyOf(feedResponse);
  }

  /**
   * Episodes counted.
   *
   * @param episodes feeding episodes in which the line was fished at all
   * @param bites those that ended in a bite
   * @param censored those left, fed again or cut off by all out before a bite
   * @param late those first fished after the episode began
   * @param unfished episodes never fished before the next: they say nothing
   */
  public record Tally(int episodes, int bites, int censored, int late, int unfished) {}

  /**
   * Median with its limits.
   *
   * @param minutes the median, midpoint rule
   * @param low lower limit, or null where not reached
   * @param high upper limit, or null where not reached
   * @param level confidence level, in (0, 1)
   */
  public record Median(double minutes, @Nullable Double low, @Nullable Double high, double level) {}

  /**
   * One step of the curve.
   *
   * @param minutes since the feed
   * @param atRisk episodes at risk just before
   * @param bites first bites at this time
   * @param survival share still without a bite, just after
   * @param low lower limit of {@code survival}, or null where undefined
   * @param high upper limit of {@code survival}, or null where undefined
   */
  public record Step(
      double minutes,
      int atRisk,
      int bites,
      double survival,
      @Nullable Double low,
      @Nullable Double high) {}

  /**
   * One stretch at risk.
   *
   * @param episodeAt when the feeding episode began, epoch milliseconds
   * @param entry minutes since then at which a bait went in
   * @param exit minutes since then at which the stretch ended
   * @param bite whether it ended in the first bite
   */
  public record Stretch(long episodeAt, double entry, double exit, boolean bite) {}

  /**
   * Bites by minutes since feeding.
   *
   * @param fromMinute start of the bin, minutes since the feed (negative before it)
   * @param toMinute end of the bin
   * @param bites bites in it
   * @param baitHours bait time in it
   * @param rate bites per bait hour with exact limits, or null without bait time
   */
  public record ResponseBin(
      double fromMinute, double toMinute, int bites, double baitHours, @Nullable Rate rate) {}
}
