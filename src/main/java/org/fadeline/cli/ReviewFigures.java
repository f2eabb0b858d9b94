package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.fadeline.analysis.Review;
import org.fadeline.export.FigureExport;
import org.fadeline.figure.CatchWeightsFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.FirstBiteFigure;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.QuarterHourFigure;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.WeightFigure;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.replay.ReplayFrame;

/** Writes the figures of a review: each as PNG and SVG, the match page as PDF too. */
final class ReviewFigures {
  private static final int WIDTH = 1920;
  private static final double DPI = 168;
  private static final double POINTS_PER_INCH = 72;
  private static final double A5_WIDTH = 5.83 * POINTS_PER_INCH;

  private ReviewFigures() {}

  /** Returns how many figures were written. */
  static int write(Review review, Units units, Path folder) {
    Map<String, Figure> figures = figures(review, FigureStyle.of(Theme.LIGHT, units));
    for (Map.Entry<String, Figure> entry : figures.entrySet()) {
      Path file = folder.resolve(entry.getKey());
      try {
        write(entry.getValue(), file);
      } catch (IOException e) {
        throw Writing.fault(file, e);
      }
    }
    return figures.size();
  }

  private static Map<String, Figure> figures(Review review, FigureStyle style) {
    Session session = review.session();
    ReplayFrame end = ReplayFrame.at(session, session.match().allOut());
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("match-page", new MatchPageFigure(review, style));
    figures.put("timeline", sheet(new TimelineFigure(review, style), review));
    figures.put("peg", sheet(new PegFigure(session, end, style), review));
    figures.put(
        "running-weight", sheet(new WeightFigure(review, style, Knowledge.hindsight()), review));
    figures.put("first-bites", sheet(new FirstBiteFigure(review, style), review));
    figures.put("quarter-hours", sheet(new QuarterHourFigure(review, style), review));
    figures.put("catch-weights", sheet(new CatchWeightsFigure(review, style), review));
    return figures;
  }

  private static Figure sheet(Figure figure, Review review) {
    return FigureSheet.of(figure, review, true);
  }

  private static void write(Figure figure, Path file) throws IOException {
    int height = (int) Math.round(WIDTH / figure.aspect());
    FigureExport.png(figure, ending(file, ".png"), new FigureExport.Raster(WIDTH, height, DPI));
    FigureExport.svg(figure, ending(file, ".svg"), WIDTH / 1.75, height / 1.75);
    if (figure instanceof MatchPageFigure) {
      FigureExport.pdf(figure, ending(file, ".pdf"), A5_WIDTH, A5_WIDTH / figure.aspect());
    }
  }

  private static Path ending(Path file, String ending) {
    return file.resolveSibling(file.getFileName() + ending);
  }
}
