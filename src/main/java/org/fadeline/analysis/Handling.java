package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.SpellDraft.Hook;
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
    long[] logged = new long[16];
    int count = 0;
    for (SpellDraft spell : spellsOfLine) {
      for (Hook hook : spell.hooks()) {
        if (hook.cast() >= 0 && !hook.isTakenBeforeCast()) {
          logged = count == logged.length ? Arrays.copyOf(logged, 2 * count) : logged;
          logged[count++] = spell.millisNotOff(startOf(spell, hook), atOf(spell, hook.cast()));
        }
      }
    }
    medianMillis = median(Arrays.copyOf(logged, count));
  }

  /** Returns how long a logged gap can be, milliseconds; not a number where none is logged. */
  double longestMillis() {
    return LONGEST_IN_MEDIANS * medianMillis;
  }

  /** Returns whether the gaps of a spell are the same by both. */
  boolean agrees(Handling other) {
    return Double.compare(medianMillis, other.medianMillis) == 0
        && givenMillis == other.givenMillis;
  }

  /** Returns the gaps of one spell; they may overlap. */
  List<TimeSpan> gaps(SpellDraft spell) {
    return Double.isNaN(medianMillis) ? givenGaps(spell) : loggedGaps(spell);
  }

  private List<TimeSpan> givenGaps(SpellDraft spell) {
    List<TimeSpan> gaps = new ArrayList<>();
    for (Hook hook : spell.hooks()) {
      Fish fish = spell.water().get(hook.outcome()).fishOrNull();
      if (givenMillis == 0 || fish == null) {
        continue;
      }
      long start = startOf(spell, hook);
      long limit = hook.take() < 0 ? spell.end() : atOf(spell, hook.take());
      double length = Math.min(fish.count() * givenMillis, (double) (limit - start));
      gaps.add(new TimeSpan(start, start + Math.max(0, Math.round(length))));
    }
    return gaps;
  }

  private List<TimeSpan> loggedGaps(SpellDraft spell) {
    List<TimeSpan> gaps = new ArrayList<>();
    for (Hook hook : spell.hooks()) {
      if (hook.cast() < 0) {
        continue;
      }
      long start = startOf(spell, hook);
      double length;
      if (hook.isTakenBeforeCast()) {
        length = Math.min(medianMillis, (double) (atOf(spell, hook.take()) - start));
      } else {
        long end = atOf(spell, hook.cast());
        long off = end - start - spell.millisNotOff(start, end);
        length = Math.min((double) (end - start), LONGEST_IN_MEDIANS * medianMillis + off);
      }
      gaps.add(new TimeSpan(start, start + Math.round(length)));
    }
    return gaps;
  }

  private static long startOf(SpellDraft spell, Hook hook) {
    return atOf(spell, hook.start());
  }

  private static long atOf(SpellDraft spell, int index) {
    SessionEvent event = spell.water().get(index);
    return event.at();
  }

  private static double median(long[] values) {
    if (values.length == 0) {
      return Double.NaN;
    }
    Arrays.sort(values);
    int middle = values.length / 2;
    return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2.0;
  }
}
