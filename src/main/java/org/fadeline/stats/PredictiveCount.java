package org.fadeline.stats;

/**
 * Distribution of a count still to come: 0, 1, 2, …: a posterior predictive (Gelman et al.,
 * Bayesian Data Analysis, 3rd ed. 2013, section 1.3).
 */
public sealed interface PredictiveCount permits NegativeBinomialPredictive, PredictiveCountMixture {

  /** Pr(K = k); 0 for k below 0. */
  double probability(long k);

  /** Pr(K ≤ k); 0 for k below 0. */
  double cumulative(long k);

  /** Pr(K &gt; k), accurate where it is small; 1 for k below 0. */
  double survival(long k);

  /** Mean count. */
  double mean();

  /** Variance of the count. */
  double variance();

  /**
   * Smallest k with Pr(K ≤ k) ≥ p.
   *
   * @param p in [0, 1)
   * @throws IllegalArgumentException if p is not in [0, 1)
   * @throws ArithmeticException if the quantile is above 2⁶²
   */
  default long quantile(double p) {
    if (!(p >= 0 && p < 1)) {
      throw new IllegalArgumentException("p must be at least 0 and below 1, got " + p);
    }
    long below = -1;
    long above = (long) Math.ceil(mean());
    while (!reaches(above, p)) {
      if (above > 1L << 61) {
        throw new ArithmeticException("the quantile at " + p + " is too large to count to");
      }
      below = above;
      above = 2 * above + 1;
    }
    while (above - below > 1) {
      long middle = below + (above - below) / 2;
      if (reaches(middle, p)) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return above;
  }

  private boolean reaches(long k, double p) {
    return p <= 0.5 ? cumulative(k) >= p : survival(k) <= 1 - p;
  }
}
