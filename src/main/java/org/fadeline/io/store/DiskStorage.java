package org.fadeline.io.store;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.fadeline.io.FileText;
import org.fadeline.io.Refused;
import org.jspecify.annotations.Nullable;

/** The machine's disk. */
final class DiskStorage implements Storage {
  static final DiskStorage DISK = new DiskStorage();

  private static final int TRIES = 6;

  /** Journals keep every undo step, so they may be larger than a document. */
  private static final long LARGEST = 512L << 20;

  private DiskStorage() {}

  @Override
  public Path resolve(Path file) throws IOException {
    return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize();
  }

  @Override
  public boolean isWritable(Path folder) {
    return Files.isDirectory(folder) && Files.isWritable(folder);
  }

  @Override
  public byte @Nullable [] read(Path file) throws IOException {
    try {
      return FileText.bytes(file, LARGEST);
    } catch (Refused refused) {
      if (!Files.exists(file)) {
        return null;
      }
      throw new IOException(refused.what());
    }
  }

  @Override
  public byte[] read(Path file, long offset, int length) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      ByteBuffer bytes = ByteBuffer.allocate(length);
      while (bytes.hasRemaining()) {
        if (channel.read(bytes, offset + bytes.position()) < 0) {
          throw new IOException("the file is shorter than it was");
        }
      }
      return bytes.array();
    }
  }

  @Override
  public Out create(Path file) throws IOException {
    return new ChannelOut(
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.TRUNCATE_EXISTING));
  }

  @Override
  public Out append(Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
    channel.position(channel.size());
    return new ChannelOut(channel);
  }

  @Override
  public void moveAtomically(Path from, Path to) throws IOException {
    // A virus scanner or indexer may hold the target for a moment on Windows.
    for (int i = 1; ; i++) {
      try {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return;
      } catch (AccessDeniedException e) {
        if (i == TRIES) {
          throw e;
        }
        pause(10L << i);
      }
    }
  }

  private static void pause(long millis) throws IOException {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      InterruptedIOException stopped = new InterruptedIOException("interrupted while waiting");
      stopped.initCause(e);
      throw stopped;
    }
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  @Override
  public List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (NoSuchFileException e) {
      return List.of();
    }
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    Files.createDirectories(folder);
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    FileChannel channel;
    try {
      channel = FileChannel.open(folder, StandardOpenOption.READ);
    } catch (IOException windows) {
      // Windows opens no folder; its file system keeps the order of renames itself.
      return;
    }
    try (channel) {
      channel.force(true);
    }
  }

  @Override
  public @Nullable Lock lock(Path file) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = tryLock(channel);
      if (lock == null) {
        channel.close();
        return null;
      }
      // The holder before may have removed the file between opening and locking.
      if (Files.exists(file)) {
        return () -> {
          try (channel) {
            Files.deleteIfExists(file);
            lock.release();
          }
        };
      }
      channel.close();
    }
    return null;
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException held) {
      return null; // by this very program
    } catch (IOException noLocks) {
      channel.close();
      throw noLocks;
    }
  }

  private record ChannelOut(FileChannel channel) implements Out {
    @Override
    public void write(byte[] bytes) throws IOException {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
    }

    @Override
    public void truncate(long length) throws IOException {
      channel.truncate(length);
      channel.position(length);
    }

    @Override
    public void force(boolean metadata) throws IOException {
      channel.force(metadata);
    }

    @Override
    public void close() throws IOException {
      channel.close();
    }
  }
}
