package org.fadeline.export;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.fadeline.figure.Figure;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Checks;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes one figure as PNG, SVG or PDF. */
public final class FigureExport {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** Most pixels of an image: what a gigabyte of memory draws without trouble. */
  private static final long MOST_PIXELS = 100_000_000L;

  private FigureExport() {}

  /**
   * How large a picture is and how finely it is dotted.
   *
   * @param width pixels, at least 16
   * @param height pixels, at least 16
   * @param dpi dots an inch, in [36, 2400]; text keeps its size in print, 96 being normal on screen
   */
  public record Raster(int width, int height, double dpi) {
    /** Checks the ranges. */
    public Raster {
      if (width < 16 || height < 16 || (long) width * height > MOST_PIXELS) {
        throw new IllegalArgumentException(
            "a picture must be 16 by 16 pixels to 100 million in all: " + width + " by " + height);
      }
      Checks.between("dots an inch", dpi, 36, 2400);
    }
  }

  /**
   * Writes a figure as PNG, with its title and description as text chunks.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   */
  public static void png(Figure figure, Path file, Raster raster) throws IOException {
    BufferedImage image = draw(figure, raster);
    WholeFile.write(file, out -> writePng(figure, image, raster.dpi(), out));
  }

  /** Draws a figure into an image. */
  static BufferedImage draw(Figure figure, Raster raster) {
    BufferedImage image =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    double scale = raster.dpi() / 96;
    g.scale(scale, scale);
    figure.paint(g, raster.width() / scale, raster.height() / scale);
    g.dispose();
    return image;
  }

  static void writePng(Figure figure, BufferedImage image, double dpi, OutputStream out)
      throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(
              ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
      IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
      IIOMetadataNode size = new IIOMetadataNode("pHYs");
      String perMetre = Long.toString(Math.round(dpi / 0.0254));
      size.setAttribute("pixelsPerUnitXAxis", perMetre);
      size.setAttribute("pixelsPerUnitYAxis", perMetre);
      size.setAttribute("unitSpecifier", "meter");
      root.appendChild(size);
      IIOMetadataNode texts = new IIOMetadataNode("iTXt");
      texts.appendChild(text("Title", figure.title()));
      texts.appendChild(text("Description", figure.description()));
      root.appendChild(texts);
      metadata.mergeTree("javax_imageio_png_1.0", root);
      writer.setOutput(stream);
      writer.write(new IIOImage(image, null, metadata));
    } finally {
      writer.dispose();
    }
  }

  private static IIOMetadataNode text(String keyword, String value) {
    IIOMetadataNode node = new IIOMetadataNode("iTXtEntry");
    node.setAttribute("keyword", keyword);
    node.setAttribute("compressionFlag", "FALSE");
    node.setAttribute("compressionMethod", "0");
    node.setAttribute("languageTag", "en");
    node.setAttribute("translatedKeyword", "");
    node.setAttribute("text", XmlText.clean(value));
    return node;
  }

  /**
   * Writes a figure as SVG with text as outlines, title and description as such.
   *
   * @param width user units, above 0
   * @param height user units, above 0
   * @throws IOException if the file cannot be written; nothing is then left behind
   */
  public static void svg(Figure figure, Path file, double width, double height) throws IOException {
    WholeFile.write(file, out -> writeSvg(figure, width, height, out));
  }

  static void writeSvg(Figure figure, double width, double height, OutputStream out)
      throws IOException {
    Document document =
        GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment("Fadeline");
    context.setPrecision(3);
    SVGGraphics2D g = new SVGGraphics2D(context, true);
    g.setSVGCanvasSize(new Dimension((int) Math.round(width), (int) Math.round(height)));
    figure.paint(g, width, height);
    Element root = g.getRoot();
    root.setAttribute("viewBox", String.format(Locale.ROOT, "0 0 %.2f %.2f", width, height));
    root.setAttribute("role", "img");
    Element description = document.createElementNS(SVG, "desc");
    description.setTextContent(XmlText.clean(figure.description()));
    root.insertBefore(description, root.getFirstChild());
    Element title = document.createElementNS(SVG, "title");
    title.setTextContent(XmlText.clean(figure.title()));
    root.insertBefore(title, description);
    StringWriter written = new StringWriter();
    g.stream(root, written, true, false);
    // A reader must not be sent to the network for a document type.
    String text = written.toString().replaceFirst("<!DOCTYPE[^>]*>", "");
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes figures as the pages of one PDF, in vectors with their fonts embedded.
   *
   * @param title of the whole
   * @param width points, above 0
   * @param height points, above 0
   * @throws IOException if the file cannot be written; nothing is then left behind
   */
  public static void pdf(String title, List<Figure> pages, Path file, double width, double height)
      throws IOException {
    PdfPages.write(file, new PdfPages.Book(title, pages), width, height, ExportMonitor.NONE);
  }

  /**
   * Writes a figure as a PDF of one page, in vectors with its fonts embedded.
   *
   * @param width points, above 0
   * @param height points, above 0
   * @throws IOException if the file cannot be written; nothing is then left behind
   */
  public static void pdf(Figure figure, Path file, double width, double height) throws IOException {
    PdfPages.write(
        file,
        new PdfPages.Book(figure.title(), List.of(figure)),
        width,
        height,
        ExportMonitor.NONE);
  }
}
