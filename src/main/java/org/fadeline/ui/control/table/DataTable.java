package org.fadeline.ui.control.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.table.ColumnFit.Way;
import org.jspecify.annotations.Nullable;

/**
 * A table that sorts by value, filters by a typed word and is copied with its heading.
 *
 * @param <R> type of the rows
 */
public final class DataTable<R> extends VBox {
  /** Height of a row before its style is known, pixels. */
  private static final double ROW = 30;

  /** Where there are fewer rows, there is still room to say so. */
  private static final int FEWEST_ROWS = 3;

  /** Room for what is above the rows, and for a bar below, in rows. */
  private static final double HEADS = 3.4;

  /** Rows it asks room for where there are more. */
  private static final int ROWS_ASKED = 6;

  private final TableView<R> table = new TableView<>();
  private final List<Function<R, String>> texts = new ArrayList<>();
  private final TableRows<R> rows = new TableRows<>(table, texts);
  private final ColumnFit<R> columns = new ColumnFit<>(table, texts, this::laidOut);
  private final ComboBox<String> sort = new ComboBox<>();
  private final List<RowDetail<R>> details = new ArrayList<>();
  private final List<String> detailHeadings = new ArrayList<>();
  private final Button copy = new Button("Copy");
  private final Label title = new Label();
  private @Nullable Consumer<R> choose;
  private final Label nothing = new Label();
  private final TextField filter = new TextField();
  private String empty;
  private boolean hugging;
  private double row = ROW;

