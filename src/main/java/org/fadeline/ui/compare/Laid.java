package org.fadeline.ui.compare;

import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.RunningCatch;
import org.fadeline.figure.CompareTimelinesFigure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.replay.Playhead;
import org.fadeline.replay.ReplayTrack;
import org.fadeline.ui.state.OpenSession;
import org.jspecify.annotations.Nullable;

/**
 * A comparison with what is worked out of it before any of it is shown: of thousands of events that
 * takes longer than a frame, and is done off the window's thread.
 *
 * @param timelines both matches over time, as they look afterwards
 * @param first the first match prepared for replay
 * @param second the second match prepared for replay
 * @param then both catches as they were told while they grew
 * @param secondRange what a replay of the second match reaches, at its own instants
 */
record Laid(
    Comparison comparison,
    FigureStyle style,
    CompareTimelinesFigure timelines,
    ReplayTrack first,
    ReplayTrack second,
    RunningCatch then,
    Playhead.Range secondRange) {
  /** Events of both matches from which on pictures are drawn off the window's thread. */
  private static final int MOST_AT_ONCE = 1000;

  /**
   * Lays a comparison out.
   *
   * @param before what was shown: a match that is in it too is not prepared again; or null
   */
  static Laid of(Comparison comparison, FigureStyle style, @Nullable Laid before) {
    return new Laid(
        comparison,
        style,
        new CompareTimelinesFigure(comparison, style),
        before != null && before.comparison.first().equals(comparison.first())
            ? before.first
            : ReplayTrack.of(comparison.first().session()),
        before != null && before.comparison.second().equals(comparison.second())
            ? before.second
            : ReplayTrack.of(comparison.second().session()),
        RunningCatch.asKnownThen(
            comparison.first().session(),
            comparison.second().session(),
            comparison.setup().alignment()),
        OpenSession.rangeOf(comparison.second().session()));
  }

  /** Returns whether a comparison is of more events than are laid out or drawn within a frame. */
  static boolean isLarge(Comparison comparison) {
    return comparison.first().session().events().size()
            + comparison.second().session().events().size()
        > MOST_AT_ONCE;
  }

  /** Returns whether this is how a comparison looks in a style. */
  @SuppressWarnings("ReferenceEquality") // comparing two matches event by event would take too long
  boolean isOf(Comparison other, FigureStyle otherStyle) {
    return comparison == other && style.equals(otherStyle);
  }
}
