package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A session that stands out from the rest in one measure: its modified z-score, 0.6745 (x − median)
 * / MAD, is beyond 3.5 (Iglewicz &amp; Hoaglin 1993, How to Detect and Handle Outliers). Rates are
 * compared by their square roots, which makes the scatter of counts about even, and the scales'
 * factor by its logarithm. Nothing is named of fewer than {@link #FEWEST} sessions, nor of one
 * fished for less than {@link #LEAST_HOURS}.
 *
 * @param session index of the session in {@link Season#sessions()}
 * @param measure what it stands out in
 * @param value its value: grams or fish an hour fished, or weighed over logged
 * @param low lower quartile of all the sessions that have the measure
 * @param high upper quartile
 * @param sessions how many those are
 */
public record StandingOut(
    int session, Measure measure, double value, double low, double high, int sessions) {
  /** Sessions below which none is called unusual. */
  public static final int FEWEST = 10;

  /** Hours fished below which a rate is mostly chance. */
  public static final double LEAST_HOURS = 1;

  private static final double BEYOND = 3.5;
  private static final double NORMAL = 0.6745;

  /** What sessions are held against each other by. */
  public enum Measure {
    /** Grams an hour fished. */
    WEIGHT("weight"),
    /** Fish an hour fished. */
    FISH("fish"),
    /** Weight at the scales over weight logged. */
    SCALES("scales");

    private final String word;

    Measure(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }

    /** Returns the measure of a session, NaN where it has none. */
    private double of(SessionSummary session, double hours) {
      SessionSummary.Result result = session.result();
      return switch (this) {
        case WEIGHT ->
            hours < LEAST_HOURS || result.weights().missing() > 0
                ? Double.NaN
                : result.grams() / hours;
        case FISH -> hours < LEAST_HOURS ? Double.NaN : result.fish() / hours;
        case SCALES -> {
          Double factor = result.weights().scalesFactor();
          yield factor == null || !(factor > 0) ? Double.NaN : factor;
        }
      };
    }

    private double scaled(double value) {
      return this == SCALES ? Math.log(value) : Math.sqrt(value);
    }
  }

  /** Returns the sessions that stand out, in their order, a measure after the other. */
  static List<StandingOut> of(SeasonColumns.Held held) {
    double[] hours = new double[held.of.length];
    for (int s = 0; s < hours.length; s++) {
      hours[s] = held.columns().fishedMinutes(held.of[s]) / 60;
    }
    List<StandingOut> found = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      double[] values = new double[hours.length];
      for (int s = 0; s < values.length; s++) {
        values[s] = measure.of(held.sessions.get(s), hours[s]);
      }
      add(measure, values, found);
    }
    found.sort(Comparator.comparingInt(StandingOut::session));
    return found;
  }

  private static void add(Measure measure, double[] values, List<StandingOut> found) {
    double[] known = values.clone();
    // NaN sorts last.
    Arrays.sort(known);
    int n = known.length;
    while (n > 0 && Double.isNaN(known[n - 1])) {
      n--;
    }
    if (n < FEWEST) {
      return;
    }
    known = Arrays.copyOf(known, n);
    double[] scaled = new double[n];
    for (int i = 0; i < n; i++) {
      scaled[i] = measure.scaled(known[i]);
    }
    double median = point(scaled, 0.5);
    for (int i = 0; i < n; i++) {
      scaled[i] = Math.abs(scaled[i] - median);
    }
    Arrays.sort(scaled);
    double spread = point(scaled, 0.5);
    for (int s = 0; s < values.length; s++) {
      if (spread > 0 && NORMAL * Math.abs(measure.scaled(values[s]) - median) / spread > BEYOND) {
        found.add(
            new StandingOut(s, measure, values[s], point(known, 0.25), point(known, 0.75), n));
      }
    }
  }

  /** Returns a quantile of sorted values, between the two nearest (R's type 7). */
  private static double point(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
