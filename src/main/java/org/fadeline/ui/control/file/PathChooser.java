package org.fadeline.ui.control.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import org.fadeline.io.SessionNames;
import org.jspecify.annotations.Nullable;

/** Asks the user for a file or a folder; tests answer in the user's stead. */
public interface PathChooser {
  /** Returns a file to read, or null where none was chosen. */
  @Nullable Path open(Question question);

  /** Returns a file to write, or null where none was chosen; the user may have left its ending. */
  @Nullable Path save(Question question);

  /**
   * Returns a file to write with its ending, or null where none was chosen. Where the ending was
   * left and a file stands under the whole name, the question is put once more with that name, so
   * that the dialog asks before anything is written over.
   *
   * @param ending such as {@code .pdf}
   */
  default @Nullable Path save(Question question, String ending) {
    Path chosen = save(question);
    if (chosen == null || ends(chosen, ending)) {
      return chosen;
    }
    Path whole = Path.of(chosen + ending);
    if (!Files.exists(whole)) {
      return whole;
    }
    Path again = save(question.near(whole.getParent()).named(String.valueOf(whole.getFileName())));
    return again != null && ends(again, ending) ? again : null;
  }

  private static boolean ends(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /** Returns a folder, or null where none was chosen. */
  @Nullable Path folder(Question question);

  /**
   * A kind of files.
   *
   * @param label what they are called
   * @param patterns such as {@code *.csv}
   */
  record Kind(String label, List<String> patterns) {
    /** Sessions in the program's own format. */
    public static final Kind SESSIONS = of("Matches", "*" + SessionNames.ENDING);

    /** Everything that holds a session by itself. */
    public static final Kind SESSIONS_AND_TABLES =
        of("Matches and event tables", "*" + SessionNames.ENDING, "*.csv");

    /** Every file. */
    public static final Kind ALL = of("All files", "*");

    /** Copies the list. */
    public Kind {
      patterns = List.copyOf(patterns);
    }

    /** Makes a kind. */
    public static Kind of(String label, String... patterns) {
      return new Kind(label, List.of(patterns));
    }
  }

  /**
   * What is asked.
   *
   * @param title of the question
   * @param owner a node of the window the question belongs to, or null
   * @param near the folder to begin in, or null; left aside where it is gone
   * @param name offered for a file to write; may be empty
   * @param kinds of files to choose from; empty for all
   */
  record Question(
      String title, @Nullable Node owner, @Nullable Path near, String name, List<Kind> kinds) {
    /** Copies the list. */
    public Question {
      kinds = List.copyOf(kinds);
    }

    /** Makes a question for any file, beginning anywhere. */
    public static Question of(String title, @Nullable Node owner) {
      return new Question(title, owner, null, "", List.of());
    }

    /** Returns this question, beginning in a folder. */
    public Question near(@Nullable Path folder) {
      return new Question(title, owner, folder, name, kinds);
    }

    /** Returns this question, offering a name. */
    public Question named(String offered) {
      return new Question(title, owner, near, offered, kinds);
    }

    /** Returns this question, for some kinds of files. */
    public Question ofKinds(Kind... wanted) {
      return new Question(title, owner, near, name, List.of(wanted));
    }
  }
}
