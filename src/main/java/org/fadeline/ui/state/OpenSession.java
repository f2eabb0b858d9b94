package org.fadeline.ui.state;

import java.nio.file.Path;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead;
import org.fadeline.replay.ReplayTrack;
import org.jspecify.annotations.Nullable;

/**
 * The session in hand.
 *
 * @param session the record
 * @param track the record prepared for replay
 * @param source where it came from
 * @param history what was done to it
 */
public record OpenSession(Session session, ReplayTrack track, Source source, History history) {
  /** How far outside the calls the replay goes at most, milliseconds. */
  private static final long MARGIN_MILLIS = 12 * 3_600_000L;

  /** The longest match that can be replayed, milliseconds. */
  private static final long LONGEST_MILLIS = 31 * 24 * 3_600_000L;

  /** Prepares a session. */
  public static OpenSession of(Session session, Source source, History history) {
    return new OpenSession(session, ReplayTrack.of(session), source, history);
  }

  /**
   * Where a session came from.
   *
   * @param path its file, or null where it has none yet
   * @param name what to call it where its title is empty
   * @param readOnly why it cannot be edited, or null where it can
   */
  public record Source(@Nullable Path path, String name, @Nullable String readOnly) {}

  /**
   * What was done to a session.
   *
   * @param undo name of the step that undo takes back, or null
   * @param redo name of the step that redo does again, or null
   * @param unsaved whether the file lacks something done here
   */
  public record History(@Nullable String undo, @Nullable String redo, boolean unsaved) {
    /** Nothing done. */
    public static final History NONE = new History(null, null, false);
  }

  /**
   * Returns the instants the replay reaches: from all in, or the first event if earlier, to all
   * out, or the last event if later; events more than 12 h outside the calls are left to the table.
   */
  public Playhead.Range range() {
    return rangeOf(session);
  }

  /** Returns the range of the replay of a session, as {@link #range} does. */
  public static Playhead.Range rangeOf(Session session) {
    Match match = session.match();
    long from = match.allIn();
    long to = Math.min(match.allOut(), from + LONGEST_MILLIS);
    long earliest = from - MARGIN_MILLIS;
    long latest = to + MARGIN_MILLIS;
    for (SessionEvent event : session.events()) {
      if (event.at() >= earliest && event.at() <= latest) {
        from = Math.min(from, event.at());
        to = Math.max(to, event.at());
      }
    }
    return new Playhead.Range(from, to);
  }
}
