package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.replay.ReplayFrame;
import org.junit.jupiter.api.Test;

/** Two lines on one spot each show their catch. */
class PegSpotsTest {
  private static List<Point2D> at(double... xy) {
    List<Point2D> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point2D.Double(xy[i], xy[i + 1]));
    }
    return points;
  }

  @Test
  void marksOnOneSpotStandSideBySideWithTheSpotBetweenThem() {
    assertEquals(at(88, 50, 108, 50), PegSpots.apart(at(98, 50, 98, 50), List.of(8.0, 12.0)));
  }

  @Test
  void marksWithRoomStayWhereTheyAre() {
    List<Point2D> spots = at(10, 10, 60, 10, 10, 60);
    assertEquals(spots, PegSpots.apart(spots, List.of(20.0, 20.0, 20.0)));
  }

  @Test
  void ofManyOnOneSpotNoneCoversAnother() {
    List<Point2D> places =
        PegSpots.apart(at(0, 0, 0, 0, 3, 1, 0, 0, 6, 0), List.of(9.0, 9.0, 9.0, 9.0, 9.0));
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        assertTrue(places.get(i).distance(places.get(j)) > 15, places.toString());
      }
    }
  }

  @Test
  void bothCatchesOfOneSpotAreSeen() {
    Session plain = Fixtures.carpMatch().session();
    ReplayFrame frame = ReplayFrame.at(plain, plain.match().allOut());
    List<Line> lines = new ArrayList<>(plain.lines());
    List<Integer> caught = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      int fish = frame.line(lines.get(i).id()).map(ReplayFrame.LineState::fish).orElse(0);
      if (fish > 0 && caught.size() < 2) {
        caught.add(i);
      }
    }
    int one = caught.get(0);
    int other = caught.get(1);
    lines.set(other, lines.get(other).withPlace(lines.get(one).place()));
    Session shared = plain.withLines(lines);
    FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.KG_AND_METRES);
    BufferedImage image = new BufferedImage(900, 700, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    new PegFigure(shared, ReplayFrame.at(shared, shared.match().allOut()), style)
        .paint(g, 900, 700);
    g.dispose();
    for (int index : caught) {
      int seen = pixels(image, Theme.LIGHT.line(index));
      // A disc of at least 8 pixels has 201 of them; its number and name's letter take some.
      assertTrue(seen > 280, lines.get(index).name() + ": " + seen);
    }
  }

  private static int pixels(BufferedImage image, Color colour) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
      }
    }
    return count;
  }
}
