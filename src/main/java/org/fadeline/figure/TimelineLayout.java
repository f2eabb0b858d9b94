package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A timeline laid out for one size: where everything lies, in layers that change at different
 * times.
 *
 * <p>The base layer draws everything at its own instant and never ahead of it: a screen that covers
 * what lies right of the playhead shows nothing that came later. It has to be drawn again only when
 * {@link #baseVersion} changes, the fade layer only when {@link #fadesVersion} does. Playhead,
 * cover, hover and selection are the screen's own.
 */
public final class TimelineLayout {
  /** Height below which a lane has no header row of its own, at the normal text size. */
  private static final double COMPACT_BELOW = 64;

  final TimelineFigure figure;
  final double width;
  final double height;
  final TimeAxis axis;
  final FigureText words;
  private final double axisBottom;
  private final double aroundBottom;
  private final double bottom;
  private final List<Lane> lanes = new ArrayList<>();

  /**
   * Where a lane lies; rectangles in pixels of the figure.
   *
   * @param lineId the line
   * @param header the row with its name
   * @param plot everything below the header, from the first to the last instant
   * @param rate the part of the plot in which the curve runs
   * @param stringY y of the string on which the catch stands
   */
  public record Lane(
      String lineId, Rectangle2D header, Rectangle2D plot, Rectangle2D rate, double stringY) {}

  TimelineLayout(TimelineFigure figure, double width, double height) {
    this.figure = figure;
    this.width = width;
    this.height = height;
    this.words = new FigureText(figure.review().session(), figure.style().units());
    double scale = figure.style().textScale();
    double gutter = gutter(scale);
    this.axis =
        new TimeAxis(
            figure.view().from(),
            figure.view().to(),
            gutter,
            Math.max(gutter + 1, width - 14),
            figure.review().session().occasion().zone());
    this.axisBottom = Math.ceil(20 * scale);
    this.aroundBottom = axisBottom + Math.ceil(9 * Math.sqrt(scale));
    this.bottom = height - (figure.view().key() ? TimelineKey.height(figure, width) : 2);
    layOutLanes(scale);
  }

  /** Room left of the plot: for the scale, or for the names of lanes too low for a header. */
  private double gutter(double scale) {
    double unit = Type.width(Type.regular(11 * scale), "an hour") + 14 * scale;
    int lanes = Math.max(1, figure.lanes().size());
    List<String> beside = figure.shared().beside().names();
    boolean compact = !beside.isEmpty() || (height - 40 * scale) / lanes < COMPACT_BELOW * scale;
    double names = 0;
    for (String name :
        beside.isEmpty()
            ? figure.lanes().stream().map(lane -> lane.review.line().name()).toList()
            : beside) {
      names = Math.max(names, Type.width(Type.regular(11 * scale), name));
    }
    return compact ? Math.max(unit, Math.min(width * 0.3, names + 34 * scale)) : unit;
  }

  private void layOutLanes(double scale) {
    List<LaneRecord> records = figure.lanes();
    if (records.isEmpty()) {
      return;
    }
    double laneHeight = (bottom - aroundBottom) / records.size();
    boolean compact = laneHeight < COMPACT_BELOW * scale;
    for (int i = 0; i < records.size(); i++) {
      double top = Math.round(aroundBottom + i * laneHeight);
      double end = Math.round(aroundBottom + (i + 1) * laneHeight) - 3;
      double headerHeight = compact ? 0 : Math.ceil(23 * scale);
      double plotTop = top + headerHeight;
      double feed = compact ? 5 : 11;
      double string = compact ? 10 : Math.min(22, 14 + laneHeight / 18);
      double rateTop = Math.min(end, plotTop + feed + string);
      double x = axis.left();
      double w = axis.right() - x;
      lanes.add(
          new Lane(
              records.get(i).id(),
              new Rectangle2D.Double(0, top, width, headerHeight),
              new Rectangle2D.Double(x, plotTop, w, end - plotTop),
              new Rectangle2D.Double(x, rateTop, w, Math.max(0, end - rateTop - 4)),
              plotTop + feed + string / 2 + 1));
    }
  }

  /** Returns the lanes, top down. */
  public List<Lane> lanes() {
    return List.copyOf(lanes);
  }

  /** Returns the rectangle from the first to the last instant, all lanes together. */
  public Rectangle2D plotArea() {
    return new Rectangle2D.Double(
        axis.left(), axisBottom, axis.right() - axis.left(), bottom - axisBottom);
  }

  /** Returns the y on which the clock's figures stand, pixels. */
  public double axisBaseline() {
    return axisBottom - 6 * figure.style().textScale();
  }

  /** Returns the strip below the clock in which events of no line stand. */
  public Rectangle2D aroundStrip() {
    return new Rectangle2D.Double(
        axis.left(), axisBottom, axis.right() - axis.left(), aroundBottom - axisBottom);
  }

  /** Returns the x of an instant (epoch milliseconds); outside the plot for one out of range. */
  public double xOf(long instant) {
    return axis.x(instant);
  }

  /** Returns the instant (epoch milliseconds) at an x; outside the range left and right of it. */
  public long instantAt(double x) {
    return axis.instant(x);
  }

  /** Returns the lane at a y, or empty. */
  public Optional<Lane> laneAt(double y) {
    return lanes.stream()
        .filter(l -> l.header().getMinY() <= y && y <= l.plot().getMaxY())
        .findFirst();
  }

  /**
   * What the base depends on besides the session.
   *
   * @param scaleTop top of the curves' even scale
   * @param told stretches known to belong to no line
   */
  public record BaseVersion(double scaleTop, int told) {}

  /** Returns what changes only when {@link #paintBase} would draw something else. */
  public BaseVersion baseVersion(Knowledge knowledge) {
    int told = 0;
    for (LaneRecord lane : figure.lanes()) {
      told += lane.told(knowledge);
    }
    return new BaseVersion(figure.scaleTop(knowledge), told);
  }

  /** Returns a number that changes only when {@link #paintFades} would draw something else. */
  public int fadesVersion(Knowledge knowledge) {
    return FadePainter.version(figure, knowledge);
  }

  /**
   * Draws the background and everything that was known at its own instant. What is later than the
   * knowledge is drawn too, to the right of its instant: a screen covers it.
   */
  public void paintBase(Graphics2D g, Knowledge knowledge) {
    Pen pen = new Pen(g, figure.style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    paintAxis(pen);
    RateScaleSource scales = scales(knowledge);
    for (Lane lane : lanes) {
      new LanePainter(this, lane, record(lane), pen, scales.of(lane), knowledge).paint();
    }
    if (figure.view().key()) {
      TimelineKey.paint(pen, figure, width, bottom);
    }
  }

  /** Draws the fades as far as they are known, over the base. */
  public void paintFades(Graphics2D g, Knowledge knowledge) {
    Pen pen = new Pen(g, figure.style());
    for (Lane lane : lanes) {
      new FadePainter(this, lane, record(lane), pen, knowledge).paint();
    }
  }

  /**
   * Draws again, over the screen's cover, the marks at or just before the playhead, which stand on
   * its right: a fish landed this minute.
   */
  public void paintEdge(Graphics2D g, Knowledge knowledge) {
    Long known = knowledge.at();
    if (known != null) {
      Pen pen = new Pen(g, figure.style());
      long since =
          known
              - Math.max(
                  2 * MarkPlaces.stepMillis(axis),
                  Math.round(16 / axis.pixelsPerMinute() * 60_000));
      for (Lane lane : lanes) {
        new MarkPainter(this, lane, record(lane), pen).paintMarks(since, known);
      }
    }
  }

  /** Draws the rings round the chosen events (ids). */
  public void paintSelection(Graphics2D g, Set<String> eventIds) {
    if (eventIds.isEmpty()) {
      return;
    }
    Pen pen = new Pen(g, figure.style());
    for (Lane lane : lanes) {
      new MarkPainter(this, lane, record(lane), pen).paintSelection(eventIds);
    }
    MarkPainter.paintSelectionAround(this, pen, eventIds);
  }

  /** Draws what each lane gave, as known, right in its header. */
  public void paintFigures(Graphics2D g, Knowledge knowledge) {
    Pen pen = new Pen(g, figure.style());
    List<List<String>> figures = figures(knowledge);
    for (int i = 0; i < lanes.size(); i++) {
      Lane lane = lanes.get(i);
      if (lane.header().getHeight() > 0) {
        double room = figuresRoom(lane);
        pen.text(
            Pen.fitting(pen.small, room, figures.get(i)),
            axis.right(),
            headerBaseline(lane),
            pen.small,
            pen.theme.secondInk(),
            Pen.Align.RIGHT);
      }
    }
  }

  /** Returns what each lane gave, as known: texts from the longest to the shortest. */
  public List<List<String>> figures(Knowledge knowledge) {
    return figure.figures(knowledge);
  }

  /** Returns the width free for figures in a lane's header, right of its name. */
  public double figuresRoom(Lane lane) {
    LaneRecord record = record(lane);
    double scale = figure.style().textScale();
    double name = Type.width(Type.semiBold(12.5 * scale), words.line(record.review.line()));
    String columns = MarkPainter.columnWords(this, lane);
    double said = columns.isEmpty() ? 0 : Type.width(Type.regular(11 * scale), columns) + 12;
    return axis.right() - (nameX() + name + said + 16 * scale);
  }

  double nameX() {
    return axis.left() + 22 * figure.style().textScale();
  }

  /** Returns the y on which the words of a lane's header stand, pixels. */
  public double headerBaseline(Lane lane) {
    return lane.header().getMaxY() - 6 * figure.style().textScale();
  }

  /** Draws the whole figure for an export. */
  void paintAll(Graphics2D g, Knowledge knowledge, Set<String> selected) {
    paintBase(g, knowledge);
    paintFades(g, knowledge);
    Long known = knowledge.at();
    if (known != null && known < figure.view().to()) {
      // On whole pixels, so that no blended edge tells what lies below the cover.
      coverFuture(new Pen(g, figure.style()), Math.max(axis.left(), Math.floor(xOf(known))));
      paintEdge(g, knowledge);
    }
    paintFigures(g, knowledge);
    paintSelection(g, selected);
  }

  private void coverFuture(Pen pen, double x) {
    Rectangle2D strip = aroundStrip();
    pen.fill(pen.theme.panel(), x, strip.getY(), width - x, strip.getHeight());
    // The playhead leaves out what is written above a lane: no word is struck through.
    pen.fill(pen.theme.ink(), x - 0.75, strip.getY(), 1.5, strip.getHeight());
    for (Lane lane : lanes) {
      Rectangle2D plot = lane.plot();
      pen.fill(pen.theme.panel(), x, plot.getY() - 2, width - x, plot.getHeight() + 4);
      pen.fill(futureColour(pen.theme), x, plot.getY(), plot.getMaxX() - x, plot.getHeight());
      pen.fill(pen.theme.ink(), x - 0.75, plot.getY() - 2, 1.5, plot.getHeight() + 4);
    }
  }

  /** Returns the colour of what has not happened yet: calm, neither fished nor unfished. */
  public static Color futureColour(Theme theme) {
    return Theme.mix(theme.ink(), theme.isDark() ? 0.05 : 0.025, theme.panel());
  }

  private void paintAxis(Pen pen) {
    double baseline = axisBaseline();
    for (TimeAxis.Tick tick : ticks(pen)) {
      double half = Type.width(pen.small, tick.label()) / 2;
      double x = Math.min(Math.max(tick.x(), half + 1), width - half - 1);
      pen.text(tick.label(), x, baseline, pen.small, pen.theme.secondInk(), Pen.Align.MIDDLE);
    }
    MarkPainter.paintAround(this, pen);
  }

  List<TimeAxis.Tick> ticks(Pen pen) {
    return axis.ticks(14 * pen.style.textScale(), label -> Type.width(pen.small, label));
  }

  private interface RateScaleSource {
    RateScale of(Lane lane);
  }

  RateScale scale(Lane lane, double top) {
    Rectangle2D rate = lane.rate();
    return new RateScale(top, rate.getMaxY(), rate.getHeight());
  }

  private RateScaleSource scales(Knowledge knowledge) {
    double top = figure.scaleTop(knowledge);
    return lane -> scale(lane, top);
  }

  LaneRecord record(Lane lane) {
    return Objects.requireNonNull(figure.shared().lanes().byLine().get(lane.lineId()));
  }

  /**
   * Returns what lies at a point, as far as it is known, with exact values.
   *
   * @param x pixels
   * @param y pixels
   */
  public Optional<Hit> at(double x, double y, Knowledge knowledge) {
    return new TimelineHits(this, knowledge).at(x, y);
  }

  /** Returns the events (ids) of the lanes that lie in a rectangle, in time order. */
  public List<String> eventsIn(Rectangle2D area, Knowledge knowledge) {
    return new TimelineHits(this, knowledge).eventsIn(area);
  }
}
