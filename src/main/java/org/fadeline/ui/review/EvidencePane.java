package org.fadeline.ui.review;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.LeavingRule;
import org.fadeline.analysis.LineOrWater;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.figure.FigureStyle;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.IntervalChart;
import org.fadeline.ui.control.table.DataTable;
import org.jspecify.annotations.Nullable;

/** What a finding rests on: the fade, the minutes past plain, the other lines. */
final class EvidencePane {
  private final VBox view = new VBox(8);
  private final ScrollPane scroll = new ScrollPane(view);
  private final Label facts = new Label();
  private final Label quietTitle = new Label("Was it the line, or the whole water?");
  private final Label quiet = new Label();
  private final Label leavingTitle = new Label("How long does a stay on this line pay?");
  private final Label leaving = new Label();
  private final Label chartTitle = new Label();
  private final FigureCanvas chart = new FigureCanvas();
  private @Nullable StayOrGo shown;
  private final DataTable<OtherLine> others =
      new DataTable<>(
          "What the other lines gave, rested and fed meanwhile", "No other line was fished.");
  private @Nullable Review review;
  private Units units = Units.LB_OZ_AND_METRES;

  EvidencePane() {
    facts.setWrapText(true);
    facts.setMinHeight(Region.USE_PREF_SIZE);
    quietTitle.getStyleClass().add("strong");
    quiet.setId("line-or-water");
    quiet.setWrapText(true);
    quiet.setMinHeight(Region.USE_PREF_SIZE);
    leavingTitle.getStyleClass().add("strong");
    leaving.setId("leaving-rule");
    leaving.setWrapText(true);
    leaving.setMinHeight(Region.USE_PREF_SIZE);
    others
        .words("Line", 130, o -> name(o.lineId()))
        .words("When", 120, o -> o.source().word() + (o.nextFished() ? ", fished next" : ""))
        .numbers(
            "Weight an hour",
            170,
            o -> ReviewWords.value(o.weight()),
            o -> ReviewWords.weightRate(o.weight(), units))
        .numbers(
            "Fish an hour",
            130,
            o -> o.evidence().rate().perHour(),
            o -> ReviewWords.rate(o.evidence().rate()))
        .numbers(
            "Fish", 60, o -> (double) o.evidence().fish(), o -> String.valueOf(o.evidence().fish()))
        .numbers(
            "Min fished",
            90,
            o -> o.evidence().fishedMinutes(),
            o -> String.valueOf(Math.round(o.evidence().fishedMinutes())));
    VBox.setVgrow(others, Priority.ALWAYS);
    chartTitle.getStyleClass().add("strong");
    view.getChildren()
        .addAll(facts, quietTitle, quiet, leavingTitle, leaving, others, chartTitle, chart);
    others.setMinHeight(190);
    others.hug();
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.getStyleClass().add("plain-scroll");
  }

  ScrollPane view() {
    return scroll;
  }

  private String name(String lineId) {
    Review now = review;
    return now == null
        ? lineId
        : now.line(lineId).map(LineReview::line).map(l -> Say.capital(l.name())).orElse(lineId);
  }

  void show(Review newReview, StayOrGo stay, FigureStyle style) {
    review = newReview;
    units = style.units();
    shown = stay;
    chart(newReview, stay, style);
    facts.setText(facts(newReview, stay));
    show(stay.quiet());
    LeavingRule rule = newReview.line(stay.spell().lineId()).map(LineReview::leaving).orElse(null);
    leaving.setText(rule == null ? "" : rule.wording());
    Nodes.show(leavingTitle, rule != null);
    Nodes.show(leaving, rule != null);
    others.show(stay.others());
  }

  /** Each part on a line of its own; where nothing faded there is nothing to ask. */
  private void show(@Nullable LineOrWater answer) {
    quiet.setText(
        answer == null
            ? ""
            : answer.text()
                + answer.parts().stream()
                    .map(part -> "\n• " + part.text())
                    .collect(Collectors.joining()));
    for (Label label : List.of(quietTitle, quiet)) {
      Nodes.show(label, answer != null);
    }
  }

  /** Draws the stay again in another style. */
  void restyle(FigureStyle style) {
    Review now = review;
    StayOrGo stay = shown;
    if (now != null && stay != null) {
      chart(now, stay, style);
    }
  }

