package org.fadeline.ui.window;

import javafx.animation.PauseTransition;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** A line of news at the foot that goes by itself: what was done or undone. */
final class News {
  private final HBox view = new HBox();
  private final Label text = new Label();
  private final PauseTransition stay = new PauseTransition(Duration.seconds(6));

  /** Above the bar of what is picked, in which the next change may be under way already. */
  News(Workbench bench) {
    view.getChildren().add(text);
    view.getStyleClass().add("news");
    view.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    view.setMouseTransparent(true);
    StackPane.setAlignment(view, Pos.BOTTOM_CENTER);
    StackPane.setMargin(view, new Insets(0, 0, 132, 0));
    stay.setOnFinished(e -> bench.tell(null));
    Watch.part(bench.stateProperty(), s -> s.activity().message(), this::show);
  }

  HBox view() {
    return view;
  }

  private void show(@Nullable String message) {
    view.setVisible(message != null);
    text.setText(message == null ? "" : message);
    if (message == null) {
      stay.stop();
    } else {
      stay.playFromStart();
    }
  }
}
