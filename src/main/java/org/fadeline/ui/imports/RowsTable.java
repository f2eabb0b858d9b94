package org.fadeline.ui.imports;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.CsvPreview;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.form.Worded;
import org.jspecify.annotations.Nullable;

/** The rows as they stand in the file, and over each column what it is taken for. */
final class RowsTable {
  private static final String UNUSED = "not used";
  private static final int MOST_COLUMNS = 60;

  private final TableView<Row> table = new TableView<>();
  private final Consumer<UnaryOperator<CsvMapping>> change;

  /** A row and its number as a spreadsheet counts. */
  private record Row(int number, List<String> cells) {
    String cell(int column) {
      return column < cells.size() ? cells.get(column) : "";
    }
  }

  /**
   * Makes an empty table.
   *
   * @param change is told when a column is taken for something else
   */
  RowsTable(Consumer<UnaryOperator<CsvMapping>> change) {
    this.change = change;
    table.setId("import-rows");
    table.setAccessibleText("Rows of the file");
    Label none =
        Labels.line("Choose a file or drop one here. Nothing is taken before you say so.", "quiet");
    table.setPlaceholder(none);
    table.setMinHeight(120);
  }

  TableView<?> view() {
    return table;
  }

  void show(Optional<CsvPreview> preview, CsvMapping mapping) {
    table.getColumns().clear();
    table.getItems().clear();
    if (preview.isEmpty()) {
      return;
    }
    List<String> header = preview.get().header();
    table.getColumns().add(column("Row", 60, null, row -> String.valueOf(row.number)));
    for (int i = 0; i < Math.min(header.size(), MOST_COLUMNS); i++) {
      int place = i;
      table
          .getColumns()
          .add(column(header.get(i), 150, box(header.get(i), mapping), r -> r.cell(place)));
    }
    List<List<String>> rows = preview.get().rows();
    // All at once: a table may have 200,000 rows, and each addition is told to the view.
    table
        .getItems()
        .setAll(
            IntStream.range(0, rows.size()).mapToObj(i -> new Row(i + 2, rows.get(i))).toList());
  }

  private static TableColumn<Row, String> column(
      String title, double width, @Nullable ComboBox<String> box, Function<Row, String> text) {
    TableColumn<Row, String> column = new TableColumn<>();
    Label name = new Label(title);
    VBox head = new VBox(4, name);
    if (box != null) {
      head.getChildren().add(box);
    }
    column.setGraphic(head);
    column.setSortable(false);
    column.setPrefWidth(width);
    // Larger text needs wider columns.
    name.fontProperty()
        .addListener(
            (p, before, font) -> column.setPrefWidth(width * Math.max(1, font.getSize() / 13)));
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(text.apply(row.getValue())));
    return column;
  }

  private ComboBox<String> box(String theirs, CsvMapping mapping) {
    ComboBox<String> box = new ComboBox<>();
    box.getItems().add(UNUSED);
    box.getItems().addAll(CsvPreview.columns());
    box.setAccessibleText("What the column " + theirs + " is");
    box.setId("column-" + theirs);
    box.setMaxWidth(Double.MAX_VALUE);
    box.setConverter(new Worded<>(RowsTable::inWords));
    box.setValue(
        mapping.columns().entrySet().stream()
            .filter(e -> e.getValue().equals(theirs))
            .map(Map.Entry::getKey)
            .findFirst()
            .orElse(UNUSED));
    box.setOnAction(e -> change.accept(m -> taken(m, theirs, box.getValue())));
    return box;
  }

  /** Returns a column's name as words: "weight, lb". */
  private static String inWords(String column) {
    return column.replaceFirst("_(lb|oz|g|kg|ml|m|s)$", ", $1").replace('_', ' ');
  }

  /** Returns the mapping with a column taken for something else, and nothing taken twice. */
  static CsvMapping taken(CsvMapping mapping, String theirs, String ours) {
    Map<String, String> columns = new TreeMap<>(mapping.columns());
    columns.values().removeIf(theirs::equals);
    if (!ours.equals(UNUSED)) {
      columns.put(ours, theirs);
    }
    return new CsvMapping(
        columns,
        mapping.events(),
        mapping.dateOrder(),
        mapping.delimiter(),
        mapping.decimalComma());
  }

  /** Picks the row of a number, where there is one. */
  void select(int number) {
    int index = number - 2;
    if (index >= 0 && index < table.getItems().size()) {
      table.getSelectionModel().clearAndSelect(index);
      table.scrollTo(Math.max(0, index - 2));
    }
  }
}
