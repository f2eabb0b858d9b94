package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.Test;

class SessionJsonTest {
  static ReadResult read(String json) {
    return SessionReader.parse("x.session.json", json, ReadOptions.DEFAULT);
  }

  static Session sessionOf(ReadResult result) {
    return result.session().orElseThrow(() -> new AssertionError(listed(result)));
  }

  static String listed(ReadResult result) {
    return result.report().problems().stream()
        .map(Problem::toString)
        .collect(Collectors.joining("\n"));
  }

  @Provide
  Arbitrary<Session> sessions() {
    return Sessions.any();
  }

  @Property(tries = 300)
  void everySessionComesBackEqualAndSavesToTheSameBytes(@ForAll("sessions") Session session) {
    String json = SessionWriter.toJson(session);
    ReadResult result = read(json);
    assertEquals(session, sessionOf(result));
    assertFalse(result.report().hasErrors(), () -> listed(result));
    assertEquals(json, SessionWriter.toJson(sessionOf(result)));
  }

  @Test
  void aSessionWithEveryFieldComesBackEqual() {
    String json = SessionWriter.toJson(Sessions.small());
    ReadResult result = read(json);
    assertEquals(Sessions.small(), sessionOf(result));
    assertEquals(List.of(), result.report().problems());
    assertEquals(json, SessionWriter.toJson(sessionOf(result)));
  }

  @Test
  void unknownFieldsAreKeptAtTheirPlaceAndAnnounced() {
    String json =
        SessionWriter.toJson(Sessions.small())
            .replace(
                "\"title\":", "\"club\": {\"members\": [1, 2.50, {\"a\": null}]},\n  \"title\":")
            .replace("\"id\": \"e5\",", "\"id\": \"e5\", \"swim/side\": \"left\",")
            .replace("\"floatG\": 0.4,", "\"floatG\": 0.4, \"colour\": 1e2,");
    ReadResult result = read(json);
    Session session = sessionOf(result);
    assertEquals("{\"members\":[1,2.50,{\"a\":null}]}", session.document().unknown().get("/club"));
    assertEquals("\"left\"", session.document().unknown().get("/events/e5/swim~1side"));
    assertEquals("1e2", session.document().unknown().get("/lines/short/rig/colour"));
    // Three fields, and the hash, which no longer fits.
    assertEquals(4, result.report().warnings(), () -> listed(result));
    String again = SessionWriter.toJson(session);
    assertTrue(again.contains("\"swim/side\": \"left\""), again);
    assertEquals(session, sessionOf(read(again)));
    assertEquals(again, SessionWriter.toJson(sessionOf(read(again))));
  }

  @Test
  void unknownFieldsFollowTheirEventWhenOthersAreRemoved() {
    String json =
        SessionWriter.toJson(Sessions.small())
            .replace("\"id\": \"e5\",", "\"id\": \"e5\", \"depth\": 2,");
    Session session = sessionOf(read(json));
    List<SessionEvent> rest = session.events().stream().filter(e -> !e.id().equals("e2")).toList();
    String again = SessionWriter.toJson(session.withEvents(rest));
    assertTrue(
        again.lines().anyMatch(l -> l.contains("\"e5\"") && l.contains("\"depth\": 2")), again);
  }

  @Test
  void aHandMadeFileNeedsNeitherIdNorSequenceNorHash() {
    String json =
        """
        {"format": "fadeline-session", "version": 1, "title": "By hand", "date": "2026-08-15",
         "zone": "Europe/London",
         "match": {"allIn": "2026-08-15T10:00", "allOut": "2026-08-15T15:00:00"},
         "lines": [{"id": "short"}],
         "events": [{"at": "2026-08-15T10:05", "line": "short", "kind": "cast"},
                    {"at": "2026-08-15T09:06:00.5Z", "line": "short", "kind": "landed"}]}
        """;
    ReadResult result = read(json);
    Session session = sessionOf(result);
    assertEquals(List.of(), result.report().problems());
    assertEquals(List.of("e1", "e2"), session.events().stream().map(SessionEvent::id).toList());
    assertEquals(Sessions.at("10:06:00.500"), session.events().get(1).at());
    assertEquals(session.document().id(), sessionOf(read(json)).document().id());
    assertEquals(0, session.document().sequence());
  }

