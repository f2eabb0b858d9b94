package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir Path folder;

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  @Test
  void aFailedWriteLeavesTheOldFileAndNothingElse() throws IOException {
    Path file = folder.resolve("a.txt");
    WholeFile.write(file, "old");
    assertThrows(
        IOException.class,
        () ->
            WholeFile.write(
                file,
                out -> {
                  out.write(1);
                  throw new IOException("disk full");
                }));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of(file), files());
  }

  @Test
  void aWriteThatThrowsAnythingLeavesNothing() throws IOException {
    assertThrows(
        IllegalStateException.class,
        () ->
            WholeFile.write(
                folder.resolve("b.txt"),
                out -> {
                  throw new IllegalStateException("cancelled");
                }));
    assertEquals(List.of(), files());
  }

  @Test
  void missingFoldersAreMade() throws IOException {
    Path file = folder.resolve("x/y/c.txt");
    WholeFile.write(file, "new");
    assertEquals("new", Files.readString(file));
  }
}
