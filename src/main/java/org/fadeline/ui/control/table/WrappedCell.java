package org.fadeline.ui.control.table;

import javafx.scene.control.TableCell;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * A table cell whose text wraps, so that nothing is cut off.
 *
 * @param <S> type of the row
 */
public final class WrappedCell<S> extends TableCell<S, String> {
  private final Text text = new Text();

  /** Makes an empty cell. */
  public WrappedCell() {
    text.wrappingWidthProperty().bind(widthProperty().subtract(16));
  }

  @Override
  protected void updateItem(@Nullable String item, boolean empty) {
    super.updateItem(item, empty);
    if (empty || item == null) {
      setGraphic(null);
    } else {
      text.setText(item);
      setGraphic(text);
    }
  }
}
