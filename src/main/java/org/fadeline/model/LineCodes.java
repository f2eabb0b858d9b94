package org.fadeline.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Short codes for lines, for writing by pencil: two or three signs taken from the name, such as
 * {@code sh} for shallow and {@code p11} for pole 11 m. The bank sheet prints them and the
 * shorthand reads them.
 */
public final class LineCodes {
  /** Words of notes and units that a code must not be taken for. */
  private static final Set<String> TAKEN =
      Set.of(
          "lb", "lbs", "oz", "dr", "kg", "g", "ml", "cm", "mm", "ft", "m", "s", "in", "on", "of",
          "to", "at", "by", "no", "all", "out", "off", "fed", "net", "and", "the", "a", "an", "up",
          "it", "is", "so", "as", "we", "me", "my", "or", "if", "do", "go", "us", "am", "be", "f1",
          "bb", "one", "two", "six", "ten", "min", "sec", "hr", "pot", "cup");

  private LineCodes() {}

  /**
   * Returns a code for each line, by its id, all different and none the name of another line.
   *
   * @param lines in their order, which decides who gets the shorter code
   */
  public static Map<String, String> of(List<Line> lines) {
    Set<String> used = new HashSet<>(TAKEN);
    lines.forEach(line -> used.add(line.name().toLowerCase(Locale.ROOT)));
    lines.forEach(line -> used.add(line.id().toLowerCase(Locale.ROOT)));
    Map<String, String> codes = new LinkedHashMap<>();
    for (Line line : lines) {
      String code = candidates(line.name()).stream().filter(used::add).findFirst().orElse(null);
      for (int i = 1; code == null; i++) {
        code = used.add("z" + i) ? "z" + i : null;
      }
      codes.put(line.id(), code);
    }
    return codes;
  }

  private static List<String> candidates(String name) {
    List<String> words = new ArrayList<>();
    for (String word : name.toLowerCase(Locale.ROOT).split("[^a-z0-9]+", -1)) {
      if (!word.isEmpty() && !word.equals("m") && !word.equals("line")) {
        words.add(word);
      }
    }
    List<String> all = new ArrayList<>();
    if (words.isEmpty() || !Character.isLetter(words.get(0).charAt(0))) {
      return all;
    }
    String first = words.get(0);
    if (words.size() > 1) {
      String second = words.get(1);
      all.add(
          first.charAt(0)
              + (Character.isDigit(second.charAt(0)) ? second : second.substring(0, 1)));
    }
    for (int i = 1; i < first.length(); i++) {
      all.add("" + first.charAt(0) + first.charAt(i));
    }
    return all;
  }
}
