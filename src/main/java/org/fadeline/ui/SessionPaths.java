package org.fadeline.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The files that hold sessions, by their endings. */
final class SessionPaths {
  static final List<String> ENDINGS = List.of(".session.json", ".csv");

  private SessionPaths() {}

  static boolean looksLikeASession(Path path) {
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(name::endsWith);
  }

  static String bareName(Path path) {
    String name = String.valueOf(path.getFileName());
    for (String ending : ENDINGS) {
      if (name.toLowerCase(Locale.ROOT).endsWith(ending)) {
        return name.substring(0, name.length() - ending.length());
      }
    }
    return name;
  }
}
