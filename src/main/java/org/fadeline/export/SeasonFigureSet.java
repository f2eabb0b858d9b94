package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
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
   * @throws IOException if a file cannot be written; none of them is then left behind
   */
  public static List<Path> write(Season season, FigureStyle style, Path folder) throws IOException {
    return FigureFiles.write(of(season, style), folder, true);
  }
}
