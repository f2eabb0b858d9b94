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
}
