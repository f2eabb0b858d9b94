package org.fadeline.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Weights as anglers write them: "8 4", "8lb 4oz", "8-4", "3.7 kg", "850g", "12oz", "4 drams".
 *
 * <p>The pound is the international pound of 0.45359237 kg exactly, of 16 ounces of 16 drams
 * (Weights and Measures Act 1985, Schedule 1; NIST Handbook 44, Appendix C).
 */
public final class WeightText {
  /** Grams in one international pound, exactly. */
  public static final double GRAMS_PER_POUND = 453.59237;

  /** Grams in one ounce. */
  public static final double GRAMS_PER_OUNCE = GRAMS_PER_POUND / 16;

  /** Grams in one dram. */
  public static final double GRAMS_PER_DRAM = GRAMS_PER_POUND / 256;

  private static final double MOST_GRAMS = 1e6;
  private static final String HOW = "write it as 8lb 4oz, 8-4, 12oz, 3.7 kg or 850 g";
  private static final Pattern PART =
      Pattern.compile(
          "\\s*-?\\s*(?<number>\\d+\\s+\\d+/\\d+|\\d+/\\d+|\\d*[½¼¾]|\\d+(?:[.,]\\d+)?)"
              + "\\s*(?<unit>\\p{L}*)\\.?\\s*(?:,|and\\b|&)?");

  private WeightText() {}

  /**
   * Returns the weight in grams that a text gives.
   *
   * @param text such as "8lb 4oz"; one or two plain numbers are pounds and ounces, or kilograms and
   *     grams, as {@code unit} says
   * @param unit what plain numbers mean
   * @return grams, in [0, 1e6]
   * @throws IllegalArgumentException if the text is not a weight; the message says what would be
   */
  public static double grams(String text, Units.Weight unit) {
    String trimmed = text.strip().toLowerCase(Locale.ROOT);
    if (trimmed.isEmpty()) {
      throw bad(text, "is empty");
    }
    if (trimmed.startsWith("-")) {
      throw bad(text, "is negative");
    }
    List<Part> parts = new ArrayList<>();
    Matcher matcher = PART.matcher(trimmed);
    int from = 0;
    while (from < trimmed.length()) {
      matcher.region(from, trimmed.length());
      if (parts.size() == 3 || !matcher.lookingAt()) {
        throw bad(text, "is not a weight");
      }
      parts.add(part(text, matcher));
      from = matcher.end();
    }
    double grams = sum(text, named(text, parts, unit));
    if (!(grams <= MOST_GRAMS)) {
      throw bad(text, "is more than 1000 kg");
    }
    return grams;
  }

  private static Part part(String text, Matcher matcher) {
    String word = matcher.group("unit");
    Step step = null;
    if (!word.isEmpty()) {
      step = Step.ofWord(word);
      if (step == null) {
        throw bad(text, "has the unknown unit \"" + word + "\"");
      }
    }
    String number = matcher.group("number");
    return new Part(number(text, number), step, number.contains(".") || number.contains(","));
  }

  private static double number(String text, String number) {
    int last = number.length() - 1;
    int quarters = "¼½¾".indexOf(number.charAt(last)) + 1;
    if (quarters > 0) {
      double whole = last == 0 ? 0 : Double.parseDouble(number.substring(0, last));
      return whole + quarters / 4.0;
    }
    int slash = number.indexOf('/');
    if (slash > 0) {
      int blank = number.indexOf(' ');
      double whole = blank < 0 ? 0 : Double.parseDouble(number.substring(0, blank));
      double top = Double.parseDouble(number.substring(blank + 1, slash).strip());
      double bottom = Double.parseDouble(number.substring(slash + 1));
      if (!(bottom > top)) {
        throw bad(text, "has a fraction that is not below one");
      }
      return whole + top / bottom;
    }
    return Double.parseDouble(number.replace(',', '.'));
  }

