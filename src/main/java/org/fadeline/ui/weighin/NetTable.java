package org.fadeline.ui.weighin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import org.fadeline.analysis.NetScale;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.form.EntryBox;

/** A row a net: what the log says, what the scales said, the factor between, the limit. */
final class NetTable {
  private static final List<String> USUAL = List.of("carp", "silvers");

  private final GridPane grid = new GridPane();
  private final EntryBox.Commit<Outcome> commit;
  private final Map<Integer, EntryBox<Outcome>> fields = new HashMap<>();

  NetTable(EntryBox.Commit<Outcome> commit) {
    this.commit = commit;
    grid.setHgap(14);
    grid.setVgap(8);
    for (double percent : new double[] {7, 19, 22, 17, 11, 24}) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      grid.getColumnConstraints().add(column);
    }
  }

  GridPane view() {
    return grid;
  }

  /** Shows the nets of a session and as many empty ones as were asked for. */
  void show(Session session, List<NetScale> nets, Units units, boolean editable) {
    List<Node> cells = new ArrayList<>();
    String[] heads = {
      "Net", "At the scales", "In the log", "Holds", "Scales ÷ log", "Against the limit"
    };
    for (int i = 0; i < heads.length; i++) {
      cells.add(at(Labels.wrapped(heads[i], "quiet"), i, 0));
    }
    int row = 1;
    for (NetScale net : nets) {
      EntryBox<Outcome> field =
          fields.computeIfAbsent(
              net.net(), n -> new EntryBox<>(WeighInEntries.weight(n), commit, false));
      field.show(session.outcome(), units, editable);
      Double factor = net.factor();
      Label standing = Labels.wrapped(Weights.standing(net, units));
      standing.setId("net-" + net.net() + "-standing");
      if (net.standing() == NetScale.Standing.OVER) {
        standing.getStyleClass().add("warning-text");
      }
      Label scale = Labels.wrapped(factor == null ? "–" : Weights.factor(factor));
      scale.setId("net-" + net.net() + "-factor");
      scale.setAccessibleText(
          factor == null ? "No factor" : "Scales over log: " + Weights.factor(factor));
      cells.add(at(Labels.wrapped(String.valueOf(net.net()), "strong"), 0, row));
      cells.add(at(field, 1, row));
      cells.add(at(Labels.wrapped(Weights.logged(net.logged(), units)), 2, row));
      cells.add(at(holds(net, editable), 3, row));
      cells.add(at(scale, 4, row));
      cells.add(at(standing, 5, row));
      row++;
    }
    grid.getChildren().setAll(cells);
  }

  private ComboBox<String> holds(NetScale net, boolean editable) {
    NetWeight weighed = net.weighed();
    ComboBox<String> box = new ComboBox<>();
    box.getItems().add("");
    box.getItems().addAll(USUAL);
    box.setEditable(true);
    box.setMaxWidth(Double.MAX_VALUE);
    box.setId("net-" + net.net() + "-holds");
    box.setAccessibleText("What net " + net.net() + " holds");
    box.setValue(weighed == null || weighed.holds() == null ? "" : weighed.holds());
    // A session holds these words with the weight, so there must be one first.
    box.setDisable(weighed == null || !editable);
    box.setOnAction(
        e ->
            commit.change(
                "Say what net " + net.net() + " holds",
                o -> WeighInEntries.holding(o, net.net(), box.getValue())));
    return box;
  }

  private static Node at(Node node, int column, int row) {
    GridPane.setConstraints(node, column, row);
    GridPane.setValignment(node, VPos.CENTER);
    GridPane.setFillHeight(node, false);
    return node;
  }
}
