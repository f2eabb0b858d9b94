package org.fadeline.export;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * Puts the files of one folder into another, over those of the same names, all of them or none.
 *
 * <p>What is to be replaced is kept aside first and put back where a later file is refused. Each
 * name holds a whole file all the while, the old one or the new; only a computer that loses its
 * power within these moments leaves some of each, with the old ones in a folder beside them.
 */
final class FileExchange {
  private final Path from;
  private final Path to;
  private final Path aside;
  private final List<Path> done = new ArrayList<>();

  private FileExchange(Path from, Path to) {
    this.from = from;
    this.to = to;
    this.aside = to.resolve(".fadeline-before-" + UUID.randomUUID());
  }

  /**
   * Moves every file.
   *
   * @param to on the same disk
   * @throws IOException if a file cannot be moved; the second folder is then as it was
   */
  static void of(Path from, Path to) throws IOException {
    new FileExchange(from, to).run();
  }

  private void run() throws IOException {
    List<Path> names;
    try (var files = Files.list(from)) {
      names = files.map(Path::getFileName).sorted().toList();
    }
    Files.createDirectory(aside);
    try {
      for (Path name : names) {
        keep(name);
      }
      for (Path name : names) {
        replace(from.resolve(name), to.resolve(name));
        done.add(name);
      }
    } catch (IOException e) {
      putBack(e);
      throw e;
    }
    removeAside();
  }

  private void keep(Path name) throws IOException {
    Path old = to.resolve(name);
    if (Files.isDirectory(old)) {
      throw new FileSystemException(
          old.toString(), null, "a folder of that name is in the way; choose another folder");
    }
    if (!Files.exists(old)) {
      return;
    }
    try {
      Files.createLink(aside.resolve(name), old);
    } catch (UnsupportedOperationException | FileSystemException e) {
      // Not every disk knows second names of one file.
      Files.copy(old, aside.resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
    }
  }

  private void putBack(IOException why) throws IOException {
    try {
      for (Path name : done) {
        Path old = aside.resolve(name);
        if (Files.exists(old)) {
          replace(old, to.resolve(name));
        } else {
          Files.delete(to.resolve(name));
        }
      }
      removeAside();
    } catch (IOException e) {
      FileSystemException told =
          new FileSystemException(
              to.toString(),
              null,
              "some files were replaced and could not be put back; the old ones are in " + aside);
      told.initCause(why);
      told.addSuppressed(e);
      throw told;
    }
  }

  private static void replace(Path file, Path target) throws IOException {
    Files.move(file, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private void removeAside() throws IOException {
    try (var files = Files.list(aside)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(aside);
  }
}
