package org.fadeline.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Time to first bite after feeding, over one line's feeding episodes (Kaplan–Meier with delayed
 * entry), on two clocks: minutes since the feed, and minutes with a bait in since then.
 *
 * @param tally how many episodes there were and what became of them
 * @param sinceFeed by minutes since the episode began
 * @param baitIn by minutes since then in which a bait was in on a line of the spot
 * @param feedResponse bites per bait hour by minutes since feeding
 */
public record FirstBite(
    Tally tally, Times sinceFeed, Times baitIn, List<ResponseBin> feedResponse) {
  /** No episode. */
  public static final FirstBite NONE =
      new FirstBite(new Tally(0, 0, 0, 0, 0), Times.NONE, Times.NONE, List.of());

  /** Copies the list. */
  public FirstBite {
    feedResponse = List.copyOf(feedResponse);
  }

  /** Returns the times on a clock. */
  public Times on(Clock clock) {
    return clock == Clock.SINCE_FEED ? sinceFeed : baitIn;
  }

  /** Returns the first minute since the feed from which curve and median hold, or null. */
  public @Nullable Double fromMinute() {
    return sinceFeed.fromMinute();
  }

  /** Returns the median since the feed, or null. */
  public @Nullable Median median() {
    return sinceFeed.median();
  }

  /** Returns the steps of the curve by minutes since the feed. */
  public List<Step> curve() {
    return sinceFeed.curve();
  }

  /** Returns the stretches at risk by minutes since the feed. */
  public List<Stretch> rows() {
    return sinceFeed.rows();
  }

  /** What minutes are counted. */
  public enum Clock {
    /** All since the episode began. */
    SINCE_FEED,
    /** Those since then in which a bait was in on a line of the spot. */
    BAIT_IN
  }

  /**
   * Times to first bite on one clock.
   *
   * @param fromMinute first minute with at least five episodes at risk, from which curve and median
   *     hold ("given none before"); null where there never were five
   * @param median minutes to the first bite, null where the curve does not reach one half
   * @param curve steps of the curve from {@code fromMinute}; empty where that is null
   * @param leaving the share bitten where leaving without a bite is an end of its own
   * @param rows the stretches themselves: what the curve rests on
   */
  public record Times(
      @Nullable Double fromMinute,
      @Nullable Median median,
      List<Step> curve,
      Leaving leaving,
      List<Stretch> rows) {
    /** No episode. */
    public static final Times NONE = new Times(null, null, List.of(), Leaving.NONE, List.of());

    /** Copies the lists. */
    public Times {
      curve = List.copyOf(curve);
      rows = List.copyOf(rows);
    }
  }

  /**
   * What became of feeds, a first bite and leaving without one being ends that compete
   * (Aalen–Johansen). The stretches up to the first leaving of each episode count.
   *
   * @param fromMinute first minute with at least five of them at risk; null where there never were
   * @param steps from then on; empty where that is null
   */
  public record Leaving(@Nullable Double fromMinute, List<LeavingStep> steps) {
    /** Too few to tell. */
    public static final Leaving NONE = new Leaving(null, List.of());

    /** Copies the list. */
    public Leaving {
      steps = List.copyOf(steps);
    }

    /** Returns the last step, or null without one. */
    public @Nullable LeavingStep last() {
      return steps.isEmpty() ? null : steps.get(steps.size() - 1);
    }
  }

  /**
   * A moment at which a first bite came or a line was left. What is neither bitten nor left still
   * waits: the three shares add up to 1.
   *
   * @param minutes on the clock
   * @param atRisk episodes at risk just before
   * @param bites first bites at this time
   * @param lefts leavings without a bite at this time
   * @param bitten share that a bite came first of, just after
   * @param low lower limit of {@code bitten}, or null where undefined
   * @param high upper limit of {@code bitten}, or null where undefined
   * @param left share left without a bite, just after
   */
  public record LeavingStep(
      double minutes,
      int atRisk,
      int bites,
      int lefts,
      double bitten,
      @Nullable Double low,
      @Nullable Double high,
      double left) {}

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
   * @param minutes on the clock
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

  /** What a stretch ended in. */
  public enum End {
    /** The spot's first bite. */
    BITE,
    /** The line was left. */
    LEFT,
    /** The next feed, all out, the match stopped, or the rig out for a moment. */
    CUT_OFF
  }

  /**
   * One stretch at risk.
   *
   * @param episodeAt when the feeding episode began, epoch milliseconds
   * @param entry minutes on the clock at which a bait went in
   * @param exit minutes on the clock at which the stretch ended
   * @param end what it ended in
   */
  public record Stretch(long episodeAt, double entry, double exit, End end) {
    /** Returns whether it ended in the first bite. */
    public boolean bite() {
      return end == End.BITE;
    }
  }

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
