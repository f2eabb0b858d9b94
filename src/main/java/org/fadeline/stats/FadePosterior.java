package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Whether and when a line faded in one spell: from the moment on, events came at half the line's
 * going rate or less, and stayed there to the end of the spell. The going rate at a moment is the
 * highest mean over any earlier 60 bait minutes (over all earlier ones where there are fewer, never
 * fewer than 20); at least 5 events of the record come before the moment.
 *
 * <p>Two shapes share the work, prior ½ each, weighted by their evidence for the spell's own bins:
 * a piecewise constant rate (exact recursions of Fearnhead 2006) and an exponential decline afresh
 * in the spell. Probabilities are sums over exact draws of the history before the last change, with
 * the rate after it integrated out; the same seed gives the same figures.
 */
public final class FadePosterior {
  private final int spell;
  private final Verdict verdict;
  private final double[] moments;
  private final double[] meanRates;
  private final FadeWatched watched;

  FadePosterior(
      int spell, Verdict verdict, double[] moments, double[] meanRates, FadeWatched watched) {
    this.spell = spell;
    this.verdict = verdict;
    this.moments = moments;
    this.meanRates = meanRates;
    this.watched = watched;
  }

  /**
   * The figures at the end of the spell.
   *
   * @param probability that the line faded in this spell, in [0, 1]
   * @param notComeBack probability that it had faded before this spell and had not come back
   * @param moment when, or null where no curve faded
   * @param goingRate mean going rate of the curves that faded, per bait hour; null where none did
   * @param rateAfter their mean rate from the moment on, per bait hour; null where none did
   * @param logStepOverDecline log of the evidence for steps over that for a decline
   * @param momentFromSteps whether the moment rests on the steps, else on the declines
   * @param bunching factor that counts and exposure were divided by, 1 or more
   */
  public record Verdict(
      double probability,
      double notComeBack,
      @Nullable FadeMoment moment,
      @Nullable Double goingRate,
      @Nullable Double rateAfter,
      double logStepOverDecline,
      boolean momentFromSteps,
      double bunching) {
    /** Which shape the spell's own bins favour. */
    public FadeShape shape() {
      return FadeShape.of(logStepOverDecline);
    }
  }

  /**
   * Reviews every spell of at least 20 bait minutes, in order. The record of a spell ends with it,
   * so that a line that fades, is rested and recovers can fade again.
   *
   * @param record of one line
   * @param options what counts as a fade
   */
  public static List<FadePosterior> review(FadeRecord record, FadeOptions options) {
    return review(record, options, true);
  }

  /**
   * The same figures at the end of each spell without watching minute by minute: some fifteen times
   * faster, and with no crossing but one at the very end.
   *
   * @param record of one line
   * @param options what counts as a fade
   */
  public static List<FadePosterior> atEnd(FadeRecord record, FadeOptions options) {
    return review(record, options, false);
  }

  /**
   * The probability alone as it stands at the end of a bin, from the bins up to there: as {@link
   * #review} sees it while watching (±0.01), or empty less than 20 bait minutes into the spell.
   *
   * @param record of one line
   * @param spell index of the spell, from 0
   * @param to bin after the last one seen, above the spell's first
   * @param full whether to tell it as finely as at the end of a spell
   * @param options what counts as a fade
   */
  public static OptionalDouble glance(
      FadeRecord record, int spell, int to, boolean full, FadeOptions options) {
    FadeRecord.Spell of = record.spells().get(spell);
    double minute = to == of.to() ? of.endMinute() : record.edge(to);
    return minute - of.startMinute() >= FadeOptions.FEWEST_MINUTES - 1e-9
        ? OptionalDouble.of(
            new FadeWatch(new FadeGeometry(record, options), spell, options).probability(to, full))
        : OptionalDouble.empty();
  }

  /**
   * When the line faded as it seems at the end of a bin, or null where no curve did.
   *
   * @param record of one line
   * @param spell index of the spell, from 0
   * @param to bin after the last one seen, above the spell's first
   * @param options what counts as a fade
   */
  public static @Nullable FadeMoment momentSeen(
      FadeRecord record, int spell, int to, FadeOptions options) {
    return new FadeWatch(new FadeGeometry(record, options), spell, options).moment(to);
  }

  private static boolean isJudged(FadeRecord.Spell spell) {
    return spell.to() > spell.from()
        && spell.endMinute() - spell.startMinute() >= FadeOptions.FEWEST_MINUTES - 1e-9;
  }

  private static List<FadePosterior> review(
      FadeRecord record, FadeOptions options, boolean watching) {
    List<FadePosterior> result = new ArrayList<>();
    FadeGeometry geometry = new FadeGeometry(record, options);
    for (int i = 0; i < record.spells().size(); i++) {
      if (isJudged(record.spells().get(i))) {
        result.add(new FadeWatch(geometry, i, options).review(watching));
      }
    }
    return result;
  }

  /** Index of the spell on its line, from 0. */
  public int spell() {
    return spell;
  }

  /** The figures at the end of the spell. */
  public Verdict verdict() {
    return verdict;
  }

  /** Probability that the line faded in this spell, in [0, 1]. */
  public double probability() {
    return verdict.probability();
  }

  /** When it faded, or null where no curve did. */
  public @Nullable FadeMoment moment() {
    return verdict.moment();
  }

  /**
   * Posterior of the moment among the curves that faded, by bin of the record; sums to 1, or all 0
   * where none did.
   */
  public double[] momentProbabilities() {
    return moments.clone();
  }

  /** Posterior mean rate in each bin up to the end of the spell, per bait hour. */
  public double[] meanRates() {
    return meanRates.clone();
  }

  /** Every crossing of the call level, the withdrawn ones too, in order. */
  public List<FadeCrossing> crossings() {
    return watched.crossings();
  }

  /** Probability as seen at the end of each bin watched; see {@link #watchedMinutes}. */
  public double[] watchedProbabilities() {
    return watched.probabilities();
  }

  /** Bait minutes at which the record was looked at, from 20 into the spell to its end. */
  public double[] watchedMinutes() {
    return watched.minutes();
  }

  /**
   * First bait minute at which a fade was plain from what had been seen by then; null if it never
   * was, or if hindsight gives it less than one half.
   */
  public @Nullable Double plainAt() {
    if (verdict.probability() < 0.5) {
      return null;
    }
    for (FadeCrossing crossing : watched.crossings()) {
      if (crossing.up()) {
        return crossing.minute();
      }
    }
    return null;
  }
}
