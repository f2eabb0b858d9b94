package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.ui.state.TaskService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Reading a folder in the window: under way, stopped, ended with the window; by keys alone. */
class SeasonReadingTest extends SeasonHarness {
  private static final int PLENTY = 1_000_000;
  private static final int MOST_STEPS = 60;

  /** Lets the work of the window go on file by file. */
  private final Semaphore files = new Semaphore(0);

  @Override
  void openFolder() {
    // Each test opens it.
  }

  @Override
  protected TaskService tasks() {
    return new FileByFile(super.tasks(), files);
  }

  /** Reading that waits for a permit before it starts and after each file. */
  private record FileByFile(TaskService threads, Semaphore files) implements TaskService {
    @Override
    public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
      if (!title.equals("Reading the season")) {
        threads.submit(channel, title, job, answer);
        return;
      }
      threads.submit(
          channel,
          title,
          progress -> {
            files.acquireUninterruptibly();
            return job.run(new Gate(progress, files));
          },
          answer);
    }

    @Override
    public void cancel(String channel) {
      threads.cancel(channel);
    }

    @Override
    public void later(Runnable action) {
      threads.later(action);
    }

    @Override
    public ReadOnlyObjectProperty<List<Running>> runningProperty() {
      return threads.runningProperty();
    }

    @Override
    public void close() {
      threads.close();
    }
  }

  private record Gate(TaskService.Progress progress, Semaphore files)
      implements TaskService.Progress {
    @Override
    public void report(double done) {
      progress.report(done);
    }

    @Override
    public boolean cancelled() {
      if (!Platform.isFxApplicationThread()) {
        files.acquireUninterruptibly();
      }
      return progress.cancelled();
    }
  }

  /** Work left waiting would keep its threads. */
  @AfterEach
  void letGo() {
    files.release(PLENTY);
  }

  private List<?> results() {
    return table().getItems();
  }

  private static boolean hasFades(Object row) {
    return ((SessionSummary) row).hasFades();
  }

  @Test
  void whileNothingIsReadThePageSaysSo() throws Exception {
    robot.interact(() -> season.open(folder));
    settle(() -> shows("Still reading the folder") && shows("Stop"));
    assertTrue(node("season-waiting", Label.class).isVisible());
    files.release(PLENTY);
    settle(() -> shows("2 matches, 1 file with a problem") && !shows("Stop"));
    assertTrue(robot.lookup("#season-waiting").queryAll().isEmpty());
    assertEquals(2, results().size());
  }

  @Test
  void stoppedWhatWasReadStaysAndTheRestIsReadWhenAsked() throws Exception {
    files.release(1 + 3);
    robot.interact(() -> season.open(folder));
    settle(() -> shows("2 matches, 1 file with a problem") && shows("Working out fades"));
    press("season-stop");
    settle(() -> !shows("Stop"));
    files.release(PLENTY);
    settle(() -> bench.tasks().runningProperty().get().isEmpty());
    assertEquals(2, results().size());
    assertFalse(results().stream().anyMatch(SeasonReadingTest::hasFades), "fades of what stopped");
    robot.push(KeyCode.F5);
    settle(() -> !shows("Stop") && results().stream().allMatch(SeasonReadingTest::hasFades));
  }

  @Test
  void oneWatchAtATimeAndNoneOnceTheWindowIsClosed() throws Exception {
    files.release(PLENTY);
    Set<Thread> before = watches();
    robot.interact(() -> season.open(folder));
    robot.interact(() -> season.open(folder));
    settle(() -> shows("2 matches") && !shows("Stop"));
    waitUntil(() -> since(before).size() == 1);
    robot.interact(() -> window.scene().getWindow().hide());
    waitUntil(() -> since(before).isEmpty());
  }

  private static Set<Thread> watches() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals("season watch"))
        .collect(Collectors.toSet());
  }

  private static Set<Thread> since(Set<Thread> before) {
    Set<Thread> now = watches();
    now.removeAll(before);
    return now;
  }

  @Test
  void aSessionIsReachedByKeysAlone() throws Exception {
    files.release(PLENTY);
    paths.answer(folder);
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.O);
    settle(() -> shows("2 matches, 1 file with a problem") && !shows("Stop"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    tabTo(TableView.class);
    robot.push(KeyCode.DOWN);
    settle(() -> !behind().getItems().isEmpty());
    tabTo(ListView.class);
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.ENTER);
    settle(() -> !robot.lookup("#timeline").queryAll().isEmpty());
    assertTrue(bench.state().open() != null);
  }

  private ListView<?> behind() {
    return node("season-behind", ListView.class);
  }

  private void tabTo(Class<? extends Node> wanted) {
    int steps = 0;
    while (!wanted.isInstance(window.scene().getFocusOwner())) {
      assertTrue(++steps < MOST_STEPS, "Tab never comes to a " + wanted.getSimpleName());
      robot.push(KeyCode.TAB);
    }
  }

  @Test
  void everyRowOfEveryPageLeadsToItsSessions() throws Exception {
    files.release(PLENTY);
    robot.interact(() -> season.open(folder));
    settle(() -> shows("2 matches, 1 file with a problem") && !shows("Stop"));
    for (KeyCode page :
        List.of(
            KeyCode.DIGIT1,
            KeyCode.DIGIT2,
            KeyCode.DIGIT3,
            KeyCode.DIGIT4,
            KeyCode.DIGIT5,
            KeyCode.DIGIT6)) {
      robot.push(KeyCode.ALT, page);
      Set<TableView<?>> tables =
          robot.lookup(".table-view").queryAllAs(TableView.class).stream()
              .map(t -> (TableView<?>) t)
              .collect(Collectors.toSet());
      assertFalse(tables.isEmpty(), page.toString());
      for (TableView<?> table : tables) {
        assertFalse(table.getItems().isEmpty(), page + ": " + table.getAccessibleText());
        for (int row = 0; row < table.getItems().size(); row++) {
          int chosen = row;
          robot.interact(() -> behind().getItems().clear());
          robot.interact(() -> table.getSelectionModel().clearAndSelect(chosen));
          assertFalse(
              behind().getItems().isEmpty(),
              page + ": " + table.getAccessibleText() + ", row " + row);
        }
      }
    }
  }
}
