package org.fadeline.figure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What lies under a point of a figure, with the exact values to show.
 *
 * @param kind what it is
 * @param id of the event for {@link Kind#EVENT}, of the first of them for {@link Kind#COLUMN}, else
 *     of the line
 * @param events ids of the events that the mark stands for, in time order; none where it is no mark
 * @param lineId the line, or null
 * @param at instant it belongs to, epoch milliseconds
 * @param title what it is, in a few words
 * @param rows exact values and what they rest on, one statement a row
 */
public record Hit(
    Kind kind,
    String id,
    List<String> events,
    @Nullable String lineId,
    long at,
    String title,
    List<String> rows) {
  /** Copies the lists. */
  public Hit {
    events = List.copyOf(events);
    rows = List.copyOf(rows);
  }

  /** Returns whether the mark of one event or several lies there. */
  public boolean isMark() {
    return !events.isEmpty();
  }

  /** What a hit is. */
  public enum Kind {
    /** A logged event. */
    EVENT,
    /** Events so close that they are drawn as one column. */
    COLUMN,
    /** A fade, or the call that it was plain. */
    FADE,
    /** The rolling rate at a minute. */
    RATE,
    /** A spell. */
    SPELL,
    /** A line. */
    LINE
  }
}
