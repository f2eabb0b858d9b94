package org.fadeline.ui.control.table;

import java.util.function.BooleanSupplier;
import javafx.beans.binding.Bindings;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** What a cell of a table says: in one row, or in several where its column is too narrow. */
final class CellText {
  /** Padding of a cell in a tight table, both sides, ems; as in the style sheet. */
  private static final double PADDING_EMS = 0.9;

  private final TableCell<?, ?> cell;
  private final BooleanSupplier wrapped;
  private final Text rows = new Text();

  CellText(TableCell<?, ?> cell, TableColumn<?, ?> column, BooleanSupplier wrapped) {
    this.cell = cell;
    this.wrapped = wrapped;
    if (column.getStyleClass().contains("number-column")) {
      rows.setTextAlignment(TextAlignment.RIGHT);
    }
    // Its column knows its width before the cell does.
    rows.wrappingWidthProperty()
        .bind(
            Bindings.createDoubleBinding(
                () -> Math.max(1, column.getWidth() - PADDING_EMS * rows.getFont().getSize()),
                column.widthProperty(),
                rows.fontProperty()));
  }

  /**
   * Shows a text.
   *
   * @param text in one row
   * @param broken the same in several
   */
  void show(String text, String broken) {
    boolean inRows = wrapped.getAsBoolean();
    rows.setText(broken);
    cell.setText(inRows ? null : text);
    cell.setGraphic(inRows ? rows : null);
    cell.setAccessibleText(inRows ? text : null);
  }
}
