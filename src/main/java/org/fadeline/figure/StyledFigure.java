package org.fadeline.figure;

/** A figure of one style and one preferred shape. */
abstract class StyledFigure implements Figure {
  /** Theme, units and text size. */
  protected final FigureStyle style;

  private final double aspect;

  /**
   * @param aspect preferred width over height, above 0
   */
  StyledFigure(FigureStyle style, double aspect) {
    this.style = style;
    this.aspect = aspect;
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
