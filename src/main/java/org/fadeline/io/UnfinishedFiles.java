package org.fadeline.io;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Files and folders that are being written under a passing name: where the program is told to stop
 * meanwhile, they are taken away before it ends. Nothing can be done where it is killed outright.
 */
public final class UnfinishedFiles {
  private static final Set<Path> PATHS = ConcurrentHashMap.newKeySet();

  /** A writer may put one more file into a folder while it is being emptied. */
  private static final int TRIES = 20;

  static {
    try {
      Runtime.getRuntime()
          .addShutdownHook(new Thread(UnfinishedFiles::removeAll, "unfinished files"));
    } catch (IllegalStateException e) {
      // The program is ending already.
    }
  }

  private UnfinishedFiles() {}

  /** Notes a file or folder that is about to be written. */
  public static void begin(Path path) {
    PATHS.add(path);
  }

  /** Work on files. */
  @FunctionalInterface
  public interface Work {
    /** Does it. */
    void run() throws IOException;
  }

  /**
   * Does something that, once begun, is finished before the program ends, though it is told to
   * stop: a few moves of files, never anything long.
   */
  public static void undisturbed(Work work) throws IOException {
    synchronized (PATHS) {
      work.run();
    }
  }

  /**
   * Takes away what is left of a file, or of a folder of files, and forgets it.
   *
   * @throws IOException if it cannot be taken away
   */
  public static void end(Path path) throws IOException {
    try {
      remove(path);
    } finally {
      PATHS.remove(path);
    }
  }

  private static void remove(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      try (var files = Files.list(path)) {
        for (Path file : files.toList()) {
          Files.deleteIfExists(file);
        }
      }
    }
    Files.deleteIfExists(path);
  }

  private static void removeAll() {
    synchronized (PATHS) {
      removeEach();
    }
  }

  private static void removeEach() {
    for (Path path : PATHS) {
      for (int i = 0; i < TRIES; i++) {
        try {
          remove(path);
          break;
        } catch (DirectoryNotEmptyException e) {
          // Once more: the folder has a new file.
        } catch (IOException e) {
          // A disk that refuses now will not be asked twice: the program has to end.
          break;
        }
      }
    }
  }
}
