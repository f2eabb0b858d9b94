package org.fadeline.ui.weighin;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NeighbourWeight;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Entry;
import org.fadeline.ui.control.form.EntryBox;

/** Section, places, and what the pegs nearby weighed. */
final class PlacingPane {
  private final List<EntryBox<Outcome>> fields = new ArrayList<>();
  private final VBox neighbours = new VBox(4);
  private final TextField peg = field("neighbour-peg", "Peg of the neighbour", "peg");
  private final TextField weight = field("neighbour-weight", "Weight of the neighbour", "52 4");
  private final Button add = new Button("Add");
  private final Label wrong = Labels.wrapped("");
  private final EntryBox.Commit<Outcome> commit;
  private Outcome shown = Outcome.UNKNOWN;
  private Units units = Units.LB_OZ_AND_METRES;

  PlacingPane(EntryBox.Commit<Outcome> commit) {
    this.commit = commit;
    for (Entry<Outcome> entry : WeighInEntries.placings()) {
      fields.add(new EntryBox<>(entry, commit));
    }
    wrong.getStyleClass().add("warning-text");
    wrong.setId("neighbour-error");
    add.setId("neighbour-add");
    add.setAccessibleText("Add the neighbour's weight");
    add.setOnAction(e -> add());
    weight.setOnAction(e -> add());
  }

  private static TextField field(String id, String words, String prompt) {
    TextField field = new TextField();
    field.setId(id);
    field.setPromptText(prompt);
    field.setAccessibleText(words);
    field.setPrefColumnCount(5);
    return field;
  }

  Node[] parts() {
    GridPane grid = new GridPane();
    grid.setHgap(12);
    grid.setVgap(8);
    for (int i = 0; i < fields.size(); i++) {
      GridPane.setHgrow(fields.get(i), Priority.ALWAYS);
      grid.add(fields.get(i), i % 2, i / 2);
    }
    Label result = Labels.line("Result", "title");
    Label nearby = Labels.line("Pegs nearby", "title");
    add.setMinWidth(Region.USE_PREF_SIZE);
    HBox row = new HBox(8, peg, weight, add);
    row.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(weight, Priority.ALWAYS);
    return new Node[] {result, grid, nearby, neighbours, row, wrong};
  }

  void show(Outcome outcome, Units newUnits, boolean editable) {
    shown = outcome;
    units = newUnits;
    fields.forEach(f -> f.show(outcome, newUnits, editable));
    add.setDisable(!editable);
    List<Node> rows = new ArrayList<>();
    for (NeighbourWeight one : WeighInEntries.neighbours(outcome)) {
      rows.add(row(one, editable));
    }
    if (rows.isEmpty()) {
      Label none = Labels.wrapped("None known.");
      none.getStyleClass().add("quiet");
      rows.add(none);
    }
    neighbours.getChildren().setAll(rows);
  }

  private HBox row(NeighbourWeight one, boolean editable) {
    FlowPane words =
        new FlowPane(
            8, 0, new Label("Peg " + one.peg()), new Label(Say.weight(one.grams(), units)));
    words.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button remove = new Button("Remove");
    remove.getStyleClass().add("flat");
    remove.setAccessibleText("Remove the weight of peg " + one.peg());
    remove.setDisable(!editable);
    remove.setOnAction(
        e ->
            commit.change(
                "Remove peg " + one.peg(), o -> WeighInEntries.withoutNeighbour(o, one.peg())));
    remove.setMinWidth(Region.USE_PREF_SIZE);
    HBox row = new HBox(8, words, remove);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private void add() {
    String number = peg.getText();
    String typed = weight.getText();
    Units in = units;
    try {
      WeighInEntries.withNeighbour(shown, number, typed, in);
      wrong.setText("");
      peg.clear();
      weight.clear();
      commit.change(
          "Weight of peg " + number.strip(),
          o -> WeighInEntries.withNeighbour(o, number, typed, in));
    } catch (IllegalArgumentException notUsable) {
      wrong.setText(Say.capital(String.valueOf(notUsable.getMessage())) + ".");
    }
  }
}
