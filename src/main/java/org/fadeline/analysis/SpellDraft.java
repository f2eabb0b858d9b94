package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.EventKind;
import org.fadeline.model.SessionEvent;

/** A spell while the log is being read. */
final class SpellDraft {
  private final String lineId;
  private final long start;
  private final List<SessionEvent> water = new ArrayList<>();
  private final List<TimeSpan> offGaps = new ArrayList<>();
  private long end;
  private int changes = 1;
  private List<Hook> hooks = List.of();
  private int hooksOf;

  SpellDraft(String lineId, long start) {
    this.lineId = lineId;
    this.start = start;
    this.end = start;
  }

  String lineId() {
    return lineId;
  }

  long start() {
    return start;
  }

  long end() {
    return end;
  }

  List<SessionEvent> water() {
    return water;
  }

  /** Returns a number that grows with every change, at least 1. */
  int changes() {
    return changes;
  }

  /** Returns the instant of its last water event, which may be a cast made before all in. */
  long lastWater() {
    return Math.max(start, water.get(water.size() - 1).at());
  }

  void add(SessionEvent event) {
    water.add(event);
    changes++;
  }

  void addOffGap(long from, long to) {
    offGaps.add(new TimeSpan(from, to));
    changes++;
  }

  /** Returns the time between two instants of the spell with the rig not out. */
  long millisNotOff(long from, long to) {
    return to - from - SpanMath.overlapMillis(offGaps, from, to);
  }

  void endAt(long instant) {
    long newEnd = Math.max(start, instant);
    changes += newEnd == end ? 0 : 1;
    end = newEnd;
  }

  /** Returns the span less the gaps for tangles and the like. */
  List<TimeSpan> fishedSpans() {
    return SpanMath.without(new TimeSpan(start, end), offGaps);
  }

  /** Returns the hook-ups of this spell, in order, each with the cast that ended its handling. */
  List<Hook> hooks() {
    if (hooksOf != water.size()) {
      hooks = findHooks();
      hooksOf = water.size();
    }
    return hooks;
  }

  private List<Hook> findHooks() {
    int[] nextCast = new int[water.size() + 1];
    nextCast[water.size()] = -1;
    for (int i = water.size() - 1; i >= 0; i--) {
      nextCast[i] = water.get(i).kind() == EventKind.CAST ? i : nextCast[i + 1];
    }
    List<Hook> found = new ArrayList<>();
    int open = -1;
    for (int i = 0; i < water.size(); i++) {
      switch (water.get(i).kind()) {
        case HOOKED, CAST -> {
          // What became of the last hook-up was not logged: a new cast ends it all the same.
          if (open >= 0) {
            found.add(hook(open, open, nextCast));
          }
          open = water.get(i).kind() == EventKind.HOOKED ? i : -1;
        }
        case LANDED, LOST, FOUL -> {
          found.add(hook(open >= 0 ? open : i, i, nextCast));
          open = -1;
        }
        default -> {}
      }
    }
    if (open >= 0) {
      found.add(hook(open, open, nextCast));
    }
    return found;
  }

  private Hook hook(int from, int outcome, int[] nextCast) {
    int take = -1;
    for (int i = from + 1; i < water.size() && take < 0; i++) {
      take = i != outcome && water.get(i).kind() != EventKind.CAST ? i : -1;
    }
    return new Hook(from, outcome, nextCast[from + 1], take);
  }

  /** Returns whether the spell opens with a fish that was landed, no cast logged before it. */
  boolean opensWithFish() {
    if (hooks().isEmpty() || hooks().get(0).start() != 0) {
      return false;
    }
    EventKind became = water.get(hooks().get(0).outcome()).kind();
    return became == EventKind.LANDED || became == EventKind.FOUL;
  }

  /**
   * A hook-up, by places in the spell's water events.
   *
   * @param start the event at which the bait stopped fishing
   * @param outcome the event that tells what became of it; {@code start} if none does
   * @param cast the next cast after {@code start}, or -1
   * @param take the next bite, hook-up or fish after {@code start} that is not the outcome, or -1
   */
  record Hook(int start, int outcome, int cast, int take) {
    /** Whether another take tells that a cast before it was not logged. */
    boolean isTakenBeforeCast() {
      return take >= 0 && take < cast;
    }
  }
}
