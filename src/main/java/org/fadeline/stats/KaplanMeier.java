package org.fadeline.stats;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.RandomAccess;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Product-limit estimate of a survival curve (Kaplan &amp; Meier 1958, JASA 53:457–481) with
 * delayed entry and Greenwood's standard error. Events come before censorings at the same time. A
 * curve that starts at t₀ tells Pr(T &gt; t) given none before t₀: it uses the events at t₀ and
 * after.
 *
 * <p>Limits are pointwise, on the log scale at 95% unless {@link #withBand} says otherwise.
 * Immutable.
 */
public final class KaplanMeier {
  /** Products of fractions land a few units in the last place beside one half. */
  public static final double HALF_TOLERANCE = 1e-9;

  private final FollowUp rows;
  private final double start;
  private final double[] times;
  private final int[] atRisk;
  private final int[] events;
  private final double[] survival;
  private final double[] greenwood;
  private final SurvivalBand band;
  private final double level;
  private final double z;

  private KaplanMeier(
      FollowUp rows,
      double start,
      double[] times,
      int[] atRisk,
      int[] events,
      SurvivalBand band,
      double level) {
    this.rows = rows;
    this.start = start;
    this.times = times;
    this.atRisk = atRisk;
    this.events = events;
    this.band = band;
    this.level = level;
    this.z = Quantiles.normalHalfWidth(level);
    this.survival = new double[times.length];
    this.greenwood = new double[times.length];
    accumulate();
  }

  private void accumulate() {
    double left = 1;
    double sum = 0;
    for (int i = 0; i < times.length; i++) {
      double n = atRisk[i];
      double d = events[i];
      left *= (n - d) / n;
      sum += d / (n * (n - d));
      survival[i] = left;
      greenwood[i] = sum;
    }
  }

  /**
   * One event time.
   *
   * @param time when
   * @param atRisk rows at risk then (entry &lt; time ≤ exit)
   * @param events events then, at least 1
   * @param survival Pr(T &gt; time), in [0, 1)
   * @param standardError Greenwood's, of the survival; null once survival is 0, where it is not
   *     defined
   * @param limits pointwise limits of the survival; null once survival is 0
   */
  public record Step(
      double time,
      int atRisk,
      int events,
      double survival,
      @Nullable Double standardError,
      @Nullable Interval limits) {}

  /**
   * Median time with its limits.
   *
   * @param time smallest time with survival at most ½; where survival is exactly ½ on [t₁, t₂), the
   *     midpoint; null where the curve never comes down to ½
   * @param low smallest time where the lower limit of survival is at most ½, null if it never is
   * @param high smallest time where the upper limit of survival is at most ½, null if it never is:
   *     the record sets no upper limit
   * @param level coverage of the limits, in (0, 1)
   */
  public record Median(
      @Nullable Double time, @Nullable Double low, @Nullable Double high, double level) {}

  /** Fits the curve, with log limits at 95%. */
  public static KaplanMeier of(FollowUp rows) {
    return fit(rows, Double.NEGATIVE_INFINITY, SurvivalBand.LOG, 0.95);
  }

  /**
   * Fits the curve given no event before {@code start}, with log limits at 95%.
   *
   * @throws IllegalArgumentException if start is NaN
   */
  public static KaplanMeier of(FollowUp rows, double start) {
    checkStart(start);
    return fit(rows, start, SurvivalBand.LOG, 0.95);
  }

  private static void checkStart(double start) {
    if (Double.isNaN(start)) {
      throw new IllegalArgumentException("start must be a number, got NaN");
    }
  }

  private static KaplanMeier fit(FollowUp rows, double start, SurvivalBand band, double level) {
    double[] times = new double[rows.events()];
    int[] atRisk = new int[times.length];
    int[] events = new int[times.length];
    FollowUp.Cursor cursor = new FollowUp.Cursor(rows);
    int size = 0;
    for (double t = cursor.nextEvent(); t < Double.POSITIVE_INFINITY; t = cursor.nextEvent()) {
      cursor.moveTo(t);
      if (t >= start) {
        times[size] = t;
        atRisk[size] = cursor.atRisk();
        events[size++] = cursor.events();
      }
    }
    return new KaplanMeier(
        rows,
        start,
        Arrays.copyOf(times, size),
        Arrays.copyOf(atRisk, size),
        Arrays.copyOf(events, size),
        band,
        level);
  }

  /**
   * The curve given no event before {@code start}.
   *
   * @param start any number but NaN
   * @throws IllegalArgumentException if start is NaN
   */
  public KaplanMeier from(double start) {
    checkStart(start);
    return fit(rows, start, band, level);
  }

  /**
   * The same curve with other limits.
   *
   * @param level intended pointwise coverage, in (0, 1)
   * @throws IllegalArgumentException if the level is not in (0, 1)
   */
  public KaplanMeier withBand(SurvivalBand band, double level) {
    Guard.insideUnit(level, "level");
    return new KaplanMeier(rows, start, times, atRisk, events, band, level);
  }

  /** Rows at risk at any time t, an event time or not: entry &lt; t ≤ exit. */
  public int atRisk(double t) {
    return rows.atRisk(t);
  }

  /**
   * The first point of a grid at which enough rows are at risk.
   *
   * @param least how many are enough, at least 1
   * @param first first grid point, finite
   * @param spacing distance between grid points, finite, above 0
   * @return the earliest of first, first + spacing, … with at least {@code least} rows at risk;
   *     empty when there is none
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public OptionalDouble firstWithAtRisk(int least, double first, double spacing) {
    if (least < 1) {
      throw new IllegalArgumentException("least must be at least 1, got " + least);
    }
    Guard.finite(first, "first");
    Guard.positive(spacing, "spacing");
    double last = rows.lastExit();
    double t = first;
    for (long i = 0; t <= last; t = first + ++i * spacing) {
      if (rows.atRisk(t) >= least) {
        return OptionalDouble.of(t);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * The event times of the curve in rising order, as a view that works each step out when asked.
   */
  public List<Step> steps() {
    return new StepView();
  }

  private final class StepView extends AbstractList<Step> implements RandomAccess {
    @Override
    public Step get(int index) {
      double s = survival[index];
      Double error = s > 0 ? (Double) (s * Math.sqrt(greenwood[index])) : null;
      return new Step(times[index], atRisk[index], events[index], s, error, limits(index));
    }

    @Override
    public int size() {
      return times.length;
    }
  }

  private @Nullable Interval limits(int index) {
    return band.around(survival[index], Math.sqrt(greenwood[index]), z, level);
  }

  /** Pr(T &gt; t), given none before the start; 1 before the first event. */
  public double survivalAt(double t) {
    int index = lastAtOrBefore(t);
    return index < 0 ? 1 : survival[index];
  }

  /** The last step at or before t; null before the first event. */
  public @Nullable Step stepAt(double t) {
    int index = lastAtOrBefore(t);
    return index < 0 ? null : steps().get(index);
  }

  private int lastAtOrBefore(double t) {
    int found = Arrays.binarySearch(times, t + 0.0);
    return found >= 0 ? found : -found - 2;
  }

  /** Median time and its limits. */
  public Median median() {
    return new Median(medianTime(), crossing(i -> limit(i, -z)), crossing(i -> limit(i, z)), level);
  }

  /** Median time alone, as {@link Median#time}. */
  public @Nullable Double medianTime() {
    return crossing(i -> survival[i]);
  }

  /** One limit at a step; NaN once survival is 0, where it is not defined. */
  private double limit(int index, double z) {
    return survival[index] > 0
        ? band.limit(survival[index], Math.sqrt(greenwood[index]), z)
        : Double.NaN;
  }

  /** The first time a curve, NaN where it is not defined, is at or below one half. */
  private @Nullable Double crossing(IntToDoubleFunction curve) {
    int at = 0;
    while (at < times.length && !(curve.applyAsDouble(at) <= 0.5 + HALF_TOLERANCE)) {
      at++;
    }
    if (at == times.length) {
      return null;
    }
    if (curve.applyAsDouble(at) < 0.5 - HALF_TOLERANCE) {
      return times[at];
    }
    int below = at + 1;
    while (below < times.length && !(curve.applyAsDouble(below) < 0.5 - HALF_TOLERANCE)) {
      below++;
    }
    return below == times.length ? times[at] : times[at] + (times[below] - times[at]) / 2;
  }
}
