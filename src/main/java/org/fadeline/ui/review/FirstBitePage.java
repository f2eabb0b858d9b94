package org.fadeline.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import javafx.scene.Node;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBite.Clock;
import org.fadeline.analysis.FirstBite.LeavingStep;
import org.fadeline.analysis.FirstBite.Times;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.FirstBiteFigure;
import org.fadeline.model.talk.Picture;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.control.table.DataTable;
import org.jspecify.annotations.Nullable;

/** First bites after feeding, by either clock: the curves, a row a line, every step. */
final class FirstBitePage {
  private static final double FEW_ROWS = 230;

  private final Segments<Clock> choice =
      new Segments<>("Minutes counted", List.of(Clock.values()), FirstBitePage::words, this::turn);
  private final DataTable<LineReview> lines =
      new DataTable<>("First bite after feeding", "No feeding is logged.");
  private final DataTable<StepRow> steps =
      new DataTable<>(
          "First bite after feeding: the curve in figures",
          "Too few feeds for a curve: five feeding episodes at risk are needed on a line.");
  private final ChartPage page;
  private Clock clock = Clock.SINCE_FEED;
  private @Nullable Review review;
  private @Nullable FigureStyle style;

  /**
   * One moment of a line's curves.
   *
   * @param line the line's name
   * @param minutes on the clock
   * @param step of the curve, or null where only a line was left
   * @param leaving share with leaving as an end of its own, or null before it starts
   */
  private record StepRow(
      String line, double minutes, FirstBite.@Nullable Step step, @Nullable LeavingStep leaving) {}

  FirstBitePage() {
    lines
        .words("Line", 150, l -> Say.capital(l.line().name()))
        .words("Half bit within", 170, l -> median(l.firstBite().sinceFeed()))
        .words("With a bait in", 150, l -> median(l.firstBite().baitIn()))
        .numbers("Bitten, leaving counted", 170, this::bitten, this::bittenWithLimits)
        .numbers("Left without", 95, this::left, this::leftShare)
        .numbers(
            "Feeds fished",
            95,
            l -> (double) l.firstBite().tally().episodes(),
            l -> String.valueOf(l.firstBite().tally().episodes()))
        .numbers(
            "With a bite",
            90,
            l -> (double) l.firstBite().tally().bites(),
            l -> String.valueOf(l.firstBite().tally().bites()))
        .numbers(
            "Without one",
            95,
            l -> (double) l.firstBite().tally().censored(),
            l -> String.valueOf(l.firstBite().tally().censored()))
        .numbers(
            "First fished late",
            125,
            l -> (double) l.firstBite().tally().late(),
            l -> String.valueOf(l.firstBite().tally().late()))
        .numbers(
            "Never fished",
            95,
            l -> (double) l.firstBite().tally().unfished(),
            l -> String.valueOf(l.firstBite().tally().unfished()));
    steps
        .words("Line", 130, StepRow::line)
        .numbers("Minutes", 75, StepRow::minutes, r -> Say.number(r.minutes))
        .numbers("At risk", 75, FirstBitePage::atRisk, r -> count(atRisk(r)))
        .numbers("Bites", 60, FirstBitePage::bites, r -> count(bites(r)))
        .numbers(
            "Still without",
            105,
            r -> r.step == null ? null : r.step.survival(),
            r -> r.step == null ? "" : percent(r.step.survival()))
        .words("Limits", 95, r -> r.step == null ? "" : limits(r.step.low(), r.step.high()))
        .numbers(
            "Left",
            60,
            r -> r.leaving == null ? null : (double) r.leaving.lefts(),
            r -> r.leaving == null ? "" : String.valueOf(r.leaving.lefts()))
        .numbers(
            "Bitten, leaving counted",
            170,
            r -> r.leaving == null ? null : r.leaving.bitten(),
            r -> r.leaving == null ? "" : shares(r.leaving));
    lines.setMaxHeight(FEW_ROWS);
    choice.choose(clock);
    page = new ChartPage(lines, steps).under(choice);
  }

