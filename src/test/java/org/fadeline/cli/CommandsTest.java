package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands as a caller sees them: exit codes, streams and files. */
class CommandsTest extends CommandHarness {
  private static final String SAMPLE = "sample-sessions/quillthorn-first-open.session.json";

  private static final String TYPED =
      """
      time,event,line,species,weight_g
      10:00,all-in,,,
      10:02,cast,short,,
      10:20,landed,short,carp,900
      10:44,move,short,,
      10:50,landed,long,carp,1400
      15:00,all-out,,,
      """;

  private Path typed() throws IOException {
    return Files.writeString(folder.resolve("typed.csv"), TYPED);
  }

  @Test
  void reviewPrintsWordsAndExitsWithZero() {
    assertEquals(0, run("review", SAMPLE));
    assertTrue(out().contains("What each line paid"), out());
    assertTrue(out().contains("keep 30 m from power lines"));
    assertEquals("", err());
  }

  @Test
  void reviewJsonIsJsonAloneOnStandardOutput() throws IOException {
    Path csv = typed();
    assertEquals(0, run("review", "--json", "-", csv.toString()));
    JsonNode root = JsonMapper.builder().build().readTree(out());
    assertEquals("fadeline-review", root.get("format").asString());
    assertEquals(2, root.get("session").get("fish").asInt());
    assertTrue(err().contains("no time zone"), err());
  }

  @Test
  void unitsChangeWordsOnly() throws IOException {
    Path csv = typed();
    run("review", "--units", "kg", "--json", "-", csv.toString());
    String kilograms = out();
    run("review", "--json", "-", csv.toString());
    JsonMapper mapper = JsonMapper.builder().build();
    assertEquals(mapper.readTree(out()).get("lines"), mapper.readTree(kilograms).get("lines"));
    assertEquals(2, run("review", "--units", "stone", csv.toString()));
  }

  @Test
  void aMissingFileIsTheInputsFault() {
    assertEquals(1, run("review", folder.resolve("none.session.json").toString()));
    assertTrue(err().contains("none.session.json:1:1: "), err());
    assertFalse(err().contains("Exception"), err());
    assertEquals(1, run("open", folder.resolve("none.session.json").toString()));
  }

  @Test
  void everyBadValueIsNamedWithRowAndField() throws IOException {
    Path csv = folder.resolve("bad.csv");
    Files.writeString(
        csv,
        "time,event,line,weight_g\n10:00,cast,short,\n25:61,landed,short,-3\n10:20,nibble,short,\n");
    assertEquals(1, run("check", csv.toString()));
    assertTrue(err().contains("bad.csv:3:"), err());
    assertTrue(err().contains("bad.csv:4:"), err());
    assertTrue(out().contains("errors"), out());
  }

  @Test
  void convertGoesBothWaysWithoutLoss() throws IOException {
    Path csv = folder.resolve("a.csv");
    Path json = folder.resolve("a.session.json");
    Path again = folder.resolve("b.csv");
    assertEquals(0, run("convert", SAMPLE, csv.toString()));
    assertEquals(0, run("convert", "--zone", "Europe/London", csv.toString(), json.toString()));
    assertEquals(0, run("convert", json.toString(), again.toString()));
    assertEquals(Files.readString(csv), Files.readString(again));
  }

  @Test
  void anUnwritableOutputIsTheOutputsFaultAndLeavesNothing() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    assertEquals(1, run("convert", SAMPLE, file.resolve("x.csv").toString()));
    assertTrue(err().contains("cannot be written"), err());
    assertEquals(1, run("convert", SAMPLE, folder.resolve("x.txt").toString()));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(file), left.toList());
    }
  }

  @Test
  void wrongUsageExitsWithTwo() {
    assertEquals(2, run("review"));
    assertEquals(2, run("dance"));
  }

  @Test
  void withoutADisplayOpenDoesTheJobAndSaysSo() {
    assertFalse(OpenCommand.mayHaveDisplay(Map.of()));
    assertEquals(0, run("open", SAMPLE));
    assertTrue(out().contains("No display here"), out());
    assertTrue(out().contains("figures written to"), out());
  }

  @Test
  void aTalkIsDraftedByFileEnding() throws IOException {
    Path slides = folder.resolve("talk.pptx");
    assertEquals(0, run("talk", SAMPLE, "--out", slides.toString()));
    try (InputStream in = Files.newInputStream(slides);
        XMLSlideShow show = new XMLSlideShow(in)) {
      assertTrue(show.getSlides().size() >= 5, "slides: " + show.getSlides().size());
    }
    assertEquals(1, run("talk", SAMPLE, "--out", folder.resolve("talk.doc").toString()));
    assertEquals(2, run("talk", SAMPLE));
  }

  @Test
  void figuresAreWrittenAndReadBack() throws IOException {
    Path figures = folder.resolve("figures");
    assertEquals(0, run("review", SAMPLE, "--figures", figures.toString()));
    assertTrue(out().contains("files of figures written to"), out());
    BufferedImage timeline = ImageIO.read(figures.resolve("timeline.png").toFile());
    assertEquals(1800, timeline.getWidth());
    assertTrue(Files.readString(figures.resolve("peg.svg")).contains("<title"));
    try (PDDocument page = Loader.loadPDF(figures.resolve("match-page.pdf").toFile())) {
      assertEquals(1, page.getNumberOfPages());
    }
  }
}
