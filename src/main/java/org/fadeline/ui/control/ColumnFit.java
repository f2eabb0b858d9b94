package org.fadeline.ui.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * Gives each column of a table the room its heading and its longest texts need, so that neither is
 * cut short and no room is left unused beside short ones. A column whose width was changed by hand
 * keeps it.
 *
 * @param <R> type of the rows
 */
final class ColumnFit<R> {
  /** Rows looked at; of longer tables an even sample, and no column gets less than it asked for. */
  private static final int MOST_ROWS = 100;

  /** Texts of a column that are measured: the longest by their letters. */
  private static final int MEASURED = 3;

  private static final double WIDEST_EMS = 44;
  private static final double PADDING_EMS = 1.7;

  private final TableView<R> table;
  private final List<Function<R, String>> texts;
  private final List<Double> asked = new ArrayList<>();
  private final List<Double> given = new ArrayList<>();

  /**
   * Makes the fit of a table.
   *
   * @param texts what each column says of a row; may still grow with the columns
   */
  ColumnFit(TableView<R> table, List<Function<R, String>> texts) {
    this.table = table;
    this.texts = texts;
  }

  /** Sets the widths for the rows shown, written in a font. */
  void fit(Font font) {
    List<R> sample = sample();
    boolean sampled = sample.size() < table.getItems().size();
    for (int i = 0; i < table.getColumns().size(); i++) {
      TableColumn<R, ?> column = table.getColumns().get(i);
      if (given.size() == i) {
        asked.add(column.getPrefWidth());
        given.add(column.getPrefWidth());
      }
      boolean untouched = Math.abs(column.getWidth() - given.get(i)) < 0.5;
      if (untouched && column.isResizable()) {
        double needed = Math.min(WIDEST_EMS * font.getSize(), needed(column, i, sample, font));
        double width = sampled ? Math.max(asked.get(i), needed) : needed;
        given.set(i, width);
        column.setPrefWidth(width);
      }
    }
  }

  private List<R> sample() {
    List<R> rows = table.getItems();
    int step = Math.max(1, (rows.size() + MOST_ROWS - 1) / MOST_ROWS);
    List<R> sample = new ArrayList<>();
    for (int i = 0; i < rows.size(); i += step) {
      sample.add(rows.get(i));
    }
    return sample;
  }

  private double needed(TableColumn<R, ?> column, int index, List<R> sample, Font font) {
    double padding = PADDING_EMS * font.getSize();
    // Sorted, a heading has an arrow beside it.
    double widest = width(column.getText(), font) + font.getSize();
    List<String> longest =
        sample.stream()
            .map(texts.get(index))
            .sorted(Comparator.comparingInt(String::length).reversed())
            .limit(MEASURED)
            .toList();
    for (String text : longest) {
      widest = Math.max(widest, width(text, font));
    }
    return Math.ceil(widest + padding);
  }

  private static double width(String text, Font font) {
    Text probe = new Text(text);
    probe.setFont(font);
    return probe.getLayoutBounds().getWidth();
  }
}
