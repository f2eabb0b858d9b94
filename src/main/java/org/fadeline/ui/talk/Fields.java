package org.fadeline.ui.talk;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Labels;

/** Fields with their names above them. */
final class Fields {
  private Fields() {}

  static VBox labelled(String name, Region field) {
    Label label = Labels.line(name, "quiet");
    label.setLabelFor(field);
    field.setMaxWidth(Double.MAX_VALUE);
    return new VBox(2, label, field);
  }

  static HBox beside(Node... nodes) {
    HBox box = new HBox(10, nodes);
    for (Node node : nodes) {
      HBox.setHgrow(node, Priority.ALWAYS);
    }
    return box;
  }
}
