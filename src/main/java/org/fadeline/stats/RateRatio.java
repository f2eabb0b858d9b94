package org.fadeline.stats;

import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.jspecify.annotations.Nullable;

/**
 * Ratio of two Poisson rates, first over second, by the exact test conditional on the total count
 * (Przyborowski &amp; Wilenski 1940, Biometrika 31:313–323): given the total, the first count is
 * binomial with π = r·t₁/(r·t₁ + t₂). Limits are those of Clopper &amp; Pearson (1934, Biometrika
 * 26:404–413) on π, put on the scale of the ratio; the p-value is the central one (twice the
 * smaller tail), so that p &lt; α exactly when the limits at 1 − α leave out 1.
 *
 * @param count1 first count, at least 0, whole, or fractional where divided by an overdispersion
 * @param exposure1 exposure of the first count, above 0
 * @param count2 second count, at least 0
 * @param exposure2 exposure of the second count, above 0
 * @param ratio estimate: +∞ where only the second count is 0, null where both are
 * @param limits exact limits: low is 0 where the first count is 0, high is +∞ where the second is
 * @param p central two-sided p-value of equal rates, in [0, 1]
 */
public record RateRatio(
    double count1,
    double exposure1,
    double count2,
    double exposure2,
    @Nullable Double ratio,
    Interval limits,
    double p) {

  /**
   * Works the ratio out.
   *
   * @param count1 first count, in [0, ∞)
   * @param exposure1 exposure of the first count, in (0, ∞)
   * @param count2 second count, in [0, ∞)
   * @param exposure2 exposure of the second count, in (0, ∞)
   * @param level intended coverage of the limits, in (0, 1)
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RateRatio of(
      double count1, double exposure1, double count2, double exposure2, double level) {
    Guard.notNegative(count1, "first count");
    Guard.positive(exposure1, "first exposure");
    Guard.notNegative(count2, "second count");
    Guard.positive(exposure2, "second exposure");
    Guard.insideUnit(level, "level");
    double tail = (1 - level) / 2;
    double scale = exposure2 / exposure1;
    double low = count1 == 0 ? 0 : scale * Quantiles.betaOddsLower(count1, count2 + 1, tail);
    double high =
        count2 == 0
            ? Double.POSITIVE_INFINITY
            : scale / Quantiles.betaOddsLower(count2, count1 + 1, tail);
    Double ratio = count1 == 0 && count2 == 0 ? null : (Double) (count1 / count2 * scale);
    return new RateRatio(
        count1,
        exposure1,
        count2,
        exposure2,
        ratio,
        new Interval(low, high, level),
        centralP(count1, exposure1, count2, exposure2));
  }

  private static double centralP(double count1, double exposure1, double count2, double exposure2) {
    double share1 = exposure1 / (exposure1 + exposure2);
    double share2 = exposure2 / (exposure1 + exposure2);
    double atLeast = count1 == 0 ? 1 : RegularizedBeta.value(share1, count1, count2 + 1);
    double atMost = count2 == 0 ? 1 : RegularizedBeta.value(share2, count2, count1 + 1);
    return Math.min(1, 2 * Math.min(atLeast, atMost));
  }

  /**
   * Limits that allow for days that differ by themselves: log-normal, with the variance of the log
   * ratio 1/n₁ + 1/n₂ + 2σ². Where a count is 0 that variance is infinite; the end that can still
   * be given is then the exact limit times e^(z·σ·√2), which errs on the wide side.
   *
   * @param sigmaDay σ, standard deviation of the log rate between days, in [0, ∞)
   * @return limits at the level of {@link #limits()}
   * @throws IllegalArgumentException if sigmaDay is not in [0, ∞)
   */
  public Interval widened(double sigmaDay) {
    Guard.notNegative(sigmaDay, "sigmaDay");
    double z = Quantiles.normalHalfWidth(limits.level());
    Double estimate = ratio;
    if (estimate == null || count1 == 0 || count2 == 0) {
      double days = Math.exp(z * sigmaDay * Math.sqrt(2));
      return new Interval(limits.low() / days, limits.high() * days, limits.level());
    }
    double spread = Math.exp(z * Math.sqrt(1 / count1 + 1 / count2 + 2 * sigmaDay * sigmaDay));
    return new Interval(estimate / spread, estimate * spread, limits.level());
  }
}
