package org.fadeline.export;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** Names for exported files that every system takes. */
public final class FileNames {
  private static final int LONGEST = 80;
  private static final Set<String> RESERVED =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  private FileNames() {}

  /**
   * Returns a file name made from a title: no separators or control characters, no name that a
   * system keeps for a device, no dot or blank at either end, at most 80 characters before the
   * ending.
   *
   * @param title any text
   * @param ending such as "png", without the dot
   */
  public static String of(String title, String ending) {
    String name =
        Normalizer.normalize(title, Normalizer.Form.NFC)
            .replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Co}\\p{Cn}/\\\\:*?\"<>|]+", " ")
            .replaceAll("\\s+", " ");
    name = trimmed(name);
    if (name.length() > LONGEST) {
      int end = Character.isHighSurrogate(name.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
      name = trimmed(name.substring(0, end));
    }
    int dot = name.indexOf('.');
    String stem = (dot < 0 ? name : name.substring(0, dot)).strip().toLowerCase(Locale.ROOT);
    if (name.isEmpty()) {
      name = "figure";
    } else if (RESERVED.contains(stem)) {
      name = "figure " + name;
    }
    return name + "." + ending;
  }

  private static String trimmed(String name) {
    return name.replaceAll("^[. ]+|[. ]+$", "");
  }
}
