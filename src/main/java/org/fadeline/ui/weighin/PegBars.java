package org.fadeline.ui.weighin;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.NetScale;
import org.fadeline.model.Outcome.NeighbourWeight;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.picture.WeightBars;

/** What this peg and the pegs nearby weighed, the heaviest first. */
final class PegBars {
  private final WeightBars bars = new WeightBars();
  private final Label none = Labels.wrapped("No weight of a peg nearby is known.");
  private final VBox view = new VBox(10, bars, none);

  PegBars() {
    none.getStyleClass().add("quiet");
  }

  VBox view() {
    return view;
  }

  void show(Session session, NetScale.Total own, Units units) {
    List<WeightBars.Bar> rows = new ArrayList<>();
    for (NeighbourWeight one : WeighInEntries.neighbours(session.outcome())) {
      rows.add(bar("Peg " + one.peg(), one.grams(), Say.weight(one.grams(), units), false));
    }
    boolean alone = rows.isEmpty();
    Double scales = own.scalesG();
    double grams = scales == null ? own.logged().grams() : scales;
    if (grams > 0) {
      String from = scales == null ? " by the log" : "";
      rows.add(bar("This peg", grams, Say.weight(grams, units) + from, true));
    }
    rows.sort((a, b) -> Double.compare(b.grams(), a.grams()));
    bars.show(rows);
    Nodes.show(none, alone);
  }

  private static WeightBars.Bar bar(String name, double grams, String words, boolean own) {
    return new WeightBars.Bar(name, grams, null, null, words, own);
  }
}
