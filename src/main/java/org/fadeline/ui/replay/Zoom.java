package org.fadeline.ui.replay;

import org.fadeline.replay.Playhead.Range;

/** Arithmetic of the part of the match that the timeline shows. */
final class Zoom {
  /** The closest zoom, milliseconds across the view. */
  static final long CLOSEST = 20_000;

  /** Shown about what is picked, however short: one mark alone in seconds tells nothing. */
  private static final long LEAST_ONTO = 300_000;

  private Zoom() {}

  /**
   * Returns the view zoomed so that the instant at the pointer stays where it is.
   *
   * @param factor below 1 closer, above 1 farther
   */
  static Range about(Range view, Range whole, long instant, double factor) {
    long length = Math.max(1, view.millis());
    long closest = Math.min(CLOSEST, Math.max(1000, whole.millis()));
    long wanted =
        Math.round(Math.max((double) closest, Math.min((double) whole.millis(), length * factor)));
    double share = (instant - view.from()) / (double) length;
    return inside(instant - Math.round(share * wanted), wanted, whole);
  }

  /** Returns the view moved by some milliseconds, kept inside the whole. */
  static Range pan(Range view, Range whole, long millis) {
    return inside(view.from() + millis, view.millis(), whole);
  }

  /** Returns a view of a stretch with a little room on both sides. */
  static Range onto(Range stretch, Range whole) {
    long length = Math.max(LEAST_ONTO, Math.round(stretch.millis() * 1.1));
    long middle = stretch.from() + stretch.millis() / 2;
    return inside(middle - length / 2, length, whole);
  }

  /** Returns the view moved, if it must be, so that an instant can be seen. */
  static Range showing(Range view, Range whole, long instant) {
    if (view.holds(instant)) {
      return view;
    }
    long lead = instant > view.to() ? view.millis() / 5 : view.millis() * 4 / 5;
    return inside(instant - lead, view.millis(), whole);
  }

  private static Range inside(long from, long length, Range whole) {
    long kept = Math.min(length, whole.millis());
    long start = Math.max(whole.from(), Math.min(from, whole.to() - kept));
    return new Range(start, start + kept);
  }
}
