package org.fadeline.ui.control;

import javafx.scene.layout.Region;
import org.fadeline.figure.Theme;

/** A thin bar in the colour of a line, beside what is told of it. */
public final class LineBar extends Region {
  /** How many colours of lines there are; further lines begin again with the first. */
  public static final int COLOURS = Theme.LIGHT.hues();

  /** Makes a bar without a colour yet. */
  public LineBar() {
    getStyleClass().add("line-bar");
  }

  /**
   * Takes a line's colour.
   *
   * @param place of the line in its session, from 0
   */
  public LineBar of(int place) {
    return in("-fl-line-" + place % COLOURS);
  }

  /** Takes a colour of the style sheet, where what is told is of no line. */
  public LineBar in(String colour) {
    setStyle("-fx-background-color: " + colour + ";");
    return this;
  }
}
