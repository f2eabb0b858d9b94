package org.fadeline.ui.control.picture;

import java.awt.geom.Rectangle2D;
import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.TimelineLayout;

/**
 * Lies over a timeline and hides what was not known yet: everything right of the playhead. The
 * marks at the playhead itself, which stand half on its right, are drawn once more on top.
 */
public final class FutureCover extends Pane {
  /** How far right of the playhead a mark of its minute may stand, pixels. */
  private static final double EDGE = 24;

  private final Pane covers = new Pane();
  private final FigureCanvas edge = new FigureCanvas();

  /** Makes a cover that hides nothing. */
  public FutureCover() {
    setMouseTransparent(true);
    // What moves inside does not lay out the window again.
    setManaged(false);
    covers.setManaged(false);
    edge.setManaged(false);
    getChildren().addAll(covers, edge);
    setVisible(false);
  }

  /**
   * Covers what was not known.
   *
   * @param layout of the timeline below, which has the size of this
   * @param knowledge from which moment it is seen; with hindsight nothing is covered
   */
  public void follow(TimelineLayout layout, Knowledge knowledge) {
    Long known = knowledge.at();
    setVisible(known != null);
    covers.setVisible(known != null);
    if (known == null) {
      return;
    }
    double x = layout.xOf(known);
    // On whole pixels, and with the one before: no blended edge of a mark tells that it is coming.
    double from = Math.max(layout.plotArea().getMinX(), Math.floor(x) - 1);
    List<TimelineLayout.Lane> lanes = layout.lanes();
    while (covers.getChildren().size() < 2 * lanes.size() + 1) {
      Rectangle rectangle = new Rectangle();
      rectangle
          .getStyleClass()
          .add(covers.getChildren().size() % 2 == 0 ? "future-margin" : "future");
      covers.getChildren().add(rectangle);
      // Made while laying out, after this frame's styles: unstyled it would flash black.
      rectangle.applyCss();
    }
    for (int i = 0; i < covers.getChildren().size(); i++) {
      covers.getChildren().get(i).setVisible(i < 2 * lanes.size() + 1);
    }
    for (int i = 0; i < lanes.size(); i++) {
      Rectangle2D plot = lanes.get(i).plot();
      place(2 * i, from, plot.getMinY() - 1, getWidth() - from, plot.getHeight() + 3);
      place(2 * i + 1, from, plot.getMinY(), plot.getMaxX() - from, plot.getHeight());
    }
    Rectangle2D strip = layout.aroundStrip();
    place(2 * lanes.size(), from, strip.getMinY(), getWidth() - from, strip.getHeight());
    double left = Math.max(0, Math.floor(x) - 1);
    edge.resizeRelocate(left, 0, EDGE, getHeight());
    edge.show(
        (g, w, h) -> {
          g.translate(-left, 0);
          layout.paintEdge(g, knowledge);
        },
        "");
  }

  private void place(int index, double x, double y, double w, double h) {
    Rectangle rectangle = (Rectangle) covers.getChildren().get(index);
    rectangle.setX(x);
    rectangle.setY(y);
    rectangle.setWidth(Math.max(0, w));
    rectangle.setHeight(Math.max(0, h));
  }
}
