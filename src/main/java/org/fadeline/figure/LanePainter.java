package org.fadeline.figure;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.TimeSpan;
import org.jspecify.annotations.Nullable;

/** Draws one lane's base: ground, effort, rate, name, scale. */
final class LanePainter {
  /** Most that a band may tint its ground: thinner where it is wider, so that wide says less. */
  private static final double BAND_INK = 7;

  /** Fished minutes from which a band is drawn at its full strength. */
  private static final double FULL_INK_MINUTES = 30;

  private final TimelineLayout layout;
  private final TimelineLayout.Lane lane;
  private final LaneRecord record;
  private final Pen pen;
  private final RateScale scale;
  private final LaneSight sight;
  private final Color hue;

  LanePainter(
      TimelineLayout layout,
      TimelineLayout.Lane lane,
      LaneRecord record,
      Pen pen,
      RateScale scale,
      Knowledge knowledge) {
    this.layout = layout;
    this.lane = lane;
    this.record = record;
    this.pen = pen;
    this.scale = scale;
    this.sight = record.sight(knowledge);
    this.hue = pen.theme.line(record.index);
  }

  void paint() {
    Rectangle2D plot = lane.plot();
    paintEffort(plot);
    paintGrid(plot);
    if (hasRate()) {
      paintBand();
      paintCurve();
      if (lane.header().getHeight() > 0) {
        paintScale();
      }
    }
    new MarkPainter(layout, lane, record, pen).paint(sight);
    paintFloor(plot);
    paintName();
  }

  private boolean hasRate() {
    return lane.rate().getHeight() >= 26;
  }

  /** Fished time is plain and faintly tinted, the rest of the match hatched. */
  private void paintEffort(Rectangle2D plot) {
    Theme theme = pen.theme;
    long allIn = layout.figure.review().session().match().allIn();
    long allOut = layout.figure.review().session().match().allOut();
    Path2D hatch = new Path2D.Double();
    long cursor = Math.max(allIn, layout.axis.from());
    long end = Math.min(allOut, layout.axis.to());
    for (TimeSpan span : sight.fished()) {
      hatchBetween(hatch, plot, cursor, Math.min(end, span.from()));
      cursor = Math.max(cursor, span.to());
    }
    hatchBetween(hatch, plot, cursor, end);
    pen.stroke(Theme.mix(theme.hairline(), 0.75, theme.panel()), 1, hatch);
    for (TimeSpan span : sight.fished()) {
      double x1 = clampX(span.from());
      double x2 = clampX(span.to());
      pen.fill(Theme.mix(hue, 0.07, theme.panel()), x1, plot.getY(), x2 - x1, plot.getHeight());
    }
  }

  private void hatchBetween(Path2D hatch, Rectangle2D plot, long from, long to) {
    if (to > from) {
      double x1 = clampX(from);
      double x2 = clampX(to);
      if (x2 - x1 > 0.5) {
        Pen.hatch(hatch, x1, plot.getY(), x2 - x1, plot.getHeight(), 12);
      }
    }
  }

  private void paintGrid(Rectangle2D plot) {
    Color colour = Pen.alpha(pen.theme.secondInk(), 0.16);
    for (TimeAxis.Tick tick : layout.ticks(pen)) {
      pen.fill(colour, tick.x() - 0.5, plot.getY(), 1, plot.getHeight());
    }
  }

  private List<RollingPoint> visiblePoints() {
    long from = layout.axis.from() - 60_000;
    long to = layout.axis.to();
    return sight.rolling().subList(sight.first(from), sight.first(to + 1));
  }

  /** Each minute's rate holds until the next: a slope would tell the next one early. */
  private double endX(RollingPoint point) {
    long end = point.at() + 60_000;
    for (TimeSpan span : sight.fished()) {
      if (span.from() <= point.at() && point.at() < span.to()) {
        end = Math.min(end, span.to());
      }
    }
    return clampX(end);
  }

  private void paintBand() {
    for (RollingPoint point : visiblePoints()) {
      Rate band = sight.isDrawn(point) ? layout.figure.band(point) : null;
      if (band != null) {
        double x1 = Math.round(clampX(point.at()));
        double x2 = Math.round(endX(point));
        double top = scale.y(layout.figure.scaled(band.high()));
        double height = scale.y(layout.figure.scaled(band.low())) - top;
        // What rests on a short time says less, and says it more quietly.
        double rests = Math.min(1, point.fishedMinutes() / FULL_INK_MINUTES);
        double ink =
            Math.max(0.05, rests * Math.max(0.09, Math.min(0.3, BAND_INK / Math.max(1, height))));
        pen.fill(Pen.alpha(hue, ink), x1, top, x2 - x1, height);
      }
    }
  }

