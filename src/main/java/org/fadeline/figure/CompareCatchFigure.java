package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.RunningCatch.Point;
import org.fadeline.analysis.compare.RunningCatch.SoFar;
import org.fadeline.model.Match;
import org.jspecify.annotations.Nullable;

/**
 * Both catches as they grew, and below them the first less the second. The first session's stroke
 * is whole, the second's dashed; neither has a hue, for hue means a line.
 */
public final class CompareCatchFigure extends StyledFigure {
  private final Comparison comparison;
  private final FigureText words;
  private final boolean weights;
  private final List<Point> known;

  /** Makes the figure, in weight where both sessions carry weights, else in fish. */
  public CompareCatchFigure(Comparison comparison, FigureStyle style) {
    this(
        comparison,
        style,
        comparison.running().points(),
        comparison.running().points().stream().anyMatch(p -> p.gramsDifference() != null)
            && comparison.running().firstWithoutWeight() == 0
            && comparison.running().secondWithoutWeight() == 0);
  }

  private CompareCatchFigure(
      Comparison comparison, FigureStyle style, List<Point> known, boolean weights) {
    super(style, 1.5);
    this.comparison = comparison;
    this.known = known;
    this.words = new FigureText(comparison.first().session(), style.units());
    this.weights = weights;
  }

  /**
   * Returns the figure as it was known at a place of the axis: in weight as long as every fish so
   * far has one.
   *
   * @param known the points told by then
   */
  public static CompareCatchFigure asKnownThen(
      Comparison comparison, FigureStyle style, List<Point> known) {
    return new CompareCatchFigure(
        comparison,
        style,
        known,
        known.stream().noneMatch(p -> isWithoutWeight(p.first()) || isWithoutWeight(p.second())));
  }

  private static boolean isWithoutWeight(@Nullable SoFar soFar) {
    return soFar != null && soFar.grams() == null;
  }

  @Override
  public String title() {
    return weights ? "Weight as it ran, two matches" : "Fish as they came, two matches";
  }

  @Override
  public String description() {
    return comparison.setup().alignment().stated()
        + " First match, whole stroke: "
        + total(true)
        + ". Second match, dashed stroke: "
        + total(false)
        + ". Below, the first less the second.";
  }

  private String total(boolean ofFirst) {
    Point last = known.isEmpty() ? null : known.get(known.size() - 1);
    SoFar soFar = last == null ? null : ofFirst ? last.first() : last.second();
    if (soFar == null) {
      return "not begun";
    }
    Double grams = soFar.grams();
    return weights && grams != null && soFar.fish() > 0
        ? words.weight(grams) + ", " + FigureText.fish(soFar.fish())
        : FigureText.fish(soFar.fish());
  }

  private @Nullable Double value(@Nullable SoFar soFar) {
    if (soFar == null) {
      return null;
    }
    Double grams = soFar.grams();
    if (weights) {
      return grams == null ? null : (Double) words.axisWeight(grams);
    }
    return (double) soFar.fish();
  }

  private @Nullable Double difference(Point point) {
    Double one = value(point.first());
    Double other = value(point.second());
    return one == null || other == null ? null : (Double) (one - other);
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double top = pen.smallRow() * 1.7;
    Rectangle2D whole = Plot.area(pen, top, width, height, 0.4);
    double gap = pen.smallRow() * 2.2;
    double upper = (whole.getHeight() - gap) * 0.68;
    Rectangle2D above = new Rectangle2D.Double(whole.getX(), whole.getY(), whole.getWidth(), upper);
    Rectangle2D below =
        new Rectangle2D.Double(
            whole.getX(),
            above.getMaxY() + gap,
            whole.getWidth(),
            whole.getMaxY() - above.getMaxY() - gap);
    Alignment alignment = comparison.setup().alignment();
    Match one = comparison.first().session().match();
    Match other = comparison.second().session().match();
    double low =
        Math.min(alignment.firstMinutes(one.allIn()), alignment.secondMinutes(other.allIn()));
    double high =
        Math.max(alignment.firstMinutes(one.allOut()), alignment.secondMinutes(other.allOut()));
    if (!known.isEmpty()) {
      // Fish may have come before all in, or after all out.
      low = Math.min(low, known.get(0).minutes());
      high = Math.max(high, known.get(known.size() - 1).minutes());
    }
    paintCurves(new Plot(pen, above, low, high, most(known) * 1.08), known);
    paintDifference(new Plot(pen, below, low, high, 1), known);
  }

  private double most(List<Point> points) {
    double most = 1;
    for (Point point : points) {
      Double one = value(point.first());
      Double other = value(point.second());
      most = Math.max(most, Math.max(one == null ? 0 : one, other == null ? 0 : other));
    }
    return most;
  }

