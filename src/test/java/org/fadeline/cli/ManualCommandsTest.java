package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every command line shown in the manual is run as written, its files in a folder of the test. */
class ManualCommandsTest extends CommandHarness {
  private static final String START = "java -jar target/fadeline.jar ";

  /** Options whose value is a place to write to. */
  private static final Set<String> PLACES = Set.of("--out", "--figures", "--tables", "--json");

  /** Files a reader has and the program's folder has not. */
  private static final String SAMPLE = "sample-sessions/quillthorn-first-open.session.json";

  private static List<String> shown() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> pages = Files.list(Path.of("docs/manual"))) {
      for (Path page : pages.filter(p -> p.toString().endsWith(".md")).sorted().toList()) {
        Files.readAllLines(page).stream().filter(l -> l.startsWith(START)).forEach(lines::add);
      }
    }
    return lines;
  }

  private String[] arguments(String line) {
    List<String> words = List.of(line.substring(START.length()).split(" ", -1));
    List<String> arguments = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      String before = i == 0 ? "" : words.get(i - 1);
      boolean place = PLACES.contains(before) && !word.equals("-");
      boolean file = !before.startsWith("--") && word.contains(".") && !Files.exists(Path.of(word));
      arguments.add(place || file ? folder.resolve(word).toString() : word);
    }
    return arguments.toArray(String[]::new);
  }

  @Test
  void everyCommandShownIsDone() throws IOException {
    Files.copy(Path.of(SAMPLE), folder.resolve("mine.session.json"));
    Files.copy(Path.of(SAMPLE), folder.resolve("friends.session.json"));
    List<String> shown = shown();
    assertFalse(shown.isEmpty());
    for (String line : shown) {
      if (!line.startsWith(START + "open")) {
        assertEquals(0, run(arguments(line)), line + "\n" + err());
      }
    }
  }
}
