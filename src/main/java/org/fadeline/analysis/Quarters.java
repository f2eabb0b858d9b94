package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Course.Quarter;
import org.fadeline.analysis.Effort.LineEffort;

/** Catch by quarter-hour of the match, from all in. */
final class Quarters {
  private static final long QUARTER_MILLIS = 900_000;

  private Quarters() {}

  static List<Quarter> of(Effort effort) {
    long end = effort.session().match().allOut();
    List<Quarter> quarters = new ArrayList<>();
    for (long from = effort.session().match().allIn(); from < end; from += QUARTER_MILLIS) {
      long to = Math.min(from + QUARTER_MILLIS, end);
      // A fish landed on the stroke belongs to the quarter it ends; one after the whistle to the
      // last.
      long upTo = to == end ? Long.MAX_VALUE : to;
      long after = from == effort.session().match().allIn() ? from - 1 : from;
      List<Caught> caught = new ArrayList<>();
      long fished = 0;
      for (LineEffort line : effort.lines()) {
        caught.add(line.caught(after, upTo));
        for (Spell spell : line.spells()) {
          fished += SpanMath.overlapMillis(spell.fishedSpans(), from, to);
        }
      }
      quarters.add(
          new Quarter(new TimeSpan(from, to), caught, fished / TimeSpan.MILLIS_PER_MINUTE));
    }
    return quarters;
  }
}
