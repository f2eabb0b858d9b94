package org.fadeline.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Plain text with headings, wrapped paragraphs and tables, for reading at a prompt. */
final class TextOut {
  private static final int WIDTH = 92;

  private final StringBuilder out = new StringBuilder();

  /** Adds a line as it stands. */
  TextOut line(String text) {
    out.append(text).append('\n');
    return this;
  }

  /** Adds a heading after an empty line. */
  TextOut heading(String text) {
    out.append('\n').append(text).append('\n');
    return this;
  }

  /** Adds a paragraph wrapped under its lead. */
  TextOut paragraph(String lead, String text) {
    String indent = " ".repeat(lead.length());
    StringBuilder line = new StringBuilder(lead);
    for (String word : text.split(" ", -1)) {
      if (line.length() + word.length() > WIDTH && line.length() > lead.length()) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(indent);
      }
      line.append(word).append(' ');
    }
    out.append(line.toString().stripTrailing()).append('\n');
    return this;
  }

  /** Adds a table: first column to the left, the others to the right. */
  TextOut table(List<List<String>> rows) {
    List<Integer> widths = new ArrayList<>();
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        if (c == widths.size()) {
          widths.add(0);
        }
        widths.set(c, Math.max(widths.get(c), row.get(c).length()));
      }
    }
    for (List<String> row : rows) {
      StringBuilder text = new StringBuilder("  ");
      for (int c = 0; c < row.size(); c++) {
        String pad = " ".repeat(widths.get(c) - row.get(c).length());
        text.append(c == 0 ? row.get(c) + pad : pad + row.get(c)).append("  ");
      }
      out.append(text.toString().stripTrailing()).append('\n');
    }
    return this;
  }

  /** Returns a number of things. */
  static String count(int n, String one, String many) {
    return n + " " + (n == 1 ? one : many);
  }

  /** Returns whole minutes as a limit of a curve, which may not come down to it. */
  static String minutesOrNotReached(@Nullable Double minutes) {
    return minutes == null ? "not reached" : String.format(Locale.ROOT, "%.0f", minutes);
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
