package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/** Of more fish than a pile has room for, the higher pile is still of more. */
class CatchPilesTest {
  @Test
  void aPileTwiceAsHighIsOfTwiceAsManyFishHoweverManyThereAre() {
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 0; i < 900; i++) {
      Stamp stamp = new Stamp("f" + i, HandMade.minute(10) + i * 1000L, "short", null);
      double grams = i % 3 == 0 ? 1000 : 4000;
      events.add(new SessionEvent.Landed(stamp, new Fish(1, "carp", grams, false)));
    }
    FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
    CatchWeightsFigure figure =
        new CatchWeightsFigure(Reviewer.review(HandMade.of(events), ReviewSettings.DEFAULT), style);
    BufferedImage image = new BufferedImage(900, 500, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    figure.paint(g, 900, 500);
    g.dispose();
    List<Integer> heights = piles(image, style.theme().line(1));
    assertEquals(2, heights.size(), "two weights are two piles: " + heights);
    double ratio = (double) heights.get(1) / heights.get(0);
    assertTrue(ratio > 1.6 && ratio < 2.1, "300 and 600 fish: " + heights);
  }

  /** The height of each pile from left to right, right of the names. */
  private static List<Integer> piles(BufferedImage image, Color hue) {
    List<Integer> heights = new ArrayList<>();
    boolean inside = false;
    for (int x = 150; x < image.getWidth(); x++) {
      int top = Integer.MAX_VALUE;
      int bottom = -1;
      for (int y = 0; y < image.getHeight(); y++) {
        if (image.getRGB(x, y) == hue.getRGB()) {
          top = Math.min(top, y);
          bottom = y;
        }
      }
      boolean pile = bottom - top > 12;
      if (pile && !inside) {
        heights.add(0);
      }
      if (pile) {
        int last = heights.size() - 1;
        heights.set(last, Math.max(heights.get(last), bottom - top));
      }
      inside = pile;
    }
    return heights;
  }
}
