package org.fadeline.io;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all: the old file stays until the new one is complete and on the
 * disk; a failed or cancelled write leaves nothing behind.
 */
public final class WholeFile {
  private WholeFile() {}

  /** What is to be written. */
  @FunctionalInterface
  public interface Content {
    /** Writes everything; an exception, of whatever kind, abandons the file. */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a file, making its folder where it is missing.
   *
   * @throws IOException if it cannot be written; an old file is then still there, unchanged
   */
  public static void write(Path file, Content content) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException("not a file that can be written: " + file);
    }
    Files.createDirectories(folder);
    // Not a temporary file of the JDK's making: that would be readable by its owner alone.
    Path part = folder.resolve(".fadeline-" + UUID.randomUUID() + ".part");
    try {
      try (FileChannel channel =
              FileChannel.open(part, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
          OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
        content.writeTo(out);
        out.flush();
        channel.force(true);
      }
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * Writes text as UTF-8.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(Path file, String text) throws IOException {
    write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
