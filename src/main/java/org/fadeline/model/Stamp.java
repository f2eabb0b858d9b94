package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * What every event carries.
 *
 * @param id unique in the session
 * @param at epoch milliseconds, in [{@link #EARLIEST}, {@link #LATEST}]
 * @param lineId the line it happened on, or null
 * @param note the angler's words, or null
 */
public record Stamp(String id, long at, @Nullable String lineId, @Nullable String note) {
  /** First instant a record can hold: 1900-01-01T00:00Z, epoch milliseconds. */
  public static final long EARLIEST = -2_208_988_800_000L;

  /** Last instant a record can hold: 2199-12-31T23:59:59.999Z, epoch milliseconds. */
  public static final long LATEST = 7_258_118_399_999L;

  /** Checks the instant. */
  public Stamp {
    Checks.instant(at);
  }

  /** Returns this stamp at another instant. */
  public Stamp withAt(long newAt) {
    return new Stamp(id, newAt, lineId, note);
  }

  /** Returns this stamp on another line. */
  public Stamp withLine(@Nullable String newLineId) {
    return new Stamp(id, at, newLineId, note);
  }
}
