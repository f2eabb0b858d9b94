package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.ImportReport;
import org.fadeline.io.SessionReader;
import org.fadeline.io.TalkReader;
import org.fadeline.io.TalkWriter;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files of every version there has been, as the program wrote them then: each reads for ever. The
 * same files of a version still to come are refused, or opened for looking at, in words.
 */
class GoldenFilesTest {
  private static final Path GOLDEN = Path.of("src/test/resources/org/fadeline/io/golden");

  @TempDir Path folder;

  private static String golden(String name) throws IOException {
    return Files.readString(GOLDEN.resolve(name));
  }

  private static String newer(String json) {
    String changed = json.replaceFirst("\"version\"\\s*:\\s*1", "\"version\": 2");
    assertFalse(changed.equals(json));
    return changed;
  }

  private static void saysWhatToDo(ImportReport report, String file) {
    assertEquals(1, report.problems().size(), report.problems().toString());
    String told = report.problems().get(0).toString();
    assertTrue(told.startsWith(file + ":"), told);
    assertTrue(told.contains("/version: "), told);
    assertTrue(told.contains("newer format 2"), told);
    assertTrue(told.contains("newer version of Fadeline"), told);
  }

  private Path document(String journal) throws IOException {
    Path file = folder.resolve("match.session.json");
    Files.copy(GOLDEN.resolve("version-1.session.json"), file);
    Files.writeString(folder.resolve("match.session.json.journal"), journal);
    return file;
  }

  @Test
  void aJournalOfVersionOneBringsItsEditsBack() throws IOException {
    Path file = document(golden("version-1.journal"));
    Session saved = SessionReader.read(file).session().orElseThrow();
    SessionStore.Opened opened = SessionStore.open(file, folder);
    assertEquals(5, opened.recovered().orElseThrow().edits());
    try (SessionStore store = opened.store().orElseThrow()) {
      Session session = store.session();
      assertEquals("Renamed", session.occasion().title());
      assertEquals(12, session.document().sequence());
      assertEquals(saved.events().size() + 2, session.events().size());
      SessionEvent move =
          session.events().stream().filter(e -> e.id().equals("j2")).findFirst().orElseThrow();
      assertEquals("resting", ((SessionEvent.Move) move).reason());
      assertEquals("Rename", store.undoName().orElseThrow());
    }
  }

  @Test
  void aJournalOfANewerVersionIsLeftAloneAndTheSessionOpensForReadingOnly() throws IOException {
    String[] lines = golden("version-1.journal").split("\n", 2);
    String header = newer(lines[0].substring(9));
    byte[] bytes = header.getBytes(StandardCharsets.UTF_8);
    String journal = JournalLine.checksum(bytes, 0, bytes.length) + " " + header + "\n" + lines[1];
    Path file = document(journal);
    byte[] before = Files.readAllBytes(file);
    try (SessionStore store = SessionStore.open(file, folder).store().orElseThrow()) {
      String reason = store.readOnlyReason().orElseThrow();
      assertTrue(reason.contains("newer version of Fadeline"), reason);
      assertEquals(7, store.session().document().sequence());
    }
    assertArrayEquals(before, Files.readAllBytes(file));
    assertEquals(journal, Files.readString(folder.resolve("match.session.json.journal")));
  }

  @Test
  void aSessionOfANewerVersionOpensForReadingOnlyAndStaysAsItIs() throws IOException {
    Path file = folder.resolve("match.session.json");
    Files.writeString(file, newer(golden("version-1.session.json")));
    byte[] before = Files.readAllBytes(file);
    SessionStore.Opened opened = SessionStore.open(file, folder);
    try (SessionStore store = opened.store().orElseThrow()) {
      String reason = store.readOnlyReason().orElseThrow();
      assertTrue(reason.contains("newer version of Fadeline"), reason);
    }
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void aTalkOfVersionOneReadsAndOneOfANewerVersionIsRefused() throws IOException {
    String json = golden("version-1.talk.json");
    Path home = Path.of("/golden");
    TalkReader.Loaded read = TalkReader.parse("old.talk.json", json, home);
    assertEquals(List.of(), read.report().problems());
    Talk talk = read.talk().orElseThrow();
    assertEquals(7, talk.slides().size());
    assertEquals(json, TalkWriter.toJson(talk, home));
    TalkReader.Loaded later = TalkReader.parse("new.talk.json", newer(json), home);
    assertTrue(later.talk().isEmpty());
    saysWhatToDo(later.report(), "new.talk.json");
  }

  @Test
  void aMappingOfVersionOneReadsAndOneOfANewerVersionIsRefused() throws IOException {
    String json = golden("version-1.mapping.json");
    CsvMapping.Loaded read = CsvMapping.parse("old.json", json);
    assertEquals(List.of(), read.report().problems());
    CsvMapping mapping = read.mapping().orElseThrow();
    assertEquals(EventKind.LANDED, mapping.events().get("bagged"));
    assertEquals(json, mapping.toJson());
    CsvMapping.Loaded later = CsvMapping.parse("new.json", newer(json));
    assertTrue(later.mapping().isEmpty());
    saysWhatToDo(later.report(), "new.json");
  }
}
