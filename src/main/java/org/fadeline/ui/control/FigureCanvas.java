package org.fadeline.ui.control;

import java.awt.Graphics2D;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Pane;
import org.jspecify.annotations.Nullable;

/**
 * Shows a drawing on a canvas of the size of the view. It draws when it is told that something
 * changed or when its size did, once before the next frame, and never otherwise.
 */
public final class FigureCanvas extends Pane {
  /** The largest side of a canvas, pixels: beyond the texture limit a canvas throws. */
  private static final double LARGEST = 8192;

  private final Canvas canvas = new Canvas();
  private @Nullable Painter painter;
  private boolean dirty;
  private long draws;

  /** Something that draws itself into a rectangle from (0, 0). */
  @FunctionalInterface
  public interface Painter {
    /** Draws with the given width and height in pixels. */
    void paint(Graphics2D g, double width, double height);
  }

  /** Makes an empty canvas. */
  public FigureCanvas() {
    getChildren().add(canvas);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(0, 0);
    canvas.setMouseTransparent(true);
  }

  /**
   * Sets what is drawn, or nothing.
   *
   * @param description whole sentences for someone who cannot see it
   */
  public void show(@Nullable Painter newPainter, String description) {
    painter = newPainter;
    setAccessibleText(description);
    redraw();
  }

  /** Draws again before the next frame. */
  public void redraw() {
    dirty = true;
    requestLayout();
  }

  /** Returns how often it has drawn so far. */
  public long draws() {
    return draws;
  }

  @Override
  protected void layoutChildren() {
    double width = Math.min(LARGEST, Math.floor(getWidth()));
    double height = Math.min(LARGEST, Math.floor(getHeight()));
    if (width != canvas.getWidth() || height != canvas.getHeight()) {
      canvas.setWidth(width);
      canvas.setHeight(height);
      dirty = true;
    }
    if (dirty && width > 0 && height > 0) {
      dirty = false;
      draws++;
      var context = canvas.getGraphicsContext2D();
      // Clearing also drops the commands the canvas would otherwise keep.
      context.clearRect(0, 0, width, height);
      Painter now = painter;
      if (now != null) {
        context.save();
        now.paint(new CanvasGraphics(context), width, height);
        context.restore();
      }
    }
  }
}
