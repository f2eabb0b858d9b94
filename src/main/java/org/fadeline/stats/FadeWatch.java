package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Watches one spell minute by minute, each look from the bins up to then alone. The recursions and
 * the histories drawn from them are kept from look to look; they start again only where a block of
 * bins has closed and changed the bunching factor.
 */
final class FadeWatch {
  private static final double TINY = 1e-9;

  /** While watching, an eighth of the final number of points: ±0.01 against all of them. */
  private static final int WATCHING = 8;

  private static final int PREFIXES = 64;
  private static final int DECLINE_POINTS = 400;

  /** Share of step curves that must have faded for the moment to rest on them. */
  private static final double ENOUGH_STEPS = 0.1;

  private final FadeGeometry geometry;
  private final FadeRecord record;
  private final int index;
  private final FadeRecord.Spell spell;
  private final FadeOptions options;
  private final FadeDeclines declines;
  private final Bunching bunching;
  private int blocksTo;
  private @Nullable FadeSteps steps;
  private FadePrefix[] prefixes = new FadePrefix[0];

  FadeWatch(FadeGeometry geometry, int index, FadeOptions options) {
    this.geometry = geometry;
    this.record = geometry.record;
    this.index = index;
    this.options = options;
    bunching = new Bunching(options.bunching());
    spell = record.spells().get(index);
    declines = new FadeDeclines(geometry, spell, options);
    for (int i = 0; i < index; i++) {
      FadeRecord.Spell earlier = record.spells().get(i);
      blocksTo = earlier.from();
      closeBlocks(fullBins(earlier));
      bunching.rest();
    }
    blocksTo = spell.from();
  }

  private int wholeBins(FadeRecord.Spell of) {
    return of.lastMinutes() < record.edge(of.to()) - record.edge(of.to() - 1) - TINY
        ? of.to() - 1
        : of.to();
  }

  /** Bins of a spell up to the last that lasted its full minute: what blocks are made of. */
  private int fullBins(FadeRecord.Spell of) {
    double full = record.even() ? 1 : record.edge(of.to()) - record.edge(of.to() - 1);
    return of.lastMinutes() < full - TINY ? of.to() - 1 : of.to();
  }

  private void closeBlocks(int to) {
    while (blocksTo + Bunching.BLOCK <= to) {
      double sum = 0;
      for (int i = blocksTo; i < blocksTo + Bunching.BLOCK; i++) {
        sum += record.count(i);
      }
      bunching.add(sum);
      blocksTo += Bunching.BLOCK;
    }
  }

  /**
   * @param watching whether to look minute by minute, or at the end of the spell alone
   */
  FadePosterior review(boolean watching) {
    List<FadeCrossing> crossings = new ArrayList<>();
    int most = spell.to() - spell.from();
    double[] minutes = new double[most];
    double[] probabilities = new double[most];
    int count = 0;
    boolean above = false;
    Look look = null;
    for (int to = spell.from() + 1; to <= spell.to(); to++) {
      double minute = minute(to);
      boolean last = to == spell.to();
      if (!last && !watching) {
        continue;
      }
      if (!last && minute - spell.startMinute() < FadeOptions.FEWEST_MINUTES - TINY) {
        continue;
      }
      look = look(to, minute, last);
      minutes[count] = minute;
      probabilities[count] = look.probability;
      count++;
      boolean nowAbove = look.probability >= options.callLevel();
      if (nowAbove != above) {
        Look full = nowAbove && !last ? look(to, minute, true) : look;
        crossings.add(
            new FadeCrossing(
                minute, nowAbove, look.probability, nowAbove ? full.moment(record) : null));
        above = nowAbove;
      }
    }
    if (look == null) {
      throw new IllegalStateException("a spell without bins cannot be reviewed");
    }
    return look.posterior(new FadeWatched(minutes, probabilities, count, crossings));
  }

  /** Returns the probability as it stands at the end of a bin. */
  double probability(int to, boolean full) {
    return look(to, minute(to), full).probability;
  }

  /** Returns when the line faded as it seems at the end of a bin, or null where no curve did. */
  @Nullable FadeMoment moment(int to) {
    return look(to, minute(to), true).moment(record);
  }

  private double minute(int to) {
    return to == spell.to() ? spell.endMinute() : record.edge(to);
  }

  private Look look(int to, double minute, boolean full) {
    boolean cutShort = to > wholeBins(spell);
    if (record.even()) {
      closeBlocks(Math.min(to, fullBins(spell)));
    }
    double factor = bunching.factor();
    FadeSteps current = steps;
    if (current == null || current.bunching() != factor) {
      current = new FadeSteps(geometry, spell, options, factor);
      steps = current;
      prefixes = current.prefixes(PREFIXES);
    }
    int points = full ? options.draws() : options.draws() / WATCHING;
    FadeTally stepTally = new FadeTally(geometry, full, minute);
    FadeTally declineTally = new FadeTally(geometry, full, minute);
    double stepEvidence = current.look(to, cutShort, points, stepTally);
    double declineEvidence =
        declines.look(
            to, cutShort, factor, prefixes, Math.min(points, DECLINE_POINTS), declineTally);
    return new Look(to, cutShort, stepTally, declineTally, stepEvidence - declineEvidence);
  }

  private final class Look {
    final int to;
    final boolean cutShort;
    final FadeTally step;
    final FadeTally decline;
    final double logStepOverDecline;
    final double stepWeight;
    final double probability;

    Look(int to, boolean cutShort, FadeTally step, FadeTally decline, double logStepOverDecline) {
      this.to = to;
      this.cutShort = cutShort;
      this.step = step;
      this.decline = decline;
      this.logStepOverDecline = logStepOverDecline;
      stepWeight = 1 / (1 + Math.exp(-logStepOverDecline));
      probability = stepWeight * step.faded() + (1 - stepWeight) * decline.faded();
    }

    private FadeTally chosen() {
      return step.faded() >= ENOUGH_STEPS ? step : decline;
    }

    @Nullable FadeMoment moment(FadeRecord of) {
      return FadeMoment.of(chosen().moments(), of);
    }

    FadePosterior posterior(FadeWatched watched) {
      FadeTally tally = chosen();
      FadeMoment moment = moment(record);
      double[] moments = tally.moments();
      double total = tally.faded();
      for (int i = 0; i < moments.length; i++) {
        moments[i] = total > 0 ? moments[i] / total : 0;
      }
      FadePosterior.Verdict verdict =
          new FadePosterior.Verdict(
              probability,
              stepWeight * step.notComeBack() + (1 - stepWeight) * decline.notComeBack(),
              moment,
              moment == null ? null : Double.valueOf(tally.goingRate()),
              moment == null ? null : Double.valueOf(tally.rateAfter()),
              logStepOverDecline,
              tally == step,
              bunching.factor());
      return new FadePosterior(index, verdict, moments, curve(), watched);
    }

    // Before the spell, and in the spell as far as they are favoured, the steps.
    private double[] curve() {
      FadeSteps current = steps;
      if (current == null) {
        return new double[0];
      }
      double[] rates = current.meanRates(to);
      double[] gradual = declines.meanRates(to, cutShort, bunching.factor());
      for (int i = 0; i < gradual.length; i++) {
        int bin = spell.from() + i;
        rates[bin] = stepWeight * rates[bin] + (1 - stepWeight) * gradual[i];
      }
      return rates;
    }
  }
}
