package org.fadeline.stats;

import java.util.Arrays;

/**
 * The steps of a record at one bunching factor: recursions under every prior mean, shared by all
 * minutes looked at. Not safe for use by several threads.
 */
final class FadeSteps {
  private final FadeGeometry geometry;
  private final FadeRecord.Spell spell;
  private final FadeOptions options;
  private final double bunching;
  private final ChangePointRecursion[] scales;
  private final ChangePointSampler[] samplers;
  private final FadePaths paths;
  private final double[][] last;
  private final double[] logEvidence;
  private final double[] weights;
  private double logBefore = Double.NaN;

  // Where the record ends in the look being taken.
  private int end;
  private double endCount;
  private double endHours;

  FadeSteps(FadeGeometry geometry, FadeRecord.Spell spell, FadeOptions options, double bunching) {
    this.geometry = geometry;
    this.spell = spell;
    this.options = options;
    this.bunching = bunching;
    FadeRecord record = geometry.record;
    ChangePointBins bins = record.bins().dividedBy(bunching);
    double[] hazards = record.hazards(options.hazard());
    int minimum = record.even() ? options.minimumSegment() : 1;
    int count = options.means().size();
    scales = new ChangePointRecursion[count];
    samplers = new ChangePointSampler[count];
    for (int m = 0; m < count; m++) {
      ChangePointPrior prior =
          new ChangePointPrior(1, 1 / options.means().get(m), options.hazard() / 60, minimum);
      scales[m] = new ChangePointRecursion(bins, prior, hazards, false);
      samplers[m] = new ChangePointSampler(scales[m]);
    }
    paths = new FadePaths(geometry, spell, samplers, options.seed());
    last = new double[count][record.size()];
    logEvidence = new double[count];
    weights = new double[count];
  }

  double bunching() {
    return bunching;
  }

  /** Log evidence of the bins before {@code to}, the last of them cut short where the spell is. */
  private double settle(int to, boolean cutShort) {
    end = to;
    endCount = Double.NaN;
    for (int m = 0; m < scales.length; m++) {
      if (cutShort) {
        endCount = spell.lastCount() / bunching;
        endHours = spell.lastMinutes() / 60 / bunching;
        logEvidence[m] = scales[m].lastCutShort(last[m], to, endCount, endHours);
      } else {
        logEvidence[m] = scales[m].last(last[m], to);
      }
    }
    return ChangePointMixture.normalise(logEvidence, weights) - Math.log(scales.length);
  }

  /**
   * Looks at the record up to {@code to} and gathers what {@code points} histories say.
   *
   * @return log evidence of the spell's own bins up to there
   */
  double look(int to, boolean cutShort, int points, FadeTally tally) {
    if (Double.isNaN(logBefore)) {
      logBefore = settle(spell.from(), false);
    }
    double evidence = settle(to, cutShort) - logBefore;
    double step = 1.0 / points;
    double next = step / 2;
    double sum = 0;
    for (int m = 0; m < scales.length; m++) {
      double[] starts = last[m];
      for (int s = 0; s < end; s++) {
        sum += weights[m] * starts[s];
        int count = 0;
        while (next < sum) {
          count++;
          next += step;
        }
        if (count > 0 && s > 0) {
          tally(m, s, count, step, tally);
        }
      }
    }
    return evidence;
  }

  private void tally(int scale, int start, int count, double step, FadeTally tally) {
    double shape = shape(scale, start);
    double rate = rate(scale, start);
    double logGamma =
        Double.isNaN(endCount)
            ? scales[scale].logGammaOfShape(start, end)
            : ChangePointGamma.logGamma(shape);
    for (int i = 0; i < count; i++) {
      FadePath path = paths.get(scale, start, i);
      tally.add(path, end, shape, rate, logGamma, step);
    }
  }

  private double shape(int scale, int start) {
    return Double.isNaN(endCount)
        ? scales[scale].shape(start, end)
        : scales[scale].shape(start, end - 1) + endCount;
  }

  private double rate(int scale, int start) {
    return Double.isNaN(endCount)
        ? scales[scale].rate(start, end)
        : scales[scale].rate(start, end - 1) + endHours;
  }

  /** Histories of the bins before the spell, or the one of no history at all. */
  FadePrefix[] prefixes(int count) {
    FadePrefix[] prefixes = new FadePrefix[spell.from() == 0 ? 1 : count];
    if (spell.from() == 0) {
      prefixes[0] = FadePrefix.none(geometry.record.size());
      return prefixes;
    }
    settle(spell.from(), false);
    ChangePointRandom random = ChangePointRandom.forCell(options.seed(), -1, spell.from());
    double step = 1.0 / count;
    double next = step / 2;
    double sum = 0;
    int drawn = 0;
    int m = 0;
    int s = 0;
    for (int cell = 0; cell < scales.length * end; cell++) {
      m = cell / end;
      s = cell % end;
      sum += weights[m] * last[m][s];
      while (next < sum && drawn < count) {
        prefixes[drawn++] = paths.prefix(m, s, random);
        next += step;
      }
    }
    while (drawn < count) {
      prefixes[drawn++] = paths.prefix(m, s, random);
    }
    return prefixes;
  }

  /** Posterior mean rate in each bin before {@code to}, events per hour, of the last look. */
  double[] meanRates(int to) {
    double[] steps = new double[to + 1];
    for (int m = 0; m < scales.length; m++) {
      double[] ended = new double[to];
      spread(steps, m, last[m], to, weights[m], ended, true);
      for (int e = to - 1; e > 0; e--) {
        if (ended[e] > 1e-12) {
          spread(steps, m, scales[m].row(e), e, ended[e], ended, false);
        }
      }
    }
    double[] rates = Arrays.copyOf(steps, to);
    for (int i = 1; i < to; i++) {
      rates[i] += rates[i - 1];
    }
    return rates;
  }

  private void spread(
      double[] steps,
      int scale,
      double[] row,
      int to,
      double weight,
      double[] ended,
      boolean isLast) {
    int length = Math.min(row.length, to);
    for (int s = 0; s < length; s++) {
      double p = weight * row[s];
      if (p > 0) {
        ended[s] += p;
        double mean =
            isLast
                ? shape(scale, s) / rate(scale, s)
                : scales[scale].shape(s, to) / scales[scale].rate(s, to);
        steps[s] += p * mean;
        steps[to] -= p * mean;
      }
    }
  }
}
