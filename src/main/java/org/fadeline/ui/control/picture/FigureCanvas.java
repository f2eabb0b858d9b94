package org.fadeline.ui.control.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.stage.Window;
import org.fadeline.figure.Figure;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/**
 * Shows a drawing on a canvas of the size of the view. It draws when it is told that something
 * changed or when its size did, once before the next frame, and never otherwise.
 */
public final class FigureCanvas extends Pane {
  /** The largest side of a canvas, pixels: beyond the texture limit a canvas throws. */
  private static final double LARGEST = 8192;

  private static final String MADE = "-made";

  private final Canvas canvas = new Canvas();
  private static final AtomicLong CANVASES = new AtomicLong();

  private final String channel = "draw-" + CANVASES.getAndIncrement();
  private @Nullable Painter painter;
  private @Nullable TaskService tasks;
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
    stopAhead();
    setAccessibleText(description);
    redraw();
  }

  private void stopAhead() {
    TaskService before = tasks;
    if (before != null) {
      before.cancel(channel);
      before.cancel(channel + MADE);
      tasks = null;
    }
  }

  /**
   * Sets what is drawn, where drawing takes longer than a frame: it is drawn off the window's
   * thread and shown when it is ready. What was shown stays until then, or goes at once.
   *
   * @param newPainter draws on another thread, and on no state that changes
   * @param description whole sentences for someone who cannot see it
   * @param ahead draws
   */
  public void showAhead(Painter newPainter, String description, Ahead ahead) {
    if (!ahead.keepOld()) {
      canvas.getGraphicsContext2D().clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    }
    painter = newPainter;
    tasks = ahead.tasks();
    setAccessibleText(description);
    redraw();
  }

  /**
   * Shows a figure: at once, or made, put in words and drawn off the window's thread where any of
   * that takes longer than a frame. What was shown stays until then.
   *
   * @param figure makes the figure
   * @param ahead does it off the window's thread, or null to do it at once
   */
  public void showFigure(Supplier<Figure> figure, @Nullable TaskService ahead) {
    if (ahead == null) {
      Figure made = figure.get();
      show(made::paint, made.description());
      return;
    }
    stopAhead();
    tasks = ahead;
    ahead.submit(
        channel + MADE,
        "Drawing",
        progress -> {
          Figure made = figure.get();
          return new Made(made, made.description());
        },
        new TaskService.Answer<>(
            made -> showAhead(made.figure::paint, made.words, new Ahead(ahead, true)),
            // Better late than not at all, and told like any fault of this thread.
            failure -> showFigure(figure, null)));
  }

  /** A figure with what it shows in words. */
  private record Made(Figure figure, String words) {}

  /**
   * How something is drawn off the window's thread.
   *
   * @param tasks draw it
   * @param keepOld whether what was shown stays meanwhile
   */
  public record Ahead(TaskService tasks, boolean keepOld) {}

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
      Painter wanted = painter;
      TaskService drawing = tasks;
      if (wanted != null && drawing != null) {
        drawAhead(wanted, drawing, width, height);
        return;
      }
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

  private void drawAhead(Painter wanted, TaskService drawing, double width, double height) {
    Window window = getScene() == null ? null : getScene().getWindow();
    double scale = window == null ? 1 : window.getOutputScaleX();
    drawing.submit(
        channel,
        "Drawing",
        progress -> drawn(wanted, width, height, scale),
        new TaskService.Answer<>(
            image -> {
              draws++;
              var context = canvas.getGraphicsContext2D();
              context.clearRect(0, 0, width, height);
              context.drawImage(image, 0, 0, width, height);
            },
            failure -> {
              // Better late than not at all, and told like any fault of this thread.
              stopAhead();
              redraw();
            }));
  }

  private static Image drawn(Painter wanted, double width, double height, double scale) {
    int across = (int) Math.ceil(width * scale);
    int down = (int) Math.ceil(height * scale);
    BufferedImage image = new BufferedImage(across, down, BufferedImage.TYPE_INT_ARGB_PRE);
    Graphics2D g = image.createGraphics();
    g.scale(across / width, down / height);
    wanted.paint(g, width, height);
    g.dispose();
    int[] dots = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    return new WritableImage(
        new PixelBuffer<>(across, down, IntBuffer.wrap(dots), PixelFormat.getIntArgbPreInstance()));
  }
}
