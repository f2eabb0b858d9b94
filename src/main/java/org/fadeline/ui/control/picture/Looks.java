package org.fadeline.ui.control.picture;

import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;

/** How figures look on screen. */
public final class Looks {
  private Looks() {}

  /** Returns the theme of the same name as a look, such as {@code DARK}. */
  public static Theme theme(Enum<?> look) {
    return Theme.valueOf(look.name());
  }

  /**
   * Returns the style of figures on screen.
   *
   * @param look named like its theme
   * @param textPercent size of all text, percent of the normal size
   */
  public static FigureStyle style(Enum<?> look, Units units, int textPercent) {
    return new FigureStyle(theme(look), units, textPercent / 100.0);
  }
}
