package org.fadeline.io.notes;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a cue says, without tags, timestamps, character references and hidden characters. */
final class CueText {
  /** Longest text kept of one cue, characters; nobody says more in one breath. */
  static final int LONGEST = 4096;

  private static final Pattern TAG = Pattern.compile("</?[A-Za-z0-9][^<>]*>?|</>|<>");
  private static final Pattern OVERRIDE = Pattern.compile("\\{\\\\[^{}]*\\}");
  private static final Pattern REFERENCE =
      Pattern.compile("&(#[0-9]{1,7}|#[xX][0-9a-fA-F]{1,6}|[A-Za-z]{1,8});");
  private static final Map<String, String> NAMED =
      Map.of(
          "amp", "&", "lt", "<", "gt", ">", "nbsp", " ", "lrm", "", "rlm", "", "quot", "\"", "apos",
          "'", "frac12", "½", "frac14", "¼");

  private CueText() {}

  static String plain(String raw) {
    String text = raw.length() > 4 * LONGEST ? raw.substring(0, 4 * LONGEST) : raw;
    text = TAG.matcher(text).replaceAll("");
    text = OVERRIDE.matcher(text).replaceAll("");
    text = references(text);
    StringBuilder shown = new StringBuilder();
    boolean blank = true;
    int marks = 0;
    for (int i = 0; i < text.length() && shown.length() < LONGEST; ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      int type = Character.getType(c);
      if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        if (!blank) {
          shown.append(' ');
        }
        blank = true;
        continue;
      }
      boolean mark = type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
      marks = mark ? marks + 1 : 0;
      boolean hidden =
          type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
      if (!hidden && marks <= 2) {
        shown.appendCodePoint(c);
        blank = false;
      }
    }
    return shown.toString().strip();
  }

  private static String references(String text) {
    Matcher matcher = REFERENCE.matcher(text);
    StringBuilder out = new StringBuilder();
    while (matcher.find()) {
      String name = matcher.group(1);
      String character = name.startsWith("#") ? ofNumber(name) : NAMED.get(name);
      matcher.appendReplacement(
          out, Matcher.quoteReplacement(character == null ? matcher.group() : character));
    }
    return matcher.appendTail(out).toString();
  }

  private static String ofNumber(String name) {
    boolean hex = name.charAt(1) == 'x' || name.charAt(1) == 'X';
    int c = hex ? Integer.parseInt(name.substring(2), 16) : Integer.parseInt(name.substring(1));
    return Character.isValidCodePoint(c) ? Character.toString(c) : "\uFFFD";
  }
}
