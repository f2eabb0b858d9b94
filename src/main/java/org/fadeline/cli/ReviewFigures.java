package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.fadeline.analysis.Review;
import org.fadeline.export.FigureExport;
import org.fadeline.export.ReviewFigureSet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;

/** Writes the figures of a review: each as PNG and SVG, the match page as an A5 PDF too. */
final class ReviewFigures {
  private static final double A5_WIDTH_POINTS = 5.83 * 72;

  private ReviewFigures() {}

  /** Returns how many files were written. */
  static int write(Review review, Units units, Path folder) {
    FigureStyle style = FigureStyle.of(Theme.LIGHT, units);
    MatchPageFigure page = new MatchPageFigure(review, style);
    try {
      FigureExport.pdf(
          page, folder.resolve("match-page.pdf"), A5_WIDTH_POINTS, A5_WIDTH_POINTS / page.aspect());
      return 1 + ReviewFigureSet.write(review, style, folder).size();
    } catch (IOException e) {
      throw Output.fault(folder, e);
    }
  }
}
