package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * What every event carries.
 *
 * @param id unique in the session
 * @param at epoch milliseconds
 * @param lineId the line it happened on, or null
 * @param note the angler's words, or null
 */
public record Stamp(String id, long at, @Nullable String lineId, @Nullable String note) {
  /** Returns this stamp at another instant. */
  public Stamp withAt(long newAt) {
    return new Stamp(id, newAt, lineId, note);
  }

  /** Returns this stamp on another line. */
  public Stamp withLine(@Nullable String newLineId) {
    return new Stamp(id, at, newLineId, note);
  }
}
