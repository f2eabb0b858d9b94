package org.fadeline.analysis.compare;

import org.fadeline.model.Line;

/**
 * A line of the first session held against a line of the second.
 *
 * @param first line of the first session
 * @param second line of the second session
 * @param by what they were paired by
 */
public record LinePair(Line first, Line second, By by) {
  /** What two lines were paired by. */
  public enum By {
    /** The same name. */
    NAME("name"),
    /** The same kind, and near enough in place. */
    KIND("kind"),
    /** The same place, kinds not known on both sides. */
    DISTANCE("distance"),
    /** The angler's choice. */
    HAND("hand");

    private final String word;

    By(String word) {
      this.word = word;
    }

    /** Returns the word used in files and on screen. */
    public String word() {
      return word;
    }
  }

  /** Returns the name of the pair: the common name, else both. */
  public String name() {
    return first.name().equalsIgnoreCase(second.name())
        ? first.name()
        : first.name() + " / " + second.name();
  }
}
