package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;

/**
 * Two matches over time, one above the other, on one axis and one scale: what lies at the same x
 * happened at the same place of the alignment. Paired lines have the same hue and letter and come
 * first, in the first session's order.
 */
public final class CompareTimelinesFigure implements Figure {
  private final Comparison comparison;
  private final FigureStyle style;
  private final TimelineFigure first;
  private final TimelineFigure second;

  /** Makes the two timelines as they look afterwards. */
  public CompareTimelinesFigure(Comparison comparison, FigureStyle style) {
    this.comparison = comparison;
    this.style = style;
    Alignment alignment = comparison.setup().alignment();
    TimelineView one = TimelineView.whole(comparison.first().session());
    TimelineView other = TimelineView.whole(comparison.second().session());
    double low =
        Math.min(alignment.firstMinutes(one.from()), alignment.secondMinutes(other.from()));
    double high = Math.max(alignment.firstMinutes(one.to()), alignment.secondMinutes(other.to()));
    TimelineFigure above =
        timeline(
            comparison.first(),
            order(comparison, true),
            one.withRange(alignment.firstInstant(low), alignment.firstInstant(high)),
            style);
    TimelineFigure below =
        timeline(
            comparison.second(),
            order(comparison, false),
            other.withRange(alignment.secondInstant(low), alignment.secondInstant(high)),
            style);
    double top =
        Math.max(above.highest(Knowledge.hindsight()), below.highest(Knowledge.hindsight()));
    this.first = above.withScaleTo(top);
    this.second = below.withScaleTo(top);
  }

  private static List<LineReview> order(Comparison comparison, boolean ofFirst) {
    List<LineReview> lines = new ArrayList<>();
    for (PairedLines pair : comparison.lines().pairs()) {
      lines.add((ofFirst ? pair.first() : pair.second()).line());
    }
    for (Side side : ofFirst ? comparison.lines().onlyFirst() : comparison.lines().onlySecond()) {
      lines.add(side.line());
    }
    return lines;
  }

  private static TimelineFigure timeline(
      Review review, List<LineReview> lines, TimelineView view, FigureStyle style) {
    // A line's hue is its place in the review: the same place for both lines of a pair.
    Review ordered =
        new Review(
            review.session(),
            review.settings(),
            review.summary(),
            lines,
            review.stays(),
            review.course());
    return new TimelineFigure(
        ordered,
        style,
        view.withLanes(lines.stream().map(l -> l.line().id()).toList()),
        Knowledge.hindsight());
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
  public FigureStyle style() {
    return style;
  }

  @Override
  public double aspect() {
    return 1.05;
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
    return review.session().occasion().title() + ", " + review.session().occasion().date();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double head = pen.bodyRow() * 1.4;
    double half = height / 2;
    paint(g, first, "First: " + name(comparison.first()), new double[] {0, width, half, head});
    paint(
        g, second, "Second: " + name(comparison.second()), new double[] {half, width, half, head});
  }

  /** Paints one timeline under its heading; the box is top, width, height and heading. */
  private void paint(Graphics2D g, TimelineFigure figure, String heading, double[] box) {
    AffineTransform before = g.getTransform();
    java.awt.Shape clip = g.getClip();
    g.translate(0, box[0] + box[3]);
    figure.paint(g, box[1], box[2] - box[3]);
    g.setTransform(before);
    g.setClip(clip);
    Pen pen = new Pen(g, style);
    pen.text(
        Pen.shortened(pen.strong, box[1] - 20, heading),
        10,
        box[0] + box[3] * 0.75,
        pen.strong,
        pen.theme.ink());
  }
}
