package org.fadeline.ui.log;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import org.fadeline.log.Pad;
import org.fadeline.log.PadKeys;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.LineBar;
import org.fadeline.ui.control.Say;

/** The pads: a row a line in its colour, and the rows of what belongs to no line. */
final class PadGrid {
  private static final int AROUND_A_ROW = Pad.ON_A_LINE.size();

  /** Pads take the room there is, up to this: beyond it they only lie further apart. */
  private static final double TALLEST = 110;

  private static final double WIDEST_NAME = 150;

  private final GridPane grid = new GridPane();
  private final Consumer<Pad> press;

  PadGrid(Consumer<Pad> press) {
    this.press = press;
    grid.getStyleClass().add("pads");
    ColumnConstraints names = new ColumnConstraints();
    names.setMinWidth(Region.USE_PREF_SIZE);
    names.setMaxWidth(WIDEST_NAME);
    names.setHgrow(Priority.NEVER);
    grid.getColumnConstraints().add(names);
    for (int i = 0; i < Pad.ON_A_LINE.size(); i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(-1);
      column.setHgrow(Priority.ALWAYS);
      column.setFillWidth(true);
      column.setMinWidth(66);
      grid.getColumnConstraints().add(column);
    }
  }

  GridPane view() {
    return grid;
  }

  /** Lays the pads out for a session's lines. */
  void show(List<Line> lines, PadKeys keys, Units units) {
    grid.getChildren().clear();
    grid.getRowConstraints().clear();
    for (int i = 0; i <= lines.size(); i++) {
      RowConstraints row = new RowConstraints();
      row.setVgrow(Priority.ALWAYS);
      row.setMaxHeight(TALLEST);
      grid.getRowConstraints().add(row);
    }
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      grid.add(name(line, i, units), 0, i);
      row(Pad.ofLine(i), i, line.name(), keys, "pad-line-" + i % LineBar.COLOURS);
    }
    Label around = Labels.line("The match", "strong");
    grid.add(around, 0, lines.size());
    row(Pad.around(), lines.size(), "the match", keys, "pad-around");
  }

  private static Node name(Line line, int place, Units units) {
    Label name = new Label(Say.capital(line.name()));
    name.setWrapText(true);
    name.getStyleClass().addAll("strong", "pad-name", "pad-name-" + place % LineBar.COLOURS);
    Double distance = line.place().distanceM();
    Label where =
        new Label((place + 1) + (distance == null ? "" : " · " + units.distance(distance)));
    where.getStyleClass().add("quiet");
    where.setWrapText(true);
    VBox box = new VBox(2, name, where);
    box.setAlignment(Pos.CENTER_LEFT);
    return box;
  }

  private void row(List<Pad> pads, int row, String of, PadKeys keys, String styleClass) {
    for (int i = 0; i < pads.size(); i++) {
      Button button = pad(pads.get(i), of, keys, styleClass);
      grid.add(button, 1 + i % AROUND_A_ROW, row + i / AROUND_A_ROW);
    }
  }

  private Button pad(Pad pad, String of, PadKeys keys, String styleClass) {
    Label word = Labels.line(word(pad.kind()), "pad-word");
    Label key = Labels.line(keys.key(pad).map(PadGrid::display).orElse(""), "pad-key");
    VBox face = new VBox(word, key);
    face.setAlignment(Pos.CENTER);
    Button button = new Button();
    button.setGraphic(face);
    button.setId("pad-" + pad.slot().replace('.', '-'));
    button.getStyleClass().setAll("pad", styleClass);
    button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    button.setFocusTraversable(false);
    button.setAccessibleText(word(pad.kind()) + ", " + of);
    button.setOnAction(e -> press.accept(pad));
    return button;
  }

  /** Returns what a pad says: the trade's word, with missed for a bite that hooked nothing. */
  static String word(EventKind kind) {
    return switch (kind) {
      case BITE -> "missed";
      case FOUL -> "foul";
      case ALL_IN -> "all in";
      case ALL_OUT -> "all out";
      case OFF -> "rig out";
      case CHANGE -> "rig change";
      default -> kind.word();
    };
  }

  /** Returns a key as the angler sees it. */
  static String display(String key) {
    return KeyCombination.valueOf(key).getDisplayText();
  }

  /** Hands every pad with a key to a taker. */
  static void keyed(int lines, PadKeys keys, BiConsumer<Pad, String> taker) {
    for (Pad pad : Pad.all(lines)) {
      keys.key(pad).ifPresent(key -> taker.accept(pad, key));
    }
  }
}
