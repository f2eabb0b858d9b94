package org.fadeline.ui.state;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Does the work at once, on the calling thread: for tests, for taking pictures and for measuring.
 */
public class DirectTaskService implements TaskService {
  private final ReadOnlyObjectWrapper<List<Running>> running =
      new ReadOnlyObjectWrapper<>(List.of());

  private static final Progress NOWHERE =
      new Progress() {
        @Override
        public void report(double done) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  /** Makes the service. */
  public DirectTaskService() {}

  @Override
  public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
    T result;
    try {
      result = job.run(NOWHERE);
    } catch (Exception failure) {
      answer.failed().accept(failure);
      return;
    }
    answer.done().accept(result);
  }

  @Override
  public void later(Runnable action) {
    action.run();
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
