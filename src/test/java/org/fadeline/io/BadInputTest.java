package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every kind of bad input ends in a message that names the file, the place and what to do, in
 * bounded time and memory, with the file as it was.
 */
class BadInputTest {
  private static final ReadOptions OPTIONS =
      ReadOptions.of(LocalDate.of(2026, 8, 15), Sessions.LONDON);

  /** Far above what any of them takes; a reader that hangs is stopped here. */
  private static final Duration LONG = Duration.ofSeconds(60);

  @TempDir Path folder;

  static Stream<BadInput> kinds() {
    return Stream.of(BadInput.anyFile(), BadInput.json(), BadInput.domain(), BadInput.csv())
        .flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void endsInAMessageWithPlaceAndRemedy(BadInput bad) throws IOException {
    byte[] bytes = bad.bytes();
    Path file = Files.write(folder.resolve("bad" + bad.ending()), bytes);
    long[] allocated = {0};
    ReadResult result =
        assertTimeoutPreemptively(
            LONG,
            () -> {
              ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
              long before = threads.getCurrentThreadAllocatedBytes();
              ReadResult read = SessionFiles.read(file, OPTIONS);
              allocated[0] = threads.getCurrentThreadAllocatedBytes() - before;
              return read;
            });
    String listed = SessionJsonTest.listed(result);
    assertWellFormed(result, "bad" + bad.ending());
    assertTrue(listed.contains(bad.expected()), () -> bad.expected() + " not in " + listed);
    assertEquals(bad.readable(), result.session().isPresent(), listed);
    if (!bad.readable()) {
      assertTrue(result.report().hasErrors(), listed);
    }
    long most = 64_000_000L + 800L * bytes.length;
    assertTrue(allocated[0] < most, () -> allocated[0] + " bytes for " + bytes.length);
    assertArrayEquals(bytes, Files.readAllBytes(file));
  }

  private static void assertWellFormed(ReadResult result, String name) {
    assertFalse(result.report().problems().isEmpty(), "no message");
    assertTrue(result.report().problems().size() <= ImportReport.LIMIT);
    for (Problem problem : result.report().problems()) {
      String text = problem.toString();
      assertEquals(name, problem.file());
      assertTrue(problem.row() >= 1 && problem.column() >= 1, text);
      assertTrue(text.startsWith(name + ":" + problem.row() + ":" + problem.column() + ": "), text);
      assertFalse(problem.what().isBlank() || problem.whatToDo().isBlank(), text);
      assertTrue(text.length() < 700, text);
      assertFalse(text.contains("Exception") || text.contains("tools.jackson"), text);
      assertTrue(text.codePoints().noneMatch(BadInputTest::isHidden), text);
    }
  }

  private static boolean isHidden(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
  }

  @Test
  void theGoodOnesAreGood() throws IOException {
    for (String ending : List.of(BadInput.JSON, BadInput.CSV)) {
      String text = ending.equals(BadInput.JSON) ? BadInput.GOOD_JSON : BadInput.GOOD_CSV;
      Path file = Files.writeString(folder.resolve("good" + ending), text);
      ReadResult result = SessionFiles.read(file, OPTIONS);
      assertEquals(List.of(), result.report().problems());
      Session session = result.session().orElseThrow();
      // Mixed line ends change nothing.
      Files.writeString(file, text.replaceFirst("\n", "\r\n").replaceFirst("\n(?=.*\n$)", "\r"));
      ReadResult mixed = SessionFiles.read(file, OPTIONS);
      assertEquals(session.events(), mixed.session().orElseThrow().events());
    }
  }

  @Test
  void negativeZeroIsZero() throws IOException {
    String json = BadInput.GOOD_JSON.replace("850", "-0.0");
    Session session = SessionJsonTest.sessionOf(SessionJsonTest.read(json));
    assertTrue(SessionWriter.toJson(session).contains("\"weightG\": 0,"));
  }

  @Test
  void everyFlippedBitOfASavedFileIsNoticed() {
    byte[] good = SessionWriter.toBytes(Sessions.small());
    Random random = new Random(2);
    for (int i = 0; i < 3000; i++) {
      byte[] flipped = good.clone();
      int at = random.nextInt(good.length);
      flipped[at] ^= (byte) (1 << random.nextInt(8));
      ReadResult result = SessionReader.parse("x", flipped, ReadOptions.DEFAULT);
      assertWellFormed(result, "x");
    }
  }

  @Test
  void flippedBitsOfATableNeverBreakTheReader() {
    byte[] good = EventCsv.write(Sessions.small()).getBytes(StandardCharsets.UTF_8);
    Random random = new Random(3);
    for (int i = 0; i < 3000; i++) {
      byte[] flipped = good.clone();
      for (int j = 0; j <= i % 3; j++) {
        flipped[random.nextInt(good.length)] ^= (byte) (1 << random.nextInt(8));
      }
      ImportReport.Collector problems = new ImportReport.Collector();
      String text = FileText.decode("x.csv", flipped, problems);
      ReadResult result =
          text == null
              ? ReadResult.refused(problems.report())
              : EventCsv.parse("x.csv", text, OPTIONS);
      assertTrue(result.session().isPresent() || result.report().hasErrors());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {BadInput.JSON, BadInput.CSV})
  void whatIsNoPlainFileIsRefused(String ending) throws Exception {
    Path large = folder.resolve("large" + ending);
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(FileText.LARGEST + 1);
    }
    assertRefused(large, "larger than 64 MB");
    assertRefused(Files.createDirectory(folder.resolve("folder" + ending)), "this is a folder");
    assertRefused(folder.resolve("none" + ending), "there is no such file");
    Path one = folder.resolve("one" + ending);
    Path two = folder.resolve("two" + ending);
    Files.createSymbolicLink(one, two);
    Files.createSymbolicLink(two, one);
    assertRefused(one, "leads round in a circle");
    Path pipe = folder.resolve("pipe" + ending);
    boolean made = false;
    try {
      made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    } catch (IOException noSuchCommand) {
      // as on Windows
    }
    Assumptions.assumeTrue(made, "this machine makes no pipes");
    assertRefused(pipe, "this is a pipe or device");
  }

  private static void assertRefused(Path file, String expected) {
    ReadResult result = assertTimeoutPreemptively(LONG, () -> SessionFiles.read(file, OPTIONS));
    assertTrue(result.session().isEmpty());
    assertWellFormed(result, String.valueOf(file.getFileName()));
    String listed = SessionJsonTest.listed(result);
    assertTrue(listed.contains(expected), listed);
  }

  @Test
  void aFileThatChangesWhileItIsReadIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("x.session.json"), BadInput.GOOD_JSON);
    ImportReport.Collector problems = new ImportReport.Collector();
    String text =
        FileText.read(
            file,
            problems,
            () -> {
              try {
                Files.writeString(file, BadInput.GOOD_JSON + " ");
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    assertEquals(null, text);
    assertTrue(problems.report().problems().get(0).toString().contains("changed while it was"));
  }

  @Test
  void anUnknownEndingSaysWhichAreKnown() throws IOException {
    Path file = Files.writeString(folder.resolve("x.doc"), "x");
    assertRefused(file, "choose a file that ends in .session.json, .csv");
  }
}
