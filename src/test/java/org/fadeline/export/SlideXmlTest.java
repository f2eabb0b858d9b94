package org.fadeline.export;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFNotes;
import org.apache.poi.xslf.usermodel.XSLFShape;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.apache.xmlbeans.XmlObject;
import org.fadeline.figure.Type;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextFont;
import org.openxmlformats.schemas.presentationml.x2006.main.CTShape;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** What strict programs ask of the parts of slides (ECMA-376 part 1). */
class SlideXmlTest {
  private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";

  @TempDir Path folder;

  private XMLSlideShow written() throws IOException {
    Path file = folder.resolve("t.pptx");
    Slide slide =
        Slide.EMPTY
            .withTitle("Where the fish were")
            .withWords(List.of("The short line", "Then the left edge"))
            .withNotes("Say this first.\nThen this.");
    Talk talk = Talk.EMPTY.withTitle("A day").withSlides(List.of(slide, slide.withNotes("")));
    TalkExport.pptx(talk, new TalkMaterial(Map.of()), file, ExportMonitor.NONE);
    return new XMLSlideShow(Files.newInputStream(file));
  }

  /** Runs of text with what ECMA-376 part 1, 21.1.2.3.8 does not let them have. */
  private static List<String> faults(XmlObject part) {
    List<String> faults = new ArrayList<>();
    NodeList runs = part.getDomNode().getOwnerDocument().getElementsByTagNameNS(DRAWING, "r");
    for (int i = 0; i < runs.getLength(); i++) {
      Node run = runs.item(i);
      for (int a = 0; a < run.getAttributes().getLength(); a++) {
        faults.add("a run with " + run.getAttributes().item(a));
      }
      for (Node in = run.getFirstChild(); in != null; in = in.getNextSibling()) {
        if (!Set.of("rPr", "t").contains(in.getLocalName())) {
          faults.add("a run with " + in.getLocalName());
        }
      }
    }
    return faults;
  }

  @Test
  void theTextOfSlidesAndNotesIsAsTheSchemaWantsIt() throws IOException {
    try (XMLSlideShow show = written()) {
      for (XSLFSlide slide : show.getSlides()) {
        assertEquals(List.of(), faults(slide.getXmlObject()), slide.getTitle());
      }
      XSLFNotes notes = requireNonNull(show.getSlides().get(0).getNotes());
      assertEquals(List.of(), faults(notes.getXmlObject()));
      List<String> texts = new ArrayList<>();
      for (XSLFTextShape shape : notes.getPlaceholders()) {
        texts.add(shape.getText());
      }
      assertTrue(texts.contains("Say this first.\nThen this."), texts::toString);
    }
  }

  @Test
  void everyPartLeadsToPartsThatAreThere() throws IOException {
    try (XMLSlideShow show = written()) {
      for (POIXMLDocumentPart.RelationPart part : show.getRelationParts()) {
        assertTrue(
            show.getPackage().containPart(part.getDocumentPart().getPackagePart().getPartName()),
            part.toString());
      }
      var fonts = show.getPackage().getPartsByName(Pattern.compile("/ppt/fonts/.*"));
      assertEquals(2, fonts.size());
      fonts.forEach(font -> assertEquals("application/x-fontdata", font.getContentType()));
    }
  }

  @Test
  void aFaceThatIsNotThereIsToldByItsBuildSoThatASubstituteIsNear() throws IOException {
    try (XMLSlideShow show = written()) {
      List<CTTextFont> faces = new ArrayList<>();
      for (XSLFShape shape : show.getSlides().get(0).getShapes()) {
        if (shape instanceof XSLFTextShape text && !text.getText().isEmpty()) {
          CTShape xml = (CTShape) text.getXmlObject();
          xml.getTxBody()
              .getPList()
              .forEach(p -> p.getRList().forEach(run -> faces.add(run.getRPr().getLatin())));
          assertTrue(
              xml.getTxBody().getBodyPr().isSetNormAutofit(), "shrinks rather than runs over");
        }
      }
      assertEquals(3, faces.size());
      for (CTTextFont face : faces) {
        // OpenType OS/2: 2 is Latin text, 11 a sans serif.
        assertEquals(2, face.getPanose()[0]);
        assertEquals(11, face.getPanose()[1]);
        assertEquals(0x22, face.getPitchFamily(), "a sans serif of varying widths");
      }
      var theme = show.getSlideMasters().get(0).getTheme();
      assertEquals(Type.REGULAR_FAMILY, theme.getMinorFont());
      assertEquals(Type.SEMI_BOLD_FAMILY, theme.getMajorFont());
    }
  }

  @Test
  void theFileSaysWhatMadeItAndWhen() throws IOException {
    Instant before = Instant.now().minusSeconds(2);
    try (XMLSlideShow show = written()) {
      POIXMLProperties about = show.getProperties();
      assertEquals("A day", about.getCoreProperties().getTitle());
      assertTrue(about.getCoreProperties().getCreated().toInstant().isAfter(before));
      assertTrue(about.getCoreProperties().getModified().toInstant().isAfter(before));
      assertEquals("Fadeline", about.getExtendedProperties().getApplication());
      assertEquals(2, about.getExtendedProperties().getSlides());
      assertEquals(
          Look.USUAL.shape() == Look.Shape.WIDE ? "Widescreen" : "On-screen Show (4:3)",
          about.getExtendedProperties().getPresentationFormat());
    }
  }
}
