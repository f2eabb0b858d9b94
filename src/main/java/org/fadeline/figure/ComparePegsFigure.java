package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Map;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.model.Session;
import org.fadeline.replay.ReplayFrame;

/**
 * Two pegs from above, on one scale, at the same place of the alignment. Paired lines have the same
 * hue and letter; catches of the first session are full discs, those of the second outlined.
 */
public final class ComparePegsFigure extends StyledFigure {
  private final Comparison comparison;
  private final ReplayFrame first;
  private final ReplayFrame second;
  private final PegLook firstLook;
  private final PegLook secondLook;

  /** Makes the pegs as they stood at the end of each match. */
  public ComparePegsFigure(Comparison comparison, FigureStyle style) {
    this(comparison, style, end(comparison.first()), end(comparison.second()));
  }

  /**
   * Makes the pegs of a moment.
   *
   * @param first the first session at the moment
   * @param second the second session at the moment
   */
  public ComparePegsFigure(
      Comparison comparison, FigureStyle style, ReplayFrame first, ReplayFrame second) {
    super(style, 1.5);
    this.comparison = comparison;
    this.first = first;
    this.second = second;
    PairedHues hues = PairedHues.of(comparison);
    this.firstLook = look(hues.first(), false);
    this.secondLook = look(hues.second(), true);
  }

  private static ReplayFrame end(Review review) {
    return ReplayFrame.at(review.session(), review.session().match().allOut());
  }

  private static PegLook look(Map<String, Integer> hues, boolean outlined) {
    return new PegLook(hues, Double.POSITIVE_INFINITY, outlined);
  }

  @Override
  public String title() {
    return "Two pegs on one scale";
  }

  @Override
  public String description() {
    return "Left, first match: "
        + new PegFigure(comparison.first().session(), first, style).description()
        + " Right, second match, catches outlined: "
        + new PegFigure(comparison.second().session(), second, style).description();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double gap = 10;
    double head = pen.bodyRow() * 1.5;
    double each = (width - gap) / 2;
    double tall = Math.max(40, height - head);
    Session one = comparison.first().session();
    Session other = comparison.second().session();
    double scale =
        Math.min(
            new PegLayout(one, style, firstLook, each, tall).pixelsPerMetre(),
            new PegLayout(other, style, secondLook, each, tall).pixelsPerMetre());
    double baseline = pen.bodyRow() * 1.05;
    SessionStroke.FIRST.paintHeading(pen, one, 6, baseline, each - 12);
    SessionStroke.SECOND.paintHeading(pen, other, each + gap + 6, baseline, each - 12);
    paint(
        g,
        new PegLayout(one, style, firstLook.withMostPixelsPerMetre(scale), each, tall),
        first,
        0,
        head);
    paint(
        g,
        new PegLayout(other, style, secondLook.withMostPixelsPerMetre(scale), each, tall),
        second,
        each + gap,
        head);
  }

  private static void paint(
      Graphics2D g, PegLayout layout, ReplayFrame frame, double left, double top) {
    AffineTransform before = g.getTransform();
    Shape clip = g.getClip();
    g.translate(left, top);
    g.clipRect(0, 0, (int) Math.ceil(layout.width), (int) Math.ceil(layout.height));
    layout.paintBase(g);
    layout.paintState(g, frame);
    g.setTransform(before);
    g.setClip(clip);
  }
}
