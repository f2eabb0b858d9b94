package org.fadeline.index;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Tells which session files of a folder change while it is open; reads none of them. */
public final class FolderWatch implements AutoCloseable {
  private final WatchService service = FileSystems.getDefault().newWatchService();
  private final Map<WatchKey, Path> watched = new HashMap<>();
  private final Consumer<Path> changed;

  /**
   * Begins to watch.
   *
   * @param folder watched with the folders in it
   * @param changed is told each file made, changed or taken away, and each folder brought in or in
   *     which too much happened to say what, on a thread of the watch; one may be told several
   *     times
   * @throws IOException if the folder cannot be watched
   */
  public FolderWatch(Path folder, Consumer<Path> changed) throws IOException {
    this.changed = changed;
    try {
      watch(folder);
    } catch (IOException e) {
      service.close();
      throw e;
    }
    Thread thread = new Thread(this::follow, "season watch");
    thread.setDaemon(true);
    thread.start();
  }

  /** Watches a folder with those in it, as far as {@link SeasonIndex} reads them. */
  private void watch(Path root) throws IOException {
    Files.walkFileTree(
        root,
        EnumSet.of(FileVisitOption.FOLLOW_LINKS),
        SeasonIndex.DEPTH,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes)
              throws IOException {
            WatchKey key =
                folder.register(
                    service,
                    StandardWatchEventKinds.ENTRY_CREATE,
                    StandardWatchEventKinds.ENTRY_MODIFY,
                    StandardWatchEventKinds.ENTRY_DELETE);
            watched.put(key, folder);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
            if (file.equals(root)) {
              throw e;
            }
            // What cannot be looked at is listed by the reading; the rest is watched.
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private void follow() {
    try {
      while (true) {
        WatchKey key = service.take();
        Path folder = watched.get(key);
        for (WatchEvent<?> event : key.pollEvents()) {
          if (folder != null && event.context() instanceof Path name) {
            tell(folder.resolve(name));
          } else if (folder != null) {
            // Too much happened at once for the system to say what.
            changed.accept(folder);
          }
        }
        key.reset();
      }
    } catch (InterruptedException | ClosedWatchServiceException closed) {
      Thread.currentThread().interrupt();
    }
  }

  private void tell(Path path) {
    if (Files.isDirectory(path)) {
      try {
        watch(path);
      } catch (IOException gone) {
        // Taken away again at once: nothing to watch.
        return;
      }
      changed.accept(path);
    } else if (SeasonIndex.isSession(path)) {
      changed.accept(path);
    }
  }

  @Override
  public void close() throws IOException {
    service.close();
  }
}
