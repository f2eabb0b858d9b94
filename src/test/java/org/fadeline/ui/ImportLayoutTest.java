package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import org.fadeline.io.CsvMapping;
import org.fadeline.model.EventKind;
import org.fadeline.ui.imports.ImportScreen;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.ThreadTaskService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** What a table's own words mean, the layout kept in a file, and a large table given up. */
class ImportLayoutTest extends WindowHarness {
  private static final String WORDS =
      """
      Clock;What;Swim;kg
      10:00;all-in;;
      10:05;Netted;Short;1,5
      10:09;Netted;Short;2
      10:20;Came off;Short;
      15:00;all-out;;
      """;

  @TempDir Path folder;
  private final CountDownLatch reported = new CountDownLatch(1);
  private final CountDownLatch goOn = new CountDownLatch(1);
  private final CountDownLatch ended = new CountDownLatch(1);
  private final SlowTasks slow = new SlowTasks();

  @Override
  protected TaskService tasks() {
    return slow;
  }

  @AfterEach
  void endThreads() {
    goOn.countDown();
    slow.threads.close();
  }

  private ImportScreen importScreen() {
    return window.screens().stream()
        .filter(ImportScreen.class::isInstance)
        .map(ImportScreen.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private void take(String name, String text) throws Exception {
    Path file = Files.writeString(folder.resolve(name), text);
    robot.interact(() -> window.showScreen("Import"));
    robot.interact(() -> importScreen().take(file));
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void aWordOfTheTablesOwnIsToldToBeAnEvent() throws Exception {
    take("their 2026-08-15.csv", WORDS);
    assertTrue(node("import-table-begin", Node.class).isDisabled());
    choose("word-netted", "landed");
    assertTrue(node("import-table-begin", Node.class).isDisabled(), "one word is still unknown");
    choose("word-came-off", "lost");
    press("import-table-begin");
    assertEquals(
        List.of(EventKind.LANDED, EventKind.LANDED, EventKind.LOST),
        session().events().stream().map(e -> e.kind()).toList());
  }

  @Test
  void aLayoutIsKeptAndTakenForTheNextTable() throws Exception {
    take("their 2026-08-15.csv", WORDS);
    choose("word-netted", "landed");
    choose("word-came-off", "lost");
    Path layout = folder.resolve("layout.json");
    press("import-layout-save");
    assertFalse(Files.exists(layout), "given up");
    paths.answer(layout);
    press("import-layout-save");
    CsvMapping kept = CsvMapping.load(layout).mapping().orElseThrow();
    assertEquals(EventKind.LOST, kept.events().get("came off"));
    assertEquals("Swim", kept.columns().get("line"));
    assertTrue(kept.decimalComma());
    take("next 2026-08-16.csv", WORDS);
    assertTrue(node("import-table-begin", Node.class).isDisabled());
    paths.answer(null);
    press("import-layout-load");
    assertTrue(node("import-table-begin", Node.class).isDisabled(), "given up");
    paths.answer(layout);
    press("import-layout-load");
    assertFalse(node("import-table-begin", Node.class).isDisabled());
    assertEquals("lost", node("word-came-off", ComboBox.class).getValue());
  }

  @Test
  void aFileThatIsNoLayoutIsRefusedAndChangesNothing() throws Exception {
    take("their 2026-08-15.csv", WORDS);
    choose("word-netted", "landed");
    Path wrong = Files.writeString(folder.resolve("wrong.json"), "{\"format\": \"other\"}");
    paths.answer(wrong);
    press("import-layout-load");
    assertTrue(shows("wrong.json cannot be used as a layout"));
    assertEquals("landed", node("word-netted", ComboBox.class).getValue());
  }

  @Test
  void aLargeTableShowsHowFarItIsAndIsTrulyGivenUp() throws Exception {
    slow.isSlow = true;
    StringBuilder text = new StringBuilder("time,event\n");
    for (int i = 0; i < 20_000; i++) {
      text.append("10:30:00,bite\n");
    }
    take("large 2026-08-15.csv", text.toString());
    assertTrue(reported.await(30, TimeUnit.SECONDS), "it reports while it reads");
    waitUntil(() -> node("import-table-progress", ProgressIndicator.class).getProgress() > 0);
    assertTrue(node("import-table-progress", ProgressIndicator.class).getProgress() < 0.1);
    press("import-table-give-up");
    goOn.countDown();
    assertTrue(ended.await(30, TimeUnit.SECONDS), "the reading itself ends");
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("No table yet.", node("import-table-summary", Label.class).getText());
    assertFalse(shows("could not be read"));
  }

  /** Works at once, or on a thread that waits at the first report. */
  private final class SlowTasks implements TaskService {
    final ThreadTaskService threads = new ThreadTaskService(Platform::runLater, fault -> {});
    final DirectTaskService direct = new DirectTaskService();
    volatile boolean isSlow;

    @Override
    public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
      if (isSlow) {
        threads.submit(channel, title, progress -> watched(job, progress), answer);
      } else {
        direct.submit(channel, title, job, answer);
      }
    }

    private <T> T watched(Job<T> job, Progress progress) throws Exception {
      try {
        return job.run(
            new Progress() {
              @Override
              public void report(double done) {
                progress.report(done);
                reported.countDown();
                try {
                  assertTrue(goOn.await(30, TimeUnit.SECONDS));
                } catch (InterruptedException e) {
                  throw new IllegalStateException(e);
                }
              }

              @Override
              public boolean cancelled() {
                return progress.cancelled();
              }
            });
      } catch (CancellationException givenUp) {
        ended.countDown();
        throw givenUp;
      }
    }

    @Override
    public void cancel(String channel) {
      threads.cancel(channel);
    }

    @Override
    public void later(Runnable action) {
      direct.later(action);
    }

    @Override
    public ReadOnlyObjectProperty<List<Running>> runningProperty() {
      return threads.runningProperty();
    }

    @Override
    public void close() {}
  }
}
