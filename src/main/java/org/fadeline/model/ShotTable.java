package org.fadeline.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Split shot: what each size weighs, and what a shotting pattern weighs against its float.
 *
 * <p>The weights are the approximate trade table that suppliers print; makers differ by a few
 * percent.
 */
public final class ShotTable {
  private static final Map<String, Double> GRAMS = new LinkedHashMap<>();

  static {
    GRAMS.put("SSG", 1.6);
    GRAMS.put("AAA", 0.8);
    GRAMS.put("BB", 0.4);
    GRAMS.put("1", 0.3);
    GRAMS.put("4", 0.2);
    GRAMS.put("6", 0.1);
    GRAMS.put("8", 0.06);
    GRAMS.put("9", 0.05);
    GRAMS.put("10", 0.04);
    GRAMS.put("11", 0.03);
    GRAMS.put("12", 0.02);
    GRAMS.put("13", 0.01);
  }

  private static final Pattern GROUP =
      Pattern.compile(
          "\\s*(?:(?<count>\\d{1,3})\\s*(?:[x×*]|(?=\\s*(?:no\\b|ssg|aaa|bb)))\\s*)?"
              + "(?<no>no\\.?\\s*)?(?<size>ssg|aaa|bb|\\d{1,2})\\s*(?:shots?)?\\s*",
          Pattern.CASE_INSENSITIVE);

  private ShotTable() {}

  /** Returns the sizes the table knows, largest first: "SSG", "AAA", "BB", "1", …, "13". */
  public static List<String> sizes() {
    return List.copyOf(GRAMS.keySet());
  }

  /**
   * Reads a shotting pattern such as "6x8 + 3x12", "19×No.8 + 3×No.12" or "2 BB, 4 No.8".
   *
   * @throws IllegalArgumentException if a part is not a count and a size of the table; the message
   *     says which
   */
  public static Load load(String pattern) {
    List<Shot> shots = new ArrayList<>();
    for (String part : pattern.split("[+,;]|\\band\\b", -1)) {
      Matcher matcher = GROUP.matcher(part);
      if (!matcher.matches() || bareNumber(matcher)) {
        throw new IllegalArgumentException(
            "\"" + part.strip() + "\" is not a count and a size of shot; write it as 6x8 + 3x12");
      }
      String count = matcher.group("count");
      String size = matcher.group("size").toUpperCase(Locale.ROOT);
      Double grams = GRAMS.get(size);
      if (grams == null) {
        throw new IllegalArgumentException(
            "no weight is known for size "
                + size
                + "; the table has "
                + String.join(", ", sizes()));
      }
      shots.add(new Shot(count == null ? 1 : Integer.parseInt(count), size, grams));
    }
    return new Load(shots);
  }

  /** A number alone could be a count or a size. */
  private static boolean bareNumber(Matcher matcher) {
    return matcher.group("count") == null
        && matcher.group("no") == null
        && Character.isDigit(matcher.group("size").charAt(0));
  }

  /**
   * Shots of one size.
   *
   * @param count how many
   * @param size such as "BB" or "8"
   * @param gramsEach weight of one, grams
   */
  public record Shot(int count, String size, double gramsEach) {}

  /**
   * All the shot of a pattern.
   *
   * @param shots groups in the order written
   */
  public record Load(List<Shot> shots) {
    /** Copies the list. */
    public Load {
      shots = List.copyOf(shots);
    }

    /** Returns the weight of all shots, grams. */
    public double grams() {
      // Hundredths of a gram, so that 19 × 0.06 + 3 × 0.02 is 1.20 and not 1.2000000000000002.
      long hundredths = 0;
      for (Shot shot : shots) {
        hundredths += shot.count * Math.round(shot.gramsEach * 100);
      }
      return hundredths / 100.0;
    }

    /**
     * Returns how much more the float takes than this load, grams; negative where the load would
     * sink it.
     *
     * @param floatG what the float takes, grams
     */
    public double spareFor(double floatG) {
      return floatG - grams();
    }
  }
}
