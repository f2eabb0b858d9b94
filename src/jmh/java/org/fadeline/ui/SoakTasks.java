package org.fadeline.ui;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.ui.state.TaskService;

/**
 * Background work on the calling thread, when it is asked for: of several jobs of the reviewing
 * channel only the last is done, as in the window.
 */
final class SoakTasks implements TaskService {
  private static final Progress NOWHERE =
      new Progress() {
        @Override
        public void report(double done) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  private final ReadOnlyObjectWrapper<List<Running>> running =
      new ReadOnlyObjectWrapper<>(List.of());
  private final Queue<Runnable> laters = new ConcurrentLinkedQueue<>();
  private final ArrayDeque<Runnable> latest = new ArrayDeque<>();

  @Override
  public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
    if ("review".equals(channel)) {
      latest.clear();
      latest.add(() -> run(job, answer));
    } else {
      run(job, answer);
    }
  }

  private static <T> void run(Job<T> job, Answer<T> answer) {
    T result;
    try {
      result = job.run(NOWHERE);
    } catch (Exception failure) {
      answer.failed().accept(failure);
      return;
    }
    answer.done().accept(result);
  }

  /** Does the last review asked for. */
  void runLatest() {
    Runnable job = latest.poll();
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

  @Override
  public void cancel(String channel) {}

  @Override
  public ReadOnlyObjectProperty<List<Running>> runningProperty() {
    return running.getReadOnlyProperty();
  }

  @Override
  public void close() {}
}
