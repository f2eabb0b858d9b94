package org.fadeline.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.Image;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.fadeline.figure.Theme;

/**
 * Finds what a designer would find first: text that is cut short, text that lies over other text,
 * text too faint on its ground (WCAG 2.2, 1.4.3). Figures are judged by their own tests.
 */
final class ScreenJudge {
  private static final double FAINTEST = 4.5;
  private static final double TOUCH = 1.5;

  private final Image picture;
  private final List<String> found = new ArrayList<>();
  private final List<Seen> seen = new ArrayList<>();

  private record Seen(Text text, Bounds place) {}

  private ScreenJudge(Image picture) {
    this.picture = picture;
  }

  /** Returns the faults of what a scene shows now, in words. */
  static List<String> judge(Scene scene) {
    WritableImage picture = scene.snapshot(null);
    ScreenJudge judge = new ScreenJudge(picture);
    BoundingBox window = new BoundingBox(0, 0, scene.getWidth(), scene.getHeight());
    judge.visit(topmost(scene.getRoot()), window);
    judge.overlaps();
    return judge.found;
  }

  /** What lies under a veil is not read: the last veil shown, or all. */
  private static Parent topmost(Parent root) {
    return root.lookupAll(".veil").stream()
        .filter(ScreenJudge::isSeen)
        .map(Parent.class::cast)
        .reduce(root, (before, veil) -> veil);
  }

  static boolean isSeen(Node node) {
    boolean seen = true;
    for (Node at = node; at != null; at = at.getParent()) {
      seen &= at.isVisible();
    }
    return seen;
  }

  private void visit(Node node, Bounds clip) {
    if (!node.isVisible() || node.getOpacity() == 0) {
      return;
    }
    Bounds inner = clip;
    if (node.getClip() != null) {
      Bounds own = node.localToScene(node.getClip().getBoundsInParent());
      inner = cut(clip, own);
    }
    if (inner.getWidth() <= 0 || inner.getHeight() <= 0) {
      return;
    }
    if (node instanceof Labeled label) {
      shortened(label, inner);
    }
    if (node instanceof Text text && !text.getText().isBlank()) {
      text(text, inner);
    }
    if (node instanceof Parent parent && !(node instanceof TextInputControl)) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        visit(child, inner);
      }
    }
  }

  private static Bounds cut(Bounds a, Bounds b) {
    double x = Math.max(a.getMinX(), b.getMinX());
    double y = Math.max(a.getMinY(), b.getMinY());
    return new BoundingBox(
        x,
        y,
        Math.max(0, Math.min(a.getMaxX(), b.getMaxX()) - x),
        Math.max(0, Math.min(a.getMaxY(), b.getMaxY()) - y));
  }

  private void shortened(Labeled label, Bounds clip) {
    Bounds place = label.localToScene(label.getLayoutBounds());
    boolean inSight = cut(place, clip).getHeight() > 3 && cut(place, clip).getWidth() > 3;
    if (inSight
        && label.lookup(".text") instanceof Text shown
        && shown.isVisible()
        && label.getText() != null
        && !shown.getText().equals(label.getText())
        && shown.getText().endsWith(label.getEllipsisString())) {
      found.add("cut short: \"" + shown.getText() + "\" of \"" + label.getText() + "\"");
    }
  }

  private void text(Text text, Bounds clip) {
    Bounds place = text.localToScene(text.getLayoutBounds());
    Bounds sight = cut(place, clip);
    if (sight.getWidth() < 2 || sight.getHeight() < 4) {
      return;
    }
    if (sight.getWidth() < place.getWidth() - 2 && !text.getStyleClass().contains("scrolled")) {
      found.add("cut off at the side: \"" + brief(text.getText()) + "\"");
    }
    seen.add(new Seen(text, sight));
    if (text.getFill() instanceof Color ink && !isDisabled(text)) {
      java.awt.Color ground = ground(sight, ink);
      double contrast = Theme.contrast(awt(ink), ground);
      if (contrast < FAINTEST) {
        found.add(
            String.format(Locale.ROOT, "faint, %.1f:1: \"%s\"", contrast, brief(text.getText())));
      }
    }
  }

  private static boolean isDisabled(Node node) {
    return node.isDisabled();
  }

  /** The commonest colour under a text. */
  private java.awt.Color ground(Bounds place, Color ink) {
    Map<Integer, Integer> counts = new HashMap<>();
    var pixels = picture.getPixelReader();
    int right = (int) Math.min(picture.getWidth(), place.getMaxX());
    int foot = (int) Math.min(picture.getHeight(), place.getMaxY());
    for (int y = (int) place.getMinY(); y < foot; y++) {
      for (int x = (int) place.getMinX(); x < right; x++) {
        counts.merge(pixels.getArgb(x, y) & 0xFFFFFF, 1, Integer::sum);
      }
    }
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(e -> new java.awt.Color(e.getKey()))
        .orElse(awt(ink));
  }

  private static java.awt.Color awt(Color c) {
    return new java.awt.Color((float) c.getRed(), (float) c.getGreen(), (float) c.getBlue());
  }

  private void overlaps() {
    for (int i = 0; i < seen.size(); i++) {
      for (Seen other : seen.subList(i + 1, seen.size())) {
        // The parts of a flowing text wrap: their bounds say nothing.
        Node flow = other.text().getParent();
        if (flow instanceof TextFlow && flow == seen.get(i).text().getParent()) {
          continue;
        }
        Bounds both = cut(seen.get(i).place(), other.place());
        if (both.getWidth() > TOUCH && both.getHeight() > 2 * TOUCH) {
          found.add(
              "over one another: \""
                  + brief(seen.get(i).text().getText())
                  + "\" and \""
                  + brief(other.text().getText())
                  + "\"");
        }
      }
    }
  }

  private static String brief(String text) {
    return text.length() > 60 ? text.substring(0, 60) + "…" : text;
  }
}
