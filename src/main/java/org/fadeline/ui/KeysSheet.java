package org.fadeline.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Command;

/** The list of keys, made from the commands themselves. */
final class KeysSheet {
  private final StackPane view = new StackPane();

  KeysSheet() {
    view.getStyleClass().add("veil");
    view.setVisible(false);
    view.setOnMouseClicked(
        e -> {
          if (e.getTarget() == view) {
            hide();
          }
        });
  }

  StackPane view() {
    return view;
  }

  void hide() {
    view.setVisible(false);
    view.getChildren().clear();
  }

  boolean isShown() {
    return view.isVisible();
  }

  void show(List<Command> commands) {
    Map<String, GridPane> groups = new LinkedHashMap<>();
    for (Command command : commands) {
      if (!command.keys().isEmpty()) {
        GridPane grid = groups.computeIfAbsent(command.group(), g -> grid());
        int row = grid.getRowCount();
        Label keys = new Label(command.keysText());
        keys.getStyleClass().add("strong");
        keys.setMinWidth(Region.USE_PREF_SIZE);
        grid.addRow(row, keys, new Label(command.title()));
      }
    }
    FlowPane flow = new FlowPane(36, 18);
    groups.forEach(
        (name, grid) -> {
          Label heading = new Label(name);
          heading.getStyleClass().addAll("strong", "quiet");
          VBox box = new VBox(6, heading, grid);
          box.setPrefWidth(360);
          flow.getChildren().add(box);
        });
    flow.setPrefWrapLength(790);
    ScrollPane scroll = new ScrollPane(flow);
    scroll.setFitToWidth(true);
    scroll.setStyle("-fx-background-color: transparent; -fx-background: transparent;");
    Label title = new Label("Keys");
    title.getStyleClass().add("title");
    Label note =
        new Label(
            "While text is being typed, letters, arrows and Ctrl + Z belong to the text; Escape"
                + " leaves it. A button in focus takes Space, a list or slider its arrows.");
    note.getStyleClass().add("quiet");
    note.setWrapText(true);
    Button close = new Button("Close");
    close.getStyleClass().add("main-button");
    close.setCancelButton(true);
    close.setDefaultButton(true);
    close.setOnAction(e -> hide());
    HBox foot = new HBox(close);
    foot.setAlignment(Pos.CENTER_RIGHT);
    VBox sheet = new VBox(title, scroll, note, foot);
    sheet.getStyleClass().add("sheet");
    sheet.setMaxSize(860, Region.USE_PREF_SIZE);
    StackPane.setMargin(sheet, new javafx.geometry.Insets(30));
    view.getChildren().setAll(sheet);
    view.setVisible(true);
    close.requestFocus();
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
