package org.fadeline.figure;

import org.fadeline.model.Units;

/**
 * How figures look and what units they speak.
 *
 * @param theme colours
 * @param units of weights and distances
 * @param textScale size of all text as a factor of the normal size, in [0.5, 5]
 */
public record FigureStyle(Theme theme, Units units, double textScale) {
  /** Checks the range. */
  public FigureStyle {
    if (!(textScale >= 0.5 && textScale <= 5)) {
      throw new IllegalArgumentException("text scale must be 0.5 to 5: " + textScale);
    }
  }

  /** Returns a style at the normal text size. */
  public static FigureStyle of(Theme theme, Units units) {
    return new FigureStyle(theme, units, 1);
  }

  /** Returns this style with another text size. */
  public FigureStyle withTextScale(double newTextScale) {
    return new FigureStyle(theme, units, newTextScale);
  }
}
