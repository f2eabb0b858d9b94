package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import org.fadeline.analysis.Course;
import org.fadeline.analysis.Course.Finish;
import org.fadeline.analysis.Course.Pace;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Spell;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.replay.ReplayTrack;
import org.jspecify.annotations.Nullable;

/**
 * The weight as it ran, in the hue of the line it came from, and behind it the finish as it could
 * be told at each minute.
 */
public final class WeightFigure extends StyledFigure {
  private final Review review;
  private final Knowledge knowledge;
  private final ReplayTrack track;
  private final boolean weights;

  /** Makes the figure as it looks from a given moment. */
  public WeightFigure(Review review, FigureStyle style, Knowledge knowledge) {
    super(style, 1.8);
    this.review = review;
    this.knowledge = knowledge;
    this.track = ReplayTrack.of(review.session());
    this.weights = totals().totals().weightG() > 0;
  }

  private ReplayFrame totals() {
    return track.frameAt(knowledge.until(Long.MAX_VALUE / 2));
  }

  @Override
  public String title() {
    return weights ? "Weight as it ran" : "Fish as they came";
  }

  @Override
  public String description() {
    FigureText words = new FigureText(review.session(), style.units());
    ReplayFrame.Totals totals = totals().totals();
    return "Running catch from all in: "
        + (weights ? words.weight(totals.weightG()) + ", " : "")
        + FigureText.fish(totals.fish())
        + ", "
        + review.summary().weightFrom().word()
        + ". The band is the finish as it could be told at each minute, on the line being fished.";
  }

  private double value(ReplayFrame frame, FigureText words) {
    return weights ? words.axisWeight(frame.totals().weightG()) : frame.totals().fish();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    FigureText words = new FigureText(review.session(), style.units());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    Rectangle2D area = Plot.area(pen, pen.smallRow() * 1.7, width, height, 0.4);
    long allIn = review.session().match().allIn();
    long end = TimelineView.whole(review.session()).to();
    TimeAxis axis =
        new TimeAxis(allIn, end, area.getX(), area.getMaxX(), review.session().occasion().zone());
    List<Pace> pace = review.course().pace().stream().filter(p -> knowledge.knows(p.at())).toList();
    double total = value(totals(), words);
    // Above the end of the curve there is room for what it came to.
    double room = area.getHeight() / Math.max(1, area.getHeight() - pen.bodyRow() * 1.3);
    Plot plot = new Plot(pen, area, 0, 1, Math.max(top(pace, total, words), total * room));
    plot.paintY(weights ? words.axisUnit() : "fish");
    plot.paintClock(axis);
    paintPace(plot, axis, pace, words);
    paintCurve(plot, axis, words);
    long now = Math.min(end, knowledge.until(end));
    double y = plot.y(total);
    String told =
        weights
            ? words.weight(totals().totals().weightG())
            : FigureText.fish(totals().totals().fish());
    double x = Math.min(axis.x(now), area.getMaxX());
    pen.text(
        told,
        Math.max(x, area.getX() + Type.width(pen.strong, told) + 4),
        Math.max(area.getY() + 12, y - 7),
        pen.strong,
        pen.theme.ink(),
        Pen.Align.RIGHT);
  }

  private double top(List<Pace> pace, double total, FigureText words) {
    double most = total;
    for (Pace point : pace) {
      Finish finish = finish(point);
      if (finish != null && point.at() >= settled()) {
        most = Math.max(most, scaled(finish.high(), words));
      }
    }
    return most <= 0 ? 1 : most * 1.05;
  }

  /** The first three quarters of an hour tell next to nothing of the finish. */
  private long settled() {
    return review.session().match().allIn() + 45 * 60_000L;
  }

  private Course.@Nullable Finish finish(Pace point) {
    return weights ? point.weight() : point.fish();
  }

  private double scaled(double value, FigureText words) {
    return weights ? words.axisWeight(value) : value;
  }

