package org.fadeline.io;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What files that hold sessions are called. */
public final class SessionNames {
  /** Ending of a session in the program's own format. */
  public static final String ENDING = ".session.json";

  private static final List<String> ENDINGS = List.of(ENDING, ".csv");

  private SessionNames() {}

  /** Returns whether a file is called as a session or an event table is, in any case. */
  public static boolean isSession(Path file) {
    String name = FileText.nameOf(file).toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(name::endsWith);
  }

  /** Returns a file's name without the ending of a session or an event table. */
  public static String bare(Path file) {
    String name = FileText.nameOf(file);
    for (String ending : ENDINGS) {
      if (name.toLowerCase(Locale.ROOT).endsWith(ending)) {
        return name.substring(0, name.length() - ending.length());
      }
    }
    return name;
  }

  /** Returns a path with the ending of a session, which it gets where it lacks it. */
  public static Path whole(Path path) {
    String name = FileText.nameOf(path);
    return name.toLowerCase(Locale.ROOT).endsWith(ENDING)
        ? path
        : path.resolveSibling(name + ENDING);
  }
}
