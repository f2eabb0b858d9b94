package org.fadeline.export;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.common.usermodel.fonts.FontGroup;
import org.apache.poi.common.usermodel.fonts.FontInfo;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.sl.usermodel.Insets2D;
import org.apache.poi.sl.usermodel.PictureData;
import org.apache.poi.sl.usermodel.Placeholder;
import org.apache.poi.sl.usermodel.ShapeType;
import org.apache.poi.sl.usermodel.TextParagraph;
import org.apache.poi.sl.usermodel.TextShape;
import org.apache.poi.sl.usermodel.VerticalAlignment;
import org.apache.poi.xslf.usermodel.SlideLayout;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFAutoShape;
import org.apache.poi.xslf.usermodel.XSLFNotes;
import org.apache.poi.xslf.usermodel.XSLFPictureShape;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFSlideLayout;
import org.apache.poi.xslf.usermodel.XSLFTextBox;
import org.apache.poi.xslf.usermodel.XSLFTextParagraph;
import org.apache.poi.xslf.usermodel.XSLFTextRun;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.fadeline.figure.Figure;
import org.fadeline.figure.SlideFigure;
import org.fadeline.figure.Theme;
import org.fadeline.io.WholeFile;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.presentationml.x2006.main.CTPicture;
import org.openxmlformats.schemas.presentationml.x2006.main.CTShape;

/** Writes slides as PPTX (ECMA-376). */
final class SlideDeck {
  private static final Set<Placeholder> HEADS_AND_FEET =
      EnumSet.of(
          Placeholder.HEADER, Placeholder.DATETIME, Placeholder.FOOTER, Placeholder.SLIDE_NUMBER);

  private static final String MAKER = "Fadeline";

  private SlideDeck() {}

  static void write(Talk talk, List<SlideFigure> pages, Path file, ExportMonitor monitor)
      throws IOException {
    try (XMLSlideShow show = new XMLSlideShow()) {
      show.setPageSize(new Dimension(talk.look().shape().width(), (int) SlideFigure.HEIGHT));
      about(show.getProperties(), talk);
      EmbeddedFace.embed(show);
      XSLFSlideLayout layout = show.findLayout("Title Only");
      if (layout == null) {
        layout = show.getSlideMasters().get(0).getLayout(SlideLayout.TITLE_ONLY);
      }
      for (int i = 0; i < pages.size(); i++) {
        monitor.step(i / (double) pages.size());
        XSLFSlide slide = show.createSlide(layout);
        fill(show, slide, pages.get(i));
        notes(show, slide, talk.slides().get(i));
      }
      WholeFile.write(file, show::write);
      monitor.step(1);
    }
  }

  /**
   * Says what made the file and when: the empty file that slides begin as has another's answers.
   */
  private static void about(POIXMLProperties about, Talk talk) {
    Optional<Date> now = Optional.of(Date.from(Instant.now()));
    about.getCoreProperties().setTitle(XmlText.clean(talk.title()));
    about.getCoreProperties().setCreator(MAKER);
    about.getCoreProperties().setCreated(now);
    about.getCoreProperties().setModified(now);
    about.getExtendedProperties().setApplication(MAKER);
    about
        .getExtendedProperties()
        .setPresentationFormat(
            talk.look().shape() == Look.Shape.WIDE ? "Widescreen" : "On-screen Show (4:3)");
    about.getExtendedProperties().setSlides(talk.slides().size());
  }

  private static void fill(XMLSlideShow show, XSLFSlide slide, SlideFigure page)
      throws IOException {
    Theme theme = page.style().theme();
    slide.getBackground().setFillColor(theme.panel());
    if (page.ruleBox().getWidth() > 0) {
      XSLFAutoShape rule = slide.createAutoShape();
      rule.setShapeType(ShapeType.RECT);
      rule.setAnchor(page.ruleBox());
      rule.setFillColor(theme.accent());
    }
    XSLFTextShape title = title(slide);
    // Without a place of its own the title would move that of the layout, and so every slide's.
    CTShapeProperties own = ((CTShape) title.getXmlObject()).getSpPr();
    if (!own.isSetXfrm()) {
      own.addNewXfrm();
    }
    title.setAnchor(page.titleBox());
    title.setVerticalAlignment(VerticalAlignment.MIDDLE);
    title.clearText();
    write(title, page.title(), new TextLook(page.titleSize(), theme.ink(), true));
    if (!page.words().isEmpty()) {
      XSLFTextBox box = slide.createTextBox();
      box.setAnchor(page.wordsBox());
      box.clearText();
      for (String words : page.words()) {
        write(box, words, new TextLook(page.wordsSize(), theme.ink(), false))
            .setSpaceAfter(-page.paragraphGap());
      }
    }
    Figure figure = page.figure();
    if (figure != null) {
      picture(show, slide, figure, page.figureBox());
      XSLFTextBox foot = slide.createTextBox();
      foot.setAnchor(page.footBox());
      foot.setInsets(new Insets2D(0, 0, 0, 0));
      foot.clearText();
      write(foot, String.join("  ·  ", page.foot()), new TextLook(10, theme.secondInk(), false));
    }
  }

