package org.fadeline.io.notes;

import java.util.Locale;
import org.fadeline.io.Problem;
import org.fadeline.io.Problem.Severity;
import org.fadeline.io.Refused;

/** What is wrong with a part of a line of shorthand, and where in the line it stands. */
final class ShorthandFault extends Exception {
  private final transient Part part;
  private final String said;
  private final transient Refused refused;

  /** Part of a line of shorthand, by the name of its column in the event CSV. */
  enum Part {
    TIME("time"),
    EVENT("event"),
    LINE("line"),
    WEIGHT("weight_g");

    private final String field;

    Part(String field) {
      this.field = field;
    }
  }

  /**
   * A fault of one part.
   *
   * @param said the words at fault
   */
  ShorthandFault(Part part, String said, Refused refused) {
    // No stack trace: it is an answer, and a file may hold many.
    super(refused.what(), null, false, false);
    this.part = part;
    this.said = said;
    this.refused = refused;
  }

  /**
   * Returns the fault with its place.
   *
   * @param line as it stands in the file, with the space before it
   */
  Problem problem(String name, int row, String line) {
    return at(name, row, line, part, said, Severity.ERROR, refused);
  }

  /** Returns a problem of words of a line, at the column where they stand. */
  static Problem at(
      String name,
      int row,
      String line,
      Part part,
      String said,
      Severity severity,
      Refused refused) {
    return new Problem(
        name,
        row,
        column(line, part, said),
        part.field,
        severity,
        refused.what(),
        refused.whatToDo());
  }

  /** Returns the column, from 1, of words; where they were said otherwise, of the part's start. */
  private static int column(String line, Part part, String said) {
    int start = 0;
    while (start < line.length() && Character.isWhitespace(line.charAt(start))) {
      start++;
    }
    if (part == Part.TIME) {
      return start + 1;
    }
    int rest = start;
    while (rest < line.length() && !Character.isWhitespace(line.charAt(rest))) {
      rest++;
    }
    int found = word(line, said, rest);
    if (found < 0) {
      found = word(line, said.split(" ", 2)[0], rest);
    }
    int first = rest;
    while (first < line.length() && Character.isWhitespace(line.charAt(first))) {
      first++;
    }
    return (found < 0 ? first : found) + 1;
  }

  /** Returns where words stand between the signs of a line, or -1. */
  private static int word(String line, String words, int from) {
    if (words.isEmpty()) {
      return -1;
    }
    String in = line.toLowerCase(Locale.ROOT);
    String sought = words.toLowerCase(Locale.ROOT);
    for (int at = in.indexOf(sought, from); at >= 0; at = in.indexOf(sought, at + 1)) {
      int end = at + sought.length();
      boolean starts = at == 0 || !Character.isLetterOrDigit(in.charAt(at - 1));
      if (starts && (end >= in.length() || !Character.isLetterOrDigit(in.charAt(end)))) {
        return at;
      }
    }
    return -1;
  }
}
