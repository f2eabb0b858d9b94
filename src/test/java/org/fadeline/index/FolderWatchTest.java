package org.fadeline.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of a folder that is watched. */
class FolderWatchTest {
  private static final long LONGEST_WAIT_SECONDS = 30;

  @TempDir Path folder;

  private final BlockingQueue<Path> told = new LinkedBlockingQueue<>();

  private @Nullable Path next() throws InterruptedException {
    return told.poll(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
  }

  @Test
  void sessionsBehindALinkAreToldAsTheyAreRead() throws Exception {
    Path disk = folder.resolve("disk");
    Files.createDirectories(disk.resolve("05"));
    Path season = Files.createDirectory(folder.resolve("season"));
    Path year = Files.createSymbolicLink(season.resolve("2026"), disk);
    FolderWatch watch = new FolderWatch(season, told::add);
    try {
      Files.writeString(disk.resolve("05/a.session.json"), "{}");
      assertEquals(year.resolve("05/a.session.json"), next());
    } finally {
      watch.close();
    }
  }

  @Test
  void aFolderBroughtInIsWatchedWithThoseInIt() throws Exception {
    Path year = folder.resolve("other/2026");
    Files.createDirectories(year.resolve("05"));
    Path season = Files.createDirectory(folder.resolve("season"));
    FolderWatch watch = new FolderWatch(season, told::add);
    try {
      Path in = Files.move(year, season.resolve("2026"));
      assertEquals(in, next());
      Files.writeString(in.resolve("05/b.csv"), "time,event");
      assertEquals(in.resolve("05/b.csv"), next());
    } finally {
      watch.close();
    }
  }

  @Test
  void aMissingFolderIsAFault() {
    assertThrows(IOException.class, () -> new FolderWatch(folder.resolve("none"), told::add));
  }
}
