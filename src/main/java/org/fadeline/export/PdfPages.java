package org.fadeline.export;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.fadeline.figure.Figure;
import org.fadeline.figure.Type;
import org.fadeline.io.WholeFile;

/** Writes figures as the pages of a PDF, each tagged as a figure with its alternative text. */
final class PdfPages {
  private PdfPages() {}

  /** Pages under one title. */
  record Book(String title, List<Figure> pages) {}

  static void write(Path file, Book book, double width, double height, ExportMonitor monitor)
      throws IOException {
    List<Figure> pages = book.pages();
    try (PDDocument document = new PDDocument()) {
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(book.title());
      information.setCreator("Fadeline");
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setLanguage("en-GB");
      PDMarkInfo marked = new PDMarkInfo();
      marked.setMarked(true);
      document.getDocumentCatalog().setMarkInfo(marked);
      PDStructureTreeRoot tree = new PDStructureTreeRoot();
      document.getDocumentCatalog().setStructureTreeRoot(tree);
      PDStructureElement whole = new PDStructureElement("Document", tree);
      tree.appendKid(whole);
      Fonts fonts = new Fonts(document);
      Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
      for (int i = 0; i < pages.size(); i++) {
        monitor.step(i / (double) pages.size());
        PDStructureElement element = page(document, pages.get(i), width, height, fonts, whole);
        parents.put(i, parentOf(element));
        document.getPage(i).setStructParents(i);
      }
      PDNumberTreeNode parentTree = new PDNumberTreeNode(PDParentTreeValue.class);
      parentTree.setNumbers(new LinkedHashMap<>(parents));
      tree.setParentTree(parentTree);
      tree.setParentTreeNextKey(pages.size());
      WholeFile.write(file, document::save);
      monitor.step(1);
    }
  }

  private static PDParentTreeValue parentOf(PDStructureElement element) {
    COSArray array = new COSArray();
    array.add(element.getCOSObject());
    return new PDParentTreeValue(array);
  }

  private static PDStructureElement page(
      PDDocument document,
      Figure figure,
      double width,
      double height,
      Fonts fonts,
      PDStructureElement whole)
      throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) width, (float) height));
    document.addPage(page);
    PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, (float) width, (float) height);
    g.setFontTextDrawer(fonts);
    figure.paint(g, width, height);
    g.dispose();
    PDStructureElement element = new PDStructureElement("Figure", whole);
    element.setAlternateDescription(figure.description());
    element.setTitle(figure.title());
    element.setPage(page);
    element.appendKid(0);
    whole.appendKid(element);
    COSDictionary properties = new COSDictionary();
    properties.setInt(COSName.MCID, 0);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.beginMarkedContent(COSName.getPDFName("Figure"), PDPropertyList.create(properties));
      content.drawForm(g.getXFormObject());
      content.endMarkedContent();
    }
    return element;
  }

  /** The bundled typeface, embedded once a document. */
  private static final class Fonts extends PdfBoxGraphics2DFontTextDrawer {
    private final PDFont regular;
    private final PDFont semiBold;

    Fonts(PDDocument document) throws IOException {
      regular = load(document, Type.REGULAR_RESOURCE);
      semiBold = load(document, Type.SEMI_BOLD_RESOURCE);
    }

    private static PDFont load(PDDocument document, String resource) throws IOException {
      try (InputStream in = Type.class.getResourceAsStream(resource)) {
        if (in == null) {
          throw new IOException("the program is incomplete: " + resource + " is missing");
        }
        return PDType0Font.load(document, in, true);
      }
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
      return font.getFontName().contains("SmBld") ? semiBold : regular;
    }
  }
}
