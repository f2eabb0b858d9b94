package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.fadeline.io.SessionReader;
import org.junit.jupiter.api.Test;

class MergeCommandTest extends CommandHarness {
  private static final String SAMPLE = "sample-sessions/brackwith-spring.session.json";

  @Test
  void aRecordWithItsOwnCopyIsTheRecord() throws Exception {
    Path copy = Files.copy(Path.of(SAMPLE), folder.resolve("friend.session.json"));
    Path out = folder.resolve("both.session.json");
    assertEquals(0, run("merge", SAMPLE, copy.toString(), "--out", out.toString()), err());
    assertTrue(out().contains("0.0 s ahead"), out());
    assertTrue(out().contains("0 clashes"), out());
    assertEquals(
        SessionReader.read(Path.of(SAMPLE)).session().orElseThrow().events(),
        SessionReader.read(out).session().orElseThrow().events());
  }

  @Test
  void neverWritesOverARecord() throws Exception {
    Path copy = Files.copy(Path.of(SAMPLE), folder.resolve("friend.session.json"));
    byte[] before = Files.readAllBytes(copy);
    assertEquals(1, run("merge", SAMPLE, copy.toString(), "--out", copy.toString()));
    assertTrue(err().contains("one of the two records"), err());
    assertEquals(Arrays.hashCode(before), Arrays.hashCode(Files.readAllBytes(copy)));
  }

  @Test
  void refusesAnotherEnding() {
    Path out = folder.resolve("both.csv");
    assertEquals(1, run("merge", SAMPLE, SAMPLE, "--out", out.toString()));
    assertFalse(Files.exists(out));
  }
}
