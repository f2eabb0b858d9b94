package org.fadeline.ui.compare;

import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.Knowledge;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/**
 * Where the one playhead stands in both matches, and what may be told of each there.
 *
 * @param at its instant in the first match, epoch milliseconds
 * @param other its instant in the second match, epoch milliseconds
 * @param place its place on the common axis, minutes
 * @param playing whether it moves by itself
 * @param hindsight whether everything is shown
 * @param firstTold the review the first match is drawn from; null while what was known then is
 *     being worked out
 * @param secondTold the same of the second match
 */
record Moment(
    long at,
    long other,
    double place,
    boolean playing,
    boolean hindsight,
    @Nullable Review firstTold,
    @Nullable Review secondTold) {

  /**
   * Returns the moment of the playhead.
   *
   * @param secondKnown what could be told of the second match at each of its moments, or null
   *     before it is worked out
   */
  static Moment of(WorkbenchState s, Comparison comparison, @Nullable KnownThen secondKnown) {
    Alignment alignment = comparison.setup().alignment();
    long at = s.playhead().at();
    double place = alignment.firstMinutes(at);
    long other = alignment.secondInstant(place);
    boolean hindsight = s.choices().hindsight();
    return new Moment(
        at,
        other,
        place,
        s.playhead().motion().playing(),
        hindsight,
        hindsight ? comparison.first() : drawn(s.review().known(), at, comparison.first()),
        hindsight ? comparison.second() : drawn(secondKnown, other, comparison.second()));
  }

  /** After an edit what was known then is that of the record before, until it is worked out. */
  private static @Nullable Review drawn(
      @Nullable KnownThen known, long instant, Review afterwards) {
    Review told = known == null ? null : known.drawnAt(instant);
    return told != null && told.session().equals(afterwards.session()) ? told : null;
  }

  /** What is known of the first match. */
  Knowledge first() {
    return hindsight ? Knowledge.hindsight() : Knowledge.asKnownAt(at);
  }

  /** What is known of the second match. */
  Knowledge second() {
    return hindsight ? Knowledge.hindsight() : Knowledge.asKnownAt(other);
  }
}
