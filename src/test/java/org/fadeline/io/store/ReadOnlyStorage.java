package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The real disk, with one folder in which nothing can be written. */
record ReadOnlyStorage(Path folder) implements Storage {
  private static final Storage DISK = DiskStorage.DISK;

  private Path checked(Path file) throws IOException {
    if (folder.equals(file.getParent())) {
      throw new AccessDeniedException(file.toString());
    }
    return file;
  }

  @Override
  public Path resolve(Path file) {
    return file;
  }

  @Override
  public boolean isWritable(Path asked) {
    return !folder.equals(asked);
  }

  @Override
  public byte @Nullable [] read(Path file) throws IOException {
    return DISK.read(file);
  }

  @Override
  public byte[] read(Path file, long offset, int length) throws IOException {
    return DISK.read(file, offset, length);
  }

  @Override
  public Out create(Path file) throws IOException {
    return DISK.create(checked(file));
  }

  @Override
  public Out append(Path file) throws IOException {
    return DISK.append(checked(file));
  }

  @Override
  public void moveAtomically(Path from, Path to) throws IOException {
    DISK.moveAtomically(from, checked(to));
  }

  @Override
  public void delete(Path file) throws IOException {
    DISK.delete(checked(file));
  }

  @Override
  public List<Path> list(Path asked) throws IOException {
    return DISK.list(asked);
  }

  @Override
  public void createFolder(Path made) throws IOException {
    DISK.createFolder(made);
  }

  @Override
  public void forceFolder(Path forced) throws IOException {
    DISK.forceFolder(forced);
  }

  @Override
  public @Nullable Lock lock(Path file) throws IOException {
    return DISK.lock(checked(file));
  }
}
