package org.fadeline.ui.window;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences.Bounds;

/** Where the window stands: where it stood last, as far as that is on a screen of the machine. */
final class WindowPlace {
  private final Stage stage;
  private final PreferenceStore preferences;

  WindowPlace(Stage stage, PreferenceStore preferences) {
    this.stage = stage;
    this.preferences = preferences;
  }

  /** Puts the window there. */
  void take() {
    List<Bounds> visible = new ArrayList<>();
    visible.add(bounds(Screen.getPrimary()));
    Screen.getScreens().stream().map(WindowPlace::bounds).forEach(visible::add);
    Bounds place = preferences.get().window().onto(visible);
    stage.setX(place.x());
    stage.setY(place.y());
    stage.setWidth(place.width());
    stage.setHeight(place.height());
    stage.setMaximized(place.maximised());
  }

  private static Bounds bounds(Screen screen) {
    Rectangle2D b = screen.getVisualBounds();
    return new Bounds(b.getMinX(), b.getMinY(), b.getWidth(), b.getHeight(), false);
  }

  /** Keeps where it stands now; of a window that fills its screen, where it stood before. */
  void remember() {
    Bounds before = preferences.get().window();
    Bounds now =
        stage.isMaximized()
            ? new Bounds(before.x(), before.y(), before.width(), before.height(), true)
            : new Bounds(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), false);
    preferences.change(p -> p.withWindow(now));
  }
}
