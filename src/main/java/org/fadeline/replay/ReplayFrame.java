package org.fadeline.replay;

import java.util.List;
import java.util.Optional;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * What had happened by an instant: nothing in a frame rests on a later event.
 *
 * @param at the instant, epoch milliseconds
 * @param eventsSeen how many of the session's events lie at or before it
 * @param phase of the match
 * @param fishing the line being fished, or null
 * @param totals of the match so far
 * @param lines one entry for each line, in the session's order
 */
public record ReplayFrame(
    long at,
    int eventsSeen,
    Phase phase,
    @Nullable String fishing,
    Totals totals,
    List<LineState> lines) {
  /** Copies the list. */
  public ReplayFrame {
    lines = List.copyOf(lines);
  }

  /**
   * Returns the frame of a session at an instant.
   *
   * <p>For many instants of one session build a {@link ReplayTrack} once and ask it.
   *
   * @param at epoch milliseconds; any value
   */
  public static ReplayFrame at(Session session, long at) {
    return ReplayTrack.of(session).frameAt(at);
  }

  /** Returns the state of the line with the given id, or empty. */
  public Optional<LineState> line(String id) {
    return lines.stream().filter(l -> l.lineId().equals(id)).findFirst();
  }

  /** Phase of a match. */
  public enum Phase {
    /** Before all in. */
    BEFORE,
    /** Between the calls. */
    FISHING,
    /** Suspended. */
    STOPPED,
    /** After all out. */
    AFTER
  }

  /**
   * Catch so far.
   *
   * @param fish fish landed that count; of a clicker count those beyond the fish logged one by one
   * @param weightG their weight as logged, grams
   * @param weighed whether every weight so far was read off scales, and there is one
   * @param lost hooked fish that came off
   */
  public record Totals(int fish, double weightG, boolean weighed, int lost) {}

  /**
   * One line so far.
   *
   * @param lineId the line
   * @param fish fish landed that count
   * @param weightG their weight as logged, grams
   * @param bites bites, whatever became of them
   * @param lastFed last feed of its spot at or before the instant (within a pattern, its last
   *     repetition), epoch milliseconds, or null
   * @param lastBite last bite, epoch milliseconds, or null
   */
  public record LineState(
      String lineId,
      int fish,
      double weightG,
      int bites,
      @Nullable Long lastFed,
      @Nullable Long lastBite) {}
}
