package org.fadeline.ui.help;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The libraries the program is built with and their licences, as the build listed them. */
public final class Libraries {
  private static final String PLACE = "/org/fadeline/libraries.tsv";

  private Libraries() {}

  /**
   * One library.
   *
   * @param name what its makers call it
   * @param version the version built in
   * @param licence its licences, in its makers' words
   */
  public record Library(String name, String version, String licence) {}

  /**
   * Returns every library by name; none where the program runs from classes that were compiled
   * without the build's list.
   *
   * @throws UncheckedIOException if the program's own list cannot be read
   */
  public static List<Library> all() {
    try (InputStream in = Libraries.class.getResourceAsStream(PLACE)) {
      return in == null ? List.of() : read(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Library> read(InputStream in) {
    return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
        .lines()
        .map(Libraries::library)
        .filter(Objects::nonNull)
        .sorted(Comparator.comparing(Library::name, String.CASE_INSENSITIVE_ORDER))
        .toList();
  }

  private static @Nullable Library library(String line) {
    String[] cells = line.split("\t", -1);
    return cells.length == 3 ? new Library(cells[0], cells[1], cells[2]) : null;
  }
}
