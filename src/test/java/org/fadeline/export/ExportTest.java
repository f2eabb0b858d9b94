package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFPictureShape;
import org.apache.poi.xslf.usermodel.XSLFShape;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFTextParagraph;
import org.apache.poi.xslf.usermodel.XSLFTextRun;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Reviewer;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.QuarterHourFigure;
import org.fadeline.figure.SlideFigure;
import org.fadeline.figure.Theme;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.presentationml.x2006.main.CTPicture;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ExportTest {
  private static final TalkExport.Pictures SVG =
      new TalkExport.Pictures(
          Set.of(TalkExport.Picture.SVG), TalkExport.Size.usual(Look.Shape.WIDE));

  @TempDir Path folder;

  private final Review review = Fixtures.carpMatch();
  private final FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
  private final Figure figure = FigureSheet.of(new QuarterHourFigure(review, style), review);

  private final TalkMaterial material = new TalkMaterial(Map.of("s1", review));

  private Talk talk(Look.Shape shape, boolean named) {
    return TalkDraft.of(
        List.of(new Source("s1", Path.of("s1"))), material, Look.USUAL.withShape(shape), named);
  }

  private List<Path> left() throws IOException {
    try (var files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void aPngHasItsSizeDensityAndPicture() throws IOException {
    Path file = folder.resolve("a.png");
    FigureExport.png(figure, file, new FigureExport.Raster(800, 400, 96));
    BufferedImage image = ImageIO.read(file.toFile());
    assertEquals(800, image.getWidth());
    assertEquals(400, image.getHeight());
    int hue = Theme.LIGHT.line(0).getRGB();
    int[] pixels = image.getRGB(0, 0, 800, 400, null, 0, 800);
    assertTrue(Arrays.stream(pixels).filter(p -> p == hue).count() > 200, "bars in the line's hue");
    String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    assertTrue(bytes.contains("pHYs") && bytes.contains("Catch by quarter-hour"));
  }

  @Test
  void aPictureTooLargeIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new FigureExport.Raster(100_000, 100_000, 96));
    assertThrows(
        IllegalArgumentException.class, () -> new FigureExport.Raster(800, 600, Double.NaN));
  }

  @Test
  void anSvgHasTitleDescriptionAndNoTextThatNeedsAFont() throws Exception {
    Path file = folder.resolve("a.svg");
    FigureExport.svg(figure, file, 900, 500);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setNamespaceAware(true);
    Document document = factory.newDocumentBuilder().parse(file.toFile());
    Element root = document.getDocumentElement();
    assertEquals("svg", root.getLocalName());
    assertEquals("0 0 900.00 500.00", root.getAttribute("viewBox"));
    assertEquals("title", root.getFirstChild().getLocalName());
    assertEquals(figure.title(), root.getFirstChild().getTextContent());
    assertEquals(
        figure.description(), root.getElementsByTagNameNS("*", "desc").item(0).getTextContent());
    assertEquals(0, root.getElementsByTagNameNS("*", "text").getLength());
    assertTrue(root.getElementsByTagNameNS("*", "path").getLength() > 20);
  }

  @Test
  void aPdfEmbedsItsFontsAndCarriesAlternativeText() throws IOException {
    Path file = folder.resolve("a.pdf");
    FigureExport.pdf(figure, file, 600, 400);
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertEquals(1, document.getNumberOfPages());
      assertEquals(600, document.getPage(0).getMediaBox().getWidth(), 0.01);
      assertTrue(new PDFTextStripper().getText(document).contains("Catch by quarter-hour"));
      int fonts = 0;
      PDResources page = document.getPage(0).getResources();
      for (COSName name : page.getXObjectNames()) {
        PDResources form = ((PDFormXObject) page.getXObject(name)).getResources();
        for (COSName font : form.getFontNames()) {
          assertTrue(form.getFont(font).isEmbedded(), font.getName());
          fonts++;
        }
      }
      assertTrue(fonts >= 1);
      PDStructureElement whole =
          (PDStructureElement)
              document.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
      PDStructureElement tagged = (PDStructureElement) whole.getKids().get(0);
      assertEquals(figure.description(), tagged.getAlternateDescription());
      BufferedImage drawn = new PDFRenderer(document).renderImage(0);
      int hue = Theme.LIGHT.line(1).getRGB() & 0xFFFFFF;
      long marked =
          Arrays.stream(drawn.getRGB(0, 0, 600, 400, null, 0, 600))
              .filter(p -> (p & 0xFFFFFF) == hue)
              .count();
      assertTrue(marked > 200, "the page shows the bars: " + marked);
    }
  }

  @Test
  void slidesHaveNativeTitlesNotesAndAlternativeText() throws IOException {
    for (Look.Shape shape : Look.Shape.values()) {
      Talk talk = talk(shape, true);
      Path file = folder.resolve(shape + ".pptx");
      TalkExport.pptx(talk, material, file, ExportMonitor.NONE);
      try (XMLSlideShow show = new XMLSlideShow(Files.newInputStream(file))) {
        assertEquals(shape.width(), show.getPageSize().width);
        assertEquals(540, show.getPageSize().height);
        assertEquals(talk.slides().size(), show.getSlides().size());
        for (int i = 0; i < talk.slides().size(); i++) {
          check(talk.slides().get(i), show.getSlides().get(i), shape.width());
        }
      }
    }
  }

  private static void check(Slide expected, XSLFSlide slide, int width) {
    assertEquals(expected.title(), slide.getTitle());
    if (!expected.notes().isBlank()) {
      String notes =
          slide.getNotes().getTextParagraphs().stream()
              .flatMap(List::stream)
              .map(XSLFTextParagraph::getText)
              .reduce("", (a, b) -> a + b);
      assertTrue(notes.contains(expected.notes()), notes);
    }
    int pictures = 0;
    for (XSLFShape shape : slide.getShapes()) {
      Rectangle2D anchor = shape.getAnchor();
      assertTrue(anchor.getMaxX() <= width + 0.5 && anchor.getMaxY() <= 540.5, anchor.toString());
      if (shape instanceof XSLFPictureShape picture) {
        pictures++;
        assertFalse(alternative(picture).isBlank());
        assertTrue(picture.getSvgImage() != null, "vectors beside the dots");
      } else if (shape instanceof XSLFTextShape text) {
        sizes(text, shape.getAnchor().getY() > 500);
      }
    }
    assertEquals(expected.picture() == null ? 0 : 1, pictures);
  }

  private static String alternative(XSLFPictureShape picture) {
    return ((CTPicture) picture.getXmlObject()).getNvPicPr().getCNvPr().getDescr();
  }

  /** Text to be read is at least 24 points; only what a figure rests on is small. */
  private static void sizes(XSLFTextShape text, boolean foot) {
    for (XSLFTextParagraph paragraph : text.getTextParagraphs()) {
      for (XSLFTextRun run : paragraph.getTextRuns()) {
        assertTrue(foot || run.getFontSize() >= 24, run.getRawText());
      }
    }
  }

  @Test
  void aTalkCanLeaveOutNamesAndPlace() throws IOException {
    Path file = folder.resolve("unnamed.pdf");
    TalkExport.pdf(talk(Look.Shape.WIDE, false), material, file, ExportMonitor.NONE);
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      String text = new PDFTextStripper().getText(document);
      String venue = review.session().occasion().venue().name();
      assertFalse(text.contains(review.session().occasion().title()), text);
      assertFalse(venue != null && text.contains(venue), text);
    }
  }

  @Test
  void aStoppedExportLeavesNothing() throws IOException {
    ExportMonitor stop = stopAfter(2);
    Talk talk = talk(Look.Shape.WIDE, true);
    assertThrows(
        CancellationException.class,
        () -> TalkExport.pptx(talk, material, folder.resolve("t.pptx"), stop));
    assertThrows(
        CancellationException.class,
        () -> TalkExport.pdf(talk, material, folder.resolve("t.pdf"), stopAfter(2)));
    assertThrows(
        CancellationException.class,
        () -> TalkExport.pictures(talk, material, folder.resolve("p"), SVG, stopAfter(2)));
    assertThrows(
        CancellationException.class,
        () -> ReplayGif.write(review, style, film(6), folder.resolve("t.gif"), stopAfter(2)));
    assertEquals(List.of(), left());
    assertFalse(Files.exists(folder.resolve("p")));
  }

  private static ExportMonitor stopAfter(int steps) {
    return new ExportMonitor() {
      private int seen;

      @Override
      public void progress(double share) {
        seen++;
      }

      @Override
      public boolean isCancelled() {
        return seen >= steps;
      }
    };
  }

  @Test
  void aFailedExportLeavesTheOldFile() throws IOException {
    Path file = folder.resolve("old.svg");
    Files.writeString(file, "old");
    Figure broken = new BrokenFigure(style);
    assertThrows(IllegalStateException.class, () -> FigureExport.svg(broken, file, 300, 200));
    assertThrows(IllegalStateException.class, () -> FigureExport.pdf(broken, file, 300, 200));
    assertEquals("old", Files.readString(file));
    assertEquals(List.of(file), left());
  }

  private record BrokenFigure(FigureStyle style) implements Figure {
    @Override
    public String title() {
      return "broken";
    }

    @Override
    public String description() {
      return "broken";
    }

    @Override
    public double aspect() {
      return 1;
    }

    @Override
    public void paint(Graphics2D g, double width, double height) {
      throw new IllegalStateException("on purpose");
    }
  }

  @Test
  void picturesAreNumberedAndAFullFolderIsRefused() throws IOException {
    Path target = folder.resolve("slides");
    Talk talk = talk(Look.Shape.STANDARD, true);
    TalkExport.pictures(talk, material, target, SVG, ExportMonitor.NONE);
    List<String> names = left().stream().map(p -> p.getFileName().toString()).sorted().toList();
    assertEquals(talk.slides().size(), names.size());
    assertTrue(names.get(0).startsWith("01 "));
    Path plain = Files.createDirectory(folder.resolve("plain"));
    if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      assertEquals(
          Files.getPosixFilePermissions(plain),
          Files.getPosixFilePermissions(target),
          "others may read it as they may any folder");
    }
    assertThrows(
        IOException.class,
        () -> TalkExport.pictures(talk, material, target, SVG, ExportMonitor.NONE));
    assertEquals(talk.slides().size(), left().size());
  }

  private ReplayGif.Film film(int frames) {
    long from = review.session().match().allIn() + 20 * 60_000L;
    return new ReplayGif.Film(from, from + 60 * 60_000L, frames, 5, 480, 300);
  }

  @Test
  void aReplayHasItsFramesAndTheyMove() throws IOException {
    Path file = folder.resolve("a.gif");
    ReplayGif.write(review, style, film(4), file, ExportMonitor.NONE);
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      reader.setInput(in);
      assertEquals(4, reader.getNumImages(true));
      BufferedImage first = reader.read(0);
      BufferedImage last = reader.read(3);
      assertEquals(480, first.getWidth());
      int differing = 0;
      for (int x = 0; x < 480; x++) {
        differing += first.getRGB(x, 200) == last.getRGB(x, 200) ? 0 : 1;
      }
      assertTrue(differing > 5, "frames differ: " + differing);
    } finally {
      reader.dispose();
    }
    assertThrows(IllegalArgumentException.class, () -> film(100_000));
  }

  /** CWE-1236: a cell that a spreadsheet would take for a formula is guarded; numbers stay. */
  @Test
  void tablesGuardAgainstFormulas() throws IOException {
    Path file = folder.resolve("a.csv");
    TableCsv.write(
        new Table(
            "t",
            List.of("a", "b", "c"),
            List.of(Arrays.asList("=1+1", -3.5, null), Arrays.asList("'@x", 2, "x, \"y\""))),
        file);
    assertEquals("a,b,c\r\n'=1+1,-3.5,\r\n''@x,2,\"x, \"\"y\"\"\"\r\n", Files.readString(file));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Table("t", List.of("a"), List.of(Arrays.asList(1, 2))));
    assertThrows(
        IllegalArgumentException.class, () -> new Table("t", List.of("low", "low"), List.of()));
  }

  @Test
  void everyTableOfAReviewIsWritten() throws IOException {
    for (Table table : ReviewTableSet.of(review)) {
      assertFalse(table.rows().isEmpty(), table.name());
      TableCsv.write(table, folder.resolve(FileNames.of(table.name(), "csv")));
    }
    assertEquals(ReviewTableSet.of(review).size(), left().size());
    String lines = Files.readString(folder.resolve("lines.csv"));
    assertTrue(lines.contains("g an hour,g low,g high,fish an hour,fish low,fish high,"), lines);
  }

  @Test
  void aSetOfFiguresThatCannotBeFinishedLeavesNothingAndWhatWasThereStays() throws IOException {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("good", new QuarterHourFigure(review, style));
    figures.put("bad", new Unfinished());
    Path there = Files.createDirectory(folder.resolve("figures"));
    Files.writeString(there.resolve("good.png"), "of last year");
    for (Path target : List.of(there, folder.resolve("new"))) {
      assertThrows(IllegalStateException.class, () -> FigureFiles.write(figures, target, true));
    }
    assertEquals(List.of(there.resolve("good.png")), left());
    assertFalse(Files.exists(folder.resolve("new")));
    assertEquals("of last year", Files.readString(there.resolve("good.png")));
    figures.remove("bad");
    assertEquals(3, FigureFiles.write(figures, there, true).size());
    assertTrue(Files.size(there.resolve("good.png")) > 1000, "replaced");
  }

  /** A figure whose drawing fails. */
  private final class Unfinished implements Figure {
    @Override
    public FigureStyle style() {
      return style;
    }

    @Override
    public String title() {
      return "unfinished";
    }

    @Override
    public String description() {
      return "unfinished";
    }

    @Override
    public double aspect() {
      return 2;
    }

    @Override
    public void paint(Graphics2D g, double width, double height) {
      throw new IllegalStateException("unfinished");
    }
  }

  @Test
  void fileNamesAreSafeEverywhere() {
    assertEquals("a b.png", FileNames.of("a/b", "png"));
    assertEquals("etc passwd.png", FileNames.of("../../etc/passwd", "png"));
    assertEquals("figure CON.png", FileNames.of("CON", "png"));
    assertEquals("figure nul.x.png", FileNames.of("nul.x", "png"));
    assertEquals("name.png", FileNames.of("name...", "png"));
    assertEquals("figure.png", FileNames.of(" . ", "png"));
    assertEquals("tab x.png", FileNames.of("tab\tx", "png"));
    assertTrue(FileNames.of("x".repeat(500), "png").length() <= 84);
  }

  @Test
  void everyFigureOfAReviewIsWritten() throws IOException {
    List<Path> written = ReviewFigureSet.write(review, style, folder.resolve("figures"));
    assertEquals(written.size(), left().size());
    assertTrue(written.size() >= 20);
  }

  @Test
  void aDraftOfARecordWithHardlyAnyFishHasNoEmptySlide() {
    List<SessionEvent> early =
        review.session().events().stream()
            .filter(e -> e.at() < review.session().match().allIn() + 20 * 60_000)
            .filter(e -> !(e instanceof SessionEvent.Landed))
            .filter(e -> !(e instanceof SessionEvent.Fed))
            .toList();
    Review little = Reviewer.review(review.session().withEvents(early), review.settings());
    Talk draft =
        TalkDraft.of(
            List.of(new Source("s1", Path.of("s1"))),
            new TalkMaterial(Map.of("s1", little)),
            Look.USUAL,
            true);
    List<String> titles = draft.slides().stream().map(s -> s.title()).toList();
    assertTrue(titles.contains("The match in one picture"), titles.toString());
    assertTrue(!titles.contains("How the weight came"), titles.toString());
    assertTrue(!titles.contains("From feeding to the first bite"), titles.toString());
    String words = draft.slides().stream().flatMap(s -> s.words().stream()).toList().toString();
    assertTrue(words.contains("no fish"), words);
    assertTrue(!words.contains("0.0"), words);
  }

  @Test
  void fewWordsAloneAreSetLargerAndNeverBelowTwentyEight() {
    FigureStyle light = style;
    SlideFigure few =
        new SlideFigure(List.of("Title", "One short lesson."), null, List.of(), light, 960);
    SlideFigure many =
        new SlideFigure(Collections.nCopies(9, "A row of words."), null, List.of(), light, 960);
    assertEquals(40, few.wordsSize());
    assertEquals(40, few.titleSize());
    assertEquals(28, many.wordsSize());
    assertTrue(few.wordsFit() && many.wordsFit());
  }
}
