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

  /** Returns the instant of its last water event, which may be a cast made before all in. */
  long lastWater() {
    return Math.max(start, water.get(water.size() - 1).at());
  }

  void add(SessionEvent event) {
    water.add(event);
  }

  void addOffGap(long from, long to) {
    offGaps.add(new TimeSpan(from, to));
  }

  /** Returns the time between two instants of the spell with the rig not out. */
  long millisNotOff(long from, long to) {
    return to - from - SpanMath.overlapMillis(offGaps, from, to);
  }

  void endAt(long instant) {
    end = Math.max(start, instant);
  }

  /** Returns the span less the gaps for tangles and the like. */
  List<TimeSpan> fishedSpans() {
    return SpanMath.without(new TimeSpan(start, end), offGaps);
  }

  /** Returns the hook-ups of this spell, each with the cast that ended its handling. */
  List<Hook> hooks() {
    List<Hook> hooks = new ArrayList<>();
    int open = -1;
    for (int i = 0; i < water.size(); i++) {
      switch (water.get(i).kind()) {
        case HOOKED, CAST -> {
          // What became of the last hook-up was not logged: a new cast ends it all the same.
          if (open >= 0) {
            hooks.add(new Hook(open, open));
          }
          open = water.get(i).kind() == EventKind.HOOKED ? i : -1;
        }
        case LANDED, LOST, FOUL -> {
          hooks.add(new Hook(open >= 0 ? open : i, i));
          open = -1;
        }
        default -> {}
      }
    }
    if (open >= 0) {
      hooks.add(new Hook(open, open));
    }
    return hooks;
  }

  /** Returns whether the spell opens with a fish that was landed, no cast logged before it. */
  boolean opensWithFish() {
    List<Hook> hooks = hooks();
    if (hooks.isEmpty() || hooks.get(0).start() != 0) {
      return false;
    }
    EventKind became = water.get(hooks.get(0).outcome()).kind();
    return became == EventKind.LANDED || became == EventKind.FOUL;
  }

  /**
   * A hook-up.
   *
   * @param start index of the event at which the bait stopped fishing
   * @param outcome index of the event that tells what became of it; {@code start} if none does
   */
  record Hook(int start, int outcome) {}
}
