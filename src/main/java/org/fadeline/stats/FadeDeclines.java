package org.fadeline.stats;

/** Gradual fades: a decline afresh over one spell, after histories of steps before it. */
final class FadeDeclines {
  private final FadeGeometry geometry;
  private final FadeRecord.Spell spell;
  private final FadeOptions options;
  private final double[][] rates;
  private final double[][] integrals;
  private final DeclineSums sums = new DeclineSums();
  private int taken;

  FadeDeclines(FadeGeometry geometry, FadeRecord.Spell spell, FadeOptions options) {
    this.geometry = geometry;
    this.spell = spell;
    this.options = options;
    taken = spell.from();
    int n = spell.to() - spell.from();
    rates = new double[DeclineSums.GRID][n + 1];
    integrals = new double[DeclineSums.GRID][n + 1];
    for (int g = 0; g < DeclineSums.GRID; g++) {
      for (int k = 0; k < n; k++) {
        int bin = spell.from() + k;
        rates[g][k] = Math.exp(-sums.decay(g) * minute(bin));
        double width = endOf(bin) - geometry.edge(bin);
        integrals[g][k + 1] = integrals[g][k] + rates[g][k] * width;
      }
    }
  }

  private double minute(int bin) {
    double from = geometry.edge(spell.from());
    return (geometry.edge(bin) + endOf(bin)) / 2 - from;
  }

  // The record may go on within the spell's last bin.
  private double endOf(int bin) {
    return Math.min(geometry.edge(bin + 1), spell.endMinute());
  }

  private DeclineSums upTo(int to, boolean cutShort) {
    int whole = cutShort ? to - 1 : to;
    while (taken < whole) {
      double width = geometry.edge(taken + 1) - geometry.edge(taken);
      sums.add(geometry.record.count(taken), width / 60, minute(taken));
      taken++;
    }
    if (!cutShort) {
      return sums;
    }
    DeclineSums cut = sums.copy();
    cut.add(spell.lastCount(), spell.lastMinutes() / 60, minute(to - 1));
    return cut;
  }

  /**
   * Looks at the spell up to {@code to}, in ascending order of looks.
   *
   * @return log evidence of the spell's bins up to there
   */
  double look(
      int to,
      boolean cutShort,
      double bunching,
      FadePrefix[] prefixes,
      int points,
      FadeTally tally) {
    DeclineSums data = upTo(to, cutShort);
    double[] weights = new double[options.means().size() * DeclineSums.GRID];
    double evidence = data.weigh(options.means(), bunching, weights);
    double shape = data.shape(bunching);
    double logGamma = ChangePointGamma.logGamma(shape);
    double step = 1.0 / points;
    double next = step / 2;
    double sum = 0;
    int point = 0;
    for (int g = 0; g < DeclineSums.GRID; g++) {
      for (int m = 0; m < options.means().size(); m++) {
        sum += weights[m * DeclineSums.GRID + g];
        double rate = data.rate(options.means().get(m), g, bunching);
        if (prefixes.length == 1) {
          tally(
              to, g, prefixes[0], shape, rate, logGamma, weights[m * DeclineSums.GRID + g], tally);
          continue;
        }
        while (next < sum) {
          // The golden ratio spreads the histories evenly over neighbouring points.
          int index = (int) (prefixes.length * (point * 0.6180339887498949 % 1));
          tally(to, g, prefixes[index], shape, rate, logGamma, step, tally);
          next += step;
          point++;
        }
      }
    }
    return evidence;
  }

  private void tally(
      int to,
      int g,
      FadePrefix prefix,
      double shape,
      double rate,
      double logGamma,
      double weight,
      FadeTally tally) {
    double highest = prefix.before() / rates[g][0];
    double below = highest == 0 ? 0 : ChangePointGamma.lower(shape, highest * rate, logGamma);
    tally.addNotComeBack(weight * below);
    double mean = shape / rate;
    int first = Math.max(spell.from(), geometry.firstMoment);
    int last = to - 1;
    // Levels only rise: where moments are not told apart, the latest speaks for all before it.
    for (int i = tally.keepsMoments() ? first : Math.max(first, last); i <= last; i++) {
      double level = level(i, g, prefix);
      if (level > highest) {
        highest = level;
        double upTo = ChangePointGamma.lower(shape, level * rate, logGamma);
        double mass = weight * Math.max(0, upTo - below);
        int k = i - spell.from();
        tally.add(i, mass, mean * rates[g][k] / geometry.share, meanAfter(i, to, g) * mean);
        below = upTo;
      }
    }
  }

  private double meanAfter(int moment, int to, int g) {
    int k = moment - spell.from();
    int end = to - spell.from();
    return (integrals[g][end] - integrals[g][k]) / (endOf(to - 1) - geometry.edge(moment));
  }

  /** Highest starting rate at which this decline has faded at bin {@code i} or before. */
  private double level(int i, int g, FadePrefix prefix) {
    double share = geometry.share;
    int from = spell.from();
    double[] integral = integrals[g];
    double now = rates[g][i - from];
    double hour = FadeOptions.GOING_RATE_MINUTES;
    double best = share * prefix.going() / now;
    int shortTo = Math.min(i, geometry.firstWindow - 1);
    for (int e = Math.max(from + 1, geometry.firstGoing); e <= shortTo; e++) {
      best =
          Math.max(
              best,
              ratio(share * prefix.total(), geometry.edge(e) * now - share * integral[e - from]));
    }
    for (int e = Math.max(from + 1, geometry.firstWindow); e <= i; e++) {
      int start = geometry.windowBin(e) - from;
      double own = integral[e - from];
      double tail = 0;
      if (start >= 0) {
        double part = geometry.windowPart(e);
        own -= integral[start] + part * (integral[start + 1] - integral[start]);
      } else {
        tail = prefix.tails()[e - from];
      }
      best = Math.max(best, ratio(share * tail, hour * now - share * own));
      if (start >= 0) {
        // Later windows lie wholly in the decline and are lower still.
        break;
      }
    }
    return best;
  }

  private static double ratio(double above, double below) {
    if (below <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    return above / below;
  }

  /** Posterior mean rate in each of the spell's bins before {@code to}, events per hour. */
  double[] meanRates(int to, boolean cutShort, double bunching) {
    DeclineSums data = upTo(to, cutShort);
    double[] weights = new double[options.means().size() * DeclineSums.GRID];
    data.weigh(options.means(), bunching, weights);
    double[] result = new double[to - spell.from()];
    for (int m = 0; m < options.means().size(); m++) {
      for (int g = 0; g < DeclineSums.GRID; g++) {
        double start =
            weights[m * DeclineSums.GRID + g]
                * data.shape(bunching)
                / data.rate(options.means().get(m), g, bunching);
        for (int k = 0; k < result.length; k++) {
          result[k] += start * rates[g][k];
        }
      }
    }
    return result;
  }
}
