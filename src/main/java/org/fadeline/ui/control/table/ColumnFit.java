package org.fadeline.ui.control.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Font;
import org.jspecify.annotations.Nullable;

/**
 * Shares the width of a table among its columns. Where there is room, each has what its heading and
 * its longest texts need in one row; where there is less, headings stand in two rows, and then
 * texts too; where even that is too wide each row becomes a card, which names what it holds. So
 * nothing is cut short and nothing has to be scrolled sideways. A column whose width was changed by
 * hand keeps it.
 *
 * @param <R> type of the rows
 */
final class ColumnFit<R> {
  /** Rows looked at; of longer tables an even sample, and no column gets less than it asked for. */
  private static final int MOST_ROWS = 100;

  /** Rows whose height is worked out; more than that never fit on a page. */
  private static final int MOST_HIGH_ROWS = 60;

  /** Texts of a column that are measured: the longest by their letters. */
  private static final int MEASURED = 3;

  /** A column of exactly so many pixels JavaFX would size anew by itself. */
  private static final double OWN_SIZING = 80;

  private static final double PADDING_EMS = 1.7;

  /** In a tight table padding and arrows are smaller, as in the style sheet. */
  private static final double TIGHT_PADDING_EMS = 1.0;

  private static final double TIGHT_ARROW_EMS = 0.65;

  /** Room for the bar at the right and a hair more, pixels. */
  private static final double BAR = 18;

  /** Cards stay until the table is so much wider than when they came. */
  private static final double CARDS_STAY_EMS = 3;

  private static final String TIGHT = "tight";
  private static final String WRAPPED = "wrapped";
  private static final String CARDS = "cards";

  private final TableView<R> table;
  private final List<Function<R, String>> texts;
  private final List<Double> asked = new ArrayList<>();
  private final List<Double> given = new ArrayList<>();
  private List<Needs> needs = List.of();
  private @Nullable Font font;
  private Way way = Way.WIDE;
  private double cardsCameAt;
  private final Runnable changed;

  /** How the rows are laid out. */
  enum Way {
    /** Everything in one row. */
    WIDE,
    /** Headings in two rows, less room between the columns. */
    TIGHT,
    /** Texts in several rows too. */
    WRAPPED,
    /** Each row a card in the first column, the others put away. */
    CARDS
  }

  /**
   * What a column needs, in pixels without padding.
   *
   * @param heading for its heading in one row
   * @param folded for its heading in two rows
   * @param text for its longest text in one row
   * @param wrappedText for its longest text in a few rows
   */
  private record Needs(double heading, double folded, double text, double wrappedText) {}

  /**
   * Makes the fit of a table.
   *
   * @param texts what each column says of a row; may still grow with the columns
   * @param changed is told when rows are laid out in another way
   */
  ColumnFit(TableView<R> table, List<Function<R, String>> texts, Runnable changed) {
    this.table = table;
    this.texts = texts;
    this.changed = changed;
    table.widthProperty().addListener((p, before, width) -> share());
  }

  /** Returns how the rows are laid out. */
  Way way() {
    return way;
  }

