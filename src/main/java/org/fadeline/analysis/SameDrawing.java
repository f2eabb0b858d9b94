package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.Course.Untold;
import org.jspecify.annotations.Nullable;

/**
 * Tells which moments a screen can show with one drawing: that of the last one, covered from the
 * playhead on.
 */
final class SameDrawing {
  private final long[] from;
  private final List<Review> told;

  /**
   * @param from the instants of the entries, ascending
   * @param told what could be told from each instant on
   */
  SameDrawing(long[] from, List<Review> told) {
    this.from = from;
    this.told = told;
  }

  /** For each entry the last one that, up to the entry's instant, draws the same. */
  int[] last() {
    int[] last = new int[told.size()];
    int group = told.size() - 1;
    for (int i = told.size() - 1; i >= 0; i--) {
      if (!drawn(told.get(i), from[i]).equals(drawn(told.get(group), from[i]))) {
        group = i;
      }
      last[i] = group;
    }
    return last;
  }

  /** What had been fished and had come of it by an instant, as a review draws it. */
  private static List<Object> drawn(Review review, long at) {
    List<Object> all = new ArrayList<>();
    for (LineReview line : review.lines()) {
      List<Untold> untold = untoldOf(review, line.line().id());
      for (Spell spell : line.spells()) {
        if (spell.span().from() <= at) {
          all.add(spellBy(spell, untold, at));
        }
      }
      untold.stream().map(Untold::span).filter(s -> s.to() <= at).forEach(all::add);
    }
    return all;
  }

  private static List<Untold> untoldOf(Review review, String line) {
    return review.course().rolling().stream()
        .filter(r -> r.lineId().equals(line))
        .flatMap(r -> r.untold().stream())
        .toList();
  }

  private static List<Object> spellBy(Spell spell, List<Untold> untold, long at) {
    List<TimeSpan> fished = new ArrayList<>();
    boolean over = spell.span().to() <= at;
    for (TimeSpan span : spell.fishedSpans()) {
      long to = span.to();
      for (Untold each : untold) {
        if (each.span().from() == to && each.span().to() > at) {
          to = each.span().to();
          over = false;
        }
      }
      if (span.from() <= at) {
        fished.add(new TimeSpan(span.from(), Math.min(to, at)));
      }
    }
    @Nullable Caught caught = over ? spell.caught() : null;
    return Arrays.asList(spell.lineId(), spell.span().from(), fished, caught);
  }
}
