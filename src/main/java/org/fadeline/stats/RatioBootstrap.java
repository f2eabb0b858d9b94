package org.fadeline.stats;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.numbers.gamma.Erfc;
import org.jspecify.annotations.Nullable;

/**
 * Bootstrap limits of a ratio of sums Σy/Σx where the units (and not what was counted in them) are
 * the sample: units are drawn with replacement, both their figures together (Davison &amp; Hinkley
 * 1997, Bootstrap Methods and their Application, sections 2.4 and 5.3).
 *
 * @param estimate Σy/Σx of the units themselves
 * @param percentile limits at the tails of the resampled ratios
 * @param corrected bias-corrected and accelerated limits (BCa; Efron 1987, JASA 82:171–185); null
 *     where the resamples lie all on one side of the estimate
 * @param resamples how many resamples were drawn
 */
public record RatioBootstrap(
    double estimate, Interval percentile, @Nullable Interval corrected, int resamples) {

  /**
   * Draws the resamples.
   *
   * @param numerators y of each unit, finite; at least 2 units
   * @param denominators x of each unit, finite, above 0
   * @param level intended coverage, in (0, 1)
   * @param resamples how many to draw, at least 100
   * @param seed equal seeds give equal limits
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static RatioBootstrap of(
      double[] numerators, double[] denominators, double level, int resamples, long seed) {
    Guard.sameLength(numerators.length, denominators.length, "numerators and denominators");
    Guard.insideUnit(level, "level");
    if (numerators.length < 2 || resamples < 100) {
      throw new IllegalArgumentException(
          "at least 2 units and 100 resamples are needed, got "
              + numerators.length
              + " and "
              + resamples);
    }
    double y = 0;
    double x = 0;
    for (int i = 0; i < numerators.length; i++) {
      y += Guard.finite(numerators[i], "numerator");
      x += Guard.positive(denominators[i], "denominator");
    }
    double[] ratios = draw(numerators, denominators, resamples, new SplittableRandom(seed));
    double tail = (1 - level) / 2;
    Interval percentile = new Interval(quantile(ratios, tail), quantile(ratios, 1 - tail), level);
    double acceleration = acceleration(numerators, denominators, y, x);
    return new RatioBootstrap(
        y / x, percentile, corrected(ratios, y / x, acceleration, level), resamples);
  }

  private static double[] draw(
      double[] numerators, double[] denominators, int resamples, SplittableRandom random) {
    double[] ratios = new double[resamples];
    for (int r = 0; r < resamples; r++) {
      double y = 0;
      double x = 0;
      for (int i = 0; i < numerators.length; i++) {
        int unit = random.nextInt(numerators.length);
        y += numerators[unit];
        x += denominators[unit];
      }
      ratios[r] = y / x;
    }
    Arrays.sort(ratios);
    return ratios;
  }

  /** Order statistic p·(R + 1), between its neighbours where that is not whole. */
  private static double quantile(double[] sorted, double p) {
    double place = p * (sorted.length + 1) - 1;
    int below = (int) Math.floor(Math.max(0, Math.min(sorted.length - 1, place)));
    int above = Math.min(sorted.length - 1, below + 1);
    double share = Math.max(0, Math.min(1, place - below));
    return sorted[below] + share * (sorted[above] - sorted[below]);
  }

  /** One sixth of the skewness of the jackknife values. */
  private static double acceleration(
      double[] numerators, double[] denominators, double y, double x) {
    int n = numerators.length;
    double[] without = new double[n];
    double mean = 0;
    for (int i = 0; i < n; i++) {
      without[i] = (y - numerators[i]) / (x - denominators[i]);
      mean += without[i] / n;
    }
    double squares = 0;
    double cubes = 0;
    for (double value : without) {
      double off = mean - value;
      squares += off * off;
      cubes += off * off * off;
    }
    return squares > 0 ? cubes / (6 * squares * Math.sqrt(squares)) : 0;
  }

  private static @Nullable Interval corrected(
      double[] sorted, double estimate, double acceleration, double level) {
    double below = 0;
    for (double ratio : sorted) {
      below += ratio < estimate ? 1 : ratio == estimate ? 0.5 : 0;
    }
    if (!(below > 0 && below < sorted.length)) {
      return null;
    }
    double bias = Quantiles.normal(below / sorted.length);
    double z = Quantiles.normalHalfWidth(level);
    double low = quantile(sorted, shifted(bias, acceleration, -z));
    double high = quantile(sorted, shifted(bias, acceleration, z));
    return new Interval(Math.min(low, high), Math.max(low, high), level);
  }

  private static double shifted(double bias, double acceleration, double z) {
    double at = bias + (bias + z) / (1 - acceleration * (bias + z));
    return Erfc.value(-at / Math.sqrt(2)) / 2;
  }
}
