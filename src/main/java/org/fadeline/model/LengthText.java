package org.fadeline.model;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Distances and depths as anglers write them: "13", "13 m", "42 ft", "3.5", "11,5 m". */
public final class LengthText {
  private static final Pattern LENGTH =
      Pattern.compile(
          "(?<number>\\d{1,4}(?:[.,]\\d{1,3})?)\\s*(?<unit>m|metres?|meters?|ft|feet|foot|')?",
          Pattern.CASE_INSENSITIVE);

  private LengthText() {}

  /**
   * Returns the length in metres that a text gives.
   *
   * @param text such as "13 m"; a plain number is in the unit given
   * @param unit what a plain number means
   * @throws IllegalArgumentException if the text is no length; the message says what would be
   */
  public static double metres(String text, Units.Length unit) {
    Matcher matcher = LENGTH.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text.strip() + "\" is no length; write it as 13 m or 42 ft");
    }
    double number = Double.parseDouble(matcher.group("number").replace(',', '.'));
    String word = matcher.group("unit");
    boolean feet =
        word == null
            ? unit == Units.Length.FT
            : word.startsWith("f") || word.startsWith("F") || word.equals("'");
    return feet ? number * Units.METRES_PER_FOOT : number;
  }

  /**
   * Returns a length as it would be typed: to a hundredth of a metre or a tenth of a foot, without
   * zeros at the end.
   *
   * @param metres 0 or more
   */
  public static String format(double metres, Units.Length unit) {
    boolean feet = unit == Units.Length.FT;
    String text =
        feet
            ? String.format(Locale.ROOT, "%.1f", metres / Units.METRES_PER_FOOT)
            : String.format(Locale.ROOT, "%.2f", metres);
    return text.replaceFirst("\\.?0+$", "") + (feet ? " ft" : " m");
  }
}
