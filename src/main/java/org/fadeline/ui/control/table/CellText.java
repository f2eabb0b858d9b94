package org.fadeline.ui.control.table;

import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.text.TextFlow;
import org.fadeline.ui.control.table.ColumnFit.Way;
import org.jspecify.annotations.Nullable;

/**
 * What a cell of a table says: in one row, in several where its column is too narrow, or as the
 * card of its whole row.
 *
 * @param <R> type of the rows
 */
final class CellText<R> {
  /** Padding of a cell in a tight table, both sides, ems; as in the style sheet. */
  private static final double PADDING_EMS = 0.9;

  /** The same of a card. */
  private static final double CARD_PADDING_EMS = 1.2;

  private final TableCell<R, ?> cell;
  private final TableColumn<R, ?> column;
  private final Supplier<Way> way;
  private final Function<R, CardText> cards;
  private @Nullable Text rows;
  private @Nullable Flow card;

  /** A flow of text of a width; a cell does not ask for its height at one. */
  private static final class Flow extends TextFlow {
    @Override
    protected double computePrefHeight(double width) {
      return super.computePrefHeight(width < 0 ? getPrefWidth() : width);
    }
  }

  CellText(
      TableCell<R, ?> cell,
      TableColumn<R, ?> column,
      Supplier<Way> way,
      Function<R, CardText> cards) {
    this.cell = cell;
    this.column = column;
    this.way = way;
    this.cards = cards;
  }

  /** A text in several rows, made once one is wanted: most cells never want it. */
  private Text rows() {
    Text known = rows;
    if (known == null) {
      known = new Text();
      if (column.getStyleClass().contains("number-column")) {
        known.setTextAlignment(TextAlignment.RIGHT);
      }
      known.wrappingWidthProperty().bind(room(PADDING_EMS, known));
      rows = known;
    }
    return known;
  }

  /** Its column knows its width before the cell does. */
  private DoubleBinding room(double padding, Text text) {
    return Bindings.createDoubleBinding(
        () -> Math.max(1, column.getWidth() - padding * text.getFont().getSize()),
        column.widthProperty(),
        text.fontProperty());
  }

  /**
   * Shows a text.
   *
   * @param text in one row
   * @param broken breaks it where it may stand in several
   */
  void show(String text, UnaryOperator<String> broken) {
    Way now = way.get();
    R row = cell.getTableRow() == null ? null : cell.getTableRow().getItem();
    if (now == Way.CARDS && row != null && !cell.isEmpty()) {
      showCard(cards.apply(row));
      return;
    }
    boolean inRows = now == Way.WRAPPED;
    if (inRows) {
      rows().setText(broken.apply(text));
    }
    cell.setText(inRows ? null : text);
    cell.setGraphic(inRows ? rows : null);
    cell.setAccessibleText(inRows ? text : null);
  }

  private void showCard(CardText text) {
    Flow flow = card;
    if (flow == null) {
      flow = new Flow();
      flow.prefWidthProperty().bind(room(CARD_PADDING_EMS, rows()));
      card = flow;
    }
    text.into(flow);
    cell.setText(null);
    cell.setGraphic(flow);
    cell.setAccessibleText(text.heading() + ". " + text.all());
  }
}
