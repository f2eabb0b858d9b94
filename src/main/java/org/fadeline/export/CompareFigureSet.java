package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.CompareCatchFigure;
import org.fadeline.figure.CompareFirstBitesFigure;
import org.fadeline.figure.ComparePegsFigure;
import org.fadeline.figure.CompareRatesFigure;
import org.fadeline.figure.CompareTimelinesFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;

/** Every figure of a comparison, each with the name of its file. */
public final class CompareFigureSet {
  private static final double WIDTH = 1200;

  private CompareFigureSet() {}

  /** Returns the figures by file name without ending, in the order they are best looked at. */
  public static Map<String, Figure> of(Comparison comparison, FigureStyle style) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put(
        "compare-timelines",
        FigureSheet.of(new CompareTimelinesFigure(comparison, style), comparison, true));
    figures.put(
        "compare-catch",
        FigureSheet.of(new CompareCatchFigure(comparison, style), comparison, true));
    figures.put(
        "compare-pegs", FigureSheet.of(new ComparePegsFigure(comparison, style), comparison, true));
    figures.put(
        "compare-rates",
        FigureSheet.of(new CompareRatesFigure(comparison, style), comparison, true));
    figures.put(
        "compare-first-bites",
        FigureSheet.of(new CompareFirstBitesFigure(comparison, style), comparison, true));
    return figures;
  }

  /**
   * Writes every figure as PNG and SVG.
   *
   * @param folder made where it is missing; files of the same names are replaced
   * @return the files written
   * @throws IOException if a file cannot be written; each file is whole or not there
   */
  public static List<Path> write(Comparison comparison, FigureStyle style, Path folder)
      throws IOException {
    List<Path> written = new ArrayList<>();
    for (Map.Entry<String, Figure> entry : of(comparison, style).entrySet()) {
      Figure figure = entry.getValue();
      double height = Math.round(WIDTH / figure.aspect());
      Path png = folder.resolve(FileNames.of(entry.getKey(), "png"));
      FigureExport.png(
          figure, png, new FigureExport.Raster((int) (1.5 * WIDTH), (int) (1.5 * height), 144));
      written.add(png);
      Path svg = folder.resolve(FileNames.of(entry.getKey(), "svg"));
      FigureExport.svg(figure, svg, WIDTH, height);
      written.add(svg);
    }
    return written;
  }
}
