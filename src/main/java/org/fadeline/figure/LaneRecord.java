package org.fadeline.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Course.Rolling;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.model.EventKind;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** One line's record, laid out once for drawing and for looking up by instant. */
final class LaneRecord {
  /** Fewer fished minutes than this in the window and the curve is not drawn. */
  static final double DRAWN_FROM_MINUTES = 10;

  final LineReview review;
  final int index;
  final Sorted marks;
  final Sorted feeds;
  final List<RollingPoint> rolling;
  final List<TimeSpan> fished;
  final List<TimeSpan> unassigned = new ArrayList<>();

  private LaneRecord(
      LineReview review,
      int index,
      List<SessionEvent> marks,
      List<SessionEvent> feeds,
      List<RollingPoint> rolling) {
    this.review = review;
    this.index = index;
    this.marks = new Sorted(marks);
    this.feeds = new Sorted(feeds);
    this.rolling = rolling;
    this.fished = review.spells().stream().flatMap(s -> s.fishedSpans().stream()).toList();
  }

  String id() {
    return review.line().id();
  }

  /** Events in time order with their instants beside them, for binary search. */
  static final class Sorted {
    final List<SessionEvent> events;
    private final long[] at;

    Sorted(List<SessionEvent> events) {
      this.events = List.copyOf(events);
      this.at = this.events.stream().mapToLong(SessionEvent::at).toArray();
    }

    /** Returns the index of the first event at or after an instant. */
    int first(long instant) {
      int found = Arrays.binarySearch(at, instant);
      if (found < 0) {
        return -found - 1;
      }
      while (found > 0 && at[found - 1] == instant) {
        found--;
      }
      return found;
    }

    List<SessionEvent> slice(long from, long to) {
      return events.subList(first(from), first(to + 1));
    }
  }

  /** The lanes of a review by line id, and the events that belong to no line. */
  record Lanes(Map<String, LaneRecord> byLine, Sorted around) {}

  static Lanes of(Review review) {
    Map<String, List<SessionEvent>> marks = new LinkedHashMap<>();
    Map<String, List<SessionEvent>> feeds = new LinkedHashMap<>();
    for (LineReview line : review.lines()) {
      marks.put(line.line().id(), new ArrayList<>());
      feeds.put(line.line().id(), new ArrayList<>());
    }
    List<SessionEvent> around = new ArrayList<>();
    String fishing = null;
    for (SessionEvent event : review.session().events()) {
      EventKind.Group group = event.kind().group();
      String line = event.lineId();
      if (group == EventKind.Group.WATER) {
        fishing = line == null ? fishing : line;
        line = fishing;
      } else if (group == EventKind.Group.MOVE || group == EventKind.Group.COUNT) {
        line = line == null ? fishing : line;
        fishing = group == EventKind.Group.MOVE ? null : fishing;
      }
      List<SessionEvent> lane =
          line == null ? null : (group == EventKind.Group.FEED ? feeds : marks).get(line);
      (lane == null ? around : lane).add(event);
    }
    Map<String, LaneRecord> lanes = new LinkedHashMap<>();
    for (int i = 0; i < review.lines().size(); i++) {
      LineReview line = review.lines().get(i);
      String id = line.line().id();
      lanes.put(
          id,
          new LaneRecord(
              line,
              i,
              marks.getOrDefault(id, List.of()),
              feeds.getOrDefault(id, List.of()),
              rolling(review, id)));
    }
    addUnassigned(review, lanes);
    return new Lanes(lanes, new Sorted(around));
  }

  private static List<RollingPoint> rolling(Review review, String id) {
    for (Rolling rolling : review.course().rolling()) {
      if (rolling.lineId().equals(id)) {
        return rolling.points();
      }
    }
    return List.of();
  }

  /**
   * Time between two spells belongs to neither line where nothing says that the first was left: no
   * move, no rig out, no stop.
   */
  private static void addUnassigned(Review review, Map<String, LaneRecord> lanes) {
    List<Spell> spells = review.spells();
    Sorted events = new Sorted(review.session().events());
    for (int i = 1; i < spells.size(); i++) {
      Spell before = spells.get(i - 1);
      Spell after = spells.get(i);
      long from = before.span().to();
      long to = after.span().from();
      if (from >= to || before.lineId().equals(after.lineId())) {
        continue;
      }
      boolean left =
          events.slice(from, to).stream().anyMatch(e -> e.kind().group() == EventKind.Group.MOVE);
      if (!left) {
        for (String id : List.of(before.lineId(), after.lineId())) {
          LaneRecord lane = lanes.get(id);
          if (lane != null) {
            lane.unassigned.add(new TimeSpan(from, to));
          }
        }
      }
    }
  }

  /** Returns the rolling point that holds at an instant, or null where none is drawn. */
  @Nullable RollingPoint pointAt(long instant) {
    int low = 0;
    int high = rolling.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rolling.get(middle).at() <= instant) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    RollingPoint point = low == 0 ? null : rolling.get(low - 1);
    return point != null && isDrawn(point) && instant - point.at() < 60_000 ? point : null;
  }

  boolean isDrawn(RollingPoint point) {
    return point.fish() != null
        && point.fishedMinutes() >= DRAWN_FROM_MINUTES
        && isFishedAt(point.at());
  }

  boolean isFishedAt(long instant) {
    for (TimeSpan span : fished) {
      if (span.from() <= instant && instant < span.to()) {
        return true;
      }
    }
    return false;
  }

  @Nullable Spell spellAt(long instant) {
    for (Spell spell : review.spells()) {
      if (spell.span().from() <= instant && instant < spell.span().to()) {
        return spell;
      }
    }
    return null;
  }

  /** Returns minutes fished on the line up to an instant. */
  double fishedMinutes(long until) {
    long millis = 0;
    for (TimeSpan span : fished) {
      millis += span.overlapMillis(Long.MIN_VALUE / 4, until);
    }
    return millis / 60_000.0;
  }
}
