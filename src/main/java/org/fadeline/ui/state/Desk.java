package org.fadeline.ui.state;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/** Where sessions are opened, edited and kept. */
public interface Desk {
  /**
   * Opens a session file; called on a background thread.
   *
   * @throws Refusal if it cannot be used
   */
  Held open(Path path, TaskService.Progress progress) throws Refusal;

  /**
   * Saves a session under another name and opens it there; called on a background thread.
   *
   * @throws Refusal if it cannot be written
   */
  Held saveAs(Path path, Session session) throws Refusal;

  /**
   * Makes a file for a new session and opens it there; called on a background thread.
   *
   * @throws Refusal if it cannot be written, or if there is such a file already
   */
  Held begin(Path path, Session session) throws Refusal;

  /**
   * Reads a session to look at beside the one in hand; called on a background thread. Nothing is
   * locked or written.
   *
   * @throws Refusal if it cannot be used
   */
  Session look(Path path) throws Refusal;

  /** Returns the folder for what is kept between starts, or empty where nothing is. */
  default Optional<Path> keeping() {
    return Optional.empty();
  }

  /** A session in hand; its methods return without waiting for the disk. */
  interface Held extends AutoCloseable {
    /** Returns the session as it stands. */
    Session session();

    /** Returns where it came from. */
    OpenSession.Source source();

    /** Returns what was done to it. */
    OpenSession.History history();

    /** Returns what is to be known about how it was opened. */
    Notice notice();

    /**
     * Makes an edit; {@link #session()} then has it.
     *
     * @return completes when the disk has it, exceptionally where that failed
     * @throws IllegalArgumentException if it does not fit or cannot be kept; nothing was changed
     */
    CompletableFuture<?> append(Edit edit);

    /**
     * Takes the last edit back, or returns empty where there is none.
     *
     * @throws IOException if the edit cannot be read again; nothing was changed
     */
    Optional<CompletableFuture<?>> undo() throws IOException;

    /**
     * Does the edit taken back last again, or returns empty where there is none.
     *
     * @throws IOException if the edit cannot be read again; nothing was changed
     */
    Optional<CompletableFuture<?>> redo() throws IOException;

    /**
     * Saves to its file.
     *
     * @param overwrite whether to replace a file that was changed outside
     * @return completes with what came of it; empty where it has no file of its own to save to
     */
    Optional<CompletableFuture<Saved>> save(boolean overwrite);

    /** Puts it away; what is not saved stays in its journal. */
    @Override
    void close();
  }

  /**
   * How a session was opened.
   *
   * @param problems of the file, each with its place
   * @param recovered what was brought back from its journal, in words, or null
   * @param other the record as its journal has it, where the file was changed outside, or null
   */
  record Notice(
      List<Activity.Problem> problems, @Nullable String recovered, @Nullable Session other) {
    /** Nothing to be said. */
    public static final Notice NONE = new Notice(List.of(), null, null);

    /** Copies the list. */
    public Notice {
      problems = List.copyOf(problems);
    }
  }

  /**
   * What came of saving.
   *
   * @param done whether the file holds the session now
   * @param changedOutside whether it was left alone because somebody else changed it
   * @param message what went wrong and what to do; empty where nothing did
   */
  record Saved(boolean done, boolean changedOutside, String message) {}

  /** Why something was not done, in words for the reader. */
  final class Refusal extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Activity.@Nullable Trouble trouble;

    /** Refuses with the given words. */
    public Refusal(Activity.Trouble trouble) {
      super(trouble.title());
      this.trouble = trouble;
    }

    /** Returns the words. */
    public Activity.Trouble trouble() {
      return trouble == null ? Activity.Trouble.of(String.valueOf(getMessage()), "") : trouble;
    }
  }
}
