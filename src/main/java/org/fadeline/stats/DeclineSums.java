package org.fadeline.stats;

/**
 * Sufficient statistics of an exponential decline for a grid of half-lives, one bin after another.
 */
final class DeclineSums {
  private static final double SHORTEST = 10;
  private static final double LONGEST = 480;

  /** Half-lives told apart. */
  static final int GRID = 40;

  private final double[] decays = new double[GRID];
  private final double[] exposures = new double[GRID];
  private double count;
  private double countTimesMinutes;

  DeclineSums() {
    for (int i = 0; i < GRID; i++) {
      double halfLife = SHORTEST * Math.pow(LONGEST / SHORTEST, i / (GRID - 1.0));
      decays[i] = Math.log(2) / halfLife;
    }
  }

  DeclineSums copy() {
    DeclineSums other = new DeclineSums();
    System.arraycopy(exposures, 0, other.exposures, 0, GRID);
    other.count = count;
    other.countTimesMinutes = countTimesMinutes;
    return other;
  }

  /**
   * Takes in a bin.
   *
   * @param events in it
   * @param hours its exposure
   * @param minute its middle, minutes since the decline began
   */
  void add(double events, double hours, double minute) {
    count += events;
    countTimesMinutes += events * minute;
    for (int i = 0; i < GRID; i++) {
      exposures[i] += hours * Math.exp(-decays[i] * minute);
    }
  }

  /** Decay per minute of the {@code i}-th half-life. */
  double decay(int i) {
    return decays[i];
  }

  /** Posterior shape of the starting rate. */
  double shape(double bunching) {
    return 1 + count / bunching;
  }

  /** Posterior rate parameter of the starting rate, for a prior mean and a half-life. */
  double rate(double mean, int i, double bunching) {
    return 1 / mean + exposures[i] / bunching;
  }

  /**
   * Fills the posterior weights of prior means and half-lives.
   *
   * @param weights by prior mean, then half-life
   * @return log evidence, without the constant no curve changes
   */
  double weigh(FadeOptions.PriorMeans means, double bunching, double[] weights) {
    double shape = shape(bunching);
    double logGamma = ChangePointGamma.logGamma(shape);
    double[] logs = new double[weights.length];
    for (int m = 0; m < means.size(); m++) {
      for (int i = 0; i < GRID; i++) {
        logs[m * GRID + i] =
            -Math.log(means.get(m))
                + logGamma
                - decays[i] * countTimesMinutes / bunching
                - shape * Math.log(rate(means.get(m), i, bunching));
      }
    }
    return ChangePointMixture.normalise(logs, weights) - Math.log(logs.length);
  }
}
