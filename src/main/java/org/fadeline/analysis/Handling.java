package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.SpellDraft.Hook;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/**
 * Time in which a fish was being played, unhooked and the rig put back: no bait was in the water.
 *
 * <p>A gap runs from the hook-up (the outcome where no hook-up is logged) to the next cast of the
 * spell. Where another bite or fish comes before that cast, the cast was not logged, and the line's
 * median gap stands in for it, at most up to that event: one forgotten cast must not erase an hour.
 * Where the line has no logged gap at all, each fish costs the time given for its kind of line, the
 * last fish of a spell too. Time with the rig out in between is a gap of its own and makes no
 * handling longer.
 */
final class Handling {
  private static final int LONGEST_IN_MEDIANS = 3;

  private final double medianMillis;
  private final double givenMillis;

  /**
   * Learns the median gap of one line from all its spells.
   *
   * @param givenMillis what a fish takes where no gap at all is logged, 0 for nothing
   */
  Handling(List<SpellDraft> spellsOfLine, double givenMillis) {
    this.givenMillis = givenMillis;
    List<Long> logged = new ArrayList<>();
    for (SpellDraft spell : spellsOfLine) {
      int[] casts = nextCasts(spell);
      for (Hook hook : spell.hooks()) {
        int cast = casts[hook.start() + 1];
        if (cast >= 0 && nextTake(spell, hook, cast) < 0) {
          logged.add(spell.millisNotOff(startOf(spell, hook), spell.water().get(cast).at()));
        }
      }
    }
    medianMillis = median(logged);
  }

  /** Returns the gaps of one spell; they may overlap. */
  List<TimeSpan> gaps(SpellDraft spell) {
    return Double.isNaN(medianMillis) ? givenGaps(spell) : loggedGaps(spell);
  }

  private List<TimeSpan> givenGaps(SpellDraft spell) {
    List<TimeSpan> gaps = new ArrayList<>();
    List<SessionEvent> water = spell.water();
    for (Hook hook : spell.hooks()) {
      Fish fish = water.get(hook.outcome()).fishOrNull();
      if (givenMillis == 0 || fish == null) {
        continue;
      }
      long start = startOf(spell, hook);
      int take = nextTake(spell, hook, water.size());
      long limit = take < 0 ? spell.end() : water.get(take).at();
      double length = Math.min(fish.count() * givenMillis, (double) (limit - start));
      gaps.add(new TimeSpan(start, start + Math.max(0, Math.round(length))));
    }
    return gaps;
  }

  private List<TimeSpan> loggedGaps(SpellDraft spell) {
    List<TimeSpan> gaps = new ArrayList<>();
    int[] casts = nextCasts(spell);
    for (Hook hook : spell.hooks()) {
      int cast = casts[hook.start() + 1];
      if (cast < 0) {
        continue;
      }
      long start = startOf(spell, hook);
      int take = nextTake(spell, hook, cast);
      double length;
      if (take < 0) {
        length = (double) (spell.water().get(cast).at() - start);
        length =
            Math.min(length, LONGEST_IN_MEDIANS * medianMillis + offWithin(spell, start, cast));
      } else {
        length = Math.min(medianMillis, (double) (spell.water().get(take).at() - start));
      }
      gaps.add(new TimeSpan(start, start + Math.round(length)));
    }
    return gaps;
  }

  private static long startOf(SpellDraft spell, Hook hook) {
    return spell.water().get(hook.start()).at();
  }

  private static long offWithin(SpellDraft spell, long start, int cast) {
    long end = spell.water().get(cast).at();
    return end - start - spell.millisNotOff(start, end);
  }

  /** Returns for each place in the water events the first cast from there on, or -1. */
  private static int[] nextCasts(SpellDraft spell) {
    List<SessionEvent> water = spell.water();
    int[] next = new int[water.size() + 1];
    next[water.size()] = -1;
    for (int i = water.size() - 1; i >= 0; i--) {
      next[i] = water.get(i).kind() == EventKind.CAST ? i : next[i + 1];
    }
    return next;
  }

  /** Returns the first take before the cast that is not the hook's own outcome, or -1. */
  private static int nextTake(SpellDraft spell, Hook hook, int cast) {
    for (int i = hook.start() + 1; i < cast; i++) {
      SessionEvent event = spell.water().get(i);
      if (i != hook.outcome() && event.kind() != EventKind.CAST) {
        return i;
      }
    }
    return -1;
  }

  private static double median(List<Long> values) {
    if (values.isEmpty()) {
      return Double.NaN;
    }
    long[] sorted = values.stream().mapToLong(Long::longValue).toArray();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2.0;
  }
}
