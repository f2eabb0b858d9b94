package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Effort.LineEffort;

/** Turns clock instants of one line into bait minutes, its spells joined end to end, and back. */
final class BaitClock {
  private final List<TimeSpan> spans = new ArrayList<>();
  private final List<Double> before = new ArrayList<>();
  private final double[] spellEnds;

  BaitClock(LineEffort line) {
    double minutes = 0;
    spellEnds = new double[line.spells().size()];
    for (Spell spell : line.spells()) {
      for (TimeSpan span : spell.baitSpans()) {
        spans.add(span);
        before.add(minutes);
        minutes += span.minutes();
      }
      spellEnds[spell.index()] = minutes;
    }
  }

  /** Returns the bait minutes of the line up to the end of a spell. */
  double spellEnd(int spell) {
    return spellEnds[spell];
  }

  /** Returns the bait minutes of the line up to the start of a spell. */
  double spellStart(int spell) {
    return spell == 0 ? 0 : spellEnds[spell - 1];
  }

  /** Returns the bait minutes before a clock instant. */
  double minutesAt(long instant) {
    int after = SortedLists.firstFrom(spans, TimeSpan::from, instant);
    if (after == 0) {
      return 0;
    }
    TimeSpan span = spans.get(after - 1);
    return before.get(after - 1)
        + Math.min(instant - span.from(), span.millis()) / TimeSpan.MILLIS_PER_MINUTE;
  }

  /** Returns the clock instant at which a bait minute starts; at a gap, the clock after it. */
  long startOf(double minute) {
    for (int i = 0; i < spans.size(); i++) {
      TimeSpan span = spans.get(i);
      long at = span.from() + Math.round((minute - before.get(i)) * TimeSpan.MILLIS_PER_MINUTE);
      if (at < span.to()) {
        return Math.max(at, span.from());
      }
    }
    return spans.isEmpty() ? 0 : spans.get(spans.size() - 1).to();
  }
}
