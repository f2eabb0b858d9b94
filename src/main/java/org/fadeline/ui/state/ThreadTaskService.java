package org.fadeline.ui.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;

/** Runs jobs on daemon threads and answers on the thread that owns the state. */
public final class ThreadTaskService implements TaskService {
  private final ExecutorService threads =
      Executors.newFixedThreadPool(
          2,
          work -> {
            Thread thread = new Thread(work, "fadeline-work");
            thread.setDaemon(true);
            return thread;
          });
  private final Consumer<Runnable> owner;
  private final Consumer<Throwable> unforeseen;
  private final Map<String, Ticket> latest = new HashMap<>();
  private final ReadOnlyObjectWrapper<List<Running>> running =
      new ReadOnlyObjectWrapper<>(List.of());
  private long asked;

  /**
   * Makes the service.
   *
   * @param owner runs an action later on the thread that owns the state
   * @param unforeseen is told of failures that are faults of the program, on the job's thread,
   *     before the answer
   */
  public ThreadTaskService(Consumer<Runnable> owner, Consumer<Throwable> unforeseen) {
    this.owner = owner;
    this.unforeseen = unforeseen;
  }

  @Override
  public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
    cancel(channel);
    Ticket ticket = new Ticket(channel, ++asked);
    latest.put(channel, ticket);
    List<Running> more = new ArrayList<>(running.get());
    more.add(new Running(channel, ticket.number, title, -1));
    running.set(List.copyOf(more));
    ticket.future = threads.submit(() -> work(ticket, job, answer));
  }

  private <T> void work(Ticket ticket, Job<T> job, Answer<T> answer) {
    try {
      T result = job.run(ticket);
      owner.accept(() -> finish(ticket, () -> answer.done().accept(result)));
    } catch (Exception failure) {
      if (failure instanceof RuntimeException && !(failure instanceof CancellationException)) {
        unforeseen.accept(failure);
      }
      owner.accept(() -> finish(ticket, () -> answer.failed().accept(failure)));
    } catch (OutOfMemoryError | StackOverflowError failure) {
      // One job too large for this machine must be told like any failure, not end in silence.
      unforeseen.accept(failure);
      Exception told = new IllegalStateException(failure);
      owner.accept(() -> finish(ticket, () -> answer.failed().accept(told)));
    }
  }

  private void finish(Ticket ticket, Runnable answer) {
    drop(ticket);
    if (!ticket.cancelled && latest.get(ticket.channel) == ticket) {
      latest.remove(ticket.channel);
      answer.run();
    }
  }

  @Override
  public void cancel(String channel) {
    Ticket old = latest.remove(channel);
    if (old == null) {
      return;
    }
    old.cancelled = true;
    Future<?> future = old.future;
    if (future != null) {
      // Not interrupted: a job that is writing a file must not be torn; it asks instead.
      future.cancel(false);
    }
    drop(old);
  }

  @Override
  public void later(Runnable action) {
    owner.accept(action);
  }

  private void drop(Ticket ticket) {
    List<Running> rest = new ArrayList<>(running.get());
    if (rest.removeIf(r -> r.number() == ticket.number)) {
      running.set(List.copyOf(rest));
    }
  }

  @Override
  public ReadOnlyObjectProperty<List<Running>> runningProperty() {
    return running.getReadOnlyProperty();
  }

  @Override
  public void close() {
    latest.values().forEach(ticket -> ticket.cancelled = true);
    latest.clear();
    threads.shutdown();
  }

  /** One request. */
  private final class Ticket implements Progress {
    private final String channel;
    private final long number;
    private volatile boolean cancelled;
    private @Nullable Future<?> future;

    Ticket(String channel, long number) {
      this.channel = channel;
      this.number = number;
    }

    @Override
    public void report(double done) {
      owner.accept(
          () ->
              running.set(
                  running.get().stream()
                      .map(
                          r ->
                              r.number() == number
                                  ? new Running(channel, number, r.title(), done)
                                  : r)
                      .toList()));
    }

    @Override
    public boolean cancelled() {
      return cancelled;
    }
  }
}
