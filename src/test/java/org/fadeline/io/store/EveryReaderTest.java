package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.io.BadInput;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionReader;
import org.fadeline.io.TalkReader;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each bad input, whatever it was made for, put before every reader there is: under the name of a
 * session, a table, captions of both kinds, shorthand, a mapping, a talk and a journal. What is no
 * such file is refused with its place and a remedy, in bounded time, and stays as it was.
 */
class EveryReaderTest {
  private static final Duration LONG = Duration.ofSeconds(60);
  private static final ReadOptions OPTIONS =
      ReadOptions.of(LocalDate.of(2026, 8, 15), ZoneId.of("Europe/London"));

  @TempDir Path folder;

  /** What a reader said: whether it used the file, and its report. */
  private record Said(boolean used, ImportReport report) {}

  private interface Reader {
    Said read(Path file) throws IOException;
  }

  private static Said session(Path file) {
    ReadResult read = SessionFiles.read(file, OPTIONS);
    return new Said(read.session().isPresent(), read.report());
  }

  private static Map<String, Reader> readers() {
    Map<String, Reader> readers = new LinkedHashMap<>();
    for (String ending : List.of(".session.json", ".csv", ".vtt", ".srt", ".txt")) {
      readers.put(ending, EveryReaderTest::session);
    }
    readers.put(
        ".mapping.json",
        file -> {
          CsvMapping.Loaded read = CsvMapping.load(file);
          return new Said(read.mapping().isPresent(), read.report());
        });
    readers.put(
        ".talk.json",
        file -> {
          TalkReader.Loaded read = TalkReader.read(file);
          return new Said(read.talk().isPresent(), read.report());
        });
    return readers;
  }

  @Test
  void whateverItWasMadeForItEndsInAMessage() throws IOException {
    int readings = 0;
    int refused = 0;
    for (BadInput bad : BadInput.all()) {
      for (Map.Entry<String, Reader> reader : readers().entrySet()) {
        Path file = Files.write(folder.resolve("bad" + reader.getKey()), bad.bytes());
        String what = bad + " as " + reader.getKey();
        Said said = assertTimeoutPreemptively(LONG, () -> reader.getValue().read(file), () -> what);
        if (!said.used()) {
          assertTrue(said.report().hasErrors(), what);
          refused++;
        }
        for (Problem problem : said.report().problems()) {
          String text = problem.toString();
          assertEquals(file.getFileName().toString(), problem.file(), what);
          assertTrue(problem.row() >= 1 && problem.column() >= 1, what + ": " + text);
          assertFalse(problem.what().isBlank() || problem.whatToDo().isBlank(), what);
          assertFalse(text.contains("Exception"), what + ": " + text);
        }
        assertArrayEquals(bad.bytes(), Files.readAllBytes(file), what);
        Files.delete(file);
        readings++;
      }
    }
    assertTrue(refused > 9 * readings / 10, refused + " of " + readings);
  }

  @Test
  void asAJournalItIsKeptAsideAndTheSessionOpens() throws IOException {
    int opened = 0;
    for (BadInput bad : BadInput.all()) {
      Path home = Files.createDirectory(folder.resolve("home" + opened));
      Path file = Files.writeString(home.resolve("good.session.json"), BadInput.GOOD_JSON);
      Files.write(home.resolve("good.session.json.journal"), bad.bytes());
      Session saved = SessionReader.read(file).session().orElseThrow();
      List<Session> found = new ArrayList<>();
      assertTimeoutPreemptively(
          LONG,
          () -> {
            try (SessionStore store = SessionStore.open(file, home).store().orElseThrow()) {
              found.add(store.session());
              assertTrue(store.readOnlyReason().isEmpty(), bad.toString());
            }
          },
          bad::toString);
      assertEquals(List.of(saved), found, bad.toString());
      assertEquals(BadInput.GOOD_JSON, Files.readString(file), bad.toString());
      assertArrayEquals(
          bad.bytes(),
          Files.readAllBytes(home.resolve("good.session.json.journal.damaged")),
          bad.toString());
      opened++;
    }
    assertTrue(opened > 120, opened + " journals");
  }
}
