package org.fadeline.ui.window;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Overlay;
import org.fadeline.ui.control.command.Command;

/** The list of keys, made from the commands themselves. */
final class KeyListSheet {
  private KeyListSheet() {}

  static void show(Overlay overlay, List<Command> commands) {
    Map<String, GridPane> groups = new LinkedHashMap<>();
    for (Command command : commands) {
      if (!command.keys().isEmpty()) {
        GridPane grid = groups.computeIfAbsent(command.group(), g -> grid());
        int row = grid.getRowCount();
        Label keys = Labels.line(command.keysText(), "strong");
        keys.setMinWidth(Region.USE_PREF_SIZE);
        grid.addRow(row, keys, new Label(command.title()));
      }
    }
    FlowPane flow = new FlowPane(36, 18);
    groups.forEach(
        (name, grid) -> {
          Label heading = Labels.line(name, "strong", "quiet");
          VBox box = new VBox(6, heading, grid);
          box.setPrefWidth(360);
          flow.getChildren().add(box);
        });
    flow.setPrefWrapLength(790);
    ScrollPane scroll = Nodes.scroll(flow);
    Label note =
        Labels.wrapped(
            "While text is being typed, letters, arrows and Ctrl + Z belong to the text; Escape"
                + " leaves it. A button in focus takes Space, a list or slider its arrows."
                + " On Replay, Shift and a drag along the clock above the lanes sets the range to"
                + " loop; Shift and a drag over the lanes picks what lies under it.",
            "quiet");
    VBox content = new VBox(10, scroll, note);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    overlay.show("Keys", content);
  }

  private static GridPane grid() {
    GridPane grid = new GridPane();
    grid.setHgap(14);
    grid.setVgap(4);
    ColumnConstraints keys = new ColumnConstraints();
    keys.setMinWidth(130);
    grid.getColumnConstraints().add(keys);
    return grid;
  }
}
