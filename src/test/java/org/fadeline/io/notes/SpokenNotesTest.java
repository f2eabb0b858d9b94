package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpokenNotesTest {
  private static final String VTT =
      """
      WEBVTT

      00:00:05.000 --> 00:00:07.000
      that's the all in

      00:01:00.000 --> 00:01:03.000
      first put in on the short line

      00:04:30.500 --> 00:04:33.000
      landed a carp, about four pound

      00:05:00.000 --> 00:05:02.000
      lovely morning this

      00:10:00.000 --> 00:10:04.000
      moving to the shallow, fed it three pouches

      00:12:00.000 --> 00:12:03.000
      another one, three pound eight

      00:15:00.000 --> 00:15:03.000
      landed one two minutes ago, two pound

      05:00:05.000 --> 05:00:07.000
      all out
      """;

  @TempDir
  @SuppressWarnings("NullAway.Init") // set before each test
  Path folder;

  private Session session() throws IOException {
    Path file = folder.resolve("film.vtt");
    Files.writeString(file, VTT);
    ReadResult result =
        SessionFiles.read(
            file, ReadOptions.of(LocalDate.of(2026, 6, 20), ZoneId.of("Europe/London")));
    assertFalse(result.report().hasErrors());
    assertTrue(result.report().problems().get(0).what().contains("captions carry no clock"));
    return result.session().orElseThrow();
  }

  @Test
  void captionsBecomeAMarkedSessionOfProposedEvents() throws IOException {
    Session session = session();
    assertEquals(
        List.of(
            EventKind.ALL_IN,
            EventKind.CAST,
            EventKind.LANDED,
            EventKind.MOVE,
            EventKind.FED,
            EventKind.LANDED,
            EventKind.LANDED,
            EventKind.ALL_OUT),
        session.events().stream().map(SessionEvent::kind).toList());
    assertTrue(
        session.events().stream().allMatch(e -> String.valueOf(e.note()).startsWith("proposed, ")));
    assertEquals(
        "proposed, 72% sure: landed a carp, about four pound", session.events().get(2).note());
    assertEquals(Instant.parse("2026-06-20T09:00:05Z").toEpochMilli(), session.match().allIn());
    assertEquals(Instant.parse("2026-06-20T14:00:05Z").toEpochMilli(), session.match().allOut());
    assertEquals(
        Instant.parse("2026-06-20T09:04:30.500Z").toEpochMilli(), session.events().get(2).at());
  }

  @Test
  void aLineIsCarriedToTheNotesAfterIt() throws IOException {
    List<SessionEvent> events = session().events();
    assertEquals("short", events.get(2).lineId());
    assertEquals("short", events.get(3).lineId(), "the line that was left");
    assertEquals("shallow", events.get(5).lineId());
    assertEquals(List.of("short", "shallow"), session().lines().stream().map(Line::id).toList());
  }

  @Test
  void twoMinutesAgoIsTwoMinutesBack() throws IOException {
    SessionEvent event = session().events().get(6);
    assertEquals(Instant.parse("2026-06-20T09:13:00Z").toEpochMilli(), event.at());
  }

  @Test
  void theSessionIsWrittenAndReadBack() throws IOException {
    Session session = session();
    ReadResult back = SessionReader.parse("x", SessionWriter.toJson(session), ReadOptions.DEFAULT);
    assertEquals(session, back.session().orElseThrow());
  }

  @Test
  void captionsWithoutNotesOfAMatchGiveNoEventAndSaySo() throws IOException {
    Path file = folder.resolve("film.srt");
    Files.writeString(file, "1\n00:00:01,000 --> 00:00:02,000\nhello there\n");
    ReadResult result = SessionFiles.read(file, ReadOptions.DEFAULT);
    assertEquals(List.of(), result.session().orElseThrow().events());
    assertTrue(result.report().problems().stream().anyMatch(p -> p.what().contains("no note")));
  }
}
