package org.fadeline.figure;

import java.awt.Graphics2D;

/** A picture that lays itself out for any size and draws itself. */
public interface Figure {
  /** Returns the title: what the picture shows, in a few words. */
  String title();

  /**
   * Returns the alternative text: whole sentences that say what the picture shows to someone who
   * cannot see it, and what it rests on.
   */
  String description();

  /** Returns the preferred width over height, above 0. */
  double aspect();

  /** Returns the theme, units and text size it is drawn with. */
  FigureStyle style();

  /**
   * Draws the figure into the rectangle from (0, 0) to (width, height), background included.
   *
   * @param g target; its clip, transform and colours may be changed by the call
   * @param width above 0
   * @param height above 0
   */
  void paint(Graphics2D g, double width, double height);
}