  /**
   * Makes an empty table.
   *
   * @param heading what it shows
   * @param empty what is said where there are no rows
   */
  public DataTable(String heading, String empty) {
    title.setText(heading);
    title.getStyleClass().add("strong");
    title.setMinWidth(USE_PREF_SIZE);
    this.empty = empty;
    filter.setPromptText("Filter");
    filter.setAccessibleText("Show only rows that hold this text");
    filter.setPrefColumnCount(9);
    filter
        .textProperty()
        .addListener(
            (p, before, word) -> {
              sayWhyEmpty();
              rows.filter(word);
            });
    copy.setAccessibleText("Copy the rows shown, with their heading");
    copy.getStyleClass().add("flat");
    copy.setMinWidth(USE_PREF_SIZE);
    copy.setOnAction(e -> copy(List.copyOf(table.getItems())));
    sort.setPromptText("Sort by");
    sort.setAccessibleText("Sort the cards by");
    sort.setOnAction(e -> sortBy(sort.getSelectionModel().getSelectedIndex()));
    HBox head = new HBox(8, title, new Spring(), sort, filter, copy);
    head.setAlignment(Pos.CENTER_LEFT);
    table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    table.setAccessibleText(heading);
    sayWhyEmpty();
    nothing.setWrapText(true);
    nothing.getStyleClass().add("quiet");
    table.setPlaceholder(nothing);
    KeyCombination copyKeys = KeyCombination.valueOf("Shortcut+C");
    table.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (copyKeys.match(e)) {
            List<R> picked = List.copyOf(table.getSelectionModel().getSelectedItems());
            copy(picked.isEmpty() ? List.copyOf(table.getItems()) : picked);
            e.consume();
          }
        });
    // Written like the cells, it knows their font once the table is seen.
    copy.fontProperty().addListener((p, before, font) -> columns.fit(font));
    table.fixedCellSizeProperty().addListener((p, before, size) -> hugRows());
    // The rows may have become higher, or lower: not while the table is being laid out.
    table.widthProperty().addListener((p, before, width) -> Platform.runLater(this::hugRows));
    NodeMenu.on(table, asked -> menu(), this::menuPlace);
    laidOut();
    setVgrow(table, Priority.ALWAYS);
    setSpacing(6);
    setMinHeight(0);
    getChildren().addAll(head, table);
  }

  /** Cards have no headings to click: what they are sorted by is chosen beside the filter. */
  private void laidOut() {
    boolean cards = columns.way() == Way.CARDS;
    Nodes.show(sort, cards);
    List<String> headings = table.getColumns().stream().map(TableColumn::getText).toList();
    if (cards && !sort.getItems().equals(headings)) {
      sort.getItems().setAll(headings);
    }
    hugRows();
  }

  private void sortBy(int index) {
    if (index >= 0) {
      table.getSortOrder().setAll(List.of(table.getColumns().get(index)));
    }
  }

  private CardText card(R row) {
    return CardText.of(table.getColumns(), texts, row);
  }

  /** A gap that takes the room left over. */
  private static final class Spring extends Region {
    Spring() {
      HBox.setHgrow(this, Priority.ALWAYS);
    }
  }

  /** Gives it no more height than its rows need, so that a chart beside it has the rest. */
  public DataTable<R> hug() {
    hugging = true;
    hugRows();
    return this;
  }

  private void hugRows() {
    if (hugging) {
      row = Math.max(row, table.getFixedCellSize());
      double shown = Math.max(row * FEWEST_ROWS, columns.rowsHeight(row));
      // The heading, the row of headings, and a bar where the columns do not fit.
      double height =
          shown
              + row * HEADS
              + details.stream().mapToDouble(d -> d.getHeight() + getSpacing()).sum();
      setMaxHeight(height);
      setPrefHeight(Math.min(height, row * (ROWS_ASKED + HEADS)));
    }
  }

  /** Adds a column of words. */
  public DataTable<R> words(String heading, double width, Function<R, String> text) {
    TableColumn<R, String> column = new TableColumn<>(heading);
    column.setCellFactory(c -> new WordCell<>(c, columns::way, this::card));
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(text.apply(row.getValue())));
    column.setPrefWidth(width);
    table.getColumns().add(column);
    texts.add(text);
    return this;
  }

  /**
   * Adds a column of numbers, sorted by value, right-aligned.
   *
   * @param value what it sorts by; null where there is none, and then an empty cell
   * @param text how a value is written
   */
  public DataTable<R> numbers(
      String heading, double width, Function<R, @Nullable Double> value, Function<R, String> text) {
    TableColumn<R, Double> column = new TableColumn<>(heading);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(value.apply(row.getValue())));
    column.setComparator(Comparator.nullsFirst(Comparator.naturalOrder()));
    column.setCellFactory(c -> new NumberCell<>(c, text, columns::way, this::card));
    column.setPrefWidth(width);
    column.getStyleClass().add("number-column");
    table.getColumns().add(column);
    texts.add(row -> value.apply(row) == null ? "" : text.apply(row));
    return this;
  }

  /** Words; long ones, which may be cut short, are a hover away. */
  private static final class WordCell<R> extends TableCell<R, String> {
    private static final int LONG = 36;
    private final CellText<R> content;

    WordCell(TableColumn<R, ?> column, Supplier<Way> way, Function<R, CardText> cards) {
      content = new CellText<>(this, column, way, cards);
    }

    @Override
    protected void updateItem(@Nullable String item, boolean empty) {
      super.updateItem(item, empty);
      String text = empty || item == null ? "" : item;
      content.show(text, same -> same);
      setTooltip(text.length() > LONG ? new Tooltip(text) : null);
    }
  }

  /** A number at the right edge. */
  private static final class NumberCell<R> extends TableCell<R, Double> {
    private final Function<R, String> text;
    private final CellText<R> content;

    NumberCell(
        TableColumn<R, ?> column,
        Function<R, String> text,
        Supplier<Way> way,
        Function<R, CardText> cards) {
      this.text = text;
      getStyleClass().add("number-cell");
      content = new CellText<>(this, column, way, cards);
    }

    @Override
    protected void updateItem(@Nullable Double item, boolean empty) {
      super.updateItem(item, empty);
      R row = empty ? null : getTableRow().getItem();
      String words = item == null || row == null ? "" : text.apply(row);
      content.show(words, TextRows::broken);
    }
  }

  /**
   * Adds long words that are read below the table, of the row picked or else of the first; filtered
   * and copied as if they were a column. Called after the columns.
   *
   * @param name what the row is called there
   */
  public DataTable<R> detail(String heading, Function<R, String> name, Function<R, String> text) {
    texts.add(text);
    detailHeadings.add(heading);
    RowDetail<R> detail = new RowDetail<>(table, heading, name, text);
    details.add(detail);
    detail.heightProperty().addListener((p, before, height) -> Platform.runLater(this::hugRows));
    getChildren().add(detail);
    return this;
  }

  private List<MenuItem> menu() {
    List<R> picked = List.copyOf(table.getSelectionModel().getSelectedItems());
    List<MenuItem> items = new ArrayList<>();
    if (!picked.isEmpty()) {
      Consumer<R> chosen = choose;
      if (chosen != null) {
        items.add(NodeMenu.item("Go to it", () -> chosen.accept(picked.get(0))));
      }
      items.add(
          NodeMenu.item(
              picked.size() == 1 ? "Copy this row" : "Copy these rows", () -> copy(picked)));
    }
    if (!table.getItems().isEmpty()) {
      items.add(NodeMenu.item("Copy the rows shown", () -> copy(List.copyOf(table.getItems()))));
    }
    return items;
  }

  /** By keys the menu opens at the row picked, as far as it is in sight. */
  private Point2D menuPlace() {
    int row = Math.max(0, table.getSelectionModel().getSelectedIndex());
    double y =
        table.lookupAll(".table-row-cell").stream()
            .filter(n -> n instanceof IndexedCell<?> cell && cell.getIndex() == row)
            .mapToDouble(n -> table.sceneToLocal(n.localToScene(n.getLayoutBounds())).getMaxY())
            .findFirst()
            .orElse(table.getHeight() / 2);
    return new Point2D(
        Math.min(60, table.getWidth() / 2), Math.max(0, Math.min(table.getHeight(), y)));
  }

  /** Does something with a row when it is double-clicked or Enter is pressed on it. */
  public DataTable<R> onChoose(Consumer<R> choose) {
    this.choose = choose;
    table.setOnMouseClicked(
        e -> {
          R row = table.getSelectionModel().getSelectedItem();
          if (e.getClickCount() == 2 && row != null) {
            choose.accept(row);
          }
        });
    table.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          R row = table.getSelectionModel().getSelectedItem();
          if (e.getCode() == KeyCode.ENTER && row != null) {
            choose.accept(row);
            e.consume();
          }
        });
    return this;
  }

  /** Says something else where there are no rows. */
  public void whenEmpty(String words) {
    empty = words;
    sayWhyEmpty();
  }

  /** Rows may be there and only not hold the word. */
  private void sayWhyEmpty() {
    String word = filter.getText().strip();
    nothing.setText(word.isEmpty() || rows.none() ? empty : "No row holds “" + word + "”.");
  }

  /** Shows other rows. */
  public void show(List<R> newRows) {
    rows.show(newRows);
    sayWhyEmpty();
    columns.fit(copy.getFont());
    hugRows();
  }

  /** Returns the table itself. */
  public TableView<R> table() {
    return table;
  }

  private void copy(List<R> chosen) {
    ClipboardContent content = new ClipboardContent();
    content.putString(asText(chosen));
    Clipboard.getSystemClipboard().setContent(content);
  }

  /** Returns rows as tab-separated text with the heading. */
  public String asText(List<R> chosen) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.join(
            "\t",
            Stream.concat(
                    table.getColumns().stream().map(TableColumn::getText), detailHeadings.stream())
                .toList()));
    for (R row : chosen) {
      text.append('\n')
          .append(
              String.join(
                  "\t", texts.stream().map(t -> t.apply(row).replaceAll("\\s", " ")).toList()));
    }
    return text.toString();
  }
}
