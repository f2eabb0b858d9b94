package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code compare} as a caller sees it. */
class CompareCommandTest extends CommandHarness {
  private static final String FIRST = "sample-sessions/quillthorn-first-open.session.json";
  private static final String SECOND = "sample-sessions/evening-moves-and-fish.session.json";

  @Test
  void jsonAloneOnStandardOutputWithTheAlignmentAsked() {
    for (String mode : new String[] {"clock", "all-in", "first-fed"}) {
      assertEquals(0, run("compare", FIRST, FIRST, "--json", "-", "--align", mode));
      JsonNode root = JsonMapper.builder().build().readTree(out());
      assertEquals(mode, root.get("alignment").get("mode").asString());
      assertEquals(43, root.get("first").get("fish").asInt());
    }
  }

  @Test
  void laidByAChosenEventOrByHandTheModeIsStated() {
    var read = SessionFiles.read(Path.of(FIRST), ReadOptions.DEFAULT);
    String id = read.session().orElseThrow().events().get(5).id();
    assertEquals(0, run("compare", FIRST, FIRST, "--json", "-", "--events", id + "=" + id), err());
    JsonNode event = JsonMapper.builder().build().readTree(out()).get("alignment");
    assertEquals("event", event.get("mode").asString());
    assertEquals(event.get("firstOrigin"), event.get("secondOrigin"));
    assertTrue(event.get("stated").asString().contains("chosen event"), event::toString);
    assertEquals(0, run("compare", FIRST, FIRST, "--json", "-", "--shift", "-7.5"), err());
    JsonNode hand = JsonMapper.builder().build().readTree(out()).get("alignment");
    assertEquals("by-hand", hand.get("mode").asString());
    assertTrue(
        hand.get("stated").asString().contains("all in 7.5 min before the first's"),
        hand::toString);
    assertEquals(2, run("compare", FIRST, FIRST, "--events", "none=" + id));
    assertTrue(err().contains("no event none"), err());
    assertEquals(2, run("compare", FIRST, FIRST, "--events", id));
    assertEquals(2, run("compare", FIRST, FIRST, "--shift", "2000"));
    assertEquals(2, run("compare", FIRST, FIRST, "--shift", "1", "--align", "clock"));
  }

  @Test
  void wordsAndAFileOfJsonTogether() throws IOException {
    Path json = folder.resolve("deep/compare.json");
    assertEquals(0, run("compare", FIRST, SECOND, "--json", json.toString(), "--units", "kg"));
    assertTrue(out().contains("What differed most"), out());
    assertTrue(out().contains(" kg"), out());
    JsonNode root = JsonMapper.builder().build().readTree(Files.readString(json));
    assertEquals("fadeline-comparison", root.get("format").asString());
  }

  @Test
  void figuresAreWrittenBesideJsonAlone() throws IOException {
    Path figures = folder.resolve("figures");
    assertEquals(
        0, run("compare", FIRST, SECOND, "--json", "-", "--figures", figures.toString()), err());
    JsonMapper.builder().build().readTree(out());
    assertTrue(err().contains("10 figures written to "), err());
    assertTrue(Files.readString(figures.resolve("compare-catch.svg")).contains("<svg"));
    assertTrue(Files.size(figures.resolve("compare-timelines.png")) > 20_000);
    Path blocked = Files.writeString(folder.resolve("file"), "");
    assertEquals(1, run("compare", FIRST, SECOND, "--figures", blocked.toString()));
  }

  @Test
  void linesArePairedByHand() {
    assertEquals(
        0, run("compare", FIRST, FIRST, "--pair", "short=Left Edge", "--json", "-"), err());
    JsonNode pair = JsonMapper.builder().build().readTree(out()).get("pairs").get(0);
    assertEquals("hand", pair.get("pairedBy").asString());
    assertEquals("left edge", pair.get("second").get("name").asString().toLowerCase(Locale.ROOT));
  }

  @Test
  void wrongUsageAndMissingFilesAreToldApart() {
    assertEquals(2, run("compare", FIRST));
    assertEquals(2, run("compare", FIRST, SECOND, "--align", "noon"));
    assertEquals(2, run("compare", FIRST, SECOND, "--pair", "short"));
    assertEquals(2, run("compare", FIRST, SECOND, "--pair", "pond=short"));
    assertTrue(err().contains("has no line 'pond'"), err());
    assertEquals(1, run("compare", FIRST, folder.resolve("none.csv").toString()));
    assertTrue(err().contains("none.csv:1:1: "), err());
    assertFalse(err().contains("Exception"), err());
  }
}
