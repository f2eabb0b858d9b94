package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;

/**
 * Two matches over time, one above the other, on one axis and one scale: what lies at the same x
 * happened at the same place of the alignment. Paired lines have the same hue and letter and come
 * first, in the first session's order; its hues are those it has everywhere else.
 */
public final class CompareTimelinesFigure extends StyledFigure {
  private final Comparison comparison;
  private final TimelineFigure first;
  private final TimelineFigure second;

  /** Makes the two timelines as they look afterwards. */
  public CompareTimelinesFigure(Comparison comparison, FigureStyle style) {
    super(style, 1.05);
    this.comparison = comparison;
    Alignment alignment = comparison.setup().alignment();
    TimelineView one = TimelineView.whole(comparison.first().session());
    TimelineView other = TimelineView.whole(comparison.second().session());
    double low =
        Math.min(alignment.firstMinutes(one.from()), alignment.secondMinutes(other.from()));
    double high = Math.max(alignment.firstMinutes(one.to()), alignment.secondMinutes(other.to()));
    PairedHues hues = PairedHues.of(comparison);
    List<String> names = new ArrayList<>();
    comparison.first().session().lines().forEach(line -> names.add(line.name()));
    comparison.second().session().lines().forEach(line -> names.add(line.name()));
    TimelineFigure above =
        TimelineFigure.ofTwo(
            comparison.first(),
            style,
            one.withRange(alignment.firstInstant(low), alignment.firstInstant(high))
                .withLanes(order(comparison, true)),
            new TimelineFigure.Beside(hues.first(), names),
            SessionStroke.FIRST);
    TimelineFigure below =
        TimelineFigure.ofTwo(
            comparison.second(),
            style,
            other
                .withRange(alignment.secondInstant(low), alignment.secondInstant(high))
                .withLanes(order(comparison, false)),
            new TimelineFigure.Beside(hues.second(), names),
            SessionStroke.SECOND);
    double top =
        Math.max(above.scaleTop(Knowledge.hindsight()), below.scaleTop(Knowledge.hindsight()));
    this.first = above.withScaleTo(top);
    this.second = below.withScaleTo(top);
  }

  private static List<String> order(Comparison comparison, boolean ofFirst) {
    List<String> lines = new ArrayList<>();
    for (PairedLines pair : comparison.lines().pairs()) {
      lines.add((ofFirst ? pair.first() : pair.second()).line().line().id());
    }
    for (Side side : ofFirst ? comparison.lines().onlyFirst() : comparison.lines().onlySecond()) {
      lines.add(side.line().line().id());
    }
    return lines;
  }

  /** Returns the first session's timeline, for a screen that draws its layers apart. */
  public TimelineFigure first() {
    return first;
  }

  /** Returns the second session's timeline. */
  public TimelineFigure second() {
    return second;
  }

  @Override
  public String title() {
    return "Two matches, line by line";
  }

  @Override
  public String description() {
    return comparison.setup().alignment().stated()
        + " Above, "
        + name(comparison.first())
        + ": "
        + first.description()
        + " Below, "
        + name(comparison.second())
        + ": "
        + second.description();
  }

  private static String name(Review review) {
    return review.session().occasion().title()
        + ", "
        + DayAxis.say(review.session().occasion().date());
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double head = pen.bodyRow() * 1.4;
    double half = height / 2;
    paint(g, first, SessionStroke.FIRST, new double[] {0, width, half, head});
    paint(g, second, SessionStroke.SECOND, new double[] {half, width, half, head});
  }

  /** Paints one timeline under its heading; the box is top, width, height and heading. */
  private void paint(Graphics2D g, TimelineFigure figure, SessionStroke which, double[] box) {
    AffineTransform before = g.getTransform();
    Shape clip = g.getClip();
    g.translate(0, box[0] + box[3]);
    figure.paint(g, box[1], box[2] - box[3]);
    g.setTransform(before);
    g.setClip(clip);
    which.paintHeading(
        new Pen(g, style), figure.review().session(), 10, box[0] + box[3] * 0.75, box[1] - 20);
  }
}
