package org.fadeline.ui.window;

import javafx.scene.Parent;
import javafx.scene.Scene;
import org.fadeline.ui.state.Preferences;

/** A part of a screen by itself, in the colours that it looks up; without them it warns of each. */
public final class ThemedScene {
  private ThemedScene() {}

  /** Returns a scene in the usual theme, pixels wide and high. */
  public static Scene of(Parent part, double width, double height) {
    Scene scene = new Scene(part, width, height);
    scene.getStylesheets().add(ThemeSheet.address(Preferences.DEFAULT));
    return scene;
  }
}
