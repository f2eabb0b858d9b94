package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Review;
import org.fadeline.model.Units;
import org.fadeline.replay.ReplayFrame;

/** Draws figures to PNG files to be looked at. */
public final class Gallery {
  private Gallery() {}

  /** Draws the gallery of the demo matches into the folder given as the first argument. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Files.createDirectories(folder);
    Review review = Fixtures.carpMatch();
    long mid = review.session().match().allIn() + 190 * 60_000L;
    for (Theme theme : new Theme[] {Theme.LIGHT, Theme.DARK}) {
      FigureStyle style = FigureStyle.of(theme, Units.LB_OZ_AND_METRES);
      String name = "-" + theme.name().toLowerCase(Locale.ROOT) + ".png";
      TimelineFigure timeline = new TimelineFigure(review, style);
      timeline = timeline.with(timeline.view().withKey(true));
      write(timeline, 1100, 720, 1, folder.resolve("timeline" + name));
      write(
          timeline.with(Knowledge.asKnownAt(mid - 60 * 60_000L)),
          1100,
          720,
          1,
          folder.resolve("timeline-then" + name));
      write(
          FigureSheet.of(
              timeline.with(timeline.view().withMeasure(TimelineView.Measure.WEIGHT)), review),
          1500,
          900,
          1,
          folder.resolve("timeline-weight" + name));
      write(
          new PegFigure(review.session(), ReplayFrame.at(review.session(), mid), style),
          420,
          460,
          1,
          folder.resolve("peg" + name));
      for (Figure figure : small(review, style)) {
        String stem = figure.getClass().getSimpleName();
        write(FigureSheet.of(figure, review), 700, 420, 1, folder.resolve(stem + name));
      }
      write(new MatchPageFigure(review, style), 560, 795, 1, folder.resolve("page" + name));
    }
  }

  static List<Figure> small(Review review, FigureStyle style) {
    return List.of(
        new FirstBiteFigure(review, style),
        new WeightFigure(review, style, Knowledge.hindsight()),
        new RateFigure(review, review.lines().get(1).line().id(), style, TimelineView.Measure.FISH),
        new FeedResponseFigure(review, review.lines().get(1).line().id(), style),
        new QuarterHourFigure(review, style),
        new CatchWeightsFigure(review, style));
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
