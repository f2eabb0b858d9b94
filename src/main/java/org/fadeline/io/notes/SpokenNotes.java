package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.EventKind;
import org.fadeline.model.EventKind.Group;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/** Captions read as spoken notes: each cue with the events proposed from it. */
final class SpokenNotes {

  /** How far a line carried over from earlier notes can be trusted. */
  private static final double CARRIED = 0.9;

  private SpokenNotes() {}

  /**
   * One cue and what was made of it.
   *
   * @param cue what was said
   * @param events zero or more, in the order told
   */
  record Proposals(Cue cue, List<ProposedEvent> events) {
    /** Copies the list. */
    Proposals {
      events = List.copyOf(events);
    }
  }

  /**
   * Returns the events proposed from captions. Where a note does not say the line, a water event is
   * put on the line that the notes before it were about.
   *
   * @param cues in file order
   * @param startsAt instant at which the recording starts, epoch milliseconds
   * @param vocabulary the lines' names
   */
  static List<Proposals> propose(List<Cue> cues, long startsAt, Vocabulary vocabulary) {
    NoteReader reader = new NoteReader(vocabulary);
    List<Proposals> all = new ArrayList<>();
    List<Cue> inOrder =
        cues.stream().sorted((a, b) -> Long.compare(a.fromMillis(), b.fromMillis())).toList();
    String fished = null;
    for (Cue cue : inOrder) {
      List<ProposedEvent> placed = new ArrayList<>();
      String prefix = "n" + (all.size() + 1) + "-";
      for (ProposedEvent event : reader.read(cue.text(), startsAt + cue.fromMillis(), prefix)) {
        ProposedEvent one = placed(event, fished);
        fished = fishedAfter(one, fished);
        placed.add(one);
      }
      all.add(new Proposals(cue, placed));
    }
    return all;
  }

  private static ProposedEvent placed(ProposedEvent proposed, @Nullable String fished) {
    SessionEvent event = proposed.event();
    boolean placed = event.kind().group() == Group.WATER || event.kind() == EventKind.MOVE;
    if (!placed || event.lineId() != null || fished == null) {
      return proposed;
    }
    return new ProposedEvent(
        event.withStamp(event.stamp().withLine(fished)),
        proposed.confidence() * CARRIED,
        proposed.towards());
  }

  private static @Nullable String fishedAfter(ProposedEvent proposed, @Nullable String fished) {
    String line = proposed.event().lineId();
    if (proposed.event().kind() == EventKind.MOVE) {
      return proposed.towards();
    }
    return proposed.event().kind().group() == Group.WATER && line != null ? line : fished;
  }

  /**
   * Returns an event with a mark and its confidence in the note, for a file to hold.
   *
   * @param confidence in (0, 1)
   */
  static SessionEvent marked(SessionEvent event, double confidence) {
    Stamp stamp = event.stamp();
    String note =
        String.format(
            Locale.ROOT,
            "proposed, %.0f%% sure: %s",
            100 * confidence,
            stamp.note() == null ? "" : stamp.note());
    return event.withStamp(new Stamp(stamp.id(), stamp.at(), stamp.lineId(), note));
  }
}
