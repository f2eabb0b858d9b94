package org.fadeline.export;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.common.usermodel.fonts.FontFacet;
import org.apache.poi.common.usermodel.fonts.FontHeader;
import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFFontInfo;
import org.apache.poi.xslf.usermodel.XSLFShape;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.fadeline.figure.Type;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slides carry the faces their text is set in (ECMA-376 part 1, 19.2.1.9; EOT, W3C 2008). */
class SlideFontsTest {
  @TempDir Path folder;

  private XMLSlideShow written() throws IOException {
    Path file = folder.resolve("t.pptx");
    Slide slide = Slide.EMPTY.withTitle("Where the fish were").withWords(List.of("The short line"));
    Talk talk = Talk.EMPTY.withSlides(List.of(slide));
    TalkExport.pptx(talk, new TalkMaterial(Map.of()), file, ExportMonitor.NONE);
    return new XMLSlideShow(Files.newInputStream(file));
  }

  @Test
  void eachSlideHasItsTitleInAPlaceOfItsOwn() throws IOException {
    Path file = folder.resolve("places.pptx");
    Slide few = Slide.EMPTY.withTitle("Few words").withWords(List.of("One"));
    Slide more =
        Slide.EMPTY.withTitle("More words").withWords(List.of("One", "Two", "Three", "Four"));
    Talk talk = Talk.EMPTY.withSlides(List.of(few, more, few));
    TalkMaterial none = new TalkMaterial(Map.of());
    TalkExport.pptx(talk, none, file, ExportMonitor.NONE);
    List<Double> wanted =
        TalkPages.of(talk, none).stream().map(page -> page.titleBox().getY()).toList();
    assertTrue(wanted.get(0) > wanted.get(1) + 5, wanted::toString);
    try (XMLSlideShow show = new XMLSlideShow(Files.newInputStream(file))) {
      for (int i = 0; i < wanted.size(); i++) {
        double y = show.getSlides().get(i).getPlaceholder(0).getAnchor().getY();
        assertEquals(wanted.get(i), y, 0.5, "slide " + (i + 1));
      }
    }
  }

  @Test
  void everyTextIsSetInAFaceTheSlidesCarry() throws IOException {
    try (XMLSlideShow show = written()) {
      Set<String> carried = new HashSet<>();
      show.getFonts().forEach(font -> carried.add(font.getTypeface()));
      Set<String> used = new TreeSet<>();
      for (XSLFSlide slide : show.getSlides()) {
        for (XSLFShape shape : slide.getShapes()) {
          if (shape instanceof XSLFTextShape text) {
            text.getTextParagraphs().stream()
                .flatMap(p -> p.getTextRuns().stream())
                .forEach(run -> used.add(run.getFontFamily()));
          }
        }
      }
      assertEquals(Set.of(Type.REGULAR_FAMILY, Type.SEMI_BOLD_FAMILY), used);
      assertTrue(carried.containsAll(used), carried::toString);
    }
  }

  @Test
  void whatIsCarriedIsTheBundledFontUnchanged() throws IOException {
    Map<String, String> resources =
        Map.of(
            Type.REGULAR_FAMILY, Type.REGULAR_RESOURCE,
            Type.SEMI_BOLD_FAMILY, Type.SEMI_BOLD_RESOURCE);
    try (XMLSlideShow show = written()) {
      for (XSLFFontInfo font : show.getFonts()) {
        for (FontFacet facet : font.getFacets()) {
          byte[] wrapped;
          try (InputStream in =
              ((POIXMLDocumentPart) facet.getFontData()).getPackagePart().getInputStream()) {
            wrapped = in.readAllBytes();
          }
          check(wrapped, font.getTypeface(), requireNonNull(resources.get(font.getTypeface())));
        }
      }
    }
  }

  private static void check(byte[] wrapped, String family, String resource) throws IOException {
    byte[] font;
    try (InputStream in = Type.class.getResourceAsStream(resource)) {
      font = in.readAllBytes();
    }
    ByteBuffer eot = ByteBuffer.wrap(wrapped).order(ByteOrder.LITTLE_ENDIAN);
    assertEquals(wrapped.length, eot.getInt(0), "EOTSize");
    assertEquals(font.length, eot.getInt(4), "FontDataSize");
    assertEquals(0x00020001, eot.getInt(8), "Version");
    assertEquals(0, eot.getInt(12), "Flags: not compressed, not scrambled, no subset");
    assertEquals(0x504C, eot.getShort(34), "MagicNumber");
    // Where the sizes of the names lead, the font begins; it ends with the file.
    int at = 80;
    for (int name = 0; name < 5; name++) {
      assertEquals(0, eot.getShort(at), "padding");
      int size = eot.getShort(at + 2);
      if (name == 0) {
        assertEquals(
            family, new String(wrapped, at + 4, size, StandardCharsets.UTF_16LE), "FamilyName");
      }
      at += 4 + size;
    }
    assertArrayEquals(font, Arrays.copyOfRange(wrapped, at, wrapped.length));
    // POI's own reading of the header agrees.
    FontHeader header = new FontHeader();
    header.init(wrapped, 0, wrapped.length);
    assertEquals(family, header.getFamilyName());
  }
}
