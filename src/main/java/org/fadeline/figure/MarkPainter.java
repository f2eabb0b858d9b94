package org.fadeline.figure;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/**
 * Draws the events of a lane. Every mark stands to the right of its instant, with its straight side
 * on it: a playhead that has not reached an event uncovers nothing of its mark.
 *
 * <p>Where marks would lie on each other, they are drawn as a column a time step whose height tells
 * the number, and the lane says so.
 */
final class MarkPainter {
  /** Most marks of one kind in a step of about 6 pixels before they are drawn as a column. */
  static final int MOST_APART = 3;

  /** The same for fine ticks. */
  static final int MOST_TICKS_APART = 6;

  private static final int[] STEP_SECONDS = {
    1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 300, 600, 900, 1800, 3600, 7200, 14_400, 43_200, 86_400
  };

  private final TimelineLayout layout;
  private final TimelineLayout.Lane lane;
  private final LaneRecord record;
  private final Pen pen;
  private final Color hue;
  private final long step;

  MarkPainter(TimelineLayout layout, TimelineLayout.Lane lane, LaneRecord record, Pen pen) {
    this.layout = layout;
    this.lane = lane;
    this.record = record;
    this.pen = pen;
    this.hue = pen.theme.line(record.index);
    this.step = stepMillis(layout.axis);
  }

  /** Returns the shortest round step of time that is at least 6 pixels wide. */
  static long stepMillis(TimeAxis axis) {
    for (int seconds : STEP_SECONDS) {
      if (axis.pixelsPerMinute() * seconds / 60 >= 6) {
        return seconds * 1000L;
      }
    }
    return STEP_SECONDS[STEP_SECONDS.length - 1] * 1000L;
  }

  void paint(LaneSight sight) {
    paintFeeds();
    paintString(sight);
    paintMarks(layout.axis.from(), layout.axis.to());
  }

  private void paintFeeds() {
    double top = lane.plot().getY();
    double tall = lane.header().getHeight() > 0 ? 10 : 5;
    TimeAxis axis = layout.axis;
    // A pattern may have begun before the visible range.
    for (SessionEvent event : record.feeds.events.subList(0, record.feeds.first(axis.to() + 1))) {
      Feed.Pattern pattern = ((SessionEvent.Fed) event).feed().pattern();
      Long until = pattern == null ? null : pattern.until();
      if (pattern != null && until != null) {
        long end = Math.min(until, layout.figure.review().session().match().allOut());
        paintPattern(event.at(), Math.round(pattern.everySeconds() * 1000), end, top);
      }
      if (event.at() >= axis.from()) {
        pen.fill(pen.theme.ink(), axis.x(event.at()), top, 2.2, tall);
      }
    }
  }

  private void paintPattern(long from, long everyMillis, long until, double top) {
    TimeAxis axis = layout.axis;
    long every = Math.max(1000, everyMillis);
    double gap = axis.pixelsPerMinute() * every / 60_000;
    Color colour = pen.theme.secondInk();
    if (gap < 3) {
      double x1 = Math.max(axis.left(), axis.x(from));
      double x2 = Math.min(axis.right(), axis.x(until));
      pen.fill(Pen.alpha(colour, 0.55), x1, top, x2 - x1, 3.5);
      return;
    }
    long first = from + Math.max(1, Math.floorDiv(axis.from() - from + every - 1, every)) * every;
    for (long at = first; at <= Math.min(until, axis.to()); at += every) {
      pen.fill(colour, axis.x(at), top, 1, 4.5);
    }
  }

  private void paintString(LaneSight sight) {
    for (var span : sight.fished()) {
      double x1 = Math.max(layout.axis.left(), layout.axis.x(span.from()));
      double x2 = Math.min(layout.axis.right(), layout.axis.x(span.to()));
      pen.fill(Pen.alpha(hue, 0.5), x1, lane.stringY() - 0.5, x2 - x1, 1);
    }
  }

