package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.SeasonFadesFigure;
import org.fadeline.figure.SeasonFeedFigure;
import org.fadeline.figure.SeasonFirstBiteFigure;
import org.fadeline.figure.SeasonHoursFigure;
import org.fadeline.figure.SeasonPastPlainFigure;
import org.fadeline.figure.SeasonResultsFigure;

/** Every figure of a season, each with the name of its file. */
public final class SeasonFigureSet {
  private static final double WIDTH = 1200;

  private SeasonFigureSet() {}

  /** Returns the figures by file name without ending, in the order they are best looked at. */
  public static Map<String, Figure> of(Season season, FigureStyle style) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("season-results", new SeasonResultsFigure(season, style));
    figures.put("season-line-by-hour", new SeasonHoursFigure(season, style));
    for (By by : By.values()) {
      figures.put(
          "season-first-bite-by-" + by.word(), new SeasonFirstBiteFigure(season, by, style));
    }
    figures.put("season-fades", new SeasonFadesFigure(season, style));
    figures.put("season-past-plain", new SeasonPastPlainFigure(season, style));
    figures.put("season-feed", new SeasonFeedFigure(season, style));
    figures.replaceAll((name, figure) -> FigureSheet.of(figure, season));
    return figures;
  }

  /**
   * Writes every figure as PNG, SVG and PDF.
   *
   * @param folder made where it is missing; files of the same names are replaced
   * @return the files written
   * @throws IOException if a file cannot be written; each file is whole or not there
   */
  public static List<Path> write(Season season, FigureStyle style, Path folder) throws IOException {
    List<Path> written = new ArrayList<>();
    for (Map.Entry<String, Figure> entry : of(season, style).entrySet()) {
      Figure figure = entry.getValue();
      double height = Math.round(WIDTH / figure.aspect());
      Path png = folder.resolve(FileNames.of(entry.getKey(), "png"));
      FigureExport.png(
          figure, png, new FigureExport.Raster((int) (1.5 * WIDTH), (int) (1.5 * height), 144));
      written.add(png);
      Path svg = folder.resolve(FileNames.of(entry.getKey(), "svg"));
      FigureExport.svg(figure, svg, WIDTH, height);
      written.add(svg);
      Path pdf = folder.resolve(FileNames.of(entry.getKey(), "pdf"));
      FigureExport.pdf(figure, pdf, WIDTH, height);
      written.add(pdf);
    }
    return written;
  }
}
