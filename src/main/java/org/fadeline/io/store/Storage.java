package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the record's keeping asks of a disk. The real one is {@link DiskStorage}; tests put one in
 * its place that loses what was not forced, or fails at a chosen call.
 */
interface Storage {
  /** Returns the file itself where the name is a link to it. */
  Path resolve(Path file) throws IOException;

  /** Returns whether files can be made in a folder. */
  boolean isWritable(Path folder);

  /** Returns the bytes of a plain file, or null where there is none. */
  byte @Nullable [] read(Path file) throws IOException;

  /** Returns {@code length} bytes from {@code offset}. */
  byte[] read(Path file, long offset, int length) throws IOException;

  /** Starts a file anew, empty. */
  Out create(Path file) throws IOException;

  /** Opens a file to write at its end. */
  Out append(Path file) throws IOException;

  /** Puts a file in the place of another in one step. */
  void moveAtomically(Path from, Path to) throws IOException;

  /** Removes a file where there is one. */
  void delete(Path file) throws IOException;

  /** Returns the files of a folder by name, none where there is no such folder. */
  List<Path> list(Path folder) throws IOException;

  /** Makes a folder where there is none. */
  void createFolder(Path folder) throws IOException;

  /** Forces the names of a folder to the disk, where the system can. */
  void forceFolder(Path folder) throws IOException;

  /** Takes the lock of a file, or returns null where somebody else holds it. */
  @Nullable Lock lock(Path file) throws IOException;

  /** An open file. */
  interface Out extends AutoCloseable {
    /** Writes all bytes at the end. */
    void write(byte[] bytes) throws IOException;

    /** Cuts the file to a length. */
    void truncate(long length) throws IOException;

    /** Forces what was written to the disk; with {@code metadata} the file's own data too. */
    void force(boolean metadata) throws IOException;

    @Override
    void close() throws IOException;
  }

  /** A lock held. */
  interface Lock extends AutoCloseable {
    @Override
    void close() throws IOException;
  }
}