  /** Draws the marks from one instant to another, both included. */
  void paintMarks(long from, long to) {
    long start = Math.floorDiv(from, step) * step;
    List<SessionEvent> visible = record.marks.slice(start, to);
    List<SessionEvent> fish = new ArrayList<>();
    List<SessionEvent> ticks = new ArrayList<>();
    for (SessionEvent event : visible) {
      switch (event.kind()) {
        case LANDED, LOST, FOUL, COUNT -> fish.add(event);
        case CAST, BITE, HOOKED, INDICATION -> ticks.add(event);
        default -> {
          if (event.at() >= from) {
            paintOther(event);
          }
        }
      }
    }
    inSteps(ticks, MOST_TICKS_APART, from, this::paintTick, this::paintTickColumn);
    inSteps(fish, MOST_APART, from, this::paintFish, this::paintFishColumn);
  }

  private interface One {
    void paint(SessionEvent event);
  }

  private interface Column {
    void paint(long end, int count);
  }

  /** Draws sparse steps mark by mark, dense ones as a column at the step's end. */
  private void inSteps(List<SessionEvent> events, int most, long from, One one, Column column) {
    int i = 0;
    while (i < events.size()) {
      long start = Math.floorDiv(events.get(i).at(), step) * step;
      int next = i;
      while (next < events.size() && events.get(next).at() < start + step) {
        next++;
      }
      if (next - i > most) {
        column.paint(record.endOfStay(events.get(next - 1).at(), start + step), next - i);
      } else {
        events.subList(i, next).stream().filter(e -> e.at() >= from).forEach(one::paint);
      }
      i = next;
    }
  }

  /** Height of a column: fixed for a count, so that a later fuller one changes nothing. */
  private static double columnShare(int count) {
    return Math.min(1, Math.log1p(count) / Math.log(257));
  }

  private void paintFishColumn(long end, int count) {
    double tall = stringHeight() * columnShare(count);
    pen.fill(hue, layout.axis.x(end), lane.stringY() - tall / 2, columnWidth(), tall);
  }

  private void paintTickColumn(long end, int count) {
    double tall = stringHeight() * 0.5 * columnShare(count);
    pen.fill(
        Theme.mix(hue, 0.5, pen.theme.panel()),
        layout.axis.x(end),
        lane.stringY() + 1,
        columnWidth(),
        tall);
  }

  /** Narrow, for it stands to the right of what it counts. */
  private double columnWidth() {
    return Math.min(4, layout.axis.pixelsPerMinute() * step / 60_000 - 1);
  }

  private double stringHeight() {
    return 2 * (lane.rate().getY() - lane.stringY());
  }

  /**
   * Returns what the first lane says of columns, the others nothing. It depends on the scale alone:
   * told only where marks crowd, it would give away what is still to come.
   */
  static String columnWords(TimelineLayout layout, TimelineLayout.Lane lane) {
    return lane.equals(layout.lanes().get(0))
        ? "crowded marks: columns of " + inWords(stepMillis(layout.axis) / 1000)
        : "";
  }

  static String inWords(long seconds) {
    if (seconds < 60) {
      return seconds + " s";
    }
    return seconds < 3600 ? seconds / 60 + " min" : seconds / 3600 + " h";
  }

  private void paintTick(SessionEvent event) {
    double x = layout.axis.x(event.at());
    double y = lane.stringY();
    switch (event.kind()) {
      case CAST -> pen.fill(Theme.mix(hue, 0.85, pen.theme.panel()), x, y + 1, 1, 4.5);
      case BITE -> pen.fill(hue, x, y - 5, 1.6, 10);
      case HOOKED -> pen.fill(hue, x, y - 3, 1, 6);
      default -> pen.fill(hue, x, y - 2, 1.6, 2);
    }
  }

  private void paintFish(SessionEvent event) {
    Shape shape = shape(event);
    switch (event.kind()) {
      case LANDED, COUNT -> {
        pen.stroke(pen.theme.panel(), 1.4, shape);
        pen.fill(hue, shape);
        paintCount(event);
      }
      case FOUL -> {
        pen.fill(pen.theme.panel(), shape);
        pen.stroke(hue, 1.3, shape);
        Rectangle2D box = shape.getBounds2D();
        pen.line(hue, 1.3, box.getX(), box.getCenterY(), box.getMaxX(), box.getCenterY());
      }
      default -> paintLost(event);
    }
  }

