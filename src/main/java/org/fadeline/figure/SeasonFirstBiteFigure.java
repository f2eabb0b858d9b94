package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.analysis.season.Season.Curve;
import org.fadeline.analysis.season.Season.FirstBiteGroup;

/** How soon the first bite came after feeding over sessions, by kind of line, bait or water. */
public final class SeasonFirstBiteFigure extends SeasonFigure {
  private final By by;
  private final List<FirstBiteGroup> groups;

  /** Makes the figure; groups with too few feeds for a curve are named in the description alone. */
  public SeasonFirstBiteFigure(Season season, By by, FigureStyle style) {
    super(season, style, 2);
    this.by = by;
    this.groups = season.firstBites().stream().filter(g -> g.by() == by).toList();
  }

  @Override
  public String title() {
    return "First bite after feeding, by "
        + switch (by) {
          case LINE -> "kind of line";
          case BAIT -> "bait";
          case WATER -> "water";
        };
  }

  @Override
  public String description() {
    StringBuilder text = new StringBuilder(title()).append(". ");
    for (FirstBiteGroup group : groups) {
      Curve curve = group.curve();
      Double median = curve == null ? null : curve.medianMinutes();
      text.append(FigureText.capital(group.name()))
          .append(": ")
          .append(group.tally().feeds())
          .append(" feeds in ")
          .append(FigureText.sessions(group.sessions().size()))
          .append(", ")
          .append(
              curve == null
                  ? "too few for a curve"
                  : median == null
                      ? "half not reached"
                      : "half had brought a bite within " + FigureText.minutes(median))
          .append(". ");
    }
    return text.toString().strip();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    List<FirstBiteGroup> drawn = groups.stream().filter(group -> group.curve() != null).toList();
    if (drawn.isEmpty()) {
      pen.text(
          Pen.shortened(
              pen.body, width - 28, "Too few feeds for a curve: five at risk are needed."),
          14,
          30,
          pen.body,
          pen.theme.secondInk());
      return;
    }
    double names = 0;
    double longest = 10;
    for (FirstBiteGroup group : drawn) {
      names = Math.max(names, Type.width(pen.small, label(group)));
      longest = Math.max(longest, last(group));
    }
    double room = Math.min(width * 0.36, names + 40 * style().textScale());
    Rectangle2D area = Plot.area(pen, pen.smallRow() * 1.7, width - room, height, 0.4);
    Plot plot = new Plot(pen, area, 0, Math.min(longest, FirstBiteFigure.LONGEST_MINUTES), 100);
    plot.paintY("% of feeds that had brought a bite");
    plot.paintX("min since the feed");
    double[] wanted = new double[drawn.size()];
    for (int i = 0; i < drawn.size(); i++) {
      wanted[i] = paint(plot, drawn.get(i), i);
    }
    double gap = pen.smallStrong.getSize2D() * 1.6;
    double[] placed = Plot.apart(wanted, gap, area.getY() + 6, area.getMaxY() - 4);
    for (int i = 0; i < drawn.size(); i++) {
      double x = area.getMaxX() + 22;
      double badge = pen.badge(i, x, placed[i]);
      pen.text(
          Pen.shortened(pen.small, width - x - badge - 8, label(drawn.get(i))),
          x + badge + 5,
          placed[i] + Type.drop(pen.small),
          pen.small,
          pen.theme.ink());
    }
  }

  private static String label(FirstBiteGroup group) {
    Curve curve = group.curve();
    return FigureText.capital(group.name())
        + ", "
        + group.tally().feeds()
        + " feeds"
        + (curve != null && curve.fromMinute() >= FirstBiteFigure.LONGEST_MINUTES
            ? ", from " + FigureText.minutes(curve.fromMinute())
            : "");
  }

  private static double last(FirstBiteGroup group) {
    Curve curve = group.curve();
    if (curve == null) {
      return 0;
    }
    // Nothing is to be seen of a curve that has reached the top.
    return curve.steps().stream()
        .filter(step -> step.survival() <= 0)
        .mapToDouble(FirstBite.Step::minutes)
        .min()
        .orElseGet(
            () -> curve.steps().stream().mapToDouble(FirstBite.Step::minutes).max().orElse(0));
  }

  /** Draws a curve; returns the height it ends at. */
  private static double paint(Plot plot, FirstBiteGroup group, int index) {
    Curve curve = group.curve();
    double y = plot.y(0);
    // A line fed at the start and first fished hours later begins beyond the axis: its name says
    // so.
    if (curve == null || curve.fromMinute() >= plot.xHigh) {
      return y;
    }
    Path2D path = new Path2D.Double();
    path.moveTo(plot.x(curve.fromMinute()), y);
    for (FirstBite.Step step : curve.steps()) {
      double x = plot.x(Math.min(step.minutes(), plot.xHigh));
      path.lineTo(x, y);
      if (step.minutes() > plot.xHigh) {
        break;
      }
      y = plot.y(100 * (1 - step.survival()));
      path.lineTo(x, y);
    }
    plot.pen.stroke(plot.pen.theme.line(index), 2, plot.pen.theme.dash(index), path);
    return y;
  }
}
