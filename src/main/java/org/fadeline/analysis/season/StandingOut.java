package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

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

    private @Nullable Double of(SessionSummary session) {
      double hours = session.fishedMinutes() / 60;
      SessionSummary.Result result = session.result();
      return switch (this) {
        case WEIGHT ->
            hours < LEAST_HOURS || result.weights().missing() > 0
                ? null
                : (Double) (result.grams() / hours);
        case FISH -> hours < LEAST_HOURS ? null : (Double) (result.fish() / hours);
        case SCALES -> result.weights().scalesFactor();
      };
    }

    private double scaled(double value) {
      return this == SCALES ? Math.log(value) : Math.sqrt(value);
    }
  }

  /** Returns the sessions that stand out, by date, a measure after the other. */
  public static List<StandingOut> of(Season season) {
    List<StandingOut> found = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      found.addAll(in(season, measure));
    }
    found.sort(Comparator.comparingInt(StandingOut::session));
    return found;
  }

  private static List<StandingOut> in(Season season, Measure measure) {
    List<@Nullable Double> values =
        season.sessions().stream()
            .map((Function<SessionSummary, @Nullable Double>) measure::of)
            .toList();
    double[] known =
        values.stream()
            .filter(v -> v != null && (measure != Measure.SCALES || v > 0))
            .mapToDouble(v -> v)
            .sorted()
            .toArray();
    if (known.length < FEWEST) {
      return List.of();
    }
    double[] scaled = Arrays.stream(known).map(measure::scaled).toArray();
    double median = point(scaled, 0.5);
    double[] apart = Arrays.stream(scaled).map(x -> Math.abs(x - median)).sorted().toArray();
    double spread = point(apart, 0.5);
    List<StandingOut> found = new ArrayList<>();
    for (int s = 0; s < values.size(); s++) {
      Double value = values.get(s);
      if (value != null
          && (measure != Measure.SCALES || value > 0)
          && spread > 0
          && NORMAL * Math.abs(measure.scaled(value) - median) / spread > BEYOND) {
        found.add(
            new StandingOut(
                s, measure, value, point(known, 0.25), point(known, 0.75), known.length));
      }
    }
    return found;
  }

  /** Returns a quantile of sorted values, between the two nearest (R's type 7). */
  private static double point(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
