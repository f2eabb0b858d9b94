package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cumulative incidence of one cause where others compete (Aalen &amp; Johansen 1978, Scandinavian
 * Journal of Statistics 5:141–150) with delayed entry: F_k(t) = Σ S(s−)·d_k(s)/n(s) over event
 * times s ≤ t, where S is the product-limit curve of all causes together. Unlike one minus a curve
 * that censors the other causes, the F_k and S(t) sum to 1.
 *
 * <p>The variance is of Greenwood's kind: the delta method with multinomial variance of the d_k(s)
 * given n(s) (Andersen, Borgan, Gill &amp; Keiding 1993, Statistical Models Based on Counting
 * Processes, section IV.4; Gaynor et al. 1993, JASA 88:400–409). Immutable.
 */
public final class AalenJohansen {
  private final List<List<Step>> steps;

  private AalenJohansen(List<List<Step>> steps) {
    this.steps = steps;
  }

  /**
   * One event time of any cause.
   *
   * @param time when
   * @param atRisk rows at risk then (entry &lt; time ≤ exit)
   * @param events events of this cause then, may be 0
   * @param incidence Pr(this cause came first and by then), in [0, 1]
   * @param survival Pr(no cause by then), in [0, 1]
   * @param standardError of the incidence, at least 0
   * @param limits pointwise limits on the log-log scale; null where the incidence is 0 or 1
   */
  public record Step(
      double time,
      int atRisk,
      int events,
      double incidence,
      double survival,
      double standardError,
      @Nullable Interval limits) {}

  /**
   * Fits the incidence of every cause, each row at risk at t when entry &lt; t ≤ exit.
   *
   * @param entry time each row comes under observation, finite
   * @param exit time each row leaves it, finite, at least its entry
   * @param cause 0 for a censored row, else 1 … {@code causes}
   * @param causes how many causes there are, at least 1
   * @param level pointwise coverage of the limits, in (0, 1)
   * @throws IllegalArgumentException if lengths differ or a value is outside its range
   */
  public static AalenJohansen of(
      double[] entry, double[] exit, int[] cause, int causes, double level) {
    return of(entry, exit, cause, causes, level, Double.NEGATIVE_INFINITY);
  }

  /**
   * Fits the incidence of every cause given no event before {@code start}.
   *
   * @param entry time each row comes under observation, finite
   * @param exit time each row leaves it, finite, at least its entry
   * @param cause 0 for a censored row, else 1 … {@code causes}
   * @param causes how many causes there are, at least 1
   * @param level pointwise coverage of the limits, in (0, 1)
   * @param start any number but NaN
   * @throws IllegalArgumentException if lengths differ or a value is outside its range
   */
  public static AalenJohansen of(
      double[] entry, double[] exit, int[] cause, int causes, double level, double start) {
    Guard.sameLength(entry.length, cause.length, "entry and cause");
    Guard.insideUnit(level, "level");
    if (causes < 1 || Double.isNaN(start)) {
      throw new IllegalArgumentException(
          "there must be at least 1 cause and a start, got " + causes + " and " + start);
    }
    FollowUp all = FollowUp.of(entry, exit, marks(cause, causes, 0));
    List<List<Step>> steps = new ArrayList<>();
    for (int k = 1; k <= causes; k++) {
      FollowUp one = FollowUp.of(entry, exit, marks(cause, causes, k));
      steps.add(List.copyOf(fit(all, one, level, start)));
    }
    return new AalenJohansen(List.copyOf(steps));
  }

  /** Rows of cause k; of any cause where k is 0. */
  private static boolean[] marks(int[] cause, int causes, int k) {
    boolean[] marks = new boolean[cause.length];
    for (int i = 0; i < cause.length; i++) {
      if (cause[i] < 0 || cause[i] > causes) {
        throw new IllegalArgumentException(
            "row " + i + ": cause must be from 0 to " + causes + ", got " + cause[i]);
      }
      marks[i] = k == 0 ? cause[i] > 0 : cause[i] == k;
    }
    return marks;
  }

  private static List<Step> fit(FollowUp all, FollowUp one, double level, double start) {
    FollowUp.Cursor any = new FollowUp.Cursor(all);
    FollowUp.Cursor own = new FollowUp.Cursor(one);
    List<Step> steps = new ArrayList<>();
    Variance variance = new Variance();
    double z = Quantiles.normalHalfWidth(level);
    double survival = 1;
    double incidence = 0;
    for (double t = any.nextEvent(); t < Double.POSITIVE_INFINITY; t = any.nextEvent()) {
      any.moveTo(t);
      own.moveTo(t);
      if (t < start) {
        continue;
      }
      double n = any.atRisk();
      double before = survival;
      incidence += before * own.events() / n;
      survival *= (n - any.events()) / n;
      variance.add(n, own.events(), any.events(), before, incidence);
      double error = Math.sqrt(variance.of(incidence));
      steps.add(
          new Step(
              t,
              any.atRisk(),
              own.events(),
              Math.min(1, incidence),
              survival,
              error,
              SurvivalBand.LOG_LOG.around(
                  incidence, incidence > 0 ? error / incidence : 0, z, level)));
    }
    return steps;
  }

  /**
   * Running variance. With p₁ = d₁/n, p = d/n, S the survival just before s and G = F(t) − F(s),
   * the event time s adds {S²p₁(1−p₁) − 2Sp₁G + G²p/(1−p)}/n; G depends on t, so the terms are kept
   * as a quadratic in F(t).
   */
  private static final class Variance {
    private double constant;
    private double linear;
    private double square;

    void add(double n, double own, double all, double survival, double incidence) {
      double p1 = own / n;
      double p = all / n;
      double slope = -2 * survival * p1 / n;
      // Nobody left: the incidence cannot move from here, so the square term never counts.
      double curve = all < n ? p / (1 - p) / n : 0;
      constant +=
          survival * survival * p1 * (1 - p1) / n
              - slope * incidence
              + curve * incidence * incidence;
      linear += slope - 2 * curve * incidence;
      square += curve;
    }

    double of(double incidence) {
      return Math.max(0, constant + incidence * (linear + incidence * square));
    }
  }

  /**
   * Steps of one cause, one at each event time of any cause, in rising order.
   *
   * @param cause from 1
   * @throws IndexOutOfBoundsException if there is no such cause
   */
  public List<Step> steps(int cause) {
    return steps.get(cause - 1);
  }

  /**
   * Cumulative incidence of a cause at t; 0 before the first event.
   *
   * @param cause from 1
   * @throws IndexOutOfBoundsException if there is no such cause
   */
  public double incidenceAt(int cause, double t) {
    double incidence = 0;
    for (Step step : steps(cause)) {
      if (step.time() > t) {
        break;
      }
      incidence = step.incidence();
    }
    return incidence;
  }
}
