package org.fadeline.io;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * The disk as it is, but that it takes no more than so many bytes: then it is full. Or one that
 * refuses some of the moves asked of it, as where another program has a file open.
 */
public final class FullDisk extends FileSystem {
  private final FileSystem disk;
  private final Provider provider;
  private long room;
  private long written;
  private IntPredicate refused = move -> false;
  private boolean knowsLinks = true;
  private int moves;

  private FullDisk(Path folder, long room) {
    this.disk = folder.getFileSystem();
    this.room = room;
    this.provider = new Provider();
  }

  /** Returns a folder as it is on a disk with room for some bytes more. */
  public static Path folder(Path folder, long room) {
    return new FullDisk(folder, room).wrap(folder);
  }

  /**
   * Returns a folder as it is on a disk that refuses some moves.
   *
   * @param refused by how many moves came before
   * @param knowsLinks whether a file can have a second name
   */
  public static Path refusing(Path folder, IntPredicate refused, boolean knowsLinks) {
    FullDisk disk = new FullDisk(folder, Long.MAX_VALUE);
    disk.refused = refused;
    disk.knowsLinks = knowsLinks;
    return disk.wrap(folder);
  }

  /** Returns how many bytes the disk of a path took. */
  public static long written(Path path) {
    return ((FullDisk) path.getFileSystem()).written;
  }

  private Path wrap(Path path) {
    return (Path)
        Proxy.newProxyInstance(
            FullDisk.class.getClassLoader(),
            new Class<?>[] {Path.class, Wrapped.class},
            (proxy, method, arguments) -> {
              if (method.getName().equals("getFileSystem")) {
                return this;
              }
              if (method.getName().equals("unwrapped")) {
                return path;
              }
              Object[] plain = arguments == null ? new Object[0] : arguments.clone();
              for (int i = 0; i < plain.length; i++) {
                plain[i] = plain[i] instanceof Wrapped w ? w.unwrapped() : plain[i];
              }
              try {
                Object answer = method.invoke(path, plain);
                return answer instanceof Path other ? wrap(other) : answer;
              } catch (InvocationTargetException e) {
                throw e.getCause();
              }
            });
  }

  /** A path with the one it stands for. */
  private interface Wrapped {
    Path unwrapped();
  }

  private static Path plain(Path path) {
    return path instanceof Wrapped wrapped ? wrapped.unwrapped() : path;
  }

  @Override
  public FileSystemProvider provider() {
    return provider;
  }

  @Override
  public void close() {}

  @Override
  public boolean isOpen() {
    return true;
  }

  @Override
  public boolean isReadOnly() {
    return false;
  }

  @Override
  public String getSeparator() {
    return disk.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    return disk.getRootDirectories();
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return disk.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return disk.supportedFileAttributeViews();
  }

  @Override
  public Path getPath(String first, String... more) {
    return wrap(disk.getPath(first, more));
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    return disk.getPathMatcher(pattern);
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return disk.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() throws IOException {
    return disk.newWatchService();
  }

  private final class Provider extends FileSystemProvider {
    private final FileSystemProvider real = disk.provider();

    @Override
    public String getScheme() {
      return "full";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> env) {
      throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
      return FullDisk.this;
    }

    @Override
    public Path getPath(URI uri) {
      return wrap(real.getPath(uri));
    }

    @Override
    public SeekableByteChannel newByteChannel(
        Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
        throws IOException {
      return newFileChannel(path, options, attributes);
    }

    @Override
    public FileChannel newFileChannel(
        Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
        throws IOException {
      return new Channel(real.newFileChannel(plain(path), options, attributes));
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(
        Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
      DirectoryStream<Path> stream = real.newDirectoryStream(plain(folder), filter);
      return new DirectoryStream<>() {
        @Override
        public Iterator<Path> iterator() {
          Iterator<Path> each = stream.iterator();
          return new Iterator<>() {
            @Override
            public boolean hasNext() {
              return each.hasNext();
            }

            @Override
            public Path next() {
              return wrap(each.next());
            }
          };
        }

        @Override
        public void close() throws IOException {
          stream.close();
        }
      };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
      real.createDirectory(plain(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
      real.delete(plain(path));
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) throws IOException {
      real.copy(plain(source), plain(target), options);
    }

    @Override
    public void createLink(Path link, Path existing) throws IOException {
      if (!knowsLinks) {
        throw new UnsupportedOperationException();
      }
      real.createLink(plain(link), plain(existing));
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
      if (refused.test(moves++)) {
        throw new AccessDeniedException(target.toString(), null, "in use by another program");
      }
      real.move(plain(source), plain(target), options);
    }

    @Override
    public boolean isSameFile(Path path, Path other) throws IOException {
      return real.isSameFile(plain(path), plain(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
      return real.isHidden(plain(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
      return real.getFileStore(plain(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
      real.checkAccess(plain(path), modes);
    }

    @Override
    public <V extends FileAttributeView> @Nullable V getFileAttributeView(
        Path path, Class<V> type, LinkOption... options) {
      return real.getFileAttributeView(plain(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(
        Path path, Class<A> type, LinkOption... options) throws IOException {
      return real.readAttributes(plain(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... options)
        throws IOException {
      return real.readAttributes(plain(path), names, options);
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... options)
        throws IOException {
      real.setAttribute(plain(path), name, value, options);
    }
  }

  /** A channel that takes bytes while there is room. */
  private final class Channel extends FileChannel {
    private final FileChannel real;

    Channel(FileChannel real) {
      this.real = real;
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
      if (from.remaining() > room) {
        throw new IOException("No space left on device");
      }
      int taken = real.write(from);
      room -= taken;
      written += taken;
      return taken;
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) {
      throw new UnsupportedOperationException();
    }

    @Override
    public int write(ByteBuffer from, long position) {
      throw new UnsupportedOperationException();
    }

    @Override
    public int read(ByteBuffer to) throws IOException {
      return real.read(to);
    }

    @Override
    public long read(ByteBuffer[] to, int offset, int length) throws IOException {
      return real.read(to, offset, length);
    }

    @Override
    public int read(ByteBuffer to, long position) throws IOException {
      return real.read(to, position);
    }

    @Override
    public long position() throws IOException {
      return real.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
      real.position(position);
      return this;
    }

    @Override
    public long size() throws IOException {
      return real.size();
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
      real.truncate(size);
      return this;
    }

    @Override
    public void force(boolean metadata) throws IOException {
      real.force(metadata);
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target)
        throws IOException {
      return real.transferTo(position, count, target);
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) {
      throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
      throw new UnsupportedOperationException();
    }

    @Override
    public @Nullable FileLock lock(long position, long size, boolean shared) throws IOException {
      return real.lock(position, size, shared);
    }

    @Override
    public @Nullable FileLock tryLock(long position, long size, boolean shared) throws IOException {
      return real.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
      real.close();
    }
  }
}
