package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFPictureShape;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.figure.BankSheetFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.ProgramVersion;
import org.fadeline.figure.SlideFigure;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.presentationml.x2006.main.CTPicture;
import org.w3c.dom.Element;

/** Every figure there is can be on a talk, and says what it is wherever it goes. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
// BeforeAll sets every field.
@SuppressWarnings("NullAway.Init")
class AllFiguresTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  /** A sheet and a slide hold other figures; the bank sheet is a form to fill in by pencil. */
  private static final Set<String> NO_PICTURES =
      Set.of(
          FigureSheet.class.getSimpleName(),
          SlideFigure.class.getSimpleName(),
          BankSheetFigure.class.getSimpleName());

  @TempDir Path folder;

  private Review first;
  private Review second;
  private TalkMaterial material;

  @BeforeAll
  void matches() {
    first = Fixtures.carpMatch();
    second = Fixtures.springMatch();
    Season season =
        SeasonBuilder.build(
            List.of(SessionSummaries.whole(first), SessionSummaries.whole(second)),
            SeasonFilter.ALL);
    material = new TalkMaterial(Map.of("s1", first, "s2", second), Map.of("season", season));
  }

  private Picture picture(Picture.Kind kind) {
    if (kind.ofSeason()) {
      return Picture.of(kind, "season");
    }
    if (kind.sessions() == 2) {
      return Picture.of(kind, "s1", "s2");
    }
    return kind.ofOneLine()
        ? Picture.ofLine(kind, "s1", first.session().lines().get(0).id())
        : Picture.of(kind, "s1");
  }

  private PictureMaker.Made made(Picture.Kind kind) {
    return new PictureMaker(material, true).make(picture(kind), STYLE);
  }

  @Test
  void everyFigureCanBeOnATalk() {
    Set<String> figures = new TreeSet<>();
    for (JavaClass c :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.fadeline")) {
      if (c.isAssignableTo(Figure.class)
          && c.isTopLevelClass()
          && !c.isInterface()
          && !c.getModifiers().contains(JavaModifier.ABSTRACT)) {
        figures.add(c.getSimpleName());
      }
    }
    figures.removeAll(NO_PICTURES);
    Set<String> onTalks = new TreeSet<>();
    for (Picture.Kind kind : Picture.Kind.values()) {
      onTalks.add(made(kind).figure().getClass().getSimpleName());
    }
    assertEquals(figures, onTalks);
  }

  @Test
  void noTwoKindsShowTheSame() {
    Set<String> told = new TreeSet<>();
    for (Picture.Kind kind : Picture.Kind.values()) {
      PictureMaker.Made made = made(kind);
      assertTrue(
          told.add(made.figure().getClass() + made.figure().title()), () -> kind + " is another's");
    }
  }

  @Test
  void everyFigureSaysItsSourceWhatItRestsOnUnitsSettingsAndProgram() {
    for (Picture.Kind kind : Picture.Kind.values()) {
      PictureMaker.Made made = made(kind);
      String foot = String.join("  ", made.foot());
      assertFalse(made.figure().title().isBlank(), kind.word());
      assertTrue(made.figure().description().length() > 20, kind.word());
      List<String> wanted = new ArrayList<>();
      wanted.add("pounds and ounces, metres");
      wanted.add(ProgramVersion.NAME);
      wanted.add("window " + (int) first.settings().windowMinutes() + " min, call level ");
      if (kind.ofSeason()) {
        wanted.add("2 matches, ");
        wanted.add("limits at 95% from drawing whole matches");
      } else {
        wanted.add(first.session().occasion().title());
        wanted.add(DAY.format(first.session().occasion().date()));
        wanted.add("rests on: ");
      }
      if (kind.sessions() == 2) {
        wanted.add(second.session().occasion().title());
        wanted.add("Laid on each other");
      }
      for (String part : wanted) {
        assertTrue(foot.contains(part), () -> kind.word() + " does not say " + part + ": " + foot);
      }
    }
  }

  private Talk everyFigure() {
    List<Slide> slides = new ArrayList<>();
    for (Picture.Kind kind : Picture.Kind.values()) {
      slides.add(Slide.EMPTY.withTitle(kind.label()).withPicture(picture(kind)));
    }
    return Talk.EMPTY
        .withSources(
            List.of(new Source("s1", Path.of("/a/one")), new Source("s2", Path.of("/a/two"))))
        .withSeasons(List.of(new SeasonSource("season", Path.of("/a"), SeasonSource.Sift.ALL)))
        .withSlides(slides);
  }

  @Test
  void everyFigureHasItsAlternativeTextOnSlidesAndItsSmallPrintThere() throws IOException {
    Path file = folder.resolve("all.pptx");
    TalkExport.pptx(everyFigure(), material, file, ExportMonitor.NONE);
    try (XMLSlideShow show = new XMLSlideShow(Files.newInputStream(file))) {
      Picture.Kind[] kinds = Picture.Kind.values();
      for (int i = 0; i < kinds.length; i++) {
        var shapes = show.getSlides().get(i).getShapes();
        XSLFPictureShape shown =
            shapes.stream()
                .filter(XSLFPictureShape.class::isInstance)
                .map(XSLFPictureShape.class::cast)
                .findFirst()
                .orElseThrow();
        var about = ((CTPicture) shown.getXmlObject()).getNvPicPr().getCNvPr();
        assertEquals(made(kinds[i]).figure().description(), about.getDescr(), kinds[i].word());
        assertFalse(about.getTitle().isBlank(), kinds[i].word());
        String text =
            shapes.stream()
                .filter(XSLFTextShape.class::isInstance)
                .map(s -> ((XSLFTextShape) s).getText())
                .collect(Collectors.joining(" "));
        assertTrue(text.contains(ProgramVersion.NAME), text);
      }
    }
  }

  @Test
  void everyFigureHasItsAlternativeTextInThePdf() throws IOException {
    Path file = folder.resolve("all.pdf");
    TalkExport.pdf(everyFigure(), material, file, ExportMonitor.NONE);
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      PDStructureElement whole =
          (PDStructureElement)
              document.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
      Picture.Kind[] kinds = Picture.Kind.values();
      assertEquals(kinds.length, whole.getKids().size());
      for (int i = 0; i < kinds.length; i++) {
        String told = ((PDStructureElement) whole.getKids().get(i)).getAlternateDescription();
        assertTrue(told.contains(made(kinds[i]).figure().description()), kinds[i].word());
      }
    }
  }

  @Test
  void everyFigureHasItsTitleAndDescriptionInSvgAndPng() throws Exception {
    for (Picture.Kind kind : Picture.Kind.values()) {
      Figure figure = made(kind).figure();
      Path svg = folder.resolve("one.svg");
      FigureExport.svg(figure, svg, 600, 600 / figure.aspect());
      Element root =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(svg.toFile())
              .getDocumentElement();
      assertEquals(figure.title(), text(root, "title"), kind.word());
      assertEquals(figure.description(), text(root, "desc"), kind.word());
      Path png = folder.resolve("one.png");
      FigureExport.png(figure, png, new FigureExport.Raster(300, 200, 96));
      assertEquals(figure.description(), pngText(png, "Description"), kind.word());
    }
  }

  private static String text(Element root, String tag) {
    return root.getElementsByTagName(tag).item(0).getTextContent();
  }

  private static String pngText(Path file, String keyword) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      reader.setInput(in);
      IIOMetadataNode root =
          (IIOMetadataNode) reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
      var entries = root.getElementsByTagName("iTXtEntry");
      for (int i = 0; i < entries.getLength(); i++) {
        Element entry = (Element) entries.item(i);
        if (entry.getAttribute("keyword").equals(keyword)) {
          return entry.getAttribute("text");
        }
      }
      return "";
    } finally {
      reader.dispose();
    }
  }
}
