package org.fadeline.figure;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Course.Untold;
import org.fadeline.analysis.TimeSpan;
import org.jspecify.annotations.Nullable;

/**
 * What was fished on a line and at what rate, as seen from a moment. Afterwards some time between
 * two lines belongs to neither; before the sign that told so, the first one seemed to be fished on.
 *
 * @param fished when the line was fished, in order
 * @param rolling the rate minute by minute
 */
record LaneSight(List<TimeSpan> fished, List<RollingPoint> rolling) {
  /** Fewer fished minutes than this in the window and the curve is not drawn. */
  static final double DRAWN_FROM_MINUTES = 10;

  /** Returns this sight from before it was told that a stretch belongs to no line. */
  LaneSight before(Untold untold) {
    TimeSpan gap = untold.span();
    List<TimeSpan> spans = new ArrayList<>();
    for (TimeSpan span : fished) {
      spans.add(span.to() == gap.from() ? new TimeSpan(span.from(), gap.to()) : span);
    }
    List<RollingPoint> points = new ArrayList<>(rolling);
    for (RollingPoint point : untold.points()) {
      int place = first(point.at());
      if (place < points.size()) {
        points.set(place, point);
      }
    }
    return new LaneSight(spans, points);
  }

  /** Returns the index of the first rolling point at or after an instant. */
  int first(long instant) {
    int low = 0;
    int high = rolling.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rolling.get(middle).at() < instant) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Returns the rolling point that holds at an instant, or null where none is drawn. */
  @Nullable RollingPoint pointAt(long instant) {
    int next = first(instant + 1);
    RollingPoint point = next == 0 ? null : rolling.get(next - 1);
    return point != null && isDrawn(point) && instant - point.at() < 60_000 ? point : null;
  }

  boolean isDrawn(RollingPoint point) {
    return point.fish() != null
        && point.fishedMinutes() >= DRAWN_FROM_MINUTES
        && isFishedAt(point.at());
  }

  /** Returns whether the line was fished at an instant. */
  boolean isFishedAt(long instant) {
    int low = 0;
    int high = fished.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (fished.get(middle).from() <= instant) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low > 0 && instant < fished.get(low - 1).to();
  }

  /** Returns minutes fished on the line up to an instant. */
  double fishedMinutes(long until) {
    long millis = 0;
    for (TimeSpan span : fished) {
      millis += span.overlapMillis(Long.MIN_VALUE / 4, until);
    }
    return millis / TimeSpan.MILLIS_PER_MINUTE;
  }
}