  /** Gives plain numbers their unit: the usual one first, then each the next smaller. */
  private static List<Part> named(String text, List<Part> parts, Units.Weight unit) {
    List<Part> named = new ArrayList<>();
    Step previous = null;
    for (Part part : parts) {
      Step step = part.step;
      if (step == null) {
        step =
            previous == null ? (unit == Units.Weight.KG ? Step.KG : Step.LB) : previous.smaller();
        if (step == null) {
          throw bad(text, "has one number too many");
        }
        boolean aloneInPounds = previous == null && step == Step.LB;
        if (aloneInPounds && part.point) {
          // 8.4 is said for 8 lb 4 oz and for 8.4 lb; guessing would be wrong by half a pound.
          throw bad(text, "could be pounds and ounces or decimal pounds");
        }
      } else if (previous != null && previous.smaller() != step) {
        throw bad(text, "does not go from a unit to the next smaller one");
      }
      named.add(new Part(part.value, step, part.point));
      previous = step;
    }
    return named;
  }

  private static double sum(String text, List<Part> parts) {
    double grams = 0;
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      Step step = part.step;
      if (step == null) {
        throw new IllegalStateException("a part without unit");
      }
      if (i > 0 && !(part.value < step.inNextLarger)) {
        throw bad(text, "has " + step.inNextLarger + " or more " + step.plural);
      }
      grams += part.value * step.grams;
    }
    return grams;
  }

  private static IllegalArgumentException bad(String text, String what) {
    String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
    return new IllegalArgumentException("\"" + shown + "\" " + what + "; " + HOW);
  }

  /**
   * Returns a weight as text: "8 lb 4 oz" to the ounce, or "3.74 kg" to ten grams.
   *
   * @param grams 0 or more
   */
  public static String format(double grams, Units.Weight unit) {
    return unit == Units.Weight.KG ? kilograms(grams) : poundsAndOunces(grams);
  }

  /**
   * Returns a weight as text, in ounces and drams below one pound where the unit is pounds, and in
   * whole grams below one kilogram where it is kilograms: for single small fish.
   *
   * @param grams 0 or more
   */
  public static String formatFine(double grams, Units.Weight unit) {
    if (unit == Units.Weight.KG) {
      return Math.rint(grams) < 1000
          ? String.format(Locale.ROOT, "%d g", Math.round(grams))
          : kilograms(grams);
    }
    long drams = Math.round(grams / GRAMS_PER_DRAM);
    if (drams >= 256) {
      return poundsAndOunces(grams);
    }
    long ounces = drams / 16;
    long rest = drams % 16;
    if (ounces == 0) {
      return rest + " dr";
    }
    return rest == 0 ? ounces + " oz" : ounces + " oz " + rest + " dr";
  }

  /** Returns pounds and ounces to the nearest ounce, such as "8 lb 4 oz", "8 lb" or "12 oz". */
  private static String poundsAndOunces(double grams) {
    long ounces = Math.round(grams / GRAMS_PER_OUNCE);
    long pounds = ounces / 16;
    long rest = ounces % 16;
    if (pounds == 0) {
      return rest + " oz";
    }
    return rest == 0 ? pounds + " lb" : pounds + " lb " + rest + " oz";
  }

  private static String kilograms(double grams) {
    return String.format(Locale.ROOT, "%.2f kg", Math.rint(grams / 10) / 100);
  }

  private record Part(double value, @Nullable Step step, boolean point) {}

  private enum Step {
    LB(GRAMS_PER_POUND, 0, "pounds"),
    OZ(GRAMS_PER_OUNCE, 16, "ounces"),
    DR(GRAMS_PER_DRAM, 16, "drams"),
    KG(1000, 0, "kilograms"),
    G(1, 1000, "grams");

    final double grams;
    final int inNextLarger;
    final String plural;

    Step(double grams, int inNextLarger, String plural) {
      this.grams = grams;
      this.inNextLarger = inNextLarger;
      this.plural = plural;
    }

    @Nullable Step smaller() {
      return switch (this) {
        case LB -> OZ;
        case OZ -> DR;
        case KG -> G;
        case DR, G -> null;
      };
    }

    static @Nullable Step ofWord(String word) {
      return switch (word) {
        case "lb", "lbs", "pound", "pounds" -> LB;
        case "oz", "ozs", "ounce", "ounces" -> OZ;
        case "dr", "drs", "dram", "drams" -> DR;
        case "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms" -> KG;
        case "g", "gr", "gm", "gms", "gram", "grams" -> G;
        default -> null;
      };
    }
  }
}
