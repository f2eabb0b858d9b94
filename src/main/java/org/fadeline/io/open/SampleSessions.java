package org.fadeline.io.open;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fadeline.io.SessionNames;

/** The sample sessions that come with the program. */
public final class SampleSessions {
  /** Name of the folder they lie in, in the working folder or beside the program. */
  public static final String FOLDER = "sample-sessions";

  private static final int FOLDERS_UP = 3;

  private SampleSessions() {}

  /** Returns the samples found in the working folder or beside the program, by name. */
  public static List<Path> find() {
    for (Path folder : places()) {
      List<Path> found = in(folder);
      if (!found.isEmpty()) {
        return found;
      }
    }
    return List.of();
  }

  /** Returns the sample shown where none is chosen. */
  public static Optional<Path> first() {
    List<Path> all = find();
    return all.stream()
        .filter(p -> name(p).startsWith("quillthorn"))
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private static Set<Path> places() {
    Set<Path> places = new LinkedHashSet<>();
    places.add(Path.of(FOLDER).toAbsolutePath());
    CodeSource source = SampleSessions.class.getProtectionDomain().getCodeSource();
    if (source != null) {
      try {
        Path folder = Path.of(source.getLocation().toURI()).getParent();
        for (int up = 0; folder != null && up < FOLDERS_UP; up++) {
          places.add(folder.resolve(FOLDER));
          folder = folder.getParent();
        }
      } catch (URISyntaxException | IllegalArgumentException notAFile) {
        return places;
      }
    }
    return places;
  }

  private static List<Path> in(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(SessionNames::isSession).sorted().toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  private static String name(Path path) {
    return String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
  }
}
