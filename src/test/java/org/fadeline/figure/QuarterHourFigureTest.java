package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** A fish stands in the bar of the quarter-hour that the words and the tables give it to. */
class QuarterHourFigureTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);

  @Test
  void aFishOnTheStrokeStandsInTheQuarterThatEndsThere() {
    Session made = Fixtures.carpMatch().session();
    long stroke = made.match().allIn() + 900_000;
    String line = made.lines().get(0).id();
    Session session =
        made.withEvents(
            List.of(
                new SessionEvent.Cast(new Stamp("c", stroke - 600_000, line, null)),
                new SessionEvent.Landed(
                    new Stamp("f", stroke, line, null), new Fish(1, null, 900.0, false))));
    Review review = Reviewer.review(session, ReviewSettings.DEFAULT);
    assertEquals(1, review.course().quarters().get(0).caught().landed());
    BufferedImage image = new BufferedImage(800, 400, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    new QuarterHourFigure(review, STYLE).paint(g, 800, 400);
    Rectangle2D area = Plot.area(new Pen(g, STYLE), 0, 800, 400, 0);
    double quarter = area.getWidth() * 900_000 / made.match().lengthMillis();
    g.dispose();
    int hue = STYLE.theme().line(0).getRGB();
    boolean any = false;
    for (int x = 0; x < 800; x++) {
      for (int y = 0; y < 400; y++) {
        if (image.getRGB(x, y) == hue) {
          any = true;
          assertTrue(x < area.getX() + quarter, "the bar reaches " + x);
        }
      }
    }
    assertTrue(any);
  }
}
