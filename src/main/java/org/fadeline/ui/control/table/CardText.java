package org.fadeline.ui.control.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.control.TableColumn;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/**
 * A row of a table as a card: what the first column says as its heading, and below it what the
 * others say, each named by its column; empty cells are left out.
 *
 * @param heading what the first column says
 * @param parts name and text of the others
 */
record CardText(String heading, List<Part> parts) {
  private static final String GAP = "   ";

  /** One cell and what it is. */
  record Part(String name, String text) {}

  /**
   * Makes the card of a row.
   *
   * @param texts what each column says of a row; what goes beyond the columns is left out
   */
  static <R> CardText of(
      List<? extends TableColumn<R, ?>> columns, List<Function<R, String>> texts, R row) {
    List<Part> parts = new ArrayList<>();
    for (int i = 1; i < columns.size(); i++) {
      String text = texts.get(i).apply(row);
      if (!text.isBlank()) {
        parts.add(new Part(columns.get(i).getText(), text));
      }
    }
    return new CardText(texts.get(0).apply(row), parts);
  }

  /** Returns all but the heading in a row. */
  String all() {
    StringBuilder all = new StringBuilder();
    parts.forEach(p -> all.append(p.name).append(' ').append(p.text).append(GAP));
    return all.toString().strip();
  }

  /** Fills a flow of text with the card. */
  void into(TextFlow flow) {
    flow.getChildren().clear();
    add(flow, heading + (parts.isEmpty() ? "" : "\n"), "card-heading");
    for (Part part : parts) {
      add(flow, part.name.replace(' ', '\u00a0') + "\u00a0", "card-name");
      // What belongs together stays in a row as long as it is short.
      boolean brief = part.text.length() < 28;
      add(flow, (brief ? part.text.replace(' ', '\u00a0') : part.text) + GAP, "card-text");
    }
  }

  private static void add(TextFlow flow, String words, String style) {
    Text text = new Text(words);
    text.getStyleClass().add(style);
    flow.getChildren().add(text);
  }
}
