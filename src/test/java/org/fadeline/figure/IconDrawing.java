package org.fadeline.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Draws the program's icon: the water from the peg, and one line's bites growing fainter along it.
 * Run it to make the files anew: the argument is the folder, each further one a size in pixels.
 */
public final class IconDrawing {
  private static final Color WATER = new Color(0x0B6E69);
  private static final Color ARC = new Color(255, 255, 255, 70);
  private static final Color BANK = new Color(0xE2E3D3);
  private static final double[] BITES = {1, 0.85, 0.62, 0.38, 0.2};

  private IconDrawing() {}

  /** Writes {@code fadeline-SIZE.png} for each size into the folder. */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    for (int i = 1; i < args.length; i++) {
      int size = Integer.parseInt(args[i]);
      ImageIO.write(draw(size), "png", folder.resolve("fadeline-" + size + ".png").toFile());
    }
  }

  private static BufferedImage draw(int size) {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(size / 64.0, size / 64.0);
    RoundRectangle2D ground = new RoundRectangle2D.Double(2, 2, 60, 60, 14, 14);
    g.setColor(WATER);
    g.fill(ground);
    g.setClip(ground);
    g.setColor(ARC);
    g.setStroke(new BasicStroke(1.6f));
    for (double radius : new double[] {20, 34, 48, 62}) {
      g.draw(
          new Arc2D.Double(32 - radius, 58 - radius, 2 * radius, 2 * radius, 0, 180, Arc2D.OPEN));
    }
    g.setColor(BANK);
    g.fill(new Ellipse2D.Double(-18, 53, 100, 40));
    // One line, fished outwards: each bite fainter and smaller than the one before.
    for (int i = 0; i < BITES.length; i++) {
      double along = i / (BITES.length - 1.0);
      double x = 16 + 34 * along;
      double y = 44 - 30 * along;
      double radius = 5.6 - 2.6 * along;
      g.setColor(new Color(1f, 1f, 1f, (float) BITES[i]));
      g.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }
    g.dispose();
    return image;
  }
}