  private void paintPace(Plot plot, TimeAxis axis, List<Pace> pace, FigureText words) {
    Pen pen = plot.pen;
    Color tint = Pen.alpha(pen.theme.secondInk(), pen.theme.isDark() ? 0.26 : 0.14);
    Path2D middle = new Path2D.Double();
    // One shape: columns side by side would show their seams in print.
    Path2D upper = new Path2D.Double();
    Deque<Point2D> lower = new ArrayDeque<>();
    boolean started = false;
    for (int i = 0; i < pace.size(); i++) {
      Finish finish = finish(pace.get(i));
      if (finish == null || pace.get(i).at() < settled()) {
        fillBand(pen, tint, upper, lower);
        started = false;
        continue;
      }
      double x1 = Math.round(axis.x(pace.get(i).at()));
      double x2 = Math.round(axis.x(pace.get(i).at() + 60_000));
      double high = plot.y(scaled(finish.high(), words));
      double low = plot.y(scaled(finish.low(), words));
      double end = Math.min(x2, plot.area.getMaxX());
      if (lower.isEmpty()) {
        upper.moveTo(x1, high);
      } else {
        upper.lineTo(x1, high);
      }
      upper.lineTo(end, high);
      lower.push(new Point2D.Double(x1, low));
      lower.push(new Point2D.Double(end, low));
      double y = plot.y(scaled(finish.median(), words));
      if (started) {
        middle.lineTo(x1, y);
      } else {
        middle.moveTo(x1, y);
      }
      started = true;
    }
    fillBand(pen, tint, upper, lower);
    pen.stroke(pen.theme.secondInk(), 1.2, new float[] {4, 3}, middle);
    if (!pace.isEmpty()) {
      Finish last = finish(pace.get(pace.size() - 1));
      String level = last == null ? "" : ", " + Math.round(last.level() * 10) + " times in 10";
      pen.text(
          Pen.fitting(
              pen.small,
              plot.area.getWidth() * 0.75,
              List.of(
                  "dashed: the finish as it could be told at that minute" + level,
                  "dashed: the finish as told then")),
          plot.area.getX() + Type.width(pen.small, "0,000"),
          plot.area.getY() - 8,
          pen.small,
          pen.theme.secondInk());
    }
  }

  /** Fills between the upper edge and the lower, last point first, and empties both. */
  private static void fillBand(Pen pen, Color tint, Path2D upper, Deque<Point2D> lower) {
    if (lower.isEmpty()) {
      return;
    }
    while (!lower.isEmpty()) {
      Point2D point = lower.pop();
      upper.lineTo(point.getX(), point.getY());
    }
    upper.closePath();
    pen.fill(tint, upper);
    upper.reset();
  }

  private void paintCurve(Plot plot, TimeAxis axis, FigureText words) {
    double x = axis.x(review.session().match().allIn());
    double y = plot.y(0);
    String line = null;
    for (SessionEvent event : review.session().events()) {
      if (!knowledge.knows(event.at()) || event.at() > axis.to()) {
        break;
      }
      ReplayFrame frame = track.frameAt(event.at());
      double nextX = Math.max(axis.left(), axis.x(event.at()));
      double nextY = plot.y(value(frame, words));
      Color hue = colour(plot.pen, line);
      plot.pen.line(hue, 2.4, x, y, nextX, y);
      line = Objects.requireNonNullElse(frame.fishing(), line == null ? "" : line);
      if (nextY != y) {
        plot.pen.line(colour(plot.pen, line), 2.4, nextX, y, nextX, nextY);
      }
      x = nextX;
      y = nextY;
    }
    double end = axis.x(Math.min(axis.to(), knowledge.until(axis.to())));
    plot.pen.line(colour(plot.pen, line), 2.4, x, y, Math.max(x, end), y);
    paintSpells(plot, axis);
  }

  /** Letters of the lines at the foot: hue never stands alone. */
  private void paintSpells(Plot plot, TimeAxis axis) {
    double middle = plot.area.getMaxY() - plot.pen.smallRow() * 0.75;
    double free = 0;
    for (Spell spell : review.spells()) {
      if (knowledge.knows(spell.span().from())) {
        double x = Math.max(axis.left(), axis.x(spell.span().from())) + 3;
        if (x >= free && x < plot.area.getMaxX() - 14) {
          free = x + plot.pen.badge(review.indexOf(spell.lineId()), x, middle) + 2;
        }
      }
    }
  }

  private Color colour(Pen pen, @Nullable String lineId) {
    int index = lineId == null ? -1 : review.indexOf(lineId);
    return index < 0 ? pen.theme.secondInk() : pen.theme.line(index);
  }
}
