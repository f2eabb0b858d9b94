package org.fadeline.ui.control;

import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** Plain shapes for buttons, drawn on a grid of 16 by 16. */
public enum Icon {
  /** Plays. */
  PLAY("M4 2.5 L13.5 8 L4 13.5 Z"),
  /** Plays backwards. */
  BACKWARDS("M12 2.5 L2.5 8 L12 13.5 Z"),
  /** Stands still. */
  PAUSE("M4 2.5 H7 V13.5 H4 Z M9 2.5 H12 V13.5 H9 Z"),
  /** Previous event. */
  EVENT_BEFORE("M3 3 H5 V13 H3 Z M13 3 V13 L6.5 8 Z"),
  /** Next event. */
  EVENT_AFTER("M11 3 H13 V13 H11 Z M3 3 V13 L9.5 8 Z"),
  /** Previous turning point. */
  TURN_BEFORE("M8.5 3 V13 L3.5 8 Z M13.5 3 V13 L8.5 8 Z M1.8 3 H3.2 V13 H1.8 Z"),
  /** Next turning point. */
  TURN_AFTER("M7.5 3 V13 L12.5 8 Z M2.5 3 V13 L7.5 8 Z M12.8 3 H14.2 V13 H12.8 Z"),
  /** Keeps to a stretch. */
  LOOP(
      "M4 4 H11 V1.8 L15 5 L11 8.2 V6 H4 V9 H2 V6 A2 2 0 0 1 4 4 Z "
          + "M12 12 H5 V14.2 L1 11 L5 7.8 V10 H12 V7 H14 V10 A2 2 0 0 1 12 12 Z"),
  /** Sets the second cursor. */
  MARK("M7.2 1 H8.8 V9 L12 9 L8 15 L4 9 L7.2 9 Z"),
  /** Shows the whole match. */
  WHOLE(
      "M1 3 H2.6 V13 H1 Z M13.4 3 H15 V13 H13.4 Z M4 8 L7 5.2 V7.2 H9 V5.2 L12 8 L9 10.8 V8.8 H7 V10.8 Z"),
  /** Zooms in. */
  CLOSER("M7 2 H9 V7 H14 V9 H9 V14 H7 V9 H2 V7 H7 Z"),
  /** Zooms out. */
  FARTHER("M2 7 H14 V9 H2 Z"),
  /** More. */
  MENU("M2 3.5 H14 V5 H2 Z M2 7.25 H14 V8.75 H2 Z M2 11 H14 V12.5 H2 Z"),
  /** Puts away. */
  CLOSE(
      "M3.5 2.5 L8 7 L12.5 2.5 L13.5 3.5 L9 8 L13.5 12.5 L12.5 13.5 L8 9 L3.5 13.5 L2.5 12.5 L7 8 L2.5 3.5 Z");

  private final String path;

  Icon(String path) {
    this.path = path;
  }

  /** Returns the shape as a node coloured by the style class {@code icon}. */
  public Region node() {
    Region region = new Region();
    region.getStyleClass().add("icon");
    region.setStyle("-fx-shape: \"" + path + "\";");
    region.setMouseTransparent(true);
    return region;
  }

  /** Returns a button of this shape. */
  public Button button(String words, String keys, Runnable action) {
    Button button = on(new Button(), words, keys);
    button.setOnAction(e -> action.run());
    return button;
  }

  /** Gives a button this shape, with words for the screen reader and the tooltip. */
  public <B extends ButtonBase> B on(B button, String words, String keys) {
    button.setGraphic(node());
    button.setAccessibleText(words);
    button.setTooltip(new Tooltip(keys.isEmpty() ? words : words + "  (" + keys + ")"));
    button.getStyleClass().add("icon-button");
    return button;
  }
}
