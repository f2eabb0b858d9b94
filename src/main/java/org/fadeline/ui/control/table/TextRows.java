package org.fadeline.ui.control.table;

import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Measures texts of a table, and breaks them where a reader would. */
final class TextRows {
  /** Rows that words may take; a column gets no narrower than that asks for. */
  private static final int MOST_ROWS = 3;

  /** Narrower columns of words are hard to read, ems. */
  private static final double NARROWEST_EMS = 5;

  private final Text probe = new Text();

  TextRows(Font font) {
    probe.setFont(font);
  }

  double em() {
    return probe.getFont().getSize();
  }

  /** Returns the width of a text in one row, or of its widest row, pixels. */
  double width(String text) {
    probe.setWrappingWidth(0);
    probe.setText(text);
    return probe.getLayoutBounds().getWidth();
  }

  /** Returns the height of a row, pixels. */
  double lineHeight() {
    probe.setWrappingWidth(0);
    probe.setText("0");
    return probe.getLayoutBounds().getHeight();
  }

  /** Returns the width in which words may be set, pixels. */
  double narrowest(String words) {
    double whole = width(words);
    double longest = 0;
    for (String word : words.split(" ", -1)) {
      longest = Math.max(longest, width(word));
    }
    return Math.max(longest, Math.max(Math.min(whole, NARROWEST_EMS * em()), whole / MOST_ROWS));
  }

  /** Returns how many rows a text takes in a width. */
  int count(String text, double width, boolean number) {
    if (text.isEmpty() || width(text) <= width) {
      return 1;
    }
    probe.setText(number ? broken(text) : text);
    probe.setWrappingWidth(Math.max(1, width));
    return (int) Math.round(probe.getLayoutBounds().getHeight() / lineHeight());
  }

  /** Returns a number with what belongs to it in rows of their own: "7 lb 3 oz\n(2–13 lb)". */
  static String broken(String number) {
    return number.replace(" (", "\n(").replace(", ", ",\n").replaceAll(" (\\d{4})$", "\n$1");
  }

  /** Returns a heading in two rows as near in length as its words allow. */
  static String halved(String heading) {
    int best = -1;
    for (int at = heading.indexOf(' '); at >= 0; at = heading.indexOf(' ', at + 1)) {
      if (best < 0 || Math.abs(heading.length() - 2 * at) < Math.abs(heading.length() - 2 * best)) {
        best = at;
      }
    }
    return best < 0 ? heading : heading.substring(0, best) + "\n" + heading.substring(best + 1);
  }
}
