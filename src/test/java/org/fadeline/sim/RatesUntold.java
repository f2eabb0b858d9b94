package org.fadeline.sim;

import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * An observer who knows that a line changes once, to half its rate or less, and how often lines
 * change, but neither rate: each exponential beforehand with one mean, mixed over those of the
 * engine. Beside {@link KnowingObserver}, it shows what having to learn the rates costs.
 */
final class RatesUntold {
  private static final double[] MEANS = {1.5, 3, 6, 12, 24, 48};
  private static final double NEGLIGIBLE = -14;

  private final double hazard;

  /**
   * @param changesPerHour chance of the change, as long as it has not come
   */
  RatesUntold(double changesPerHour) {
    hazard = -Math.expm1(-changesPerHour / 60);
  }

  /** Probability at the end of each minute that the change has come. */
  double[] watch(SimulatedLine line) {
    int minutes = (int) line.minutes();
    double[] before = new double[minutes + 1];
    for (double bite : line.bites()) {
      before[(int) bite + 1]++;
    }
    for (int i = 0; i < minutes; i++) {
      before[i + 1] += before[i];
    }
    double[] seen = new double[minutes];
    for (int t = 1; t <= minutes; t++) {
      seen[t - 1] = changed(before, t);
    }
    return seen;
  }

  private double changed(double[] before, int t) {
    double[][] logs = new double[MEANS.length][t + 1];
    double most = Double.NEGATIVE_INFINITY;
    for (int m = 0; m < MEANS.length; m++) {
      for (int tau = 0; tau < t; tau++) {
        logs[m][tau] =
            Math.log(hazard)
                + tau * Math.log1p(-hazard)
                + evidence(MEANS[m], before[tau], tau)
                + evidence(MEANS[m], before[t] - before[tau], t - tau);
        most = Math.max(most, logs[m][tau]);
      }
      logs[m][t] = t * Math.log1p(-hazard) + evidence(MEANS[m], before[t], t);
      most = Math.max(most, logs[m][t]);
    }
    double come = 0;
    double not = 0;
    for (int m = 0; m < MEANS.length; m++) {
      not += Math.exp(logs[m][t] - most);
      for (int tau = 0; tau < t; tau++) {
        double log = logs[m][tau] - most;
        if (log > NEGLIGIBLE) {
          come += Math.exp(log) * halved(MEANS[m], before[tau], tau, before[t], t);
        }
      }
    }
    return come / (come + not);
  }

  private static double evidence(double mean, double events, int minutes) {
    double rate = 1 / mean + minutes / 60.0;
    return LogGamma.value(1 + events) - Math.log(mean) - (1 + events) * Math.log(rate);
  }

  /** Pr(second rate ≤ half the first) over its prior value, 1/3 for two alike exponentials. */
  private static double halved(double mean, double first, int tau, double all, int t) {
    double b1 = 1 / mean + tau / 60.0;
    double b2 = 1 / mean + (t - tau) / 60.0;
    double ratio = b2 / (2 * b1);
    return 3 * RegularizedBeta.value(ratio / (1 + ratio), 1 + all - first, 1 + first);
  }
}
