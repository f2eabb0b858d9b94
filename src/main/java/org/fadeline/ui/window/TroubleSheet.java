package org.fadeline.ui.window;

import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.table.WrappedCell;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Activity.Problem;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Says what went wrong, where, and what to do; the session in hand stays as it was. */
final class TroubleSheet {
  private final StackPane view = new StackPane();
  private final Workbench bench;

  TroubleSheet(Workbench bench) {
    this.bench = bench;
    view.getStyleClass().add("veil");
    view.setVisible(false);
    Watch.part(bench.stateProperty(), s -> s.activity().trouble(), this::show);
  }

  StackPane view() {
    return view;
  }

  private void show(@Nullable Trouble trouble) {
    view.setVisible(trouble != null);
    view.getChildren().clear();
    if (trouble == null) {
      return;
    }
    Label title = new Label(trouble.title());
    title.getStyleClass().add("title");
    title.setWrapText(true);
    Label detail = new Label(trouble.detail());
    detail.setWrapText(true);
    VBox sheet = new VBox(title, detail);
    sheet.getStyleClass().add("sheet");
    sheet.setMaxSize(820, Region.USE_PREF_SIZE);
    if (!trouble.problems().isEmpty()) {
      sheet.getChildren().add(table(trouble));
    }
    Button close = new Button("Close");
    close.getStyleClass().add("main-button");
    close.setDefaultButton(true);
    close.setCancelButton(true);
    close.setOnAction(e -> bench.dismissTrouble());
    HBox buttons = new HBox(10, close);
    buttons.setAlignment(Pos.CENTER_RIGHT);
    if (!trouble.problems().isEmpty()) {
      Button copy = new Button("Copy the list");
      copy.setOnAction(e -> copy(trouble));
      buttons.getChildren().add(0, copy);
    }
    Activity.Offer offer = trouble.offer();
    if (offer != null) {
      Button take = new Button(offer.label());
      take.setOnAction(
          e -> {
            bench.dismissTrouble();
            offer.action().run();
          });
      buttons.getChildren().add(0, take);
    }
    sheet.getChildren().add(buttons);
    view.getChildren().add(sheet);
    close.requestFocus();
  }

  private static TableView<Problem> table(Trouble trouble) {
    TableView<Problem> table = new TableView<>();
    table.getColumns().add(column("Where", 200, Problem::place));
    table.getColumns().add(column("What is wrong", 300, Problem::text));
    table.getColumns().add(column("What to do", 250, Problem::remedy));
    table.getStyleClass().add("wrapped");
    table.getItems().setAll(trouble.problems());
    table.setPrefHeight(Math.min(420, 60 + 52.0 * trouble.problems().size()));
    table.setAccessibleText("Problems of the file, each with its place");
    return table;
  }

  private static TableColumn<Problem, String> column(
      String title, double width, Function<Problem, String> text) {
    TableColumn<Problem, String> column = new TableColumn<>(title);
    column.setPrefWidth(width);
    column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
    column.setCellFactory(c -> new WrappedCell<>());
    return column;
  }

  private static void copy(Trouble trouble) {
    ClipboardContent content = new ClipboardContent();
    content.putString(
        trouble.problems().stream()
            .map(p -> p.place() + ": " + p.text() + "; " + p.remedy())
            .collect(Collectors.joining("\n")));
    Clipboard.getSystemClipboard().setContent(content);
  }
}
