package org.fadeline.analysis;

import java.util.List;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * One continuous stay on a line.
 *
 * @param lineId the line
 * @param index which spell of that line this is, from 0
 * @param span from its first water event to its end
 * @param fishedSpans the stretches fished: the span less gaps for tangles and the like, in order
 * @param baitSpans the stretches in which a bait was in the water, in order, inside {@code span}
 * @param caught what it gave, the opening fish included
 * @param opensWithFish whether it opens with a fish and no cast; that fish is left out of its rates
 */
public record Spell(
    String lineId,
    int index,
    TimeSpan span,
    List<TimeSpan> fishedSpans,
    List<TimeSpan> baitSpans,
    Caught caught,
    boolean opensWithFish) {
  /** Copies the lists. */
  public Spell {
    fishedSpans = List.copyOf(fishedSpans);
    baitSpans = List.copyOf(baitSpans);
  }

  /**
   * Returns why the angler left, in their own words, or null where no reason was logged.
   *
   * @param session the session the spell is of
   */
  public @Nullable String reasonForLeaving(Session session) {
    for (SessionEvent event :
        SortedLists.between(session.events(), SessionEvent::at, span.to(), span.to())) {
      boolean here = event.lineId() == null || event.lineId().equals(lineId);
      if (here && event instanceof SessionEvent.Move move) {
        return move.reason();
      }
    }
    return null;
  }

  /** Returns the fished time in hours. */
  public double fishedHours() {
    return hours(fishedSpans);
  }

  /** Returns the bait time in hours: fished time less handling. */
  public double baitHours() {
    return hours(baitSpans);
  }

  private static double hours(List<TimeSpan> spans) {
    long millis = 0;
    for (TimeSpan span : spans) {
      millis += span.millis();
    }
    return millis / TimeSpan.MILLIS_PER_HOUR;
  }
}
