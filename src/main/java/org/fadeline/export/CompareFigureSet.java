package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
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
  private CompareFigureSet() {}

  /** Returns the figures by file name without ending, in the order they are best looked at. */
  public static Map<String, Figure> of(Comparison comparison, FigureStyle style) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("compare-timelines", new CompareTimelinesFigure(comparison, style));
    figures.put("compare-catch", new CompareCatchFigure(comparison, style));
    figures.put("compare-pegs", new ComparePegsFigure(comparison, style));
    figures.put("compare-rates", new CompareRatesFigure(comparison, style));
    figures.put("compare-first-bites", new CompareFirstBitesFigure(comparison, style));
    figures.replaceAll((name, figure) -> FigureSheet.of(figure, comparison));
    return figures;
  }

  /**
   * Writes every figure as PNG and SVG.
   *
   * @param folder made where it is missing; files of the same names are replaced
   * @return the files written
   * @throws IOException if a file cannot be written; none of them is then left behind
   */
  public static List<Path> write(Comparison comparison, FigureStyle style, Path folder)
      throws IOException {
    return FigureFiles.write(of(comparison, style), folder, false);
  }
}