  @Test
  void aNewerVersionOpensForReadingOnlyAndSaysWhy() {
    String json =
        SessionWriter.toJson(Sessions.small())
            .replace("\"version\": 1", "\"version\": 2")
            .replace("\"kind\": \"net\"", "\"kind\": \"drone\"");
    ReadResult result = read(json);
    assertTrue(result.readOnlyReason().orElseThrow().contains("newer version"));
    // The kind that this version does not know is left out, the rest shows.
    assertEquals(11, sessionOf(result).events().size());
  }

  @Test
  void theHashIsThatOfTheFileWithItsDigitsLeftOut() {
    String json = SessionWriter.toJson(Sessions.small());
    String digits = json.replaceFirst("(?s).*\"sha256\": \"([0-9a-f]{64})\".*", "$1");
    assertEquals(digits, SessionWriter.hashOf(json.replace(digits, "")));
    ReadResult changed = read(json.replace("2300.5", "2300.6"));
    assertTrue(listed(changed).contains("does not fit its hash"), listed(changed));
    assertTrue(changed.session().isPresent());
  }

  @Test
  void allProblemsOfAFileAreListedWithPlaceAndRemedy() {
    String json =
        """
        {"format": "fadeline-session", "version": 1, "zone": "Europe/London",
         "match": {"allIn": "2026-08-15T10:00", "allOut": "2026-08-15T09:00"},
         "lines": [{"id": "a", "depthM": "7"}, {"id": "a"}],
         "events": [
          {"at": "2026-10-25T01:30", "line": "a", "kind": "cast"},
          {"at": "2026-03-29T01:30", "line": "a", "kind": "cast"},
          {"at": "2026-08-15T10:00", "line": "a", "kind": "landed", "count": 3.9, "weightG": -1},
          {"at": "2026-08-15T10:00", "line": "a", "kind": "landed", "count": null, "weightG": 1e400},
          {"at": "0000-08-15T10:00", "line": "a", "kind": "eaten"}]}
        """;
    ReadResult result = read(json);
    assertTrue(result.session().isEmpty());
    String all = listed(result);
    for (String expected :
        List.of(
            "2:51: /match/allOut: all out does not come after all in",
            "3:34: /lines/0/depthM: a number is needed here, not the text \"7\"; take the quotes",
            "5:10: /events/0/at: 2026-10-25T01:30 came twice",
            "2026-10-25T01:30:00.000+01:00 or 2026-10-25T01:30:00.000+00:00",
            "/events/1/at: 2026-03-29T01:30 did not exist",
            "/events/2/count: 3.9 is not a whole number",
            "/events/2/weightG: -1 is outside 0 to 1000000",
            "/events/3/count: null is no value here",
            "/events/3/weightG: 1e400 is outside",
            "/events/4/at: the year 0 is outside 1900 to 2199",
            "/events/4/kind: \"eaten\" is no kind of event known here; write one of cast, bite")) {
      assertTrue(all.contains(expected), () -> expected + "\nnot in\n" + all);
    }
  }

  @Test
  void skippingBadEventsKeepsTheRest() {
    String json =
        SessionWriter.toJson(Sessions.small()).replace("\"kind\": \"net\"", "\"kind\": \"drone\"");
    assertTrue(read(json).session().isEmpty());
    ReadResult part = SessionReader.parse("x", json, ReadOptions.DEFAULT.withSkipBad(true));
    assertEquals(11, sessionOf(part).events().size());
    assertEquals(1, part.report().errors());
  }

  @Test
  void eachVersionStepIsAppliedInTurn() {
    Migrations steps =
        new Migrations(
            List.of(
                o -> Json.Obj.make().put("was", textOf(o, "is")).put("version", 2L),
                o -> Json.Obj.make().put("had been", textOf(o, "was")).put("version", 3L)));
    Json.Obj one = Json.Obj.make().put("is", "x").put("version", 1L);
    assertEquals(3, steps.current());
    assertEquals("{\"had been\":\"x\",\"version\":3}", JsonText.compact(steps.toCurrent(one, 1)));
  }

  private static String textOf(Json.Obj object, String name) {
    return object.members().get(name) instanceof Json.Text text ? text.value() : "";
  }
}