  private void paintCurves(Plot plot, List<Point> points) {
    plot.paintY(weights ? words.axisUnit() : "fish");
    Pen pen = plot.pen;
    Path2D one = steps(plot, points, true);
    Path2D other = steps(plot, points, false);
    pen.stroke(pen.theme.ink(), 2.2, SessionStroke.FIRST.dash(), one);
    pen.stroke(pen.theme.ink(), 2.2, SessionStroke.SECOND.dash(), other);
    double right = plot.area.getMaxX();
    double unit = Type.width(pen.small, weights ? words.axisUnit() : "fish");
    double room = (right - plot.area.getX() - unit - 24) / 2;
    // Both are told in the same way.
    int brief = 0;
    while (brief < 2 && Math.max(needed(pen, true, brief), needed(pen, false, brief)) > room) {
      brief++;
    }
    right -= label(plot, SessionStroke.SECOND, told(false, brief), right) + 18;
    label(plot, SessionStroke.FIRST, told(true, brief), right);
  }

  /** Returns what a session came to: with its stroke in words, without, or those alone. */
  private String told(boolean ofFirst, int brief) {
    String stroke = (ofFirst ? SessionStroke.FIRST : SessionStroke.SECOND).words();
    return List.of(stroke + ": " + total(ofFirst), total(ofFirst), stroke).get(brief);
  }

  private double needed(Pen pen, boolean ofFirst, int brief) {
    return Type.width(pen.smallStrong, told(ofFirst, brief)) + 24 * pen.style.textScale() + 24;
  }

  /** Writes above the plot what a session came to, left of it a piece of its stroke. */
  private static double label(Plot plot, SessionStroke session, String text, double right) {
    Pen pen = plot.pen;
    double sample = 24 * pen.style.textScale();
    double width = Type.width(pen.smallStrong, text);
    double baseline = plot.area.getY() - 8;
    double middle = baseline - Type.drop(pen.smallStrong);
    pen.text(text, right, baseline, pen.smallStrong, pen.theme.ink(), Pen.Align.RIGHT);
    double left = right - width - sample - 6;
    pen.stroke(
        pen.theme.ink(),
        2.2,
        session.dash(),
        new Line2D.Double(left, middle, left + sample, middle));
    return width + sample + 6;
  }

  private Path2D steps(Plot plot, List<Point> points, boolean ofFirst) {
    Path2D path = new Path2D.Double();
    boolean begun = false;
    double last = 0;
    for (Point point : points) {
      Double value = value(ofFirst ? point.first() : point.second());
      if (value == null) {
        continue;
      }
      double x = plot.x(point.minutes());
      if (begun) {
        path.lineTo(x, plot.y(last));
        path.lineTo(x, plot.y(value));
      } else {
        path.moveTo(x, plot.y(value));
      }
      begun = true;
      last = value;
    }
    return path;
  }

  private void paintDifference(Plot plot, List<Point> points) {
    Pen pen = plot.pen;
    Rectangle2D area = plot.area;
    double most = 0;
    for (Point point : points) {
      Double difference = difference(point);
      most = Math.max(most, difference == null ? 0 : Math.abs(difference));
    }
    double scale = most > 0 ? area.getHeight() / 2 / (most * 1.1) : 0;
    double zero = area.getCenterY();
    Color tint = Pen.alpha(pen.theme.secondInk(), 0.3);
    Path2D hatch = new Path2D.Double();
    for (int i = 0; i + 1 < points.size(); i++) {
      Double difference = difference(points.get(i));
      if (difference == null) {
        continue;
      }
      double x1 = plot.x(points.get(i).minutes());
      double x2 = plot.x(points.get(i + 1).minutes());
      double tall = Math.abs(difference) * scale;
      if (difference >= 0) {
        pen.fill(tint, x1, zero - tall, x2 - x1, tall);
      } else if (x2 > x1 && tall > 0) {
        Pen.hatch(hatch, x1, zero, x2 - x1, tall, 6);
      }
    }
    pen.stroke(pen.theme.secondInk(), 1, hatch);
    pen.fill(pen.theme.secondInk(), area.getX(), zero - 0.5, area.getWidth(), 1);
    String unit = weights ? words.axisUnit() : "fish";
    pen.text(
        Pen.fitting(
            pen.small,
            area.getWidth(),
            List.of(
                "first less second, "
                    + unit
                    + ": filled where the first led, hatched where it was"
                    + " behind",
                "first less second, " + unit)),
        area.getX() - 2,
        area.getY() - 6,
        pen.small,
        pen.theme.secondInk());
    if (most > 0) {
      for (double value : new double[] {-most, 0, most}) {
        pen.text(
            (value > 0 ? "+" : value < 0 ? "−" : "") + FigureText.number(Math.abs(value)),
            area.getX() - 7,
            zero - value * scale + Type.drop(pen.small),
            pen.small,
            pen.theme.secondInk(),
            Pen.Align.RIGHT);
      }
    }
    paintAxis(plot);
  }

  private void paintAxis(Plot plot) {
    Alignment alignment = comparison.setup().alignment();
    if (alignment.mode() == Alignment.Mode.CLOCK) {
      plot.paintClock(
          new TimeAxis(
              alignment.firstInstant(plot.xLow),
              alignment.firstInstant(plot.xHigh),
              plot.area.getX(),
              plot.area.getMaxX(),
              comparison.first().session().occasion().zone()));
    } else {
      plot.paintX(
          switch (alignment.mode()) {
            case FIRST_FED -> "min since the first feed";
            case EVENT -> "min since the event";
            case BY_HAND -> "min since the first's all in";
            default -> "min since all in";
          });
    }
  }
}
