package org.fadeline.figure;

import org.fadeline.analysis.season.Season;

/** What all figures of a season have in common. */
abstract class SeasonFigure implements Figure {
  private final FigureStyle style;
  private final double aspect;

  /** The sessions shown. */
  protected final Season season;

  /** Units and numbers in words. */
  protected final FigureText words;

  SeasonFigure(Season season, FigureStyle style, double aspect) {
    this.season = season;
    this.style = style;
    this.aspect = aspect;
    this.words = new FigureText(style.units());
  }

  @Override
  public final FigureStyle style() {
    return style;
  }

  @Override
  public final double aspect() {
    return aspect;
  }
}
