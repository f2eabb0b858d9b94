package org.fadeline.model;

import java.util.Locale;

/** Numbers and weights written no finer than a rate or a forecast can be known. */
public final class RoughText {
  private RoughText() {}

  /** Returns a number to a tenth below 20, else whole; no trailing ".0". */
  public static String number(double value) {
    if (Math.abs(value) >= 19.95) {
      return String.format(Locale.ROOT, "%.0f", value);
    }
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /**
   * Returns a weight in whole pounds from 10 lb, to the ounce below; or in kilograms as {@link
   * #number} has them, in grams below one.
   *
   * @param grams 0 or more
   */
  public static String weight(double grams, Units.Weight unit) {
    if (unit == Units.Weight.KG) {
      return grams >= 1000 ? number(grams / 1000) + " kg" : WeightText.formatFine(grams, unit);
    }
    double pounds = grams / WeightText.GRAMS_PER_POUND;
    return pounds >= 10 ? Math.round(pounds) + " lb" : WeightText.format(grams, unit);
  }

  /**
   * Returns a weight interval with its unit once where it can: "108–163 lb". Where the upper end is
   * told in whole pounds, so is the lower from a pound on: ounces beside tens of pounds say
   * nothing.
   *
   * @param low grams, 0 or more
   * @param high grams, {@code low} or more
   */
  public static String weights(double low, double high, Units.Weight unit) {
    String b = weight(high, unit);
    boolean whole =
        unit == Units.Weight.LB_OZ
            && low >= WeightText.GRAMS_PER_POUND
            && high >= 10 * WeightText.GRAMS_PER_POUND;
    String a = whole ? Math.round(low / WeightText.GRAMS_PER_POUND) + " lb" : weight(low, unit);
    String name = unit == Units.Weight.KG ? " kg" : " lb";
    boolean plain = isPlain(a, name) && isPlain(b, name);
    return plain ? a.substring(0, a.length() - name.length()) + "–" + b : a + "–" + b;
  }

  private static boolean isPlain(String text, String unit) {
    return text.endsWith(unit) && text.indexOf(' ') == text.length() - unit.length();
  }
}
