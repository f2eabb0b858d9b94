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
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.fadeline.io.TalkReader;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;

class TalkCommandTest extends CommandHarness {
  private static final String FIRST = "sample-sessions/quillthorn-first-open.session.json";
  private static final String SECOND = "sample-sessions/quillthorn-second-open.session.json";

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  private List<String> left() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aDraftIsWrittenAsATalkAndGoneOnWith() throws IOException {
    assertEquals(0, run("talk", FIRST, SECOND, "--out", at("t.talk.json"), "--units", "kg"), err());
    Talk talk = TalkReader.read(folder.resolve("t.talk.json")).talk().orElseThrow();
    assertEquals(2, talk.sources().size());
    assertTrue(
        talk.slides().stream()
            .anyMatch(s -> s.picture() != null && s.picture().sources().size() == 2));
    assertEquals(0, run("talk", at("t.talk.json"), "--out", at("t.pptx"), "--standard"), err());
    try (InputStream in = Files.newInputStream(folder.resolve("t.pptx"));
        XMLSlideShow show = new XMLSlideShow(in)) {
      assertEquals(Look.Shape.STANDARD.width(), show.getPageSize().width);
      assertEquals(
          talk.slides().stream().map(s -> s.title()).toList(),
          show.getSlides().stream().map(XSLFSlide::getTitle).toList());
    }
    assertEquals(0, run("talk", at("t.talk.json"), "--out", at("t.pdf")), err());
    try (PDDocument pages = Loader.loadPDF(folder.resolve("t.pdf").toFile())) {
      assertEquals(talk.slides().size(), pages.getNumberOfPages());
    }
  }

  @Test
  void aSeasonIsDraftedKeptAndWrittenFromTheTalkFile() throws IOException {
    Path season = Files.createDirectories(folder.resolve("season"));
    for (String session : List.of(FIRST, SECOND)) {
      Files.copy(Path.of(session), season.resolve(Path.of(session).getFileName()));
    }
    assertEquals(
        0, run("talk", FIRST, "--season", season.toString(), "--out", at("t.talk.json")), err());
    Talk talk = TalkReader.read(folder.resolve("t.talk.json")).talk().orElseThrow();
    assertEquals(season, talk.seasons().get(0).folder());
    assertEquals(2, talk.slides().stream().filter(TalkCommandTest::isOfSeason).count());
    assertEquals(0, run("talk", at("t.talk.json"), "--unnamed", "--out", at("t.pdf")), err());
    assertTrue(err().contains("of the season's 2 matches"), err());
    try (PDDocument pages = Loader.loadPDF(folder.resolve("t.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pages);
      assertTrue(text.contains("2 matches, day 1 to day 15  ·  limits at 95%"), text);
      assertFalse(text.contains("Quillthorn"), text);
    }
    assertEquals(
        1, run("talk", at("t.talk.json"), "--season", season.toString(), "--out", at("u.pdf")));
    Files.move(season, folder.resolve("elsewhere"));
    assertEquals(1, run("talk", at("t.talk.json"), "--out", at("u.pdf")));
    assertTrue(err().contains("no such folder"), err());
    assertEquals(List.of("elsewhere", "t.pdf", "t.talk.json"), left());
  }

  private static boolean isOfSeason(Slide slide) {
    return slide.picture() != null && slide.picture().kind().ofSeason();
  }

  @Test
  void whatIsLeftOutIsTold() {
    assertEquals(0, run("talk", FIRST, "--out", at("t.pdf"), "--unnamed", "--leave-out", "Ada"));
    assertTrue(err().contains("left out: the water's name “Quillthorn Water”"), err());
    assertTrue(err().contains("left out: the name “Ada”"), err());
  }

  @Test
  void picturesHaveTheSizeAskedFor() throws IOException {
    assertEquals(0, run("talk", FIRST, "--out", at("p"), "--width", "640", "--dpi", "300"), err());
    try (var files = Files.list(folder.resolve("p"))) {
      List<Path> all = files.sorted().toList();
      assertTrue(all.get(0).toString().endsWith(".png") && all.get(1).toString().endsWith(".svg"));
      BufferedImage image = ImageIO.read(all.get(0).toFile());
      assertEquals(640, image.getWidth());
      assertEquals(360, image.getHeight());
    }
    assertEquals(1, run("talk", FIRST, "--out", at("q"), "--width", "90000"));
    assertEquals(1, run("talk", FIRST, "--out", at("q"), "--dpi", "1"));
    assertFalse(Files.exists(folder.resolve("q")));
    assertEquals(List.of("p"), left());
  }

  @Test
  void aStretchIsReplayedAtASpeed() throws IOException {
    assertEquals(
        0,
        run(
            "talk",
            FIRST,
            "--out",
            at("t.gif"),
            "--from",
            "11:00",
            "--to",
            "11:10",
            "--speed",
            "600"),
        err());
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(folder.resolve("t.gif").toFile())) {
      reader.setInput(in);
      assertEquals(10, reader.getNumImages(true), "600 s at 600 times is 1 s of 10 pictures");
    } finally {
      reader.dispose();
    }
    assertEquals(1, run("talk", FIRST, "--out", at("u.gif"), "--from", "12:00", "--to", "11:00"));
    assertEquals(1, run("talk", FIRST, "--out", at("u.gif"), "--speed", "0"));
    assertEquals(List.of("t.gif"), left());
  }

  @Test
  void tablesAreWrittenBesideIt() throws IOException {
    assertEquals(0, run("talk", FIRST, "--out", at("t.pdf"), "--tables", at("tables")), err());
    assertTrue(Files.exists(folder.resolve("tables/lines.csv")));
  }

  @Test
  void whatIsWrongIsSaidWithItsPlaceAndNothingIsWritten() throws IOException {
    Path talk = folder.resolve("t.talk.json");
    Files.writeString(
        talk,
        """
        {"format": "fadeline-talk", "version": 1,
         "sessions": [{"id": "a", "file": "gone.session.json"}],
         "slides": [{"picture": {"kind": "peg", "of": ["b"]}}]}
        """);
    assertEquals(1, run("talk", talk.toString(), "--out", at("t.pdf")));
    assertTrue(err().contains("t.talk.json:3:"), err());
    assertTrue(err().contains("/slides/0/picture/of: there is no session"), err());
    Files.writeString(talk, Files.readString(talk).replace("[\"b\"]", "[\"a\"]"));
    assertEquals(1, run("talk", talk.toString(), "--out", at("t.pdf")));
    assertTrue(err().contains("gone.session.json"), err());
    assertEquals(1, run("talk", talk.toString(), FIRST, "--out", at("t.pdf")));
    assertTrue(err().contains("names its own sessions"), err());
    Files.writeString(
        talk,
        """
        {"format": "fadeline-talk", "version": 1,
         "sessions": [{"id": "a", "file": "%s"}],
         "slides": [{}, {"picture": {"kind": "rate", "of": ["a"], "lines": ["nobody"]}}]}
        """
            .formatted(Path.of(FIRST).toAbsolutePath()));
    assertEquals(1, run("talk", talk.toString(), "--out", at("t.pptx")));
    assertTrue(err().contains("slide 2: no such line: nobody"), err());
    assertEquals(List.of("t.talk.json"), left());
  }
}
