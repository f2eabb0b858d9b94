package org.fadeline.sim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.fadeline.stats.FadeMoment;
import org.fadeline.stats.FadePosterior;

/** What a set of simulated lines says about the rule that finds fades. */
public final class FadeScore {
  private final List<Double> errors = new ArrayList<>();
  private final List<Double> widths = new ArrayList<>();
  private final CallScore calls = new CallScore();
  private final List<Double> plains = new ArrayList<>();
  private int lines;
  private int half;
  private int eight;
  private int covered;
  private int calledAtEight;

  /** Takes in one spell of a line whose true moment may be NaN. */
  void add(FadePosterior fade, double truth) {
    lines++;
    calls.add(fade.watchedMinutes(), fade.watchedProbabilities(), truth);
    calledAtEight += fade.crossings().stream().anyMatch(c -> c.up()) ? 1 : 0;
    if (fade.probability() >= 0.8) {
      eight++;
    }
    FadeMoment moment = fade.moment();
    if (fade.probability() < 0.5 || moment == null) {
      return;
    }
    half++;
    Double plain = fade.plainAt();
    if (plain != null && !Double.isNaN(truth)) {
      plains.add(plain - truth);
    }
    if (!Double.isNaN(truth)) {
      errors.add(Math.abs(moment.median() - truth));
      widths.add(moment.high() - moment.low());
      covered += moment.low() <= truth && truth <= moment.high() ? 1 : 0;
    }
  }

  double flaggedAtHalf() {
    return half / (double) lines;
  }

  double flaggedAtEight() {
    return eight / (double) lines;
  }

  /** When the lines would have been called. */
  CallScore calls() {
    return calls;
  }

  double medianError() {
    return median(errors);
  }

  double cover() {
    return covered / (double) errors.size();
  }

  /** One row of the published table. */
  String row(String name) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %s | %s | %s | %s | %s |",
        name,
        lines,
        share(half, lines),
        share(eight, lines),
        errors.isEmpty()
            ? "–"
            : String.format(Locale.ROOT, "%.1f / %.1f", median(errors), mean(errors)),
        errors.isEmpty() ? "–" : share(covered, errors.size()),
        widths.isEmpty() ? "–" : String.format(Locale.ROOT, "%.0f", median(widths)),
        share(calledAtEight, lines));
  }

  /** Plain-at less the true moment of the lines flagged at one half. */
  String plainDelay() {
    return plains.isEmpty()
        ? "–"
        : String.format(Locale.ROOT, "median %.0f mean %.0f", median(plains), mean(plains));
  }

  /** A share with its exact 95% limits. */
  public static String share(int part, int whole) {
    if (whole == 0) {
      return "–";
    }
    double low =
        part == 0
            ? 0
            : BetaDistribution.of(part, whole - part + 1).inverseCumulativeProbability(0.025);
    double high =
        part == whole
            ? 1
            : BetaDistribution.of(part + 1, whole - part).inverseCumulativeProbability(0.975);
    return String.format(
        Locale.ROOT, "%.1f%% (%.1f–%.1f)", 100.0 * part / whole, 100 * low, 100 * high);
  }

  static double median(List<Double> values) {
    if (values.isEmpty()) {
      return Double.NaN;
    }
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.get(sorted.size() / 2);
  }

  static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
  }
}
