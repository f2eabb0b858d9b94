package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.fadeline.io.BadInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Every kind of bad input through every command that reads a file: exit code 1, a message with
 * file, place and remedy, nothing written and the file as it was. A build takes each kind through
 * {@code check}, {@code convert} and one more command in turn; {@code -Dbad.all=true} takes every
 * kind through all.
 */
class BadInputCommandTest extends CommandHarness {
  private static final boolean ALL = Boolean.getBoolean("bad.all");
  private static final Duration LONG = Duration.ofSeconds(60);
  private static final String[] FRAME = {"--date", "2026-08-15", "--zone", "Europe/London"};

  private Path good = Path.of("good.session.json");

  @BeforeEach
  void writeAGoodOne() throws IOException {
    good = Files.writeString(folder.resolve("good.session.json"), BadInput.GOOD_JSON);
  }

  /** Returns the commands that read a session, each refusing one that cannot be used. */
  private List<List<String>> others(Path bad) {
    String out = folder.resolve("out").toString();
    return List.of(
        List.of("review", bad.toString()),
        List.of("review", bad.toString(), "--json", out + ".json"),
        List.of("compare", good.toString(), bad.toString(), "--json", out + ".json"),
        List.of("compare", bad.toString(), good.toString()),
        List.of("talk", bad.toString(), "--out", out + ".pptx"),
        List.of("open", bad.toString()));
  }

  private int inTime(List<String> command) {
    List<String> all = new ArrayList<>(command);
    if (!command.get(0).equals("open") && !command.get(0).equals("season")) {
      all.addAll(List.of(FRAME));
    }
    return assertTimeoutPreemptively(LONG, () -> run(all.toArray(String[]::new)));
  }

  private void assertRefused(List<String> command, BadInput bad, Path file) throws IOException {
    String what = bad + " through " + command;
    int exit = inTime(command);
    String told = err();
    assertEquals(1, exit, () -> what + ": " + told);
    String name = file.getFileName().toString();
    assertTrue(
        told.lines().anyMatch(l -> l.matches("(?:.*/)?\\Q" + name + "\\E:\\d+:\\d+: .+; .+")),
        () -> what + ": " + told);
    assertFalse(told.contains("Exception") || told.contains("\tat "), () -> what + ": " + told);
    assertArrayEquals(bad.bytes(), Files.readAllBytes(file), what);
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(), left.filter(p -> isOutput(p)).toList(), what);
    }
  }

  private static boolean isOutput(Path path) {
    return path.getFileName().toString().startsWith("out");
  }

  @Test
  void everyCommandRefusesWhatCannotBeUsed() throws IOException {
    int turn = 0;
    int refused = 0;
    for (BadInput bad : BadInput.all()) {
      Path file = Files.write(folder.resolve("bad" + bad.ending()), bad.bytes());
      if (!bad.readable()) {
        assertRefused(List.of("check", file.toString()), bad, file);
        assertRefused(
            List.of("convert", file.toString(), folder.resolve("out.csv").toString()), bad, file);
        List<List<String>> others = others(file);
        for (int i = 0; i < others.size(); i++) {
          if (ALL || i == turn % others.size()) {
            assertRefused(others.get(i), bad, file);
          }
        }
        turn++;
        refused++;
      }
      Files.delete(file);
    }
    assertTrue(refused > 80, refused + " kinds were refused");
  }

  @Test
  void whatCanBeUsedInPartIsToldAndConverted() throws IOException {
    AtomicInteger told = new AtomicInteger();
    for (BadInput bad : BadInput.all()) {
      if (bad.readable()) {
        Path file = Files.write(folder.resolve("bad" + bad.ending()), bad.bytes());
        assertEquals(0, inTime(List.of("check", file.toString())), bad + ": " + err());
        assertTrue(err().contains("bad" + bad.ending() + ":"), bad + ": " + err());
        Path out = folder.resolve("out.csv");
        assertEquals(0, inTime(List.of("convert", file.toString(), out.toString())), err());
        assertTrue(Files.size(out) > 0, bad.toString());
        assertArrayEquals(bad.bytes(), Files.readAllBytes(file), bad.toString());
        Files.delete(out);
        Files.delete(file);
        told.incrementAndGet();
      }
    }
    assertTrue(told.get() > 10, told + " kinds were read");
  }

  @Test
  void aSeasonListsItsBadFilesAndGoesOn() throws IOException {
    Path season = Files.createDirectory(folder.resolve("season"));
    Files.writeString(season.resolve("good.session.json"), BadInput.GOOD_JSON);
    int number = 0;
    for (BadInput bad : BadInput.all()) {
      if (!bad.readable() && bad.ending().equals(BadInput.JSON) && (ALL || number < 15)) {
        Files.write(season.resolve("bad" + ++number + bad.ending()), bad.bytes());
      }
    }
    assertEquals(0, inTime(List.of("season", season.toString())), err());
    for (int i = 1; i <= number; i++) {
      assertTrue(err().contains("bad" + i + ".session.json"), "bad" + i + ": " + err());
    }
    assertFalse(err().contains("Exception"), err());
  }

  @Test
  void badMappingsAndTalksAreRefusedWithTheirPlace() throws IOException {
    Path table = Files.writeString(folder.resolve("good.csv"), BadInput.GOOD_CSV);
    for (BadInput bad :
        Stream.concat(BadInput.anyFile().stream(), BadInput.json().stream()).toList()) {
      if (bad.ending().equals(BadInput.JSON)) {
        Path map = Files.write(folder.resolve("bad.map.json"), bad.bytes());
        String out = folder.resolve("out.session.json").toString();
        assertRefused(List.of("convert", table.toString(), out, "--map", map.toString()), bad, map);
        Path talk = Files.write(folder.resolve("bad.talk.json"), bad.bytes());
        String slides = folder.resolve("out.pptx").toString();
        assertRefused(List.of("talk", talk.toString(), "--out", slides), bad, talk);
      }
    }
  }
}
