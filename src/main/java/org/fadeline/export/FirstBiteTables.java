package org.fadeline.export;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBite.Clock;
import org.fadeline.analysis.FirstBite.LeavingStep;
import org.fadeline.analysis.FirstBite.Step;
import org.fadeline.analysis.FirstBite.Stretch;
import org.fadeline.analysis.FirstBite.Times;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.jspecify.annotations.Nullable;

/** The tables behind first bites after feeding, on both clocks. */
final class FirstBiteTables {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);

  private FirstBiteTables() {}

  /** Returns every stretch at risk. */
  static Table stretches(Review review) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (Clock clock : Clock.values()) {
      for (LineReview line : review.lines()) {
        for (Stretch stretch : line.firstBite().on(clock).rows()) {
          rows.add(
              Table.row(
                  line.line().name(),
                  word(clock),
                  review.session().clock(stretch.episodeAt()).format(TIME),
                  stretch.entry(),
                  stretch.exit(),
                  word(stretch.end())));
        }
      }
    }
    return new Table(
        "first bites", List.of("line", "clock", "fed", "bait in min", "ended min", "by"), rows);
  }

  /** Returns every step of the curves, and the shares with leaving as an end of its own. */
  static Table curves(Review review) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (Clock clock : Clock.values()) {
      for (LineReview line : review.lines()) {
        Times times = line.firstBite().on(clock);
        TreeSet<Double> minutes = new TreeSet<>();
        times.curve().forEach(step -> minutes.add(step.minutes()));
        times.leaving().steps().forEach(step -> minutes.add(step.minutes()));
        for (double minute : minutes) {
          rows.add(row(line.line().name(), clock, minute, times));
        }
      }
    }
    return new Table(
        "first bite curves",
        List.of(
            "line",
            "clock",
            "min",
            "at risk",
            "bites",
            "still without",
            "low",
            "high",
            "left",
            "share bitten leaving counted",
            "bitten low",
            "bitten high",
            "share left"),
        rows);
  }

  private static List<@Nullable Object> row(String line, Clock clock, double minute, Times times) {
    Step step = first(times.curve().stream().filter(s -> s.minutes() == minute).toList());
    LeavingStep leaving =
        first(times.leaving().steps().stream().filter(s -> s.minutes() == minute).toList());
    return Table.row(
        line,
        word(clock),
        minute,
        step == null ? null : step.atRisk(),
        step == null ? null : step.bites(),
        step == null ? null : step.survival(),
        step == null ? null : step.low(),
        step == null ? null : step.high(),
        leaving == null ? null : leaving.lefts(),
        leaving == null ? null : leaving.bitten(),
        leaving == null ? null : leaving.low(),
        leaving == null ? null : leaving.high(),
        leaving == null ? null : leaving.left());
  }

  private static <T> @Nullable T first(List<T> found) {
    return found.isEmpty() ? null : found.get(0);
  }

  private static String word(Clock clock) {
    return clock == Clock.SINCE_FEED ? "since the feed" : "bait in";
  }

  private static String word(FirstBite.End end) {
    return switch (end) {
      case BITE -> "bite";
      case LEFT -> "left";
      case CUT_OFF -> "cut off";
    };
  }
}
