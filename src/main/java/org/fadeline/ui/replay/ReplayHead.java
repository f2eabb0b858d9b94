package org.fadeline.ui.replay;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.command.KeysBack;
import org.fadeline.ui.control.play.KnowledgeChoice;
import org.fadeline.ui.replay.Readout.Pair;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Clock, time to go, weight and pace; and whether what came later is shown. */
final class ReplayHead {
  private final HBox view = new HBox();
  private final Label clock = new Label();
  private final Block toGo = new Block();
  private final Block weight = new Block();
  private final Block pace = new Block();

  /**
   * Makes the head.
   *
   * @param keysBack gives the keys back to the screen once a button was clicked
   */
  ReplayHead(Workbench bench, Runnable keysBack) {
    clock.getStyleClass().add("clock");
    // The clock runs with every frame; it lies still in a place of its own, so that nothing else
    // is laid out again for it.
    clock.setManaged(false);
    Region room = new ClockRoom(clock);
    clock.setAccessibleText("Clock at the playhead");
    KnowledgeChoice knowledge = new KnowledgeChoice(bench);
    KeysBack.afterClicksOn(knowledge, keysBack);
    Region space = Nodes.gap();
    view.getChildren()
        .addAll(
            room,
            gap(),
            toGo.box,
            gap(),
            weight.box,
            gap(),
            pace.box,
            space,
            new LinesMenu(bench).view(),
            gap(),
            knowledge);
    view.getStyleClass().add("replay-head");
    view.setAlignment(Pos.CENTER_LEFT);
    view.setStyle("-fx-padding: 0.4em 0.9em 0.1em 0.9em;");
  }

  /** A gap that large text may squeeze. */
  private static Region gap() {
    Region gap = new Region();
    gap.setMinWidth(8);
    gap.setPrefWidth(14);
    return gap;
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

  /** Keeps room for the widest clock time; all figures are of one width. */
  private static final class ClockRoom extends Region {
    private final Label clock;

    ClockRoom(Label clock) {
      this.clock = clock;
      getChildren().add(clock);
      setMinWidth(USE_PREF_SIZE);
      setMaxHeight(USE_PREF_SIZE);
    }

    private double widest() {
      Text text = new Text("00:00:00");
      text.setFont(clock.getFont());
      return Math.ceil(text.getLayoutBounds().getWidth()) + 2;
    }

    @Override
    protected double computePrefWidth(double height) {
      return widest();
    }

    @Override
    protected double computePrefHeight(double width) {
      return Math.ceil(clock.prefHeight(-1));
    }

    @Override
    protected void layoutChildren() {
      clock.resizeRelocate(0, 0, getWidth(), getHeight());
    }
  }

  /** A headline over a quiet line. */
  private static final class Block {
    private final Label head = new Label();
    private final Label note = new Label();
    private final VBox box = new VBox(head, note);
    private final Tooltip tip = new Tooltip();
    private @Nullable Pair shown;

    Block() {
      head.getStyleClass().add("figure-large");
      note.getStyleClass().addAll("quiet", "head-note");
      box.setAlignment(Pos.CENTER_LEFT);
      head.setMinWidth(Region.USE_PREF_SIZE);
      note.setMinWidth(20);
      tip.setWrapText(true);
      tip.setMaxWidth(520);
    }

    void show(Pair pair) {
      head.setText(pair.head());
      if (!pair.equals(shown)) {
        shown = pair;
        note.setText(pair.note());
        // What does not fit is cut off; the whole is a hover away, and what it rests on.
        String all = String.join("\n", pair.more());
        String whole = pair.note() + (all.isEmpty() ? "" : "\n" + all);
        tip.setText(whole);
        Tooltip now = whole.isEmpty() ? null : tip;
        if (note.getTooltip() != now) {
          note.setTooltip(now);
        }
        note.setAccessibleHelp(all);
      }
    }
  }
}
