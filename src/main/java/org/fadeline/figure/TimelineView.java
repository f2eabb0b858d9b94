package org.fadeline.figure;

import java.util.List;
import org.fadeline.model.Line;
import org.fadeline.model.Session;

/**
 * What part of a match a timeline shows.
 *
 * @param from first instant, epoch milliseconds
 * @param to last instant, epoch milliseconds, at least a second after {@code from}
 * @param lanes ids of the lines shown, top down; a line left out is hidden
 * @param measure what the curve in the lanes counts
 * @param key whether a row at the foot says what the marks mean
 */
public record TimelineView(long from, long to, List<String> lanes, Measure measure, boolean key) {
  /** What a lane's curve counts. */
  public enum Measure {
    /** Fish landed per fished hour. */
    FISH,
    /** Weight landed per fished hour. */
    WEIGHT
  }

  /** Copies the list and checks the range. */
  public TimelineView {
    if (to - from < 1000) {
      throw new IllegalArgumentException("a timeline must span at least a second");
    }
    lanes = List.copyOf(lanes);
  }

  /** Returns the whole match, every line in the session's order, fish in the curve, no key. */
  public static TimelineView whole(Session session) {
    long from = session.match().allIn();
    if (!session.events().isEmpty()) {
      from = Math.min(from, session.events().get(0).at());
    }
    // The extra minutes belong to the match whether or not a fish came in them.
    long extra = Math.round(session.match().rules().playingAtWhistleMinutes() * 60_000);
    return new TimelineView(
        from,
        session.match().allOut() + extra,
        session.lines().stream().map(Line::id).toList(),
        Measure.FISH,
        false);
  }

  /** Returns this view over another range (epoch milliseconds). */
  public TimelineView withRange(long newFrom, long newTo) {
    return new TimelineView(newFrom, newTo, lanes, measure, key);
  }

  /** Returns this view with other lanes. */
  public TimelineView withLanes(List<String> newLanes) {
    return new TimelineView(from, to, newLanes, measure, key);
  }

  /** Returns this view with another measure. */
  public TimelineView withMeasure(Measure newMeasure) {
    return new TimelineView(from, to, lanes, newMeasure, key);
  }

  /** Returns this view with or without the key. */
  public TimelineView withKey(boolean newKey) {
    return new TimelineView(from, to, lanes, measure, newKey);
  }
}
