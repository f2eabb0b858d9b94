package org.fadeline.ui.state;

import java.util.List;
import org.fadeline.io.ImportReport;
import org.jspecify.annotations.Nullable;

/**
 * What is going on and what went wrong.
 *
 * @param opening name of the file being opened, or null
 * @param trouble what went wrong last and still waits to be read, or null
 * @param message a line of news, such as what was undone, or null
 */
public record Activity(
    @Nullable String opening, @Nullable Trouble trouble, @Nullable String message) {
  /** Nothing going on. */
  public static final Activity QUIET = new Activity(null, null, null);

  /**
   * Something that went wrong, in words.
   *
   * @param title what could not be done
   * @param detail what follows from it and what to do
   * @param problems each problem with its place; may be empty
   * @param offer what can be done about it at once, or null
   */
  public record Trouble(
      String title, String detail, List<Problem> problems, @Nullable Offer offer) {
    /** Copies the list. */
    public Trouble {
      problems = List.copyOf(problems);
    }

    /** Returns trouble in words alone. */
    public static Trouble of(String title, String detail) {
      return new Trouble(title, detail, List.of(), null);
    }

    /**
     * Returns trouble about a fault of the program itself.
     *
     * @param after how things stand now, in a sentence
     */
    public static Trouble unforeseen(String title, Throwable failure, String after) {
      return of(
          title,
          "Something went wrong that Fadeline did not foresee ("
              + failure.getClass().getSimpleName()
              + "). "
              + after);
    }
  }

  /**
   * Something that can be done about trouble.
   *
   * @param label on its button
   * @param action does it
   */
  public record Offer(String label, Runnable action) {}

  /**
   * One problem.
   *
   * @param place file, row and field
   * @param text what is wrong
   * @param remedy what to do
   */
  public record Problem(String place, String text, String remedy) {
    /** Returns a problem of a file as it is told on screen. */
    public static Problem of(org.fadeline.io.Problem problem) {
      return new Problem(problem.place(), problem.what(), problem.whatToDo());
    }

    /** Returns every problem of a report, in its order. */
    public static List<Problem> of(ImportReport report) {
      return report.problems().stream().map(Problem::of).toList();
    }
  }

  /** Returns this with another file being opened, or none. */
  public Activity withOpening(@Nullable String newOpening) {
    return new Activity(newOpening, trouble, message);
  }

  /** Returns this with other trouble, or none. */
  public Activity withTrouble(@Nullable Trouble newTrouble) {
    return new Activity(opening, newTrouble, message);
  }

  /** Returns this with other news, or none. */
  public Activity withMessage(@Nullable String newMessage) {
    return new Activity(opening, trouble, newMessage);
  }
}
