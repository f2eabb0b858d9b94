package org.fadeline.ui.compare;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.LinePair;
import org.fadeline.model.Line;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** Which line is held against which and why; the angler can choose otherwise. */
final class PairingPane {
  private static final String NONE = "no counterpart";

  private final CompareBench bench;
  private final GridPane grid = new GridPane();
  private final VBox column = new VBox(12);
  private final ScrollPane view = new ScrollPane(column);

  PairingPane(CompareBench bench) {
    this.bench = bench;
    grid.setHgap(16);
    grid.setVgap(8);
    Label heading = Labels.line("Which line is held against which", "strong");
    Label how =
        new Label(
            "Lines are paired by name, then by kind and nearness, then by place. Choose another"
                + " counterpart, or none, where you know better.");
    how.getStyleClass().add("quiet");
    how.setWrapText(true);
    Button again = new Button("Pair by itself again");
    again.setId("pair-by-itself");
    again.setOnAction(e -> bench.pairByItself());
    column.getChildren().addAll(heading, how, grid, again);
    view.setFitToWidth(true);
    view.getStyleClass().add("plain-scroll");
  }

  Node view() {
    return view;
  }

  void show(Comparison comparison, Units units) {
    grid.getChildren().clear();
    List<Line> others = comparison.second().session().lines();
    int row = 0;
    grid.addRow(
        row++,
        Labels.line("First match", "quiet"),
        Labels.line("Second match", "quiet"),
        Labels.line("Paired because of", "quiet"));
    for (LinePair pair : comparison.setup().pairing().pairs()) {
      grid.addRow(
          row++,
          name(pair.first(), units),
          choice(pair.first(), pair.second(), others, units),
          new Label(CompareWords.why(pair)));
    }
    for (Line line : comparison.setup().pairing().onlyFirst()) {
      grid.addRow(
          row++,
          name(line, units),
          choice(line, null, others, units),
          Labels.line("in the first match alone", "quiet"));
    }
    for (Line line : comparison.setup().pairing().onlySecond()) {
      grid.addRow(
          row++,
          Labels.line("–", "quiet"),
          name(line, units),
          Labels.line("in the second match alone", "quiet"));
    }
  }

  private static Label name(Line line, Units units) {
    return new Label(Say.capital(Say.line(line, units)));
  }

  private ComboBox<String> choice(
      Line first, @Nullable Line chosen, List<Line> others, Units units) {
    List<String> names = new ArrayList<>();
    names.add(NONE);
    others.forEach(o -> names.add(Say.capital(Say.line(o, units))));
    ComboBox<String> box = new ComboBox<>();
    box.getItems().setAll(names);
    box.setId("pair-" + first.id());
    box.setAccessibleText("Line of the second match held against " + first.name());
    box.getSelectionModel().select(chosen == null ? 0 : others.indexOf(chosen) + 1);
    box.getSelectionModel()
        .selectedIndexProperty()
        .addListener(
            (p, before, after) -> {
              int index = after.intValue();
              if (index == 0 && chosen != null) {
                bench.unpair(first.id(), chosen.id());
              } else if (index > 0) {
                bench.pair(first.id(), others.get(index - 1).id());
              }
            });
    return box;
  }
}
