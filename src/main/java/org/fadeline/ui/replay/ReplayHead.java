package org.fadeline.ui.replay;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Segments;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.replay.Readout.Pair;
import org.fadeline.ui.state.Workbench;

/** Clock, time to go, weight and pace; and whether what came later is shown. */
final class ReplayHead {
  private final HBox view = new HBox();
  private final Label clock = new Label();
  private final Block toGo = new Block();
  private final Block weight = new Block();
  private final Block pace = new Block();

  ReplayHead(Workbench bench) {
    clock.getStyleClass().add("clock");
    clock.setMinWidth(Region.USE_PREF_SIZE);
    clock.setAccessibleText("Clock at the playhead");
    Segments<Boolean> knowledge =
        new Segments<>(
            "Show",
            List.of(false, true),
            hindsight -> hindsight ? "with hindsight" : "as known then",
            bench::hindsight);
    Watch.part(bench.stateProperty(), s -> s.choices().hindsight(), knowledge::choose);
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    view.getChildren().addAll(clock, toGo.box, weight.box, pace.box, space, knowledge);
    view.setAlignment(Pos.CENTER_LEFT);
    view.setStyle("-fx-spacing: 2.2em; -fx-padding: 0.35em 1.1em 0.35em 1.1em;");
  }

  HBox view() {
    return view;
  }

  void show(Readout readout) {
    clock.setText(readout.clock());
    toGo.show(readout.toGo());
    weight.show(readout.weight());
    pace.show(readout.pace());
  }

  /** A headline over a quiet line. */
  private static final class Block {
    private final Label head = new Label();
    private final Label note = new Label();
    private final VBox box = new VBox(head, note);

    Block() {
      head.getStyleClass().add("figure-large");
      note.getStyleClass().add("quiet");
      box.setAlignment(Pos.CENTER_LEFT);
      head.setMinWidth(Region.USE_PREF_SIZE);
      note.setMinWidth(40);
    }

    void show(Pair pair) {
      head.setText(pair.head());
      if (!pair.note().equals(note.getText())) {
        note.setText(pair.note());
        // What does not fit is cut off; the whole is a hover away.
        note.setTooltip(pair.note().isEmpty() ? null : new Tooltip(pair.note()));
      }
    }
  }
}
