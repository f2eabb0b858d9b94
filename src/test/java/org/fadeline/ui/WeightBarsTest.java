package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** The bars of Weigh-in and of The record: each as long as its weight, on one scale. */
@ExtendWith(ApplicationExtension.class)
class WeightBarsTest extends WindowHarness {
  private static final double POUND = 453.59237;

  /** What the log of the match written by hand holds, grams. */
  private static final double LOGGED = 24_600;

  /** Returns the tracks seen whose words begin so, from the top. */
  private List<Region> tracks(String name) {
    return WaitForAsyncUtils.waitForAsyncFx(
        10_000,
        () -> {
          window.scene().getRoot().layout();
          List<Region> found = new ArrayList<>();
          for (Region track : robot.lookup(".bar-track").queryAllAs(Region.class)) {
            if (shown(track) && track.getAccessibleText().startsWith(name)) {
              found.add(track);
            }
          }
          found.sort(Comparator.comparingDouble(t -> t.localToScene(0, 0).getY()));
          return found;
        });
  }

  private static boolean shown(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private static Region piece(Region track, String style) {
    return (Region) track.lookup("." + style);
  }

  /** Returns how long a bar is, grams, where the longest mark of all lies at so many. */
  private static double grams(double pixels, Region track, double most) {
    return pixels / (track.getWidth() - 2) * most;
  }

  private static double pixel(Region track, double most) {
    return most / (track.getWidth() - 2);
  }

  private Region only(String name) {
    List<Region> found = tracks(name);
    assertEquals(1, found.size(), name);
    return found.get(0);
  }

  private void assertNet(double scales, double limit) {
    double most = Math.max(LOGGED, Math.max(scales, limit));
    Region track = only("Net 1");
    double pixel = pixel(track, most);
    assertTrue(track.getWidth() > 100, "there is room for a bar");
    assertEquals(scales, grams(piece(track, "bar-fill").getWidth(), track, most), pixel);
    Region tick = piece(track, "bar-tick");
    assertTrue(tick.isVisible());
    assertEquals(LOGGED, grams(tick.getLayoutX(), track, most), pixel, "the log");
    Region mark = piece(track, "bar-limit");
    assertTrue(mark.isVisible());
    assertEquals(limit, grams(mark.getLayoutX(), track, most), pixel, "the limit");
  }

  @Test
  void onWeighInANetIsItsScalesWithTheLogAndTheLimitMarked() {
    open("Weigh-in");
    limitOf(50);
    type("net-1-weight", "40");
    assertNet(40 * POUND, 50 * POUND);
    assertTrue(only("Net 1: 40 lb").getAccessibleText().length() < 17, "the scales alone");
    assertTrue(shows("Red mark: the limit."));
  }

  @Test
  void unweighedANetIsWhatTheLogSaysAndSaysSo() {
    open("Weigh-in");
    Region track = only("Net 1");
    assertEquals(LOGGED, grams(piece(track, "bar-fill").getWidth(), track, LOGGED), 1);
    assertFalse(piece(track, "bar-tick").isVisible());
    assertFalse(piece(track, "bar-limit").isVisible());
    assertTrue(track.getAccessibleText().endsWith(" by the log"), track.getAccessibleText());
    assertFalse(shows("Red mark"));
  }

  @Test
  void pegsStandFromTheHeaviestOnOneScale() {
    open("Weigh-in");
    assertTrue(shows("No weight of a peg nearby is known."));
    type("net-1-weight", "40");
    type("neighbour-peg", "13");
    type("neighbour-weight", "80");
    type("neighbour-peg", "15");
    type("neighbour-weight", "20");
    List<Region> pegs = new ArrayList<>(tracks("Peg "));
    pegs.add(1, only("This peg"));
    double[] pounds = {80, 40, 20};
    double above = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pounds.length; i++) {
      Region track = pegs.get(i);
      double length = grams(piece(track, "bar-fill").getWidth(), track, 80 * POUND);
      assertEquals(pounds[i] * POUND, length, pixel(track, 80 * POUND), track.getAccessibleText());
      double y = track.localToScene(0, 0).getY();
      assertTrue(y > above, "the heaviest first");
      above = y;
    }
    assertFalse(shows("No weight of a peg nearby is known."));
    robot.interact(() -> bench.editing().undo());
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(1, tracks("Peg ").size(), "taken back, its bar goes");
  }

  @Test
  void theRecordShowsTheSameNet() throws Exception {
    open("Weigh-in");
    limitOf(50);
    type("net-1-weight", "40");
    robot.interact(() -> window.showScreen("Review"));
    robot.interact(
        () ->
            window.commands().stream()
                .filter(c -> c.title().equals("The record"))
                .forEach(c -> c.action().run()));
    waitUntil(() -> shows("Net by net"));
    assertNet(40 * POUND, 50 * POUND);
  }
}
