package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
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

  /** Writes a file without end, and says when it has begun. */
  static final class Endless {
    private Endless() {}

    /** Takes the file. */
    public static void main(String[] args) throws IOException {
      WholeFile.write(
          Path.of(args[0]),
          out -> {
            out.write(new byte[100_000]);
            System.out.println("begun");
            while (true) {
              out.write(1);
            }
          });
    }
  }

  /** Begins something that must be finished and is told to stop amid it. */
  static final class Exchange {
    /** Writes two files one after the other. */
    @SuppressWarnings("SystemOut")
    public static void main(String[] args) throws IOException {
      UnfinishedFiles.undisturbed(
          () -> {
            Files.writeString(Path.of(args[0]), "first");
            System.out.println("begun");
            LockSupport.parkNanos(500_000_000L);
            Files.writeString(Path.of(args[0] + ".2"), "second");
          });
    }
  }

  @Test
  void aProgramToldToStopTakesAwayWhatItHadBegun() throws Exception {
    toldToStop(Endless.class);
    assertEquals(List.of(), files());
  }

  @Test
  void aProgramToldToStopFinishesWhatMustNotBeHalfDone() throws Exception {
    toldToStop(Exchange.class);
    assertEquals(2, files().size());
  }

  private void toldToStop(Class<?> program) throws Exception {
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                program.getName(),
                folder.resolve("d.txt").toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(child.getInputStream(), StandardCharsets.US_ASCII))) {
      assertEquals("begun", out.readLine());
      assertEquals(1, files().size());
      child.destroy();
      assertTrue(child.waitFor(30, TimeUnit.SECONDS));
    } finally {
      child.destroyForcibly();
    }
  }
}