  private record TextLook(double size, Color colour, boolean bold) {}

  private static XSLFTextShape title(XSLFSlide slide) {
    for (XSLFTextShape shape : slide.getPlaceholders()) {
      if (shape.getTextType() == Placeholder.TITLE
          || shape.getTextType() == Placeholder.CENTERED_TITLE) {
        return shape;
      }
    }
    XSLFTextBox box = slide.createTextBox();
    box.setPlaceholder(Placeholder.TITLE);
    return box;
  }

  private static XSLFTextParagraph write(XSLFTextShape shape, String text, TextLook look) {
    // Where a face that is not there is replaced by a wider one, text shrinks before it runs over.
    shape.setTextAutofit(TextShape.TextAutofit.NORMAL);
    XSLFTextParagraph paragraph = shape.addNewTextParagraph();
    paragraph.setTextAlign(TextParagraph.TextAlign.LEFT);
    XSLFTextRun run = paragraph.addNewTextRun();
    run.setText(XmlText.clean(text));
    FontInfo face = look.bold ? EmbeddedFace.SEMI_BOLD : EmbeddedFace.REGULAR;
    run.setFontInfo(face, FontGroup.LATIN);
    // The library passes the build over.
    ((CTRegularTextRun) run.getXmlObject()).getRPr().getLatin().setPanose(face.getPanose());
    run.setFontSize(look.size);
    run.setFontColor(look.colour);
    run.setBold(look.bold);
    return paragraph;
  }

  private static void picture(XMLSlideShow show, XSLFSlide slide, Figure figure, Rectangle2D box)
      throws IOException {
    FigureExport.Raster raster =
        new FigureExport.Raster(
            (int) Math.round(box.getWidth() * 2), (int) Math.round(box.getHeight() * 2), 192);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    FigureExport.writePng(figure, FigureExport.draw(figure, raster), 192, bytes);
    XSLFPictureShape shape =
        slide.createPicture(show.addPicture(bytes.toByteArray(), PictureData.PictureType.PNG));
    shape.setAnchor(box);
    // Programs that know it show the vectors, others the dots.
    ByteArrayOutputStream vectors = new ByteArrayOutputStream();
    FigureExport.writeSvg(figure, box.getWidth(), box.getHeight(), vectors);
    shape.setSvgImage(show.addPicture(vectors.toByteArray(), PictureData.PictureType.SVG));
    CTPicture xml = (CTPicture) shape.getXmlObject();
    xml.getNvPicPr().getCNvPr().setDescr(XmlText.clean(figure.description()));
    xml.getNvPicPr().getCNvPr().setTitle(XmlText.clean(figure.title()));
  }

  private static void notes(XMLSlideShow show, XSLFSlide slide, Slide words) {
    if (words.notes().isBlank()) {
      return;
    }
    XSLFNotes notes = show.getNotesSlide(slide);
    XSLFTextShape body = body(notes);
    if (body != null) {
      body.clearText();
      body.setText(XmlText.clean(words.notes()));
    }
    // What the library copies from the notes' master besides, empty heads and feet, it writes
    // with marks that no schema knows, and strict programs would offer to repair the file.
    for (XSLFTextShape shape : notes.getPlaceholders()) {
      if (HEADS_AND_FEET.contains(shape.getTextType())) {
        notes.removeShape(shape);
      }
    }
  }

  private static @Nullable XSLFTextShape body(XSLFNotes notes) {
    for (XSLFTextShape shape : notes.getPlaceholders()) {
      if (shape.getTextType() == Placeholder.BODY) {
        return shape;
      }
    }
    return null;
  }
}
