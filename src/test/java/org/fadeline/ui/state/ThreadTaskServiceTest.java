package org.fadeline.ui.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The latest request wins, whatever order the jobs finish in. */
class ThreadTaskServiceTest {
  private final BlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
  private final List<String> answers = new ArrayList<>();
  private final BlockingQueue<Throwable> faults = new LinkedBlockingQueue<>();

  private TaskService.Answer<String> answer() {
    return new TaskService.Answer<>(answers::add, e -> answers.add("failed: " + e.getMessage()));
  }

  private void runOwner(int actions) throws InterruptedException {
    for (int i = 0; i < actions; i++) {
      Runnable action = owner.poll(10, TimeUnit.SECONDS);
      assertTrue(action != null, "an answer arrives");
      action.run();
    }
  }

  @Test
  void theLatestRequestWinsThoughTheFirstEndsLast() throws Exception {
    try (ThreadTaskService tasks = new ThreadTaskService(owner::add, faults::add)) {
      CountDownLatch hold = new CountDownLatch(1);
      CountDownLatch started = new CountDownLatch(1);
      boolean[] wasCancelled = new boolean[1];
      tasks.submit(
          "review",
          "one",
          progress -> {
            started.countDown();
            hold.await();
            wasCancelled[0] = progress.cancelled();
            return "one";
          },
          answer());
      started.await();
      tasks.submit("review", "two", progress -> "two", answer());
      assertEquals(1, tasks.runningProperty().get().size());
      runOwner(1);
      assertEquals(List.of("two"), answers);
      hold.countDown();
      runOwner(1);
      assertEquals(List.of("two"), answers);
      assertTrue(wasCancelled[0], "the first job can see that it is not wanted");
    }
  }

  @Test
  void channelsDoNotDisturbEachOtherAndFailuresArrive() throws Exception {
    try (ThreadTaskService tasks = new ThreadTaskService(owner::add, faults::add)) {
      tasks.submit("a", "a", progress -> "a", answer());
      runOwner(1);
      tasks.submit(
          "b",
          "b",
          progress -> {
            progress.report(0.5);
            throw new IllegalStateException("no");
          },
          answer());
      Runnable report = owner.poll(10, TimeUnit.SECONDS);
      report.run();
      assertEquals(0.5, tasks.runningProperty().get().get(0).done());
      runOwner(1);
      assertEquals(List.of("a", "failed: no"), answers);
      assertTrue(tasks.runningProperty().get().isEmpty());
    }
  }

  @Test
  void aCancelledJobIsNotAnswered() throws Exception {
    try (ThreadTaskService tasks = new ThreadTaskService(owner::add, faults::add)) {
      CountDownLatch hold = new CountDownLatch(1);
      CountDownLatch started = new CountDownLatch(1);
      tasks.submit(
          "open",
          "one",
          progress -> {
            started.countDown();
            hold.await();
            return "one";
          },
          answer());
      started.await();
      tasks.cancel("open");
      assertTrue(tasks.runningProperty().get().isEmpty());
      hold.countDown();
      runOwner(1);
      assertEquals(List.of(), answers);
    }
  }

  @Test
  void aFaultOfTheProgramIsToldAndAnsweredAndARefusalOnlyAnswered() throws Exception {
    try (ThreadTaskService tasks = new ThreadTaskService(owner::add, faults::add)) {
      tasks.submit(
          "open",
          "refused",
          progress -> {
            throw new IOException("no such file");
          },
          answer());
      runOwner(1);
      assertTrue(faults.isEmpty());
      tasks.submit(
          "open",
          "deep",
          progress -> {
            throw new StackOverflowError();
          },
          answer());
      runOwner(1);
      assertEquals(StackOverflowError.class, faults.remove().getClass());
      assertEquals(
          List.of("failed: no such file", "failed: java.lang.StackOverflowError"), answers);
    }
  }
}
