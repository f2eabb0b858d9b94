package org.fadeline.cli;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Review;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Units;

/** Writes the figures of a review. */
final class ReviewFigures {
  private static final int WIDTH = 1600;
  private static final double SCALE = 1.25;

  private ReviewFigures() {}

  /** Returns how many were written. */
  static int write(Review review, Units units, Path folder) {
    FigureStyle style = FigureStyle.of(Theme.LIGHT, units);
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("timeline", new TimelineFigure(review, style));
    figures.forEach((name, figure) -> write(figure, folder.resolve(name + ".png")));
    return figures.size();
  }

  private static void write(Figure figure, Path file) {
    int height = (int) Math.round(WIDTH / figure.aspect());
    BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(SCALE, SCALE);
    figure.paint(g, WIDTH / SCALE, height / SCALE);
    g.dispose();
    try {
      WholeFile.write(file, out -> ImageIO.write(image, "png", out));
    } catch (IOException e) {
      throw Writing.fault(file, e);
    }
  }
}
