package org.fadeline.ui.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.ui.state.TaskService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When a folder is walked and watched, with jobs and the window's thread run step by step. */
class SeasonDeskTest {
  private static final long LONGEST_WAIT_SECONDS = 30;

  @TempDir Path folder;

  private final StepByStep tasks = new StepByStep();
  private final SeasonDesk desk = new SeasonDesk(tasks);

  private static long watching() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals("season watch"))
        .count();
  }

  /** A folder of many folders takes long to walk: the window's thread leaves it to the reading. */
  @Test
  void aFolderIsWatchedFromTheReadingOnAndNotByTheThreadThatOpensIt() throws Exception {
    long before = watching();
    desk.open(folder);
    assertEquals(before, watching());
    tasks.job().run();
    assertEquals(before + 1, watching());
    tasks.steps();
    Files.writeString(folder.resolve("a.session.json"), "{}");
    while (desk.state().changed() == 0) {
      tasks.step();
    }
    assertEquals(1, desk.state().changed());
    desk.close();
  }

  @Test
  void anotherFolderOpenedMeanwhileIsTheOneWatched() throws Exception {
    Path first = Files.createDirectory(folder.resolve("first"));
    Path second = Files.createDirectory(folder.resolve("second"));
    desk.open(first);
    Runnable late = tasks.job();
    desk.open(second);
    tasks.job().run();
    tasks.steps();
    late.run();
    tasks.steps();
    Files.writeString(first.resolve("a.session.json"), "{}");
    Files.writeString(second.resolve("b.session.json"), "{}");
    Files.writeString(second.resolve("c.session.json"), "{}");
    while (desk.state().changed() < 2) {
      tasks.step();
    }
    assertEquals(2, desk.state().changed());
    desk.close();
  }

  @Test
  void withoutAFilterTheTablesMadeFirstAreShownAgain() throws Exception {
    desk.open(folder);
    tasks.job().run();
    tasks.steps();
    SeasonShown whole = desk.state().shown();
    desk.filter(new SeasonFilter(Set.of("pool"), Set.of(), Set.of(), null, null));
    tasks.job().run();
    tasks.steps();
    desk.filter(SeasonFilter.ALL);
    tasks.job().run();
    tasks.steps();
    assertSame(whole, desk.state().shown());
    desk.close();
  }

  /** Jobs and later steps wait until the test takes them. */
  private static final class StepByStep implements TaskService {
    private final BlockingQueue<Runnable> jobs = new LinkedBlockingQueue<>();
    private final BlockingQueue<Runnable> later = new LinkedBlockingQueue<>();
    private final ReadOnlyObjectWrapper<List<Running>> running =
        new ReadOnlyObjectWrapper<>(List.of());

    Runnable job() throws InterruptedException {
      return next(jobs);
    }

    void step() throws InterruptedException {
      next(later).run();
    }

    void steps() throws InterruptedException {
      while (!later.isEmpty()) {
        step();
      }
    }

    private static Runnable next(BlockingQueue<Runnable> queue) throws InterruptedException {
      Runnable next = queue.poll(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
      if (next == null) {
        throw new AssertionError("nothing came");
      }
      return next;
    }

    @Override
    public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
      jobs.add(
          () -> {
            try {
              T result = job.run(new Unheard());
              later.add(() -> answer.done().accept(result));
            } catch (Exception e) {
              later.add(() -> answer.failed().accept(e));
            }
          });
    }

    @Override
    public void cancel(String channel) {}

    @Override
    public void later(Runnable action) {
      later.add(action);
    }

    @Override
    public ReadOnlyObjectProperty<List<Running>> runningProperty() {
      return running.getReadOnlyProperty();
    }

    @Override
    public void close() {}
  }

  /** Progress that nobody looks at. */
  private static final class Unheard implements TaskService.Progress {
    @Override
    public void report(double done) {}

    @Override
    public boolean cancelled() {
      return false;
    }
  }
}
