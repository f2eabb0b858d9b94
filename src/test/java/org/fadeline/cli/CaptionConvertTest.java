package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Captions through the command line. */
class CaptionConvertTest {
  @TempDir
  @SuppressWarnings("NullAway.Init") // set before each test
  Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return Fadeline.run(
        console,
        session -> {
          throw new UnsupportedOperationException("no display in tests");
        },
        args);
  }

  private static boolean isMarked(SessionEvent event) {
    return String.valueOf(event.note()).matches("proposed, \\d{1,2}% sure: .*");
  }

  @Test
  void convertMakesASessionOfProposedEvents() throws IOException {
    Path in = folder.resolve("film.srt");
    Files.writeString(
        in,
        """
        1
        00:00:05,000 --> 00:00:07,000
        that's the all in

        2
        00:09:00,000 --> 00:09:04,000
        landed a carp on the short line, eight pound four
        """);
    Path file = folder.resolve("film.session.json");
    int exit =
        run(
            "convert",
            in.toString(),
            file.toString(),
            "--date",
            "2026-06-20",
            "--zone",
            "Europe/London");
    String told = err.toString(StandardCharsets.UTF_8);
    assertEquals(0, exit, told);
    assertTrue(told.contains("captions carry no clock"), told);
    Session session = SessionFiles.read(file, ReadOptions.DEFAULT).session().orElseThrow();
    assertEquals(2, session.events().size());
    assertTrue(session.events().stream().allMatch(CaptionConvertTest::isMarked));
    assertEquals(
        "2026-06-20T10:09",
        session.clock(session.events().get(1).at()).toLocalDateTime().toString());
  }

  private Session converted(Path in, String... correction) {
    Path file = folder.resolve("made.session.json");
    List<String> args = new ArrayList<>(List.of("convert", in.toString(), file.toString()));
    args.addAll(List.of("--date", "2026-06-20", "--zone", "Europe/London"));
    args.addAll(List.of(correction));
    err.reset();
    assertEquals(0, run(args.toArray(String[]::new)), err.toString(StandardCharsets.UTF_8));
    return SessionFiles.read(file, ReadOptions.DEFAULT).session().orElseThrow();
  }

  private static String clockOf(Session session, int event) {
    return session.clock(session.events().get(event).at()).toLocalTime().toString();
  }

  @Test
  void aWrongClockIsCorrectedAndTheCorrectionIsKept() throws IOException {
    Path captions = folder.resolve("film.vtt");
    Files.writeString(
        captions, "WEBVTT\n\n09:00.000 --> 09:04.000\nlanded a carp on the short line\n");
    Path shorthand = folder.resolve("sheet.txt");
    Files.writeString(shorthand, "10:00 all in\n11:42 short landed carp 8lb 4oz\n15:00 all out\n");
    Path table = folder.resolve("table.csv");
    Files.writeString(table, "time,event,line\n10:00,all-in,\n11:42,bite,short\n15:00,all-out,\n");
    assertEquals("10:09", clockOf(converted(captions), 0));
    assertEquals("11:07:20", clockOf(converted(captions, "--clock", "10:00=10:58:20"), 0));
    assertEquals("10:07:30", clockOf(converted(captions, "--offset", "-1:30"), 0));
    assertEquals("11:11:05", clockOf(converted(captions, "--offset", "1:02:05"), 0));
    assertEquals("10:10:30", clockOf(converted(captions, "--offset", "90s"), 0));
    for (Path file : List.of(shorthand, table)) {
      assertEquals(List.of(), converted(file).outcome().imports());
      Session session = converted(file, "--clock", "11:42=11:40:30");
      int event = session.events().size() == 3 ? 1 : 0;
      assertEquals("11:40:30", clockOf(session, event));
      assertEquals("09:58:30", session.clock(session.match().allIn()).toLocalTime().toString());
      assertEquals(
          List.of(new Outcome.Imported(String.valueOf(file.getFileName()), -90_000)),
          session.outcome().imports());
    }
    assertTrue(converted(shorthand).events().stream().allMatch(CaptionConvertTest::isMarked));
  }

  @Test
  void aCorrectionThatSaysNothingIsWrongUsage() throws IOException {
    Path in = folder.resolve("sheet.txt");
    Files.writeString(in, "10:00 all in\n");
    Path file = folder.resolve("made.session.json");
    for (List<String> correction :
        List.of(
            List.of("--offset", "soon"),
            List.of("--offset", "1:75"),
            List.of("--offset", "30 h"),
            List.of("--clock", "11:42"),
            List.of("--clock", "11:42=25:00"),
            List.of("--clock", "11:42=11:40", "--offset", "1:30"))) {
      List<String> args = new ArrayList<>(List.of("convert", in.toString(), file.toString()));
      args.addAll(correction);
      assertEquals(2, run(args.toArray(String[]::new)), correction.toString());
      assertFalse(Files.exists(file));
    }
  }

  @Test
  void badShorthandIsRefusedWithItsPlace() throws IOException {
    Path in = folder.resolve("sheet.txt");
    Files.writeString(in, "10:00 all in\n10:51 short landed carp 8.4\n");
    Path file = folder.resolve("made.session.json");
    assertEquals(1, run("convert", in.toString(), file.toString()));
    String told = err.toString(StandardCharsets.UTF_8);
    assertTrue(told.contains("sheet.txt:2:25: weight_g: "), told);
    assertFalse(Files.exists(file));
  }

  @Test
  void badCaptionsEndInAMessageAndNoFile() throws IOException {
    for (String text : List.of("", "WEBVT\n", "WEBVTT\n\nNOTE never ended", "{}")) {
      Path in = folder.resolve("bad.vtt");
      Files.writeString(in, text);
      Path file = folder.resolve("bad.session.json");
      err.reset();
      assertEquals(1, run("convert", in.toString(), file.toString()));
      String told = err.toString(StandardCharsets.UTF_8);
      assertTrue(told.contains("bad.vtt:1:1: "), told);
      assertFalse(told.contains("Exception"), told);
      assertFalse(Files.exists(file));
    }
  }
}
