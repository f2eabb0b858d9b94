package org.fadeline.ui.control.table;

import java.util.List;
import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/**
 * What is too long for a column: read below the table, of the row picked or else of the first.
 *
 * @param <R> type of the rows
 */
final class RowDetail<R> extends VBox {
  private final TableView<R> table;
  private final Label head = new Label();
  private final Label words = new Label();

  /**
   * Follows a table.
   *
   * @param heading what is told, such as "Stays"
   * @param name what the row is called
   * @param text what is told of the row
   */
  RowDetail(
      TableView<R> table, String heading, Function<R, String> name, Function<R, String> text) {
    this.table = table;
    head.getStyleClass().add("strong");
    words.setWrapText(true);
    words.setMinHeight(USE_PREF_SIZE);
    words.getStyleClass().add("reading");
    setSpacing(2);
    setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(head, words);
    Runnable tell = () -> tell(heading, name, text);
    table.getSelectionModel().selectedItemProperty().addListener((p, before, row) -> tell.run());
    table.getItems().addListener((ListChangeListener<R>) change -> tell.run());
    tell.run();
  }

  private void tell(String heading, Function<R, String> name, Function<R, String> text) {
    R picked = table.getSelectionModel().getSelectedItem();
    List<R> shown = table.getItems();
    R row = picked != null ? picked : shown.isEmpty() ? null : shown.get(0);
    setVisible(row != null);
    setManaged(row != null);
    head.setText(row == null ? "" : heading + ": " + name.apply(row));
    words.setText(row == null ? "" : text.apply(row));
  }
}
