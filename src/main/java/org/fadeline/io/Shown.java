package org.fadeline.io;

import java.util.Locale;

/** Text of a file made fit to be shown in a message. */
public final class Shown {
  private static final int LONGEST = 40;

  private Shown() {}

  /** Returns a value in quotes, cut to a readable length. */
  public static String value(String text) {
    int end = Math.min(text.length(), LONGEST);
    if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    return "\"" + line(text.substring(0, end)) + (end < text.length() ? "…" : "") + "\"";
  }

  /** Returns a range in words; a low end of {@link Double#MIN_VALUE} stands for "above 0". */
  static String range(double low, double high) {
    String to = Json.Num.of(high).digits();
    return low == Double.MIN_VALUE
        ? "more than 0 up to " + to
        : Json.Num.of(low).digits() + " to " + to;
  }

  /**
   * Returns the text with what could mislead on a screen or terminal made visible: control and
   * format characters (bidirectional overrides, zero-width signs), lone surrogates and runs of
   * combining marks.
   */
  static String line(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    int marks = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      int type = Character.getType(c);
      boolean mark = type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
      marks = mark ? marks + 1 : 0;
      boolean hidden =
          type == Character.CONTROL
              || type == Character.FORMAT
              || type == Character.SURROGATE
              || type == Character.LINE_SEPARATOR
              || type == Character.PARAGRAPH_SEPARATOR;
      if (hidden) {
        shown.append(String.format(Locale.ROOT, "\\u%04X", c));
      } else if (marks <= 2) {
        shown.appendCodePoint(c);
      }
    }
    return shown.toString();
  }
}
