package org.fadeline.stats;

/**
 * Prior of a piecewise constant rate (Fearnhead 2006, Statistics and Computing 16:203–213): each
 * segment's rate is Gamma(shape, rate); a segment of d bins has probability h(1 − h)^(d − minimum
 * length) for d ≥ minimum length, and the last, unended one (1 − h)^max(0, d − minimum length).
 *
 * @param shape of the gamma prior of a segment's rate, in (0, ∞)
 * @param rate of that prior in units of exposure, in (0, ∞); shape / rate is the prior mean rate
 * @param hazard probability h of a change at one boundary between two bins, in [0, 1)
 * @param minimumLength fewest bins of a segment that ends within the record, at least 1
 */
public record ChangePointPrior(double shape, double rate, double hazard, int minimumLength) {
  /**
   * Guard the ranges.
   *
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ChangePointPrior {
    Guard.positive(shape, "prior shape");
    Guard.positive(rate, "prior rate");
    hazard(hazard);
    if (minimumLength < 1) {
      throw new IllegalArgumentException(
          "the minimum length of a segment must be at least 1 bin, got " + minimumLength);
    }
  }

  /** The same prior with its mean rate at this value, in (0, ∞). */
  public ChangePointPrior withMean(double mean) {
    return new ChangePointPrior(
        shape, shape / Guard.positive(mean, "prior mean"), hazard, minimumLength);
  }

  /** Returns {@code hazard} if it is in [0, 1). */
  static double hazard(double hazard) {
    if (hazard >= 0 && hazard < 1) {
      return hazard;
    }
    throw new IllegalArgumentException("a hazard must be in [0, 1), got " + hazard);
  }
}
