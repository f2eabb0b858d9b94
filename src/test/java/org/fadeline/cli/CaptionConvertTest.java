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
import java.util.List;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.notes.SpokenNotes;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
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
    assertTrue(session.events().stream().allMatch(SpokenNotes::isProposed));
    assertEquals(
        "2026-06-20T10:09",
        session.clock(session.events().get(1).at()).toLocalDateTime().toString());
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
