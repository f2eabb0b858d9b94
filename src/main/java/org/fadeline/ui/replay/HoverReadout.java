package org.fadeline.ui.replay;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.fadeline.figure.Hit;
import org.jspecify.annotations.Nullable;

/** Exact values beside the pointer, kept inside the view. */
final class HoverReadout extends VBox {
  private static final double GAP = 14;

  private final Label title = new Label();

  HoverReadout() {
    title.getStyleClass().add("strong");
    getStyleClass().add("readout");
    setMouseTransparent(true);
    setManaged(false);
    setVisible(false);
    setMaxWidth(360);
  }

  void show(@Nullable Hit hit, double x, double y, double width, double height) {
    if (hit == null) {
      setVisible(false);
    } else {
      show(hit.title(), hit.rows(), x, y, width, height);
    }
  }

  void show(String heading, List<String> rows, double x, double y, double width, double height) {
    title.setText(heading);
    getChildren().setAll(title);
    for (String row : rows) {
      Label label = new Label(row);
      label.setWrapText(true);
      label.setMaxWidth(340);
      getChildren().add(label);
    }
    setVisible(true);
    applyCss();
    double w = Math.min(360, prefWidth(-1));
    double h = prefHeight(w);
    double left = x + GAP + w <= width ? x + GAP : x - GAP - w;
    double top = y + GAP + h <= height ? y + GAP : y - GAP - h;
    resizeRelocate(Math.max(0, left), Math.max(0, top), w, h);
  }
}
