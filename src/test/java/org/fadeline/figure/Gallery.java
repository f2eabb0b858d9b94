package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Review;
import org.fadeline.model.Units;

/** Draws figures to PNG files to be looked at. */
public final class Gallery {
  private Gallery() {}

  /** Draws the gallery of the demo matches into the folder given as the first argument. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Files.createDirectories(folder);
    Review review = Fixtures.carpMatch();
    for (Theme theme : new Theme[] {Theme.LIGHT, Theme.DARK}) {
      FigureStyle style = FigureStyle.of(theme, Units.LB_OZ_AND_METRES);
      TimelineFigure timeline = new TimelineFigure(review, style);
      timeline = timeline.with(timeline.view().withKey(true));
      String name = theme.name().toLowerCase(java.util.Locale.ROOT);
      write(timeline, 1100, 720, 1, folder.resolve("timeline-" + name + ".png"));
      write(
          timeline.with(Knowledge.asKnownAt(review.session().match().allIn() + 190 * 60_000L)),
          1100,
          720,
          1,
          folder.resolve("timeline-then-" + name + ".png"));
      write(
          new PegFigure(
              review.session(),
              org.fadeline.replay.ReplayFrame.at(
                  review.session(), review.session().match().allIn() + 190 * 60_000L),
              style),
          420,
          460,
          1,
          folder.resolve("peg-" + name + ".png"));
    }
  }

  static void write(Figure figure, int width, int height, double scale, Path file)
      throws IOException {
    BufferedImage image = draw(figure, width, height, scale);
    ImageIO.write(image, "png", file.toFile());
  }

  static BufferedImage draw(Figure figure, int width, int height, double scale) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(width * scale),
            (int) Math.round(height * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(scale, scale);
    figure.paint(g, width, height);
    g.dispose();
    return image;
  }
}