  private void paintLost(SessionEvent event) {
    double x = layout.axis.x(event.at());
    double y = lane.stringY();
    Path2D cross = new Path2D.Double();
    cross.moveTo(x + 0.8, y - 3.6);
    cross.lineTo(x + 8, y + 3.6);
    cross.moveTo(x + 0.8, y + 3.6);
    cross.lineTo(x + 8, y - 3.6);
    pen.stroke(pen.theme.panel(), 4, cross);
    pen.stroke(pen.theme.ink(), 1.7, cross);
  }

  private void paintCount(SessionEvent event) {
    Fish fish = event.fishOrNull();
    if (fish != null && fish.count() > 1) {
      double radius = radius(event);
      pen.text(
          "×" + fish.count(),
          layout.axis.x(event.at()) + radius + 2,
          lane.stringY() + Type.ascent(pen.smallStrong) / 2,
          pen.smallStrong,
          pen.theme.ink());
    }
  }

  /** A half-disc with its straight side on the instant. */
  private Shape shape(SessionEvent event) {
    double radius = radius(event);
    return new Arc2D.Double(
        layout.axis.x(event.at()) - radius,
        lane.stringY() - radius,
        2 * radius,
        2 * radius,
        -90,
        180,
        Arc2D.CHORD);
  }

  /** Returns the radius for a fish: its area goes with its weight, 8 px at 10 lb. */
  private double radius(SessionEvent event) {
    Fish fish = event.fishOrNull();
    double most = Math.min(10, stringHeight() / 2);
    if (fish == null || fish.grams() == null || fish.count() < 1) {
      return Math.min(most, 5);
    }
    double each = fish.grams() / fish.count();
    return Math.max(3, Math.min(most, 8 * Math.sqrt(each / 4536)));
  }

  private void paintOther(SessionEvent event) {
    double x = layout.axis.x(event.at());
    Path2D flag = new Path2D.Double();
    double y = lane.plot().getMaxY() - 3;
    switch (event.kind()) {
      case MOVE, OFF, STOPPED -> {
        pen.fill(pen.theme.ink(), x, y - 8, 1.4, 8);
        return;
      }
      default -> {
        flag.moveTo(x, y - 9);
        flag.lineTo(x + 5.5, y - 6);
        flag.lineTo(x, y - 3);
        flag.closePath();
      }
    }
    pen.fill(pen.theme.secondInk(), flag);
  }

  void paintSelection(Set<String> ids) {
    TimeAxis axis = layout.axis;
    for (SessionEvent event : record.marks.slice(axis.from(), axis.to())) {
      if (ids.contains(event.id())) {
        double radius = radius(event);
        ring(axis.x(event.at()) + radius / 2, lane.stringY(), radius + 4.5);
      }
    }
    for (SessionEvent event : record.feeds.slice(axis.from(), axis.to())) {
      if (ids.contains(event.id())) {
        ring(axis.x(event.at()) + 1, lane.plot().getY() + 5, 7);
      }
    }
  }

  private void ring(double x, double y, double radius) {
    pen.ring(pen.theme.panel(), x, y, radius, 4);
    pen.ring(pen.theme.accent(), x, y, radius, 2.2);
  }

  /** Draws the events that belong to no line, on the strip below the clock. */
  static void paintAround(TimelineLayout layout, Pen pen) {
    Rectangle2D strip = layout.aroundStrip();
    double y = strip.getCenterY();
    for (SessionEvent event :
        layout.figure.shared().lanes().around().slice(layout.axis.from(), layout.axis.to())) {
      double x = layout.axis.x(event.at());
      switch (event.kind()) {
        case STOPPED, RESUMED -> pen.fill(pen.theme.warning(), x, y - 3.5, 2.4, 7);
        case ALL_IN, ALL_OUT -> pen.fill(pen.theme.ink(), x, y - 3.5, 1.6, 7);
        case NET -> pen.fill(pen.theme.secondInk(), x, y - 2.5, 5, 5);
        default -> {
          Path2D flag = new Path2D.Double();
          flag.moveTo(x, y - 3);
          flag.lineTo(x + 5, y);
          flag.lineTo(x, y + 3);
          flag.closePath();
          pen.fill(pen.theme.secondInk(), flag);
        }
      }
    }
  }
}