  private void paintCurve() {
    Path2D path = new Path2D.Double();
    RollingPoint previous = null;
    for (RollingPoint point : visiblePoints()) {
      Rate rate = sight.isDrawn(point) ? layout.figure.rate(point) : null;
      if (rate != null) {
        double y = scale.y(layout.figure.scaled(rate.perHour()));
        double x = clampX(point.at());
        if (previous == null || point.at() - previous.at() > 60_000) {
          path.moveTo(x, y);
        } else {
          path.lineTo(x, y);
        }
        path.lineTo(endX(point), y);
        previous = point;
      } else {
        previous = null;
      }
    }
    SessionStroke session = layout.figure.shared().session();
    float[] dash = session == SessionStroke.SECOND ? session.dash() : pen.theme.dash(record.index);
    pen.stroke(hue, 1.8, dash, path);
  }

  private void paintScale() {
    Rectangle2D rate = lane.rate();
    double top = scale.y(scale.top());
    Color rule = Pen.alpha(pen.theme.secondInk(), 0.35);
    double right = layout.axis.left();
    pen.fill(rule, right - 4, top - 0.5, 4, 1);
    pen.fill(rule, right - 4, scale.y(scale.top() / 2) - 0.5, 4, 1);
    pen.stroke(rule, 1, new float[] {2, 3}, new Line2D.Double(right, top, rate.getMaxX(), top));
    double ascent = Type.ascent(pen.small);
    double x = right - 7;
    String unit =
        layout.figure.view().measure() == TimelineView.Measure.WEIGHT
            ? layout.words.axisUnit()
            : "fish";
    Color ink = pen.theme.secondInk();
    String first = FigureText.number(scale.top()) + " " + unit;
    double room = scale.floor() - top;
    if (Type.width(pen.small, first) > right - 8) {
      first = FigureText.number(scale.top());
    }
    pen.text(first, x, top + ascent / 2, pen.small, ink, Pen.Align.RIGHT);
    if (room > pen.smallRow() * 2.1) {
      pen.text("an hour", x, top + ascent / 2 + pen.smallRow(), pen.small, ink, Pen.Align.RIGHT);
    }
    double middle = scale.y(scale.top() / 2) + ascent / 2;
    if (middle - ascent > top + ascent / 2 + pen.smallRow() * 1.2
        && scale.floor() - middle > ascent * 0.6) {
      pen.text(FigureText.number(scale.top() / 2), x, middle, pen.small, ink, Pen.Align.RIGHT);
    }
  }

  private void paintFloor(Rectangle2D plot) {
    double y = plot.getMaxY();
    pen.fill(pen.theme.hairline(), plot.getX(), y - 0.5, plot.getWidth(), 1);
    for (TimeSpan span : sight.fished()) {
      double x1 = clampX(span.from());
      double x2 = clampX(span.to());
      pen.fill(hue, x1, y - 2.5, x2 - x1, 3);
    }
  }

  private void paintName() {
    double left = layout.axis.left();
    Rectangle2D header = lane.header();
    if (header.getHeight() <= 0) {
      // In lanes lower than the letters these are as low as the lanes: they never lie on others.
      double fits =
          Math.min(1, lane.plot().getHeight() / (pen.smallStrong.getSize2D() * Pen.BADGE));
      Font small = pen.small.deriveFont((float) (pen.small.getSize2D() * fits));
      Font strong = pen.smallStrong.deriveFont((float) (pen.smallStrong.getSize2D() * fits));
      double width = pen.badge(record.index, 4, lane.plot().getCenterY(), strong);
      String name = Pen.shortened(small, left - width - 14, record.review.line().name());
      pen.text(
          name,
          width + 8,
          lane.plot().getCenterY() + Type.ascent(small) / 2,
          small,
          pen.theme.ink());
      return;
    }
    double baseline = layout.headerBaseline(lane);
    pen.badge(record.index, left, baseline - Type.drop(pen.strong));
    String name =
        Pen.shortened(
            pen.strong,
            layout.axis.right() - layout.nameX(),
            layout.words.line(record.review.line()));
    pen.text(name, layout.nameX(), baseline, pen.strong, hue);
    double after = layout.nameX() + Type.width(pen.strong, name) + 12;
    String columns = MarkPainter.columnWords(layout, lane);
    // Beside a name on a narrow slide there may be room for the end of it alone, or for none.
    String said =
        Stream.of(columns, columns.replaceFirst("^crowded marks: ", ""))
            .filter(text -> after + Type.width(pen.small, text) <= layout.axis.right())
            .findFirst()
            .orElse("");
    pen.text(said, after, baseline, pen.small, pen.theme.secondInk());
  }

  private double clampX(long instant) {
    return Math.max(layout.axis.left(), Math.min(layout.axis.right(), layout.axis.x(instant)));
  }

  static @Nullable TimeSpan visible(TimeSpan span, TimeAxis axis) {
    long from = Math.max(span.from(), axis.from());
    long to = Math.min(span.to(), axis.to());
    return to > from ? new TimeSpan(from, to) : null;
  }
}
