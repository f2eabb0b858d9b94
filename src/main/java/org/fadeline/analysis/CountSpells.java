package org.fadeline.analysis;

import java.util.List;
import java.util.Map;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/**
 * Spells of a record that holds clicker counts and nothing in the water.
 *
 * <p>Each count tells of the time since the one before it (since the last move, or all in). Counts
 * of one line that follow each other form one spell; the fish of a count are dated at its report.
 */
final class CountSpells {
  private final Session session;

  CountSpells(Session session) {
    this.session = session;
  }

  void fill(Map<String, LineMarks> lines) {
    long since = session.match().allIn();
    @Nullable SpellDraft current = null;
    for (SessionEvent event : session.events()) {
      long at = event.at();
      if (at < session.match().allIn() || at > session.match().allOut()) {
        continue;
      }
      if (event.kind() == EventKind.MOVE || event.kind() == EventKind.RESUMED) {
        current = null;
        since = at;
      } else if (event instanceof SessionEvent.Count count) {
        List<SpellDraft> ofLine = draftsOf(count, lines);
        if (ofLine == null) {
          continue;
        }
        if (current == null || !current.lineId().equals(lineId(count))) {
          current = new SpellDraft(lineId(count), since);
          current.add(opening(count, since));
          ofLine.add(current);
        }
        current.endAt(at);
        if (count.fish().count() > 0) {
          current.add(landed(count));
        }
        since = at;
      }
    }
  }

  private String lineId(SessionEvent.Count count) {
    String id = count.lineId();
    return id == null ? session.lines().get(0).id() : id;
  }

  /** Returns the drafts of the count's line; a record of one line need not name it. */
  private @Nullable List<SpellDraft> draftsOf(
      SessionEvent.Count count, Map<String, LineMarks> lines) {
    if (count.lineId() == null && session.lines().size() != 1) {
      return null;
    }
    LineMarks line = lines.get(lineId(count));
    return line == null ? null : line.drafts();
  }

  private static SessionEvent opening(SessionEvent.Count count, long since) {
    return new SessionEvent.Cast(new Stamp(count.id(), since, count.lineId(), null));
  }

  private static SessionEvent landed(SessionEvent.Count count) {
    return new SessionEvent.Landed(count.stamp(), count.fish());
  }
}
