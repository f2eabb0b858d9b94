package org.fadeline.ui.state;

import java.nio.file.Path;
import java.util.List;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/** Where sessions are opened, edited and kept; called on background threads. */
public interface Desk {
  /**
   * Opens a session file.
   *
   * @throws Refusal if it cannot be used
   */
  Held open(Path path, TaskService.Progress progress) throws Refusal;

  /** A session opened. */
  interface Held extends AutoCloseable {
    /** Returns the session as it stands. */
    Session session();

    /** Returns where it came from. */
    OpenSession.Source source();

    /** Returns what was done to it. */
    OpenSession.History history();

    /** Returns what was wrong with the file and how it was taken. */
    List<Activity.Problem> problems();

    /**
     * Keeps one step, undo and redo included, in the order given. Returns at once; what goes wrong
     * is told later through the state.
     */
    void keep(Edit step);

    @Override
    void close();
  }

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
      return trouble == null
          ? new Activity.Trouble(String.valueOf(getMessage()), "", List.of())
          : trouble;
    }
  }
}
