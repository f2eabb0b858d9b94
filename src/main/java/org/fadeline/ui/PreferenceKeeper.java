package org.fadeline.ui;

import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.Preferences;
import org.jspecify.annotations.Nullable;

/** Writes the preferences off the window's thread, the latest only. */
final class PreferenceKeeper {
  private final PreferenceFile file;
  private final AtomicReference<@Nullable Preferences> latest = new AtomicReference<>();
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "fadeline-preferences");
            // A daemon, so that it keeps no process alive; close writes the last change.
            thread.setDaemon(true);
            return thread;
          });

  PreferenceKeeper(PreferenceFile file) {
    this.file = file;
  }

  void keep(Preferences preferences) {
    if (latest.getAndSet(preferences) == null) {
      writer.execute(this::write);
    }
  }

  private void write() {
    Preferences now = latest.getAndSet(null);
    if (now != null) {
      try {
        file.write(now);
      } catch (IOException lost) {
        // Preferences are a comfort: a folder that cannot be written costs them and nothing else.
        latest.compareAndSet(now, null);
      }
    }
  }

  /** Writes what is left and ends. */
  void close() {
    writer.shutdown();
    write();
  }
}
