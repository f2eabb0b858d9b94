package org.fadeline.export;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;
import org.fadeline.io.UnfinishedFiles;

/** Writes a folder of files whole or not at all. */
final class WholeFolder {
  private WholeFolder() {}

  /** What is to be written. */
  @FunctionalInterface
  interface Content {
    /** Writes every file into a folder; an exception, of whatever kind, abandons them all. */
    void writeTo(Path part) throws IOException;
  }

  /**
   * Writes a folder.
   *
   * @param folder must not exist, or be empty
   * @throws IOException if it cannot be written or holds files; nothing is then left behind
   */
  static void write(Path folder, Content content) throws IOException {
    Path parent = folder.toAbsolutePath().getParent();
    if (parent == null) {
      throw new IOException("not a folder that can be written: " + folder);
    }
    Files.createDirectories(parent);
    // Not a temporary folder of the JDK's making: that would be open to its owner alone.
    Path part = Files.createDirectory(parent.resolve(".fadeline-" + UUID.randomUUID()));
    UnfinishedFiles.begin(part);
    try {
      content.writeTo(part);
      moveInto(part, folder);
    } catch (FileSystemException e) {
      throw named(part, folder, e);
    } finally {
      UnfinishedFiles.end(part);
    }
  }

  /**
   * Writes files into a folder that may hold others: once all are there, those of the same names
   * are replaced, all of them or none.
   *
   * @param folder made where it is missing
   * @throws IOException if a file cannot be written or replaced; none of them is then left behind,
   *     and what was there before is there again
   */
  static void into(Path folder, Content content) throws IOException {
    if (!Files.isDirectory(folder)) {
      write(folder, content);
      return;
    }
    Path part = Files.createDirectory(folder.resolve(".fadeline-" + UUID.randomUUID()));
    UnfinishedFiles.begin(part);
    try {
      content.writeTo(part);
      // A program told to stop ends before all this or after it.
      UnfinishedFiles.undisturbed(() -> FileExchange.of(part, folder));
    } catch (FileSystemException e) {
      throw named(part, folder, e);
    } finally {
      UnfinishedFiles.end(part);
    }
  }

  /** Names the folder that was meant in the place of the one that was written into. */
  private static IOException named(Path part, Path folder, FileSystemException fault) {
    String file = fault.getFile();
    if (file == null || !file.startsWith(part.toString())) {
      return fault;
    }
    FileSystemException named =
        new FileSystemException(
            folder + file.substring(part.toString().length()), null, fault.getReason());
    named.initCause(fault);
    return named;
  }

  private static void moveInto(Path part, Path folder) throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new FileAlreadyExistsException(
          folder.toString(), null, "a file of that name is in the way; choose a new folder");
    }
    boolean wasThere = true;
    try {
      Files.delete(folder);
    } catch (NoSuchFileException e) {
      wasThere = false;
    } catch (DirectoryNotEmptyException e) {
      throw new IOException(folder + ": the folder holds files; choose a new or empty one", e);
    }
    try {
      Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      if (wasThere) {
        Files.createDirectory(folder);
      }
      throw e;
    }
  }
}
