package org.fadeline.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The files in sample-sessions are what the generator writes, and every one of them reads well.
 *
 * <p>{@code mvn -q test -Dtest=SampleSessionsTest -Dfadeline.samples=write} writes them afresh.
 */
class SampleSessionsTest {
  private static final Path FOLDER = Path.of("sample-sessions");

  @BeforeAll
  static void writesAfreshWhereAsked() {
    if ("write".equals(System.getProperty("fadeline.samples"))) {
      SampleMaker.write(FOLDER);
    }
  }

  @Test
  void generatedSamplesAreReproducedByteForByte() throws IOException {
    for (var sample : SampleMaker.all().entrySet()) {
      byte[] kept = Files.readAllBytes(FOLDER.resolve(sample.getKey()));
      assertArrayEquals(SessionWriter.toBytes(sample.getValue()), kept, sample.getKey());
    }
  }

  @Test
  void everyJsonSampleReadsWithoutAProblemAndBackToTheSame() throws IOException {
    List<Path> files;
    try (Stream<Path> list = Files.list(FOLDER)) {
      files = list.filter(file -> file.toString().endsWith(".session.json")).toList();
    }
    assertEquals(5, files.size());
    for (Path file : files) {
      ReadResult result = SessionReader.read(file, ReadOptions.DEFAULT);
      assertEquals(List.of(), result.report().problems(), file.toString());
      Session session = result.session().orElseThrow();
      Session generated =
          SampleMaker.all().get(Objects.requireNonNull(file.getFileName()).toString());
      if (generated != null) {
        assertEquals(generated, session);
      }
    }
  }

  @Test
  void typedCsvSampleReadsWithoutAnError() {
    ReadResult result =
        SessionFiles.read(
            FOLDER.resolve("mixed-day-typed.csv"),
            ReadOptions.of(LocalDate.of(2026, 6, 20), ZoneId.of("Europe/London")));
    assertEquals(0, result.report().errors(), result.report().problems().toString());
    Session session = result.session().orElseThrow();
    assertEquals(3, session.lines().size());
    assertEquals(300 * 60_000L, session.match().lengthMillis());
    assertTrue(session.events().size() >= 40);
  }

  @Test
  void handWrittenMatchHoldsMovesAndFishAlone() {
    Session session =
        SessionReader.read(FOLDER.resolve("evening-moves-and-fish.session.json"))
            .session()
            .orElseThrow();
    Set<EventKind> kinds =
        Set.of(
            EventKind.ALL_IN,
            EventKind.ALL_OUT,
            EventKind.MOVE,
            EventKind.LANDED,
            EventKind.LOST,
            EventKind.NET);
    assertTrue(session.events().stream().map(SessionEvent::kind).allMatch(kinds::contains));
    assertEquals(40, session.events().size(), 3);
  }

  @Test
  void twoDaysOnWaterADifferInDecisions() {
    Session first =
        Objects.requireNonNull(SampleMaker.all().get("quillthorn-first-open.session.json"));
    Session second =
        Objects.requireNonNull(SampleMaker.all().get("quillthorn-second-open.session.json"));
    assertEquals(first.lines(), second.lines());
    assertEquals(first.occasion().venue(), second.occasion().venue());
    assertTrue(first.occasion().date().isBefore(second.occasion().date()));
    assertTrue(
        !firstCasts(first).equals(firstCasts(second)), "the lines are fished in another order");
  }

  private static List<String> firstCasts(Session session) {
    return session.events().stream()
        .filter(event -> event.kind() == EventKind.CAST)
        .map(event -> String.valueOf(event.lineId()))
        .distinct()
        .toList();
  }
}
