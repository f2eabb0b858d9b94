package org.fadeline.stats;

import java.util.Optional;

/**
 * Limits for a rate of weight: events come as a Poisson count, each carrying a weight of its own
 * (Fay &amp; Feuer 1997, Statistics in Medicine 16:791–801). With y the sum of the weights, v the
 * sum of their squares, m the largest and E the exposure, at level 1 − α,
 *
 * <pre>
 *   L = v/(2y) · χ²(α/2; 2y²/v) / E
 *   U = (v + m²)/(2(y + m)) · χ²(1 − α/2; 2(y + m)²/(v + m²)) / E
 * </pre>
 *
 * <p>Where all weights are equal these are the exact Poisson limits times that weight. With no
 * event the record itself says nothing of the largest weight: U is then m/2 · χ²(1 − α/2; 2)/E for
 * a largest weight given from elsewhere, and no limits at all where none is known, for any upper
 * limit would be invented.
 */
public final class WeightedPoissonInterval {
  private WeightedPoissonInterval() {}

  /**
   * Limits from the single weights.
   *
   * @param weights weight of each event, each finite and above 0
   * @param exposure finite, above 0
   * @param level intended coverage, in (0, 1)
   * @return limits in weight per unit of exposure; empty when there is no event
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static Optional<Interval> of(double[] weights, double exposure, double level) {
    return of(weights, 0, exposure, level);
  }

  /**
   * Limits from the single weights and a largest weight known from elsewhere.
   *
   * @param weights weight of each event, each finite and above 0
   * @param largestKnown largest weight an event here has, 0 where none is known; the largest of
   *     {@code weights} is used where that is greater
   * @param exposure finite, above 0
   * @param level intended coverage, in (0, 1)
   * @return limits in weight per unit of exposure; empty when there is no event and no known
   *     largest weight
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static Optional<Interval> of(
      double[] weights, double largestKnown, double exposure, double level) {
    double sum = 0;
    double squares = 0;
    double largest = Guard.notNegative(largestKnown, "largest known weight");
    for (double weight : weights) {
      Guard.positive(weight, "weight");
      sum += weight;
      squares += weight * weight;
      largest = Math.max(largest, weight);
    }
    return ofSums(sum, squares, largest, exposure, level);
  }

  /**
   * Limits from running sums, as a moving window keeps them.
   *
   * @param sum y, sum of the weights, finite, at least 0
   * @param squares v, sum of the squared weights, finite, at least 0, and 0 exactly when y is
   * @param largest m, largest weight, finite, at least 0; 0 only where there is no event and none
   *     is known
   * @param exposure finite, above 0
   * @param level intended coverage, in (0, 1)
   * @return limits in weight per unit of exposure; empty when y and m are both 0
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static Optional<Interval> ofSums(
      double sum, double squares, double largest, double exposure, double level) {
    Guard.notNegative(sum, "sum of weights");
    Guard.notNegative(squares, "sum of squared weights");
    Guard.notNegative(largest, "largest weight");
    Guard.positive(exposure, "exposure");
    Guard.insideUnit(level, "level");
    if (sum > 0 != squares > 0 || (sum > 0 && largest == 0)) {
      throw new IllegalArgumentException(
          "the sum, the sum of squares and the largest weight must be above 0 together, got "
              + sum
              + ", "
              + squares
              + " and "
              + largest);
    }
    if (largest == 0) {
      return Optional.empty();
    }
    double tail = (1 - level) / 2;
    double low = sum == 0 ? 0 : squares / sum * Quantiles.gammaLower(sum / squares * sum, tail);
    double sumUp = sum + largest;
    double squaresUp = squares + largest * largest;
    double high = squaresUp / sumUp * Quantiles.gammaUpper(sumUp / squaresUp * sumUp, tail);
    return Optional.of(new Interval(low / exposure, high / exposure, level));
  }
}
