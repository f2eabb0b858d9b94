package org.fadeline.ui.control;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Words on a screen, by the style classes they are written in: quiet, strong, title. */
public final class Labels {
  private Labels() {}

  /** Returns words on one line. */
  public static Label line(String words, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** Returns words that break where the room ends, and are never cut short. */
  public static Label wrapped(String words, String... styles) {
    Label label = line(words, styles);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
