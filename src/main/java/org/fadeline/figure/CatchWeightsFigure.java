package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.NetScale;
import org.fadeline.analysis.Review;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/** Weight of every fish, a row a line, with the middle one marked and how estimates ran off. */
public final class CatchWeightsFigure extends StyledFigure {
  private final Review review;
  private final List<double[]> grams = new ArrayList<>();

  /** Makes the figure. */
  public CatchWeightsFigure(Review review, FigureStyle style) {
    super(style, 1.8);
    this.review = review;
    LaneRecord.Lanes lanes = LaneRecord.of(review);
    for (LaneRecord lane : lanes.byLine().values()) {
      List<Double> found = new ArrayList<>();
      for (SessionEvent event : lane.marks.events) {
        Fish fish = event.fishOrNull();
        if (event.kind() == EventKind.LANDED
            && fish != null
            && fish.grams() != null
            && fish.count() > 0) {
          for (int i = 0; i < Math.min(fish.count(), 1000); i++) {
            found.add(fish.grams() / fish.count());
          }
        }
      }
      double[] sorted = found.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      grams.add(sorted);
    }
  }

  @Override
  public String title() {
    return "Weight of each fish";
  }

  @Override
  public String description() {
    FigureText words = new FigureText(review.session(), style.units());
    StringBuilder text = new StringBuilder("Weight of each fish by line. ");
    for (int i = 0; i < grams.size(); i++) {
      double[] row = grams.get(i);
      if (row.length > 0) {
        text.append(review.lines().get(i).line().name())
            .append(": ")
            .append(FigureText.fish(row.length))
            .append(", middle one ")
            .append(words.fineWeight(row[row.length / 2]))
            .append(". ");
      }
    }
    return text.append(scalesWords(words)).toString().strip();
  }

  /** Returns how the estimates stand to the scales, or an empty text. */
  private String scalesWords(FigureText words) {
    NetScale.Total nets = NetScale.total(NetScale.of(review.session()));
    if (nets.scalesG() == null || nets.factor() == null) {
      return "";
    }
    long percent = Math.round(100 * (nets.factor() - 1));
    return "All nets: logged "
        + words.weight(nets.logged().grams())
        + ", scales "
        + words.weight(nets.scalesG())
        + (percent == 0
            ? ": level."
            : ": " + Math.abs(percent) + "% " + (percent > 0 ? "more." : "less."));
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    FigureText words = new FigureText(review.session(), style.units());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double most = grams.stream().flatMapToDouble(Arrays::stream).max().orElse(0);
    if (most <= 0) {
      pen.text("No single weights were logged.", 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    double names = 0;
    for (var line : review.lines()) {
      names = Math.max(names, Type.width(pen.small, line.line().name()));
    }
    double left = Math.min(width * 0.35, names + 58 * style.textScale());
    double foot = height - pen.smallRow() * 2.6;
    Rectangle2D area = new Rectangle2D.Double(left, 12, width - left - 24, foot - 12);
    Plot plot = new Plot(pen, area, 0, words.axisWeight(most) * 1.05, 1);
    pen.fill(pen.theme.secondInk(), area.getX(), area.getMaxY() - 0.5, area.getWidth(), 1);
    plot.paintX(words.axisUnit());
    pen.text(
        Pen.shortened(pen.small, width - 28, scalesWords(words)),
        14,
        height - 8,
        pen.small,
        pen.theme.secondInk());
    double row = area.getHeight() / grams.size();
    for (int i = 0; i < grams.size(); i++) {
      paintRow(plot, words, i, area.getY() + row * (i + 0.5), row);
    }
  }

  private static int column(Plot plot, FigureText words, double grams, double radius) {
    return (int) ((plot.x(words.axisWeight(grams)) - plot.area.getX()) / (2 * radius));
  }

  private void paintRow(Plot plot, FigureText words, int index, double middle, double row) {
    Pen pen = plot.pen;
    double badge = pen.badge(index, 12, middle);
    double ascent = Type.drop(pen.small);
    pen.text(
        Pen.shortened(
            pen.small, plot.area.getX() - badge - 26, review.lines().get(index).line().name()),
        badge + 18,
        middle + ascent,
        pen.small,
        pen.theme.ink());
    double[] sorted = grams.get(index);
    if (sorted.length == 0) {
      pen.text(
          "no single weights",
          plot.area.getX() + 4,
          middle + ascent,
          pen.small,
          pen.theme.secondInk());
      return;
    }
    double radius = Math.min(4.5, row / 7);
    int[] stacked = new int[(int) (plot.area.getWidth() / (2 * radius)) + 2];
    int highest = 0;
    for (double each : sorted) {
      highest = Math.max(highest, ++stacked[column(plot, words, each, radius)]);
    }
    // More than fit are all drawn closer together, so that a higher pile is still of more fish.
    double half = row / 2 - radius - 2;
    double apart = Math.min(2 * radius, half / Math.max(1, highest / 2));
    Arrays.fill(stacked, 0);
    for (double each : sorted) {
      int level = stacked[column(plot, words, each, radius)]++;
      double offset = (level % 2 == 0 ? 1 : -1) * ((level + 1) / 2) * apart;
      double x = plot.x(words.axisWeight(each));
      pen.disc(pen.theme.line(index), x, middle + offset, radius - 0.4);
    }
    double median = plot.x(words.axisWeight(sorted[sorted.length / 2]));
    pen.fill(pen.theme.ink(), median - 1, middle - row * 0.36, 2, row * 0.72);
  }
}
