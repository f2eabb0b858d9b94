package org.fadeline.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Clears up after a benchmark that works in a folder of its own. */
public final class TemporaryFolder {
  private TemporaryFolder() {}

  /** Removes a folder with all that is in it. */
  public static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