  Node view() {
    return page.view();
  }

  /** Returns the picture of the curves shown. */
  Picture.Kind picture() {
    return clock == Clock.SINCE_FEED ? Picture.Kind.FIRST_BITE : Picture.Kind.FIRST_BITE_BAIT_IN;
  }

  void show(@Nullable Review newReview, @Nullable FigureStyle newStyle) {
    review = newReview;
    style = newStyle;
    List<LineReview> all = newReview == null ? List.of() : newReview.lines();
    boolean fished = all.stream().anyMatch(l -> !l.firstBite().rows().isEmpty());
    if (newReview == null || newStyle == null || !fished) {
      page.showNone();
    } else {
      page.show(() -> new FirstBiteFigure(newReview, newStyle, clock), null);
    }
    Nodes.show(choice, fished);
    lines.show(all);
    List<StepRow> rows = new ArrayList<>();
    for (LineReview line : all) {
      addSteps(rows, Say.capital(line.line().name()), line.firstBite().on(clock));
    }
    steps.show(rows);
    Nodes.show(steps, !rows.isEmpty());
  }

  private static void addSteps(List<StepRow> rows, String name, Times times) {
    TreeSet<Double> minutes = new TreeSet<>();
    times.curve().forEach(s -> minutes.add(s.minutes()));
    times.leaving().steps().forEach(s -> minutes.add(s.minutes()));
    for (double minute : minutes) {
      rows.add(
          new StepRow(
              name,
              minute,
              times.curve().stream().filter(s -> s.minutes() == minute).findFirst().orElse(null),
              times.leaving().steps().stream()
                  .filter(s -> s.minutes() == minute)
                  .findFirst()
                  .orElse(null)));
    }
  }

  private void turn(Clock chosen) {
    clock = chosen;
    show(review, style);
  }

  private static String words(Clock clock) {
    return clock == Clock.SINCE_FEED ? "Since the feed" : "With a bait in";
  }

  private @Nullable LeavingStep last(LineReview line) {
    return line.firstBite().on(clock).leaving().last();
  }

  private @Nullable Double bitten(LineReview line) {
    LeavingStep last = last(line);
    return last == null ? null : last.bitten();
  }

  private String bittenWithLimits(LineReview line) {
    LeavingStep last = last(line);
    return last == null ? "" : shares(last);
  }

  private @Nullable Double left(LineReview line) {
    LeavingStep last = last(line);
    return last == null ? null : last.left();
  }

  private String leftShare(LineReview line) {
    LeavingStep last = last(line);
    return last == null ? "" : percent(last.left());
  }

  private static String percent(double share) {
    return Math.round(share * 100) + "%";
  }

  private static String shares(LeavingStep step) {
    String limits = limits(step.low(), step.high());
    return percent(step.bitten()) + (limits.isEmpty() ? "" : " (" + limits + ")");
  }

  private static @Nullable Double atRisk(StepRow row) {
    return row.step != null
        ? Double.valueOf(row.step.atRisk())
        : row.leaving == null ? null : Double.valueOf(row.leaving.atRisk());
  }

  private static @Nullable Double bites(StepRow row) {
    return row.step != null
        ? Double.valueOf(row.step.bites())
        : row.leaving == null ? null : Double.valueOf(row.leaving.bites());
  }

  private static String count(@Nullable Double count) {
    return count == null ? "" : String.valueOf(Math.round(count));
  }

  private static String limits(@Nullable Double low, @Nullable Double high) {
    return low == null || high == null ? "" : percent(low) + "–" + percent(high);
  }

  private static String median(Times times) {
    FirstBite.Median median = times.median();
    if (median == null) {
      return times.fromMinute() == null ? "too few feeds to say" : "not reached";
    }
    String low = median.low() == null ? "?" : Say.number(median.low());
    String high = median.high() == null ? "no upper limit" : Say.number(median.high());
    return Say.number(median.minutes()) + " min (" + low + "–" + high + ")";
  }
}
