package org.fadeline.sim;

/**
 * An observer who knows both rates of a line that changes once and how often lines change: the most
 * that can be known minute by minute. Probability of a change so far by Bayes' rule, bin by bin.
 */
final class KnowingObserver {
  private final double before;
  private final double after;
  private final double hazard;

  /**
   * @param before rate an hour until the change
   * @param after rate an hour from it
   * @param changesPerHour chance of the change, as long as it has not come
   */
  KnowingObserver(double before, double after, double changesPerHour) {
    this.before = before / 60;
    this.after = after / 60;
    hazard = -Math.expm1(-changesPerHour / 60);
  }

  /** Probability at the end of each minute that the change has come. */
  double[] watch(SimulatedLine line) {
    double[] counts = new double[(int) line.minutes()];
    for (double bite : line.bites()) {
      counts[(int) bite]++;
    }
    double[] seen = new double[counts.length];
    double changed = 0;
    for (int i = 0; i < counts.length; i++) {
      double prior = changed + (1 - changed) * hazard;
      double odds =
          prior / (1 - prior) * Math.exp(counts[i] * Math.log(after / before) - after + before);
      changed = odds / (1 + odds);
      seen[i] = changed;
    }
    return seen;
  }

  /**
   * Where the change lies, looked at afterwards: the posterior median, minutes, every minute in
   * [from, to) being as likely beforehand. Nothing places a change of known rates closer in the
   * mean of the distance.
   */
  int place(SimulatedLine line, int from, int to) {
    double[] counts = new double[(int) line.minutes()];
    for (double bite : line.bites()) {
      counts[(int) bite]++;
    }
    double[] weights = new double[to - from];
    double log = 0;
    double most = Double.NEGATIVE_INFINITY;
    // Log-likelihood of a change at minute m less that of one at `to`, up to a constant.
    for (int m = to - 1; m >= from; m--) {
      log += counts[m] * Math.log(after / before) - after + before;
      weights[m - from] = log;
      most = Math.max(most, log);
    }
    double total = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = Math.exp(weights[i] - most);
      total += weights[i];
    }
    double sum = 0;
    int i = 0;
    while (sum + weights[i] < total / 2) {
      sum += weights[i++];
    }
    return from + i;
  }
}