  private void chart(Review from, StayOrGo stay, FigureStyle style) {
    boolean byWeight = stay.paid().weight() != null;
    List<IntervalChart.Row> rows = new ArrayList<>();
    Rate paid = byWeight ? stay.paid().weight() : stay.paid().fish();
    if (paid != null) {
      String note = Say.fish(stay.spell().caught().landed()) + " in this stay";
      rows.add(row(from, stay.spell().lineId(), paid, note, byWeight, true));
    }
    for (OtherLine other : stay.others()) {
      Rate rate = byWeight ? other.weight() : other.evidence().rate();
      if (rate != null) {
        String note = Say.fish(other.evidence().fish()) + ", " + other.source().word();
        rows.add(row(from, other.lineId(), rate, note, byWeight, false));
      }
    }
    double unit = perUnit();
    String name = unit == 1000 ? " kg" : " lb";
    IntervalChart drawn =
        new IntervalChart(
            rows, style, v -> byWeight ? Say.number(v) + name : Say.number(v) + " fish");
    chartTitle.setText(
        byWeight ? "Weight an hour, with its limits" : "Fish an hour, with its limits");
    chartTitle.setVisible(!rows.isEmpty());
    chart.setMinHeight(drawn.height());
    chart.setPrefHeight(drawn.height());
    chart.show(rows.isEmpty() ? null : drawn, drawn.description());
  }

  private double perUnit() {
    return units.weight() == Units.Weight.KG ? 1000 : WeightText.GRAMS_PER_POUND;
  }

  private IntervalChart.Row row(
      Review from, String lineId, Rate rate, String note, boolean byWeight, boolean strong) {
    double unit = byWeight ? perUnit() : 1;
    return new IntervalChart.Row(
        name(lineId),
        Math.max(0, from.indexOf(lineId)),
        rate.low() / unit,
        rate.perHour() / unit,
        rate.high() / unit,
        note,
        strong);
  }

  private String facts(Review from, StayOrGo stay) {
    ZoneId zone = from.session().occasion().zone();
    StringBuilder text = new StringBuilder();
    text.append(name(stay.spell().lineId()))
        .append(", ")
        .append(Say.shortClock(stay.spell().span().from(), zone))
        .append("–")
        .append(Say.shortClock(stay.spell().span().to(), zone))
        .append(". Fished ")
        .append(Math.round(stay.spell().fishedHours() * 60))
        .append(" min, a bait in the water ")
        .append(Math.round(stay.spell().baitHours() * 60))
        .append(" min: ")
        .append(Say.count(stay.spell().caught().bites(), "bite"))
        .append(", ")
        .append(Say.fish(stay.spell().caught().landed()))
        .append(" landed, ")
        .append(stay.spell().caught().lost())
        .append(" lost.");
    Fade fade = stay.fade();
    if (fade == null) {
      text.append("\nToo short a spell to look for a fade (20 bait minutes are needed).");
    } else {
      text.append('\n').append(ReviewWords.fade(fade, zone));
    }
    PastPlain past = stay.past();
    if (past != null) {
      text.append('\n').append(past(past));
    }
    stay.notes().forEach(note -> text.append("\n• ").append(note));
    if (stay.recovery() != null) {
      text.append('\n').append(stay.recovery().wording());
    }
    return text.toString();
  }

  private String past(PastPlain past) {
    String caught = Say.fish(past.caught().landed());
    if (past.caught().weightG() > 0) {
      caught = Say.weight(past.caught().weightG(), units) + ", " + caught;
    }
    StringBuilder text = new StringBuilder("In the ");
    text.append(Math.round(past.minutes()))
        .append(" min from then to leaving it gave ")
        .append(caught);
    Double grams = past.breakEvenGPerHour();
    Double fish = past.breakEvenPerHour();
    if (past.caught().landed() == 0) {
      text.append(": any fish would have beaten it.");
    } else if (grams != null && grams > 0) {
      text.append(": another line had to give ")
          .append(Say.roughWeight(grams, units))
          .append(" an hour to beat that")
          .append(fish == null ? "." : ", or " + Say.number(fish) + " fish an hour.");
    } else if (fish != null) {
      text.append(": another line had to give ")
          .append(Say.number(Objects.requireNonNull(fish)))
          .append(" fish an hour to beat that.");
    } else {
      text.append("; after the cost of moving no time was left to compare.");
    }
    return text.toString();
  }
}
