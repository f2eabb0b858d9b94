package org.fadeline.ui.control.picture;

import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.ui.state.Preferences;

/** How figures look, by what the user prefers. */
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

  /** Returns the style of figures on screen, their text as large as all text there. */
  public static FigureStyle onScreen(Preferences preferences) {
    return new FigureStyle(
        theme(preferences.look()), preferences.units(), preferences.textPercent() / 100.0);
  }

  /** Returns the style of a figure that is saved as it is seen, its text of the usual size. */
  public static FigureStyle saved(Preferences preferences) {
    return FigureStyle.of(theme(preferences.look()), preferences.units());
  }
}
