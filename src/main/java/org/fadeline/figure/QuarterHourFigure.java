package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.Course.Quarter;
import org.fadeline.analysis.Review;

/** Catch by quarter-hour of the match, each bar made up of the lines it came from. */
public final class QuarterHourFigure extends StyledFigure {
  private final Review review;
  private final boolean weights;

  /** Makes the figure. */
  public QuarterHourFigure(Review review, FigureStyle style) {
    super(style, 2);
    this.review = review;
    this.weights = review.summary().caught().weightG() > 0;
  }

  @Override
  public String title() {
    return "Catch by quarter-hour";
  }

  @Override
  public String description() {
    FigureText words = new FigureText(review.session(), style.units());
    StringBuilder text = new StringBuilder("Catch in each quarter-hour. ");
    for (Quarter quarter : review.course().quarters()) {
      text.append(words.clock(quarter.span().from())).append(": ");
      text.append(FigureText.fish(quarter.caught().landed()));
      if (quarter.caught().weightG() > 0) {
        text.append(", ").append(words.weight(quarter.caught().weightG()));
      }
      text.append(". ");
    }
    return text.toString().strip();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    FigureText words = new FigureText(review.session(), style.units());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    List<Quarter> quarters = review.course().quarters();
    if (quarters.isEmpty()) {
      pen.text("Nothing was recorded.", 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    Rectangle2D area = Plot.area(pen, pen.smallRow() * 1.7, width, height, 0.4);
    TimeAxis axis =
        new TimeAxis(
            quarters.get(0).span().from(),
            quarters.get(quarters.size() - 1).span().to(),
            area.getX(),
            area.getMaxX(),
            review.session().occasion().zone());
    double[][] amounts = new double[quarters.size()][review.lines().size()];
    double most = 0;
    for (int q = 0; q < quarters.size(); q++) {
      double sum = 0;
      for (int i = 0; i < review.lines().size(); i++) {
        amounts[q][i] = amount(quarters.get(q).lines().get(i), words);
        sum += amounts[q][i];
      }
      most = Math.max(most, sum);
    }
    Plot plot = new Plot(pen, area, 0, 1, most * 1.05);
    plot.paintY(weights ? words.axisUnit() + " in the quarter-hour" : "fish in the quarter-hour");
    plot.paintClock(axis);
    for (int q = 0; q < quarters.size(); q++) {
      paintBar(plot, axis, quarters.get(q), amounts[q]);
    }
  }

  private double amount(Caught caught, FigureText words) {
    return weights ? words.axisWeight(caught.weightG()) : caught.landed();
  }

  private void paintBar(Plot plot, TimeAxis axis, Quarter quarter, double[] amounts) {
    Pen pen = plot.pen;
    double x1 = axis.x(quarter.span().from()) + 1.5;
    double x2 = axis.x(quarter.span().to()) - 1.5;
    double below = 0;
    for (int i = 0; i < amounts.length; i++) {
      if (amounts[i] <= 0) {
        continue;
      }
      double foot = plot.y(below);
      below += amounts[i];
      double top = plot.y(below);
      Color hue = pen.theme.line(i);
      pen.fill(hue, x1, top, x2 - x1, foot - top - 0.6);
      if (i >= pen.theme.hues()) {
        Path2D hatch = new Path2D.Double();
        Pen.hatch(hatch, x1, top, x2 - x1, foot - top, 5);
        pen.stroke(pen.theme.panel(), 1.2, hatch);
      }
      if (foot - top > pen.smallRow() && x2 - x1 > Type.width(pen.smallStrong, "AA")) {
        pen.text(
            Theme.letter(i),
            (x1 + x2) / 2,
            (top + foot) / 2 + Type.drop(pen.smallStrong),
            pen.smallStrong,
            pen.theme.on(hue),
            Pen.Align.MIDDLE);
      }
    }
  }
}
