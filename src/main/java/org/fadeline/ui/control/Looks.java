package org.fadeline.ui.control;

import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.ui.state.Preferences;

/** How figures look under the preferences. */
public final class Looks {
  private Looks() {}

  /** Returns the theme of a look. */
  public static Theme theme(Preferences.Look look) {
    return switch (look) {
      case LIGHT -> Theme.LIGHT;
      case DARK -> Theme.DARK;
      case HIGH_CONTRAST -> Theme.HIGH_CONTRAST;
    };
  }

  /** Returns the style of figures on screen. */
  public static FigureStyle style(Preferences preferences) {
    return new FigureStyle(
        theme(preferences.look()), preferences.units(), preferences.textPercent() / 100.0);
  }
}
