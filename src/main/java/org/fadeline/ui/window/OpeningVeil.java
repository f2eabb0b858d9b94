package org.fadeline.ui.window;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Says which file is being read, over the window, and lets it be given up. */
final class OpeningVeil {
  private final Label text = new Label();
  private final ProgressIndicator turning = new ProgressIndicator();
  private final StackPane view;

  OpeningVeil(Workbench bench) {
    turning.setMaxSize(28, 28);
    Button cancel = new Button("Give up");
    cancel.setOnAction(e -> bench.cancelOpening());
    VBox box = new VBox(10, turning, text, cancel);
    box.setAlignment(Pos.CENTER);
    box.getStyleClass().add("sheet");
    box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    view = new StackPane(box);
    Watch.part(bench.stateProperty(), s -> s.activity().opening(), this::show);
  }

  Node view() {
    return view;
  }

  private void show(@Nullable String name) {
    view.setVisible(name != null);
    text.setText(name == null ? "" : "Reading " + name);
    // Out of sight it stands still: a wheel that turns asks for frames.
    turning.setProgress(name == null ? 0 : -1);
  }
}
