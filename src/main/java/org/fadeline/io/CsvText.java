package org.fadeline.io;

import java.util.Locale;

/**
 * Text cells, guarded so that no spreadsheet takes one for a formula (CWE-1236): one that starts
 * with = + - @ or a control sign gets a leading apostrophe, and so does one that starts with
 * apostrophes and such a sign, so that the guard can be taken off again. Text that starts or ends
 * with white space, and empty text, is guarded too: other cells are read without their outer white
 * space, and a blank cell means that nothing was said.
 */
final class CsvText {
  private static final String SIGNS = "=+-@\t\r\n\0";

  private CsvText() {}

  static String guard(String text) {
    return needsGuard(text) ? "'" + text : text;
  }

  static String unguard(String cell) {
    if (cell.startsWith("'") && needsGuard(cell.substring(1))) {
      return cell.substring(1);
    }
    return cell.strip();
  }

  /** Returns whether a spreadsheet would take a cell for a formula. */
  static boolean startsLikeFormula(String cell) {
    return !cell.isEmpty() && SIGNS.indexOf(cell.charAt(0)) >= 0;
  }

  private static boolean needsGuard(String text) {
    int from = 0;
    while (from < text.length() && text.charAt(from) == '\'') {
      from++;
    }
    String rest = text.substring(from);
    // Apostrophes before nothing stand for themselves once more, or '' could not be told from '.
    return rest.isEmpty()
        || startsLikeFormula(rest)
        || !rest.equals(rest.strip())
        || rest.isBlank();
  }

  /** Returns the id a line gets from its name: lower case, letters and digits, joined by "-". */
  static String slug(String name) {
    String slug =
        name.toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    return slug.isEmpty() ? name.strip() : slug;
  }
}
