package org.fadeline.stats;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.util.Arrays;

/**
 * Central exact limits for the mean of a Poisson count and for the rate behind it (Garwood 1936,
 * Biometrika 28:437–442): for a count n and exposure E at level 1 − α, L = χ²(α/2; 2n)/2E (0 when n
 * is 0) and U = χ²(1 − α/2; 2n + 2)/2E. At n = 0 the upper limit keeps α/2 in its tail, so that an
 * interval never narrows when one event more or less is seen.
 *
 * <p>Counts may be fractional (a count divided by its overdispersion). An instance holds the limits
 * of whole counts it has worked out before; it is safe for use by many threads.
 */
public final class PoissonInterval {
  private static final int KEPT = 4096;
  private static final VarHandle CELL = MethodHandles.arrayElementVarHandle(double[].class);
  private static final PoissonInterval USUAL = new PoissonInterval(0.95);

  private final double level;
  private final double tail;
  private final double[] lower = new double[KEPT];
  private final double[] upper = new double[KEPT];

  private PoissonInterval(double level) {
    this.level = level;
    this.tail = (1 - level) / 2;
    Arrays.fill(lower, Double.NaN);
    Arrays.fill(upper, Double.NaN);
  }

  /**
   * Limits at a level; keep the instance where many counts follow.
   *
   * @param level intended coverage, in (0, 1)
   * @throws IllegalArgumentException if the level is not in (0, 1)
   */
  public static PoissonInterval atLevel(double level) {
    Guard.insideUnit(level, "level");
    return level == USUAL.level ? USUAL : new PoissonInterval(level);
  }

  /**
   * Limits of the mean count.
   *
   * @param count events seen, finite, at least 0, whole or fractional
   * @throws IllegalArgumentException if the count is negative, infinite or NaN
   */
  public Interval ofCount(double count) {
    return new Interval(lower(count), upper(count), level);
  }

  /**
   * Limits of the rate, in events per unit of exposure.
   *
   * @param count events seen, finite, at least 0, whole or fractional
   * @param exposure time (or other extent) watched, finite, above 0
   * @throws IllegalArgumentException if the count is not in [0, ∞) or the exposure not in (0, ∞)
   */
  public Interval ofRate(double count, double exposure) {
    Guard.positive(exposure, "exposure");
    return new Interval(lower(count) / exposure, upper(count) / exposure, level);
  }

  /**
   * Lower limit of the mean count; 0 for no events.
   *
   * @param count events seen, in [0, ∞)
   * @throws IllegalArgumentException if the count is negative, infinite or NaN
   */
  public double lower(double count) {
    Guard.notNegative(count, "count");
    if (count == 0) {
      return 0;
    }
    int whole = (int) count;
    if (whole != count || whole >= KEPT) {
      return Quantiles.gammaLower(count, tail);
    }
    double known = (double) CELL.getOpaque(lower, whole);
    if (Double.isNaN(known)) {
      known = Quantiles.gammaLower(count, tail);
      CELL.setOpaque(lower, whole, known);
    }
    return known;
  }

  /**
   * Upper limit of the mean count, always finite and above the count.
   *
   * @param count events seen, in [0, ∞)
   * @throws IllegalArgumentException if the count is negative, infinite or NaN
   */
  public double upper(double count) {
    Guard.notNegative(count, "count");
    int whole = (int) count;
    if (whole != count || whole >= KEPT) {
      return Quantiles.gammaUpper(count + 1, tail);
    }
    double known = (double) CELL.getOpaque(upper, whole);
    if (Double.isNaN(known)) {
      known = Quantiles.gammaUpper(count + 1, tail);
      CELL.setOpaque(upper, whole, known);
    }
    return known;
  }
}
