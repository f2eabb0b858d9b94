package org.fadeline.ui;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fadeline.ui.control.Say;

/** The sample sessions that came with the program. */
final class Samples {
  private static final String FOLDER = "sample-sessions";

  private Samples() {}

  /**
   * One sample.
   *
   * @param path its file
   * @param title what to call it
   */
  record Sample(Path path, String title) {}

  /** Returns the samples found beside the program or in the working folder, by name. */
  static List<Sample> find() {
    for (Path folder : places()) {
      List<Sample> found = in(folder);
      if (!found.isEmpty()) {
        return found;
      }
    }
    return List.of();
  }

  private static Set<Path> places() {
    Set<Path> places = new LinkedHashSet<>();
    places.add(Path.of(FOLDER).toAbsolutePath());
    CodeSource source = Samples.class.getProtectionDomain().getCodeSource();
    if (source != null) {
      try {
        Path folder = Path.of(source.getLocation().toURI()).getParent();
        for (int up = 0; folder != null && up < 3; up++) {
          places.add(folder.resolve(FOLDER));
          folder = folder.getParent();
        }
      } catch (URISyntaxException | IllegalArgumentException notAFile) {
        return places;
      }
    }
    return places;
  }

  static List<Sample> in(Path folder) {
    List<Sample> found = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        files
            .filter(SessionPaths::looksLikeASession)
            .sorted()
            .forEach(file -> found.add(new Sample(file, title(file))));
      } catch (IOException unreadable) {
        return List.of();
      }
    }
    return found;
  }

  private static String title(Path file) {
    return Say.capital(SessionPaths.bareName(file).replace('-', ' ').replace('_', ' '));
  }
}
