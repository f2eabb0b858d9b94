package org.fadeline.analysis;

import java.util.List;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.StayOrGo.Gain;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.stats.Interval;
import org.fadeline.stats.LogNormalRate;
import org.jspecify.annotations.Nullable;

/**
 * What another line would have given from the plain moment to leaving, over what staying gave.
 *
 * <p>The log rate of a line wanders between the times it was fished: normal steps with variance σ²
 * an hour. Its rate over the stretch is the bridge between the evidence before and after it; with
 * evidence on one side alone nothing is said, for the usual course of that kind of line over a
 * match is not known here.
 */
final class GainEstimate {
  /**
   * Standard deviation of the log rate's wander over one hour. Chosen on simulated matches so that
   * 90% limits hold the truth at least that often on lines in steps, on wandering ones and on lines
   * that are fed, rested and follow the hour; on constant lines they are wide.
   */
  static final double SIGMA_PER_ROOT_HOUR = 0.4;

  /** Probability from which a rate is said to be above what staying gave, or below it. */
  static final double CLAIMED_FROM = 0.8;

  private GainEstimate() {}

  /** Returns the gain in fish, or null without evidence on both sides or time to gain it in. */
  static @Nullable Gain of(
      LineEffort line,
      List<Spell> earlier,
      List<Spell> later,
      PastPlain past,
      long left,
      double costMinutes) {
    double hours = (past.minutes() - costMinutes) / 60;
    if (earlier.isEmpty() || later.isEmpty() || !(hours > 0)) {
      return null;
    }
    double middle = (past.plainAt() + left) / 2.0;
    LogNormalRate before = opinion(line, earlier.get(earlier.size() - 1), middle);
    LogNormalRate after = opinion(line, later.get(0), middle);
    if (before == null || after == null) {
      return null;
    }
    LogNormalRate rate = before.combinedWith(after);
    Interval limits = rate.interval(ReviewSettings.FADE_LEVEL);
    int caught = past.caught().landed();
    return new Gain(
        rate.mean() * hours - caught,
        limits.low() * hours - caught,
        limits.high() * hours - caught,
        limits.level(),
        rate.probabilityAbove(caught / hours));
  }

  /** Returns what one spell says of the line's rate at another instant, or null if nothing. */
  private static @Nullable LogNormalRate opinion(LineEffort line, Spell spell, double at) {
    double hours = spell.fishedHours();
    if (!(hours > 0)) {
      return null;
    }
    // Half a fish more: the log of a rate estimated from few fish, none included, stays finite.
    double count = line.fishOf(List.of(spell)).size() + 0.5;
    double middle = (spell.span().from() + spell.span().to()) / 2.0;
    double apart = Math.abs(at - middle) / TimeSpan.MILLIS_PER_HOUR;
    double wander = SIGMA_PER_ROOT_HOUR * SIGMA_PER_ROOT_HOUR * apart;
    return new LogNormalRate(Math.log(count / hours), Math.sqrt(1 / count + wander));
  }
}