  /** Sets the widths for the rows shown, written in a font. */
  void fit(Font newFont) {
    font = newFont;
    if (table.getItems().isEmpty() && needs.size() == table.getColumns().size()) {
      // A filter that leaves nothing: laid out as it was, the rows come back as they were.
      return;
    }
    List<R> sample = sample();
    boolean sampled = sample.size() < table.getItems().size();
    List<Needs> all = new ArrayList<>();
    for (int i = 0; i < table.getColumns().size(); i++) {
      TableColumn<R, ?> column = table.getColumns().get(i);
      if (given.size() == i) {
        asked.add(column.getPrefWidth());
        given.add(column.getPrefWidth());
      }
      double least = sampled ? asked.get(i) - PADDING_EMS * newFont.getSize() : 0;
      all.add(needs(column, texts.get(i), sample, least, new TextRows(newFont)));
    }
    needs = all;
    share();
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

  private Needs needs(
      TableColumn<R, ?> column,
      Function<R, String> text,
      List<R> sample,
      double least,
      TextRows rows) {
    List<String> longest =
        sample.stream()
            .map(text)
            .sorted(Comparator.comparingInt(String::length).reversed())
            .limit(MEASURED)
            .toList();
    double widest = least;
    double narrowest = 0;
    for (String one : longest) {
      widest = Math.max(widest, rows.width(one));
      narrowest =
          Math.max(
              narrowest, isNumber(column) ? rows.width(TextRows.broken(one)) : rows.narrowest(one));
    }
    // Sorted, a heading has an arrow beside it.
    String heading = column.getText();
    return new Needs(
        rows.width(heading) + rows.em(),
        rows.width(TextRows.halved(heading)) + TIGHT_ARROW_EMS * rows.em(),
        widest,
        Math.min(widest, narrowest));
  }

  private static boolean isNumber(TableColumn<?, ?> column) {
    return column.getStyleClass().contains("number-column");
  }

  /** Takes the first way in which everything fits. */
  private void share() {
    Font now = font;
    if (now == null || needs.size() != table.getColumns().size()) {
      return;
    }
    double em = now.getSize();
    double room = table.getWidth() <= 0 ? Double.MAX_VALUE : table.getWidth() - BAR;
    double[] wide = widths(PADDING_EMS * em, n -> Math.max(n.heading, n.text));
    double[] tight = widths(TIGHT_PADDING_EMS * em, n -> Math.max(n.folded, n.text));
    double[] least = widths(TIGHT_PADDING_EMS * em, n -> Math.max(n.folded, n.wrappedText));
    if (way == Way.CARDS
        && !table.getItems().isEmpty()
        && table.getWidth() > cardsCameAt
        && table.getWidth() <= cardsCameAt + CARDS_STAY_EMS * em) {
      // Cards are less high: a page may lose its bar by them, and would get it back with the
      // columns.
      least[0] = room;
      take(Way.CARDS, least);
    } else if (sum(wide) <= room) {
      take(Way.WIDE, wide);
    } else if (sum(tight) <= room) {
      take(Way.TIGHT, tight);
    } else if (sum(least) <= room) {
      // Without rows there is nothing to wrap, and nothing between the two to share.
      double share = Math.max(0, room - sum(least)) / Math.max(1, sum(tight) - sum(least));
      for (int i = 0; i < least.length; i++) {
        least[i] = Math.floor(least[i] + share * (tight[i] - least[i]));
      }
      take(Way.WRAPPED, least);
    } else if (table.getItems().isEmpty()) {
      take(Way.TIGHT, tight);
    } else {
      least[0] = room;
      take(Way.CARDS, least);
    }
  }

  private void take(Way newWay, double[] widths) {
    for (int i = 0; i < widths.length; i++) {
      if (isUntouched(i) || newWay == Way.CARDS) {
        double width = widths[i] == OWN_SIZING ? OWN_SIZING + 1 : widths[i];
        given.set(i, width);
        table.getColumns().get(i).setPrefWidth(width);
      }
    }
    style(TIGHT, newWay == Way.TIGHT || newWay == Way.WRAPPED);
    style(WRAPPED, newWay == Way.WRAPPED || newWay == Way.CARDS);
    style(CARDS, newWay == Way.CARDS);
    if (newWay != way) {
      cardsCameAt = table.getWidth();
      // Between these two no cell looks otherwise; all of them made anew would take a frame.
      boolean sameCells = isOneRow(newWay) && isOneRow(way);
      way = newWay;
      if (sameCells) {
        Platform.runLater(changed);
        return;
      }
      boolean made = table.lookup(".table-row-cell") != null;
      // Columns may not come or go while the table is being laid out.
      Platform.runLater(() -> showColumns(made));
    }
  }

  private static boolean isOneRow(Way way) {
    return way == Way.WIDE || way == Way.TIGHT;
  }

  /**
   * Shows the columns that are wanted.
   *
   * @param made whether there are cells that were made for another way
   */
  private void showColumns(boolean made) {
    for (int i = 1; i < table.getColumns().size(); i++) {
      table.getColumns().get(i).setVisible(way != Way.CARDS);
    }
    if (made) {
      table.refresh();
    }
    changed.run();
  }

  private void style(String name, boolean on) {
    if (!on) {
      table.getStyleClass().remove(name);
    } else if (!table.getStyleClass().contains(name)) {
      table.getStyleClass().add(name);
    }
  }

  private boolean isUntouched(int index) {
    TableColumn<R, ?> column = table.getColumns().get(index);
    return column.isResizable() && Math.abs(column.getWidth() - given.get(index)) < 0.5;
  }

  private double[] widths(double padding, Function<Needs, Double> need) {
    double[] widths = new double[needs.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] =
          isUntouched(i)
              ? Math.ceil(need.apply(needs.get(i)) + padding)
              : table.getColumns().get(i).getWidth();
    }
    return widths;
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** Returns the height of all rows, pixels, where one of a single line has a height. */
  double rowsHeight(double row) {
    Font now = font;
    List<R> items = table.getItems();
    if (way == Way.WIDE || way == Way.TIGHT || now == null || items.size() > MOST_HIGH_ROWS) {
      return row * items.size();
    }
    TextRows rows = new TextRows(now);
    double height = 0;
    for (R item : items) {
      height += row + (lines(item, rows) - 1) * rows.lineHeight();
    }
    return height;
  }

  private int lines(R item, TextRows rows) {
    double padding = TIGHT_PADDING_EMS * rows.em();
    if (way == Way.CARDS) {
      String all = CardText.of(table.getColumns(), texts, item).all();
      return 1 + rows.count(all, table.getColumns().get(0).getWidth() - 2 * padding, false);
    }
    int most = 1;
    for (int i = 0; i < given.size(); i++) {
      boolean number = isNumber(table.getColumns().get(i));
      most = Math.max(most, rows.count(texts.get(i).apply(item), given.get(i) - padding, number));
    }
    return most;
  }
}
