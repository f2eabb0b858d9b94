package org.fadeline.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Course.Rolling;
import org.fadeline.analysis.Course.Untold;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** One line's record, laid out once for drawing and for looking up by instant. */
final class LaneRecord {
  final LineReview review;
  final int index;
  final Sorted marks;
  final Sorted feeds;
  private final LaneSight afterwards;
  private final List<Untold> untold;
  final List<TimeSpan> unassigned = new ArrayList<>();

  private LaneRecord(LineReview review, int index, Sorted marks, Sorted feeds, Rolling rolling) {
    this.review = review;
    this.index = index;
    this.marks = marks;
    this.feeds = feeds;
    this.untold = rolling.untold();
    this.afterwards =
        new LaneSight(
            review.spells().stream().flatMap(s -> s.fishedSpans().stream()).toList(),
            rolling.points());
  }

  String id() {
    return review.line().id();
  }

  /** Events in time order with their instants beside them, for binary search. */
  static final class Sorted {
    static final Sorted NONE = new Sorted(List.of());

    final List<SessionEvent> events;
    private final long[] at;

    Sorted(List<SessionEvent> events) {
      this.events = List.copyOf(events);
      this.at = this.events.stream().mapToLong(SessionEvent::at).toArray();
    }

    Sorted until(long instant) {
      return new Sorted(events.subList(0, first(instant + 1)));
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

  /** The lanes of a review by line id, and the events they were made of. */
  record Lanes(Map<String, LaneRecord> byLine, Split events) {
    /** Returns the events that belong to no line. */
    Sorted around() {
      return events.around();
    }
  }

  /**
   * The events of a session lane by lane: the same whatever is told of them, and worked out once.
   */
  record Split(Map<String, Sorted> marks, Map<String, Sorted> feeds, Sorted around) {
    /** Returns what of it came no later than an instant. */
    Split until(long instant) {
      return new Split(until(marks, instant), until(feeds, instant), around.until(instant));
    }

    private static Map<String, Sorted> until(Map<String, Sorted> lanes, long instant) {
      Map<String, Sorted> cut = new LinkedHashMap<>();
      lanes.forEach((id, events) -> cut.put(id, events.until(instant)));
      return cut;
    }

    static Split of(Session session) {
      Map<String, List<SessionEvent>> marks = new LinkedHashMap<>();
      Map<String, List<SessionEvent>> feeds = new LinkedHashMap<>();
      for (Line line : session.lines()) {
        marks.put(line.id(), new ArrayList<>());
        feeds.put(line.id(), new ArrayList<>());
      }
      List<SessionEvent> around = new ArrayList<>();
      String fishing = null;
      for (SessionEvent event : session.events()) {
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
      return new Split(sorted(marks), sorted(feeds), new Sorted(around));
    }

    private static Map<String, Sorted> sorted(Map<String, List<SessionEvent>> lanes) {
      Map<String, Sorted> all = new LinkedHashMap<>();
      lanes.forEach((id, events) -> all.put(id, new Sorted(events)));
      return all;
    }
  }

  static Lanes of(Review review) {
    return of(review, Map.of());
  }

  /** Lays a review out with hues by line id; a line not named has its place in the review. */
  static Lanes of(Review review, Map<String, Integer> hues) {
    return of(review, hues, Split.of(review.session()));
  }

  /** The same where the events of the session were split already. */
  static Lanes of(Review review, Map<String, Integer> hues, Split events) {
    Map<String, LaneRecord> lanes = new LinkedHashMap<>();
    for (int i = 0; i < review.lines().size(); i++) {
      LineReview line = review.lines().get(i);
      String id = line.line().id();
      lanes.put(
          id,
          new LaneRecord(
              line,
              hues.getOrDefault(id, i),
              events.marks().getOrDefault(id, Sorted.NONE),
              events.feeds().getOrDefault(id, Sorted.NONE),
              rolling(review, id)));
    }
    addUnassigned(lanes);
    return new Lanes(lanes, events);
  }

  private static Rolling rolling(Review review, String id) {
    for (Rolling rolling : review.course().rolling()) {
      if (rolling.lineId().equals(id)) {
        return rolling;
      }
    }
    return new Rolling(id, List.of(), List.of());
  }

  /** Time of which only a sign of the other line told that it belongs to neither. */
  private static void addUnassigned(Map<String, LaneRecord> lanes) {
    for (LaneRecord lane : lanes.values()) {
      for (Untold untold : lane.untold) {
        lane.unassigned.add(untold.span());
        LaneRecord next = lanes.get(untold.next());
        if (next != null) {
          next.unassigned.add(untold.span());
        }
      }
    }
  }

  /** Returns what was fished and at what rate, as seen from a moment. */
  LaneSight sight(Knowledge seen) {
    for (Untold each : untold) {
      if (!seen.knows(each.span().to())) {
        return afterwards.before(each);
      }
    }
    return afterwards;
  }

  /** Counts the stretches known by then to belong to no line. */
  int told(Knowledge seen) {
    int count = 0;
    for (Untold each : untold) {
      count += seen.knows(each.span().to()) ? 1 : 0;
    }
    return count;
  }

  /**
   * Returns the end of the stay that holds an instant, or a limit if that comes sooner. Where only
   * the next line told that a stay was over, it ends there.
   */
  long endOfStay(long instant, long limit) {
    for (Spell spell : review.spells()) {
      if (spell.span().from() <= instant && instant <= spell.span().to()) {
        long end = spell.span().to();
        for (Untold each : untold) {
          end = each.span().from() == end ? each.span().to() : end;
        }
        return Math.max(instant, Math.min(limit, end));
      }
    }
    return limit;
  }

  /** Returns the spell at an instant, as seen from a moment, or null. */
  @Nullable Spell spellAt(long instant, Knowledge seen) {
    Spell last = null;
    for (Spell spell : review.spells()) {
      if (spell.span().from() <= instant) {
        last = spell;
      }
    }
    boolean inside = last != null && instant < last.span().to();
    return inside || sight(seen).isFishedAt(instant) ? last : null;
  }
}
