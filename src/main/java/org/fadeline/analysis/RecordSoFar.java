package org.fadeline.analysis;

import java.util.List;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * A record up to a moment that moves on: what is worked out from it is what the record cut there
 * gives, but what went before is not read again.
 */
final class RecordSoFar {
  private final Session whole;
  private final HandlingTimes handling;
  private final RecordGrade grade = new RecordGrade();
  private final WeightSource weights = new WeightSource();
  private long here = Long.MIN_VALUE;
  private int seen;
  private Session cut;
  private @Nullable EffortBuilder reader;
  private int read;

  RecordSoFar(Session whole, HandlingTimes handling) {
    this.whole = whole;
    this.handling = handling;
    cut = whole.withEvents(List.of());
  }

  /** Moves on to an instant, epoch milliseconds, included. */
  void readTo(long at) {
    List<SessionEvent> events = whole.events();
    here = at;
    int before = seen;
    for (; seen < events.size() && events.get(seen).at() <= at; seen++) {
      grade.add(events.get(seen));
      weights.add(events.get(seen));
    }
    if (seen > before) {
      cut = whole.withEvents(events.subList(0, seen));
    }
  }

  Session cut() {
    return cut;
  }

  Grade grade() {
    return grade.grade();
  }

  double clockPrecisionSeconds() {
    return grade.clockPrecisionSeconds();
  }

  Review.WeightFrom weightFrom() {
    return weights.from();
  }

  /** Whether the latest events, all at one instant, hold a clicker count. */
  boolean countedAt(long at) {
    for (int i = seen - 1; i >= 0 && whole.events().get(i).at() == at; i--) {
      if (whole.events().get(i) instanceof SessionEvent.Count) {
        return true;
      }
    }
    return false;
  }

  /**
   * The effort of the record up to here.
   *
   * @param end when a stay that is still on ends, as far as is known: here, or all out
   */
  Effort effort(long end) {
    if (here < whole.match().allIn()) {
      return effortAfresh(end);
    }
    boolean counts = grade() == Grade.COUNTS;
    if (reader == null || reader.counts() != counts) {
      // Counts are read otherwise, from the first one on.
      reader = new EffortBuilder(whole, handling, counts);
      read = 0;
    }
    for (; read < seen; read++) {
      reader.read(whole.events().get(read));
    }
    // Where nothing was in the water, the counts themselves make the spells.
    return reader.fished() ? reader.effort(cut, end) : effortAfresh(end);
  }

  /** The line being fished, as of the last effort asked for, or null. */
  @Nullable String fishing() {
    return reader == null ? null : reader.fishing();
  }

  /**
   * While a fish is in hand nobody knows when the bait will be back: the time it takes at the
   * longest, from the hook on; null where none is. As of the last effort asked for.
   */
  @Nullable TimeSpan inHand() {
    return reader == null ? null : reader.inHand();
  }

  private Effort effortAfresh(long end) {
    return Effort.of(cut.withMatch(cut.match().withAllOut(end)), handling);
  }
}
