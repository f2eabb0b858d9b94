package org.fadeline.index;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Tells which session files of a folder change while it is open; reads none of them. */
public final class FolderWatch implements AutoCloseable {
  private final WatchService service = FileSystems.getDefault().newWatchService();
  private final Map<WatchKey, Path> watched = new HashMap<>();
  private final Consumer<Path> changed;

  /**
   * Begins to watch.
   *
   * @param folder watched with the folders in it
   * @param changed is told each file made, changed or taken away, on a thread of the watch; one
   *     file may be told several times
   * @throws IOException if the folder cannot be watched
   */
  public FolderWatch(Path folder, Consumer<Path> changed) throws IOException {
    this.changed = changed;
    List<Path> folders;
    try (Stream<Path> found = Files.walk(folder, SeasonIndex.DEPTH)) {
      folders = found.filter(Files::isDirectory).toList();
    } catch (java.io.UncheckedIOException e) {
      service.close();
      throw new IOException(e.getMessage(), e);
    }
    for (Path one : folders) {
      watch(one);
    }
    Thread thread = new Thread(this::follow, "season watch");
    thread.setDaemon(true);
    thread.start();
  }

  private void watch(Path folder) throws IOException {
    WatchKey key =
        folder.register(
            service,
            StandardWatchEventKinds.ENTRY_CREATE,
            StandardWatchEventKinds.ENTRY_MODIFY,
            StandardWatchEventKinds.ENTRY_DELETE);
    watched.put(key, folder);
  }

  private void follow() {
    try {
      while (true) {
        WatchKey key = service.take();
        Path folder = watched.get(key);
        for (WatchEvent<?> event : key.pollEvents()) {
          if (folder != null && event.context() instanceof Path name) {
            tell(folder.resolve(name));
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
