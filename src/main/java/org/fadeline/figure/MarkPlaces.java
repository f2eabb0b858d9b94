package org.fadeline.figure;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/**
 * Where the events of a lane are drawn, the same for drawing them, ringing them and finding the one
 * under the pointer. Every mark stands to the right of its instant, with its straight side on it: a
 * playhead that has not reached an event uncovers nothing of its mark.
 *
 * <p>Where marks would lie on each other, they are one column a time step whose height tells the
 * number.
 */
final class MarkPlaces {
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
  private final long step;

  MarkPlaces(TimelineLayout layout, TimelineLayout.Lane lane, LaneRecord record) {
    this.layout = layout;
    this.lane = lane;
    this.record = record;
    this.step = stepMillis(layout.axis);
  }

  /** What a mark is made of. */
  enum Sort {
    /** A feed hanging from the lane's top. */
    FEED,
    /** A flag or bar on the lane's floor. */
    FLOOR,
    /** A fine tick on the string: cast, bite and the like. */
    TICK,
    /** A fish, landed or lost, on the string. */
    FISH
  }

  /**
   * A mark as it is drawn.
   *
   * @param events what it stands for, in time order: one, or all that a column counts
   */
  record Mark(Sort sort, List<SessionEvent> events, Shape shape) {
    boolean isColumn() {
      return events.size() > 1;
    }
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

  /** Returns the feeds from one instant to another, both included; a crowd is a column. */
  List<Mark> feeds(long from, long to) {
    List<Mark> marks = new ArrayList<>();
    long start = Math.floorDiv(from, step) * step;
    addInSteps(marks, Sort.FEED, record.feeds.slice(start, to), from);
    return marks;
  }

  /**
   * Returns the other marks from one instant to another, both included, in the order in which they
   * are drawn: later ones lie over earlier ones.
   */
  List<Mark> marks(long from, long to) {
    long start = Math.floorDiv(from, step) * step;
    List<SessionEvent> fish = new ArrayList<>();
    List<SessionEvent> ticks = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    for (SessionEvent event : record.marks.slice(start, to)) {
      switch (event.kind()) {
        case LANDED, LOST, FOUL, COUNT -> fish.add(event);
        case CAST, BITE, HOOKED, INDICATION -> ticks.add(event);
        default -> {
          if (event.at() >= from) {
            marks.add(new Mark(Sort.FLOOR, List.of(event), floor(event)));
          }
        }
      }
    }
    addInSteps(marks, Sort.TICK, ticks, from);
    addInSteps(marks, Sort.FISH, fish, from);
    return marks;
  }

  /** Adds sparse steps mark by mark, dense ones as a column at the step's end. */
  private void addInSteps(List<Mark> marks, Sort sort, List<SessionEvent> events, long from) {
    int most = sort == Sort.TICK ? MOST_TICKS_APART : MOST_APART;
    int i = 0;
    while (i < events.size()) {
      long start = Math.floorDiv(events.get(i).at(), step) * step;
      int next = i;
      while (next < events.size() && events.get(next).at() < start + step) {
        next++;
      }
      List<SessionEvent> together = events.subList(i, next);
      if (next - i > most) {
        long last = events.get(next - 1).at();
        long end = record.endOfStay(last, start + step);
        if (sort == Sort.FEED) {
          // A line is fed while it is not fished, up to the end: the last column stays in sight.
          end =
              Math.max(last, Math.min(end, layout.instantAt(layout.axis.right() - columnWidth())));
        }
        marks.add(new Mark(sort, together, column(sort, end, next - i)));
      } else {
        for (SessionEvent event : together) {
          if (event.at() >= from) {
            marks.add(new Mark(sort, List.of(event), single(sort, event)));
          }
        }
      }
      i = next;
    }
  }

  private Shape single(Sort sort, SessionEvent event) {
    return switch (sort) {
      case FEED -> feed(event);
      case FISH -> fish(event);
      case TICK, FLOOR -> tick(event);
    };
  }

  private Rectangle2D feed(SessionEvent event) {
    return new Rectangle2D.Double(layout.axis.x(event.at()), lane.plot().getY(), 2.2, feedHeight());
  }

  private double feedHeight() {
    return lane.header().getHeight() > 0 ? 10 : 5;
  }

