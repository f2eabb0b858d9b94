package org.fadeline.ui;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.fadeline.ui.control.picture.FigureCanvas;

/**
 * Steps through a window one after another, each begun only when the one before has settled: no
 * work goes on behind the window, every figure that is seen has been drawn, and a few frames have
 * passed since.
 */
final class Steps extends AnimationTimer {
  private static final int QUIET_FRAMES = 8;
  private static final long PATIENCE_NANOS = 120_000_000_000L;

  private final Scene scene;
  private final BooleanSupplier idle;
  private final Consumer<String> failed;
  private final Deque<Step> steps = new ArrayDeque<>();
  private String current = "the start";
  private long drawn;
  private int quiet;
  private long since;

  private record Step(String name, Runnable action) {}

  /**
   * Makes an empty list of steps; {@link #start} sets off.
   *
   * @param idle whether nothing is being worked on behind the window
   * @param failed is told in words of a step that does not settle or throws
   */
  Steps(Scene scene, BooleanSupplier idle, Consumer<String> failed) {
    this.scene = scene;
    this.idle = idle;
    this.failed = failed;
  }

  void add(String name, Runnable action) {
    steps.add(new Step(name, action));
  }

  @Override
  public void handle(long now) {
    since = since == 0 ? now : since;
    long draws = draws(scene.getRoot());
    boolean settled = idle.getAsBoolean() && draws >= 0 && draws == drawn;
    drawn = draws;
    quiet = settled ? quiet + 1 : 0;
    if (quiet >= QUIET_FRAMES) {
      next();
    } else if (now - since > PATIENCE_NANOS) {
      failed.accept("does not settle after " + current);
      next();
    }
  }

  private void next() {
    quiet = 0;
    since = 0;
    Step step = steps.poll();
    if (step == null) {
      stop();
      return;
    }
    current = step.name();
    try {
      step.action().run();
    } catch (RuntimeException e) {
      failed.accept(current + ": " + e);
    }
  }

  /** How often the figures in sight have been drawn together; negative if one has not been yet. */
  private static long draws(Node node) {
    if (!node.isVisible()) {
      return 0;
    }
    if (node instanceof FigureCanvas canvas && canvas.getWidth() >= 1 && canvas.getHeight() >= 1) {
      return canvas.draws() == 0 ? Long.MIN_VALUE / 2 : canvas.draws();
    }
    long sum = 0;
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        sum += draws(child);
      }
    }
    return sum;
  }
}
