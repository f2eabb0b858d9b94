package org.fadeline.ui.imports;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.fadeline.io.ImportReport;
import org.fadeline.io.notes.NoteSession;
import org.fadeline.model.EventEdits;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * Proposed events while they are looked through.
 *
 * @param session the proposals, as changed so far
 * @param confidence how sure each reading was, in (0, 1), by id
 * @param said the words that each was read from, by id
 * @param verdicts what was decided, by id; what is not decided is not there
 * @param silent how many notes gave no event
 * @param report every problem of the notes with its place
 * @param name what the notes are called: the file's name
 * @param movedMillis by how much the device's times are moved, milliseconds
 */
record Draft(
    Session session,
    Map<String, Double> confidence,
    Map<String, String> said,
    Map<String, Verdict> verdicts,
    int silent,
    ImportReport report,
    String name,
    long movedMillis) {
  Draft {
    verdicts = Map.copyOf(verdicts);
  }

  /** What was decided about a proposal. */
  enum Verdict {
    ACCEPTED("accepted"),
    REFUSED("refused");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }
  }

  static Draft of(String name, NoteSession read) {
    return new Draft(
        read.session(),
        read.confidence(),
        read.said(),
        Map.of(),
        read.silent(),
        read.report(),
        name,
        0);
  }

  /** Returns this with proposals accepted or refused; empty leaves them open again. */
  Draft decided(List<String> ids, Optional<Verdict> verdict) {
    Map<String, Verdict> now = new HashMap<>(verdicts);
    for (String id : ids) {
      now.remove(id);
      verdict.ifPresent(v -> now.put(id, v));
    }
    return new Draft(session, confidence, said, now, silent, report, name, movedMillis);
  }

  Draft changed(UnaryOperator<Session> change) {
    return new Draft(
        change.apply(session), confidence, said, verdicts, silent, report, name, movedMillis);
  }

  /** Returns this with the device's times moved by some milliseconds in all. */
  Draft corrected(long millis) {
    Set<String> all = session.events().stream().map(SessionEvent::id).collect(Collectors.toSet());
    Session moved = EventEdits.shift(all, millis - movedMillis).apply(session);
    return new Draft(moved, confidence, said, verdicts, silent, report, name, millis);
  }

  String word(SessionEvent event) {
    Verdict verdict = verdicts.get(event.id());
    return verdict == null ? "open" : verdict.word;
  }

  /** Returns the ids of what is not decided yet, in order. */
  List<String> open() {
    return session.events().stream()
        .map(SessionEvent::id)
        .filter(id -> !verdicts.containsKey(id))
        .toList();
  }

  /** Returns what was accepted, as a match framed by the calls among it, with the correction. */
  Session accepted() {
    List<SessionEvent> events =
        session.events().stream().filter(e -> verdicts.get(e.id()) == Verdict.ACCEPTED).toList();
    Session taken =
        session.withEvents(events).withMatch(NoteSession.matchOf(events, session.match().allIn()));
    return movedMillis == 0
        ? taken
        : taken.withOutcome(taken.outcome().withImport(new Outcome.Imported(name, movedMillis)));
  }
}
