package org.fadeline.ui.state;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;

/**
 * Background work. Jobs of one channel supersede each other: only the latest request is answered,
 * whatever order they finish in. Answers arrive on the thread that owns the state.
 */
public interface TaskService extends AutoCloseable {
  /**
   * Asks for work.
   *
   * @param channel what it is about; a newer request on the channel cancels this one
   * @param title what the user is told is being done
   * @param job the work
   * @param answer what is done with its outcome; not called once superseded or cancelled
   * @param <T> type of the result
   */
  <T> void submit(String channel, String title, Job<T> job, Answer<T> answer);

  /** Cancels what runs on a channel; its answer will not arrive. */
  void cancel(String channel);

  /** Runs an action later on the thread that owns the state; may be called from any thread. */
  void later(Runnable action);

  /** Returns what is being done now, in the order it was asked for. */
  ReadOnlyObjectProperty<List<Running>> runningProperty();

  @Override
  void close();

  /**
   * Work with a result.
   *
   * @param <T> type of the result
   */
  @FunctionalInterface
  interface Job<T> {
    /**
     * Does the work.
     *
     * @param progress where to tell how far it is, and to ask whether it is still wanted
     * @throws Exception whatever went wrong; handed to the answer
     */
    T run(Progress progress) throws Exception;
  }

  /** How far a job is. */
  interface Progress {
    /** Tells how much is done, in [0, 1]; a negative number where that is not known. */
    void report(double done);

    /** Returns whether the result is no longer wanted. */
    boolean cancelled();
  }

  /**
   * What to do with an outcome.
   *
   * @param done takes the result
   * @param failed takes what went wrong
   * @param <T> type of the result
   */
  record Answer<T>(Consumer<T> done, Consumer<Exception> failed) {}

  /**
   * A job under way.
   *
   * @param channel what it is about
   * @param number its number, growing with each request
   * @param title what the user is told
   * @param done how much is done, in [0, 1], or negative where not known
   */
  record Running(String channel, long number, String title, double done) {}
}