  private Shape tick(SessionEvent event) {
    double x = layout.axis.x(event.at());
    double y = lane.stringY();
    return switch (event.kind()) {
      case CAST -> new Rectangle2D.Double(x, y + 1, 1, 4.5);
      case BITE -> new Rectangle2D.Double(x, y - 5, 1.6, 10);
      case HOOKED -> new Rectangle2D.Double(x, y - 3, 1, 6);
      default -> new Rectangle2D.Double(x, y - 2, 1.6, 2);
    };
  }

  private Shape floor(SessionEvent event) {
    double x = layout.axis.x(event.at());
    double y = lane.plot().getMaxY() - 3;
    return switch (event.kind()) {
      case MOVE, OFF, STOPPED -> new Rectangle2D.Double(x, y - 8, 1.4, 8);
      default -> {
        Path2D flag = new Path2D.Double();
        flag.moveTo(x, y - 9);
        flag.lineTo(x + 5.5, y - 6);
        flag.lineTo(x, y - 3);
        flag.closePath();
        yield flag;
      }
    };
  }

  /** A half-disc with its straight side on the instant; for a lost fish the square of its cross. */
  private Shape fish(SessionEvent event) {
    double x = layout.axis.x(event.at());
    double y = lane.stringY();
    return switch (event.kind()) {
      case LANDED, FOUL, COUNT -> {
        double radius = radius(event);
        yield new Arc2D.Double(
            x - radius, y - radius, 2 * radius, 2 * radius, -90, 180, Arc2D.CHORD);
      }
      default -> new Rectangle2D.Double(x + 0.8, y - 3.6, 7.2, 7.2);
    };
  }

  /** Returns the radius for a fish: its area goes with its weight, 8 px at 10 lb. */
  double radius(SessionEvent event) {
    Fish fish = event.fishOrNull();
    double most = Math.min(10, stringHeight() / 2);
    if (fish == null || fish.grams() == null || fish.count() < 1) {
      return Math.min(most, 5);
    }
    double each = fish.grams() / fish.count();
    return Math.max(3, Math.min(most, 8 * Math.sqrt(each / 4536)));
  }

  private Shape column(Sort sort, long end, int count) {
    double x = layout.axis.x(end);
    double share = columnShare(count);
    if (sort == Sort.FEED) {
      double tall = feedHeight() * (0.7 + 0.9 * share);
      return new Rectangle2D.Double(x, lane.plot().getY(), columnWidth(), tall);
    }
    if (sort == Sort.FISH) {
      double tall = stringHeight() * share;
      return new Rectangle2D.Double(x, lane.stringY() - tall / 2, columnWidth(), tall);
    }
    return new Rectangle2D.Double(
        x, lane.stringY() + 1, columnWidth(), stringHeight() * 0.5 * share);
  }

  /** Height of a column: fixed for a count, so that a later fuller one changes nothing. */
  private static double columnShare(int count) {
    return Math.min(1, Math.log1p(count) / Math.log(257));
  }

  /** Narrow, for it stands to the right of what it counts. */
  private double columnWidth() {
    return Math.min(4, layout.axis.pixelsPerMinute() * step / 60_000 - 1);
  }

  private double stringHeight() {
    return 2 * (lane.rate().getY() - lane.stringY());
  }

  /** Returns where an event of no line is drawn, on the strip below the clock. */
  static Mark around(TimelineLayout layout, SessionEvent event) {
    double x = layout.axis.x(event.at());
    double y = layout.aroundStrip().getCenterY();
    Shape shape =
        switch (event.kind()) {
          case STOPPED, RESUMED -> new Rectangle2D.Double(x, y - 3.5, 2.4, 7);
          case ALL_IN, ALL_OUT -> new Rectangle2D.Double(x, y - 3.5, 1.6, 7);
          case NET -> new Rectangle2D.Double(x, y - 2.5, 5, 5);
          default -> {
            Path2D flag = new Path2D.Double();
            flag.moveTo(x, y - 3);
            flag.lineTo(x + 5, y);
            flag.lineTo(x, y + 3);
            flag.closePath();
            yield flag;
          }
        };
    return new Mark(Sort.FLOOR, List.of(event), shape);
  }
}
