package org.fadeline.ui;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.fadeline.ui.state.DirectTaskService;
import org.jspecify.annotations.Nullable;

/**
 * Background work on the calling thread, when it is asked for: of several jobs of the reviewing
 * channel only the last is done, as in the window.
 */
final class SoakTasks extends DirectTaskService {
  private final Queue<Runnable> laters = new ConcurrentLinkedQueue<>();
  private @Nullable Runnable latest;

  @Override
  public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
    if ("review".equals(channel)) {
      latest = () -> super.submit(channel, title, job, answer);
    } else {
      super.submit(channel, title, job, answer);
    }
  }

  /** Does the last review asked for. */
  void runLatest() {
    Runnable job = latest;
    latest = null;
    if (job != null) {
      job.run();
    }
  }

  /** Does what other threads handed over. */
  void runLater() {
    for (Runnable next = laters.poll(); next != null; next = laters.poll()) {
      next.run();
    }
  }

  @Override
  public void later(Runnable action) {
    laters.add(action);
  }
}
