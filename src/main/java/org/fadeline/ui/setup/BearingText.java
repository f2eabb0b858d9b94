package org.fadeline.ui.setup;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Bearings from straight out as anglers say them: "20 left", "15° right", "-20", "0". */
final class BearingText {
  private static final Pattern BEARING =
      Pattern.compile(
          "(?<sign>[-−+]?)\\s*(?<number>\\d{1,3}(?:[.,]\\d{1,2})?)\\s*°?\\s*(?<side>l|left|r|right)?",
          Pattern.CASE_INSENSITIVE);

  private BearingText() {}

  /**
   * Returns degrees from straight out, left negative; a blank text and "straight out" are 0.
   *
   * @throws IllegalArgumentException if the text is no bearing
   */
  static double degrees(String text) {
    String typed = text.strip();
    if (typed.isEmpty() || typed.equalsIgnoreCase("straight out")) {
      return 0;
    }
    Matcher matcher = BEARING.matcher(typed);
    String side = matcher.matches() ? matcher.group("side") : null;
    if (!matcher.matches() || (side != null && !matcher.group("sign").isEmpty())) {
      throw new IllegalArgumentException(
          "“" + typed + "” is no bearing; write it as 20 left or 15 right of straight out");
    }
    double number = Double.parseDouble(matcher.group("number").replace(',', '.'));
    boolean left =
        side == null
            ? matcher.group("sign").matches("[-−]")
            : side.toLowerCase(Locale.ROOT).startsWith("l");
    return left && number > 0 ? -number : number;
  }

  /** Returns a bearing in words. */
  static String format(double degrees) {
    if (degrees == 0) {
      return "straight out";
    }
    String number = String.format(Locale.ROOT, "%.1f", Math.abs(degrees)).replaceFirst("\\.0$", "");
    return number + (degrees < 0 ? "° left" : "° right");
  }
}
