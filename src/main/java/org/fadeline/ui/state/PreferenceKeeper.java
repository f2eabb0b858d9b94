package org.fadeline.ui.state;

import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** Writes the preferences off the window's thread, the latest only. */
public final class PreferenceKeeper {
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

  /** Keeps preferences in a file, from the first change on. */
  public PreferenceKeeper(PreferenceFile file) {
    this.file = file;
  }

  /** Takes preferences to be written; those before that are not written yet are let go. */
  public void keep(Preferences preferences) {
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
  public void close() {
    writer.shutdown();
    write();
  }
}
