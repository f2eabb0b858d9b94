package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.figure.Figure;

/** Writes a set of figures, each as a PNG and an SVG file of one name, and where asked as PDF. */
final class FigureFiles {
  private static final double WIDTH = 1200;

  /** Width of a figure that is clearly taller than wide. */
  private static final double NARROW_WIDTH = 720;

  private static final double NARROW_BELOW_ASPECT = 0.9;

  private FigureFiles() {}

  /**
   * Writes every figure.
   *
   * @param figures by file name without ending
   * @param folder made where it is missing; files of the same names are replaced
   * @return the files written
   * @throws IOException if a file cannot be written; none of them is then left behind
   */
  static List<Path> write(Map<String, Figure> figures, Path folder, boolean withPdf)
      throws IOException {
    List<Path> written = new ArrayList<>();
    WholeFolder.into(
        folder,
        part -> {
          for (Map.Entry<String, Figure> entry : figures.entrySet()) {
            for (Path file : write(entry.getKey(), entry.getValue(), part, withPdf)) {
              written.add(folder.resolve(file.getFileName()));
            }
          }
        });
    return written;
  }

  private static List<Path> write(String name, Figure figure, Path folder, boolean withPdf)
      throws IOException {
    double width = figure.aspect() < NARROW_BELOW_ASPECT ? NARROW_WIDTH : WIDTH;
    double height = Math.round(width / figure.aspect());
    Path png = folder.resolve(FileNames.of(name, "png"));
    FigureExport.png(
        figure, png, new FigureExport.Raster((int) (1.5 * width), (int) (1.5 * height), 144));
    Path svg = folder.resolve(FileNames.of(name, "svg"));
    FigureExport.svg(figure, svg, width, height);
    if (!withPdf) {
      return List.of(png, svg);
    }
    Path pdf = folder.resolve(FileNames.of(name, "pdf"));
    FigureExport.pdf(figure, pdf, width, height);
    return List.of(png, svg, pdf);
  }
}
