package org.fadeline.io;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file whole or not at all: the old file stays until the new one is complete and on the
 * disk; a failed or cancelled write leaves nothing behind, nor does one in a program told to stop.
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
    UnfinishedFiles.begin(part);
    try {
      fill(part, file, content);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      UnfinishedFiles.end(part);
    }
  }

  private static void fill(Path part, Path file, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(part, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      Watched watched = new Watched(Channels.newOutputStream(channel));
      try (OutputStream out = new BufferedOutputStream(watched)) {
        content.writeTo(out);
        out.flush();
        channel.force(true);
      } catch (IOException | RuntimeException e) {
        // Libraries hide what the disk said behind errors of their own.
        if (watched.fault != null) {
          throw named(file, watched.fault);
        }
        throw e;
      }
    }
  }

  /** Keeps what the disk said when it refused. */
  private static final class Watched extends OutputStream {
    private final OutputStream out;
    private @Nullable IOException fault;

    Watched(OutputStream out) {
      this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
      write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      try {
        out.write(bytes, from, count);
      } catch (IOException e) {
        fault = e;
        throw e;
      }
    }
  }

  /** A full disk is told by the system without the name of what was being written. */
  private static IOException named(Path file, IOException fault) {
    FileSystemException named = new FileSystemException(file.toString(), null, fault.getMessage());
    named.initCause(fault);
    return named;
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
