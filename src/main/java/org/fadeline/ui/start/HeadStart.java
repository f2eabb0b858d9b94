package org.fadeline.ui.start;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.figure.Type;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/**
 * Reads and reviews the match the program was started on while the window is still being put
 * together, on threads of its own.
 */
public final class HeadStart implements AutoCloseable {
  /** How long the window may wait for the match, milliseconds: it comes whole then, in one step. */
  private static final long PATIENCE_MILLIS = 300;

  private static final TaskService.Progress WAITED_FOR =
      new TaskService.Progress() {
        @Override
        public void report(double done) {
          // The window says that it reads, not how far it is.
        }

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  private final Path path;
  private final Units units;
  private final CompletableFuture<Desk.Held> held = new CompletableFuture<>();
  private final CompletableFuture<Review> review = new CompletableFuture<>();

  /** The match as it was read: what is held has every edit since. */
  private volatile @Nullable Session read;

  /**
   * Sets off.
   *
   * @param path the match
   * @param desk what opens it
   * @param units the units of the review's words, as the window will ask for them
   */
  public HeadStart(Path path, Desk desk, Units units) {
    this.path = path;
    this.units = units;
    begin("head-start", () -> work(desk));
    // Figures are measured in this typeface; reading it takes a while.
    begin("typeface", () -> Type.width(Type.semiBold(12), "0"));
  }

  private static void begin(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }

  /** Sets off with a file, for the user's own units. */
  public static HeadStart on(Path path, Desk desk) {
    return new HeadStart(path, desk, PreferenceFile.ofUser().read().units());
  }

  private void work(Desk desk) {
    try {
      Desk.Held opened = desk.open(path, WAITED_FOR);
      Session session = opened.session();
      read = session;
      held.complete(opened);
      review.complete(Reviewer.review(session, ReviewSettings.DEFAULT, units));
    } catch (Desk.Refusal | RuntimeException failure) {
      held.completeExceptionally(failure);
      review.completeExceptionally(failure);
    }
  }

  /** Returns the path of the match. */
  public Path path() {
    return path;
  }

  /**
   * Returns the match once it is read.
   *
   * @throws Desk.Refusal if it cannot be used
   */
  public Desk.Held held() throws Desk.Refusal {
    try {
      return held.join();
    } catch (CompletionException failure) {
      if (failure.getCause() instanceof Desk.Refusal refusal) {
        throw refusal;
      }
      throw failure;
    }
  }

  /**
   * A match read and reviewed.
   *
   * @param held the record
   * @param review its review, by the usual settings
   */
  public record Ready(Desk.Held held, Review review) {}

  /** Returns the match where it and its review are there within a moment, or empty. */
  public Optional<Ready> ready() {
    try {
      Review reviewed = review.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
      return Optional.of(new Ready(held.join(), reviewed));
    } catch (TimeoutException | ExecutionException later) {
      return Optional.empty();
    } catch (InterruptedException ending) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** Returns the review of a session: the one begun here, or another where that is asked for. */
  public Review review(Session session, ReviewSettings settings, Units asked) {
    boolean begun =
        session.equals(read) && settings.equals(ReviewSettings.DEFAULT) && asked.equals(units);
    return begun ? review.join() : Reviewer.review(session, settings, asked);
  }

  /** Lets the match go where no window came that could have taken it. */
  @Override
  public void close() {
    try {
      held().close();
    } catch (Desk.Refusal refused) {
      // Nothing is held.
    }
  }
}
