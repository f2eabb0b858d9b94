package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Arithmetic of spans. */
final class SpanMath {
  private SpanMath() {}

  /** Returns what is left of a span without the given gaps, which may overlap each other. */
  static List<TimeSpan> without(TimeSpan whole, List<TimeSpan> gaps) {
    return without(List.of(whole), gaps);
  }

  /** Returns what is left of disjoint sorted spans without the given gaps. */
  static List<TimeSpan> without(List<TimeSpan> spans, List<TimeSpan> gaps) {
    List<TimeSpan> sorted = new ArrayList<>(gaps);
    sorted.sort(Comparator.comparingLong(TimeSpan::from));
    List<TimeSpan> left = new ArrayList<>();
    for (TimeSpan span : spans) {
      long from = span.from();
      for (TimeSpan gap : sorted) {
        if (gap.to() <= from || gap.from() >= span.to()) {
          continue;
        }
        if (gap.from() > from) {
          left.add(new TimeSpan(from, gap.from()));
        }
        from = Math.max(from, gap.to());
      }
      if (from < span.to()) {
        left.add(new TimeSpan(from, span.to()));
      }
    }
    return left;
  }

  /** Returns the milliseconds of the spans that lie in [start, end). */
  static long overlapMillis(List<TimeSpan> spans, long start, long end) {
    long millis = 0;
    for (TimeSpan span : spans) {
      millis += span.overlapMillis(start, end);
    }
    return millis;
  }
}
