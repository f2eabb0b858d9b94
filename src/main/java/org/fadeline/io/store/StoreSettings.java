package org.fadeline.io.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * What a store needs from its surroundings.
 *
 * @param appData folder for journals, locks and backups of documents whose own folder cannot be
 *     written
 * @param clock for the times in journals and backup names
 * @param writer runs writes one after the other, in the order given
 * @param storage the disk
 */
record StoreSettings(Path appData, Clock clock, Executor writer, Storage storage) {
  /** Returns settings for the machine's disk, with a thread of its own. */
  static StoreSettings of(Path appData) {
    return new StoreSettings(appData, Clock.systemUTC(), writerThread(), DiskStorage.DISK);
  }

  private static ExecutorService writerThread() {
    ThreadPoolExecutor thread =
        new ThreadPoolExecutor(
            1,
            1,
            5,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            task -> {
              Thread made = new Thread(task, "fadeline-journal");
              made.setDaemon(true);
              return made;
            });
    thread.allowCoreThreadTimeOut(true);
    return thread;
  }
}
