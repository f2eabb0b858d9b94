package org.fadeline.figure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What lies under a point of a figure, with the exact values to show.
 *
 * @param kind what it is
 * @param id of the event for {@link Kind#EVENT}, else of the line
 * @param lineId the line, or null
 * @param at instant it belongs to, epoch milliseconds
 * @param title what it is, in a few words
 * @param rows exact values and what they rest on, one statement a row
 */
public record Hit(
    Kind kind, String id, @Nullable String lineId, long at, String title, List<String> rows) {
  /** Copies the list. */
  public Hit {
    rows = List.copyOf(rows);
  }

  /** What a hit is. */
  public enum Kind {
    /** A logged event. */
    EVENT,
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
