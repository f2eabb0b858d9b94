package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Json;
import org.fadeline.io.JsonParse;
import org.fadeline.io.JsonText;
import org.fadeline.io.Refused;
import org.fadeline.io.Sessions;
import org.fadeline.model.Edit;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.junit.jupiter.api.Test;

class EditTest {
  @Provide
  Arbitrary<Session> sessions() {
    return Sessions.any();
  }

  /** Another state of the same document: events dropped, moved, changed, added; parts changed. */
  private static Session changed(Session session, long seed) {
    Random random = new Random(seed);
    List<SessionEvent> events = new ArrayList<>();
    for (SessionEvent event : session.events()) {
      switch (random.nextInt(6)) {
        case 0 -> {}
        case 1 ->
            events.add(event.withStamp(event.stamp().withAt(event.at() + random.nextInt(600_000))));
        case 2 -> {
          events.add(event);
          events.add(new SessionEvent.Note(Sessions.stamp("n" + events.size(), "11:00:00", null)));
        }
        default -> events.add(event);
      }
    }
    Session after = session.withEvents(events);
    if (random.nextInt(3) == 0) {
      after = after.withLines(session.lines().subList(1, session.lines().size()));
    }
    if (random.nextInt(3) == 0) {
      Match match = session.match();
      after =
          after.withMatch(new Match(match.allIn(), match.allOut() + 60_000, MatchRules.UNSTATED));
    }
    if (random.nextInt(3) == 0) {
      after = after.withOutcome(Sessions.small().outcome());
    }
    if (random.nextInt(3) == 0) {
      Occasion small = Sessions.small().occasion();
      after = after.withOccasion(small);
    }
    return after;
  }

  @Property(tries = 300)
  void appliesInvertsAndSurvivesBeingWritten(@ForAll("sessions") Session before, @ForAll long seed)
      throws Refused {
    Session after = changed(before, seed);
    Edit edit = Edit.between("Change", before, after);
    assertEquals(after, edit.apply(before));
    assertEquals(before, edit.inverse().apply(after));
    assertEquals(edit, edit.inverse().inverse());
    assertEquals(before.equals(after), edit.isEmpty());
    String json = JsonText.compact(EditJson.write(edit));
    Json read = JsonParse.parse("", json, new ImportReport.Collector());
    assertEquals(edit, read instanceof Json.Obj obj ? EditJson.read(obj) : null);
  }

  @Test
  void anAddedEventIsOneSmallRun() {
    Session session = Sessions.small();
    SessionEvent bite = new SessionEvent.Bite(Sessions.stamp("new", "10:04:00", "short"));
    Edit edit = Edit.add("Add bite", session, bite);
    assertEquals(List.of(new Edit.EventRun(4, List.of(), 4, List.of(bite))), edit.events());
    assertEquals(session, edit.inverse().apply(edit.apply(session)));
  }

  @Test
  void anEventMovedInTimeIsTakenOutAndPutInOnce() {
    Session session = Sessions.small();
    SessionEvent lost = session.events().get(5);
    SessionEvent later = lost.withStamp(lost.stamp().withAt(Sessions.at("12:30:00")));
    Edit edit = Edit.replace("Move", session, later);
    int touched = edit.events().stream().mapToInt(r -> r.removed().size() + r.added().size()).sum();
    assertEquals(2, touched);
  }

  @Test
  void anEditRefusesAStateItDoesNotStartFrom() {
    Session session = Sessions.small();
    Edit edit = Edit.replace("Note", session, noted(session.events().get(5)));
    Session other = edit.apply(session);
    assertThrows(IllegalArgumentException.class, () -> edit.apply(other));
    Edit outcome = Edit.between("x", session, session.withOutcome(Outcome.UNKNOWN));
    assertThrows(
        IllegalArgumentException.class, () -> outcome.apply(session.withOutcome(Outcome.UNKNOWN)));
    SessionEvent unknown = new SessionEvent.Bite(Sessions.stamp("none", "10:04:00", "short"));
    assertThrows(IllegalArgumentException.class, () -> Edit.replace("x", session, unknown));
  }

  private static SessionEvent noted(SessionEvent event) {
    Stamp was = event.stamp();
    return event.withStamp(new Stamp(was.id(), was.at(), was.lineId(), "bumped off at the net"));
  }
}
