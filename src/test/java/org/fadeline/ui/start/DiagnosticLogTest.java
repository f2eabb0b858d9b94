package org.fadeline.ui.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log names failures, and is never in the way where it cannot be written. */
class DiagnosticLogTest {
  @TempDir private Path folder;

  @Test
  void notesStartsAndFailuresWithWhereTheyCameFrom() throws Exception {
    try (DiagnosticLog log = new DiagnosticLog(folder.resolve("log"))) {
      log.started();
      log.reached("window shown");
      log.failed(new IllegalStateException("upside down"));
    }
    List<Path> files;
    try (Stream<Path> found = Files.list(folder.resolve("log"))) {
      files = found.toList();
    }
    assertEquals(1, files.size(), "closed: its lock is gone: " + files);
    String text = Files.readString(files.get(0));
    assertTrue(text.contains("started Fadeline"), text);
    assertTrue(text.contains("IllegalStateException: upside down"), text);
    assertTrue(text.contains("DiagnosticLogTest"), text);
  }

  @Test
  void aFolderThatCannotBeMadeOnlyCostsTheLog() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "in the way");
    try (DiagnosticLog log = new DiagnosticLog(file.resolve("log"))) {
      log.started();
      log.failed(new IllegalStateException());
    }
    assertEquals("in the way", Files.readString(file));
  }
}
