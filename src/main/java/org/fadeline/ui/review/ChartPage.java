package org.fadeline.ui.review;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.figure.Figure;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/** A chart, and below it the tables that hold everything on it. */
final class ChartPage {
  private final FigureCanvas canvas = new FigureCanvas();
  private final VBox view = new VBox(10);
  private final ScrollPane scroll = new ScrollPane(view);

  ChartPage(Node... below) {
    canvas.setMinHeight(230);
    canvas.setPrefHeight(230);
    VBox.setVgrow(canvas, Priority.ALWAYS);
    view.getChildren().add(canvas);
    for (Node node : below) {
      VBox.setVgrow(node, Priority.ALWAYS);
      if (node instanceof DataTable<?> table) {
        table.hug();
      }
      if (node instanceof Region region) {
        region.setMinHeight(170);
      }
      view.getChildren().add(node);
    }
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.getStyleClass().add("plain-scroll");
  }

  /** Puts something, such as a choice, above the chart. */
  ChartPage under(Node head) {
    view.getChildren().add(0, head);
    return this;
  }

  ScrollPane view() {
    return scroll;
  }

  /** Shows no chart. */
  void showNone() {
    Nodes.show(canvas, false);
    canvas.show(null, "");
  }

  /**
   * Shows a chart.
   *
   * @param ahead draws it off the window's thread, or null where it is drawn within a frame
   */
  void show(Supplier<Figure> figure, @Nullable TaskService ahead) {
    Nodes.show(canvas, true);
    canvas.showFigure(figure, ahead);
  }
}
