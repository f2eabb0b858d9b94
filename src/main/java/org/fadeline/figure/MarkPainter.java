package org.fadeline.figure;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/**
 * Draws the events of a lane where {@link MarkPlaces} puts them; where some are drawn as columns
 * the lane says so.
 */
final class MarkPainter {
  private final TimelineLayout layout;
  private final TimelineLayout.Lane lane;
  private final LaneRecord record;
  private final Pen pen;
  private final Color hue;
  private final MarkPlaces places;

  MarkPainter(TimelineLayout layout, TimelineLayout.Lane lane, LaneRecord record, Pen pen) {
    this.layout = layout;
    this.lane = lane;
    this.record = record;
    this.pen = pen;
    this.hue = pen.theme.line(record.index);
    this.places = new MarkPlaces(layout, lane, record);
  }

  void paint(LaneSight sight) {
    paintFeeds();
    paintString(sight);
    paintMarks(layout.axis.from(), layout.axis.to());
  }

  private void paintFeeds() {
    double top = lane.plot().getY();
    TimeAxis axis = layout.axis;
    // A pattern may have begun before the visible range.
    for (SessionEvent event : record.feeds.events.subList(0, record.feeds.first(axis.to() + 1))) {
      Feed.Pattern pattern = ((SessionEvent.Fed) event).feed().pattern();
      Long until = pattern == null ? null : pattern.until();
      if (pattern != null && until != null) {
        long end = Math.min(until, layout.figure.review().session().match().allOut());
        paintPattern(event.at(), Math.round(pattern.everySeconds() * 1000), end, top);
      }
    }
    places.feeds(axis.from(), axis.to()).forEach(this::paint);
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
    for (MarkPlaces.Mark mark : places.marks(from, to)) {
      paint(mark);
    }
  }

  private void paint(MarkPlaces.Mark mark) {
    SessionEvent event = mark.events().get(0);
    switch (mark.sort()) {
      case FEED -> pen.fill(pen.theme.ink(), mark.shape());
      case FLOOR ->
          pen.fill(
              switch (event.kind()) {
                case MOVE, OFF, STOPPED -> pen.theme.ink();
                default -> pen.theme.secondInk();
              },
              mark.shape());
      case TICK -> {
        double strength = mark.isColumn() ? 0.5 : event.kind() == EventKind.CAST ? 0.85 : 1;
        pen.fill(Theme.mix(hue, strength, pen.theme.panel()), mark.shape());
      }
      case FISH -> {
        if (mark.isColumn()) {
          pen.fill(hue, mark.shape());
        } else {
          paintFish(event, mark.shape());
        }
      }
    }
  }

  /**
   * Returns what the first lane says of columns, the others nothing. It depends on the scale alone:
   * told only where marks crowd, it would give away what is still to come.
   */
  static String columnWords(TimelineLayout layout, TimelineLayout.Lane lane) {
    return lane.equals(layout.lanes().get(0))
        ? "crowded marks: columns of " + inWords(MarkPlaces.stepMillis(layout.axis) / 1000)
        : "";
  }

  static String inWords(long seconds) {
    if (seconds < 60) {
      return seconds + " s";
    }
    return seconds < 3600 ? seconds / 60 + " min" : seconds / 3600 + " h";
  }

  private void paintFish(SessionEvent event, Shape shape) {
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
      default -> paintLost(shape.getBounds2D());
    }
  }

  private void paintLost(Rectangle2D box) {
    Path2D cross = new Path2D.Double();
    cross.moveTo(box.getMinX(), box.getMinY());
    cross.lineTo(box.getMaxX(), box.getMaxY());
    cross.moveTo(box.getMinX(), box.getMaxY());
    cross.lineTo(box.getMaxX(), box.getMinY());
    pen.stroke(pen.theme.panel(), 4, cross);
    pen.stroke(pen.theme.ink(), 1.7, cross);
  }

  private void paintCount(SessionEvent event) {
    Fish fish = event.fishOrNull();
    if (fish != null && fish.count() > 1) {
      double radius = places.radius(event);
      pen.text(
          "×" + fish.count(),
          layout.axis.x(event.at()) + radius + 2,
          lane.stringY() + Type.ascent(pen.smallStrong) / 2,
          pen.smallStrong,
          pen.theme.ink());
    }
  }

  /** Rings every mark that stands for an event picked, a column round all that it counts. */
  void paintSelection(Set<String> ids) {
    TimeAxis axis = layout.axis;
    List<MarkPlaces.Mark> all = new ArrayList<>(places.feeds(axis.from(), axis.to()));
    all.addAll(places.marks(axis.from(), axis.to()));
    all.stream().filter(mark -> isPicked(mark, ids)).forEach(mark -> ring(pen, mark));
  }

  private static boolean isPicked(MarkPlaces.Mark mark, Set<String> ids) {
    return mark.events().stream().anyMatch(e -> ids.contains(e.id()));
  }

  private static void ring(Pen pen, MarkPlaces.Mark mark) {
    Rectangle2D box = mark.shape().getBounds2D();
    if (mark.isColumn()) {
      // Columns stand close: rings round each would be a tangle.
      Rectangle2D frame =
          new Rectangle2D.Double(
              box.getX() - 2, box.getY() - 3, box.getWidth() + 4, box.getHeight() + 6);
      pen.stroke(pen.theme.accent(), 2, frame);
      return;
    }
    double radius = Math.max(7, Math.max(box.getWidth(), box.getHeight()) / 2 + 4.5);
    pen.ring(pen.theme.panel(), box.getCenterX(), box.getCenterY(), radius, 4);
    pen.ring(pen.theme.accent(), box.getCenterX(), box.getCenterY(), radius, 2.2);
  }

  /** Draws the events that belong to no line, on the strip below the clock. */
  static void paintAround(TimelineLayout layout, Pen pen) {
    for (SessionEvent event : around(layout)) {
      pen.fill(
          switch (event.kind()) {
            case STOPPED, RESUMED -> pen.theme.warning();
            case ALL_IN, ALL_OUT -> pen.theme.ink();
            default -> pen.theme.secondInk();
          },
          MarkPlaces.around(layout, event).shape());
    }
  }

  /** Rings the events picked on the strip below the clock. */
  static void paintSelectionAround(TimelineLayout layout, Pen pen, Set<String> ids) {
    for (SessionEvent event : around(layout)) {
      if (ids.contains(event.id())) {
        ring(pen, MarkPlaces.around(layout, event));
      }
    }
  }

  private static List<SessionEvent> around(TimelineLayout layout) {
    return layout.figure.shared().lanes().around().slice(layout.axis.from(), layout.axis.to());
  }
}
