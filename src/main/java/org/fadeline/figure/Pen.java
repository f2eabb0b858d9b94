package org.fadeline.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws in the figures' own terms on a {@link Graphics2D}. */
final class Pen {
  /** Side of a badge, in sizes of its letters. */
  static final double BADGE = 1.45;

  /** Where a text lies to its anchor. */
  enum Align {
    LEFT,
    MIDDLE,
    RIGHT
  }

  private static final float[] SOLID = {};

  final Graphics2D g;
  final FigureStyle style;
  final Theme theme;
  final Font small;
  final Font body;
  final Font strong;
  final Font smallStrong;

  Pen(Graphics2D g, FigureStyle style) {
    this.g = g;
    this.style = style;
    this.theme = style.theme();
    this.small = Type.regular(11 * style.textScale());
    this.smallStrong = Type.semiBold(11 * style.textScale());
    this.body = Type.regular(12.5 * style.textScale());
    this.strong = Type.semiBold(12.5 * style.textScale());
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /** Returns the height of a row of small text. */
  double smallRow() {
    return Math.ceil(small.getSize2D() * 1.35);
  }

  /** Returns the height of a row of body text. */
  double bodyRow() {
    return Math.ceil(body.getSize2D() * 1.35);
  }

  void fill(Color colour, double x, double y, double width, double height) {
    if (width > 0 && height > 0) {
      g.setColor(colour);
      g.fill(new Rectangle2D.Double(x, y, width, height));
    }
  }

  void fill(Color colour, Shape shape) {
    g.setColor(colour);
    g.fill(shape);
  }

  void disc(Color colour, double x, double y, double radius) {
    fill(colour, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
  }

  void ring(Color colour, double x, double y, double radius, double width) {
    stroke(colour, width, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
  }

  void line(Color colour, double width, double x1, double y1, double x2, double y2) {
    stroke(colour, width, new Line2D.Double(x1, y1, x2, y2));
  }

  void stroke(Color colour, double width, Shape shape) {
    stroke(colour, width, SOLID, shape);
  }

  /** Strokes a shape; the dash is in multiples of the width, empty for solid. */
  void stroke(Color colour, double width, float[] dash, Shape shape) {
    g.setColor(colour);
    g.setStroke(strokeOf(width, dash));
    g.draw(shape);
  }

  /** Beside large text thin strokes are lost: they grow with it, though not as fast. */
  private BasicStroke strokeOf(double width, float[] dash) {
    float w = (float) (width * Math.max(1, Math.sqrt(style.textScale())));
    if (dash.length == 0) {
      return new BasicStroke(w, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] scaled = new float[dash.length];
    for (int i = 0; i < dash.length; i++) {
      scaled[i] = dash[i] * w;
    }
    return new BasicStroke(w, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, scaled, 0);
  }

  void text(String text, double x, double baseline, Font font, Color colour, Align align) {
    if (text.isEmpty()) {
      return;
    }
    double width = align == Align.LEFT ? 0 : Type.width(font, text);
    double left =
        switch (align) {
          case LEFT -> x;
          case MIDDLE -> x - width / 2;
          case RIGHT -> x - width;
        };
    g.setFont(font);
    g.setColor(colour);
    g.drawString(text, (float) left, (float) baseline);
  }

  void text(String text, double x, double baseline, Font font, Color colour) {
    text(text, x, baseline, font, colour, Align.LEFT);
  }

  /** Draws a line's letter on a small square of its hue; returns the square's width. */
  double badge(int lineIndex, double x, double middle) {
    return badge(lineIndex, x, middle, smallStrong);
  }

  /** The same in letters of a size of its own. */
  double badge(int lineIndex, double x, double middle, Font letters) {
    Color hue = theme.line(lineIndex);
    double side = Math.round(letters.getSize2D() * BADGE);
    String letter = Theme.letter(lineIndex);
    double width = Math.max(side, Type.width(letters, letter) + side * 0.4);
    fill(
        hue,
        new RoundRectangle2D.Double(x, middle - side / 2, width, side, side * 0.4, side * 0.4));
    text(letter, x + width / 2, middle + Type.drop(letters), letters, theme.on(hue), Align.MIDDLE);
    return width;
  }

  /** Returns the first of the texts that fits, or an empty text. */
  static String fitting(Font font, double width, List<String> longestFirst) {
    for (String text : longestFirst) {
      if (Type.width(font, text) <= width) {
        return text;
      }
    }
    return "";
  }

  /** Returns the text cut at a word, with an ellipsis, where it is wider than allowed. */
  static String shortened(Font font, double width, String text) {
    if (Type.width(font, text) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 1 && Type.width(font, text.substring(0, end).stripTrailing() + "…") > width) {
      end--;
    }
    return end <= 1 ? "" : text.substring(0, end).stripTrailing() + "…";
  }

  /** Breaks a text into rows no wider than allowed; a word that is wider stands alone. */
  static List<String> wrapped(Font font, double width, String text) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (row.length() > 0 && Type.width(font, row + " " + word) > width) {
        rows.add(row.toString());
        row.setLength(0);
      }
      if (row.length() > 0) {
        row.append(' ');
      }
      row.append(word);
    }
    if (row.length() > 0) {
      rows.add(row.toString());
    }
    return rows;
  }

  /** Adds slanting lines over a rectangle to a path, in step with those of every other one. */
  static void hatch(Path2D path, double x, double y, double width, double height, double gap) {
    double right = x + width;
    double bottom = y + height;
    // Lines x + y = c, at multiples of the gap, cut to the rectangle.
    for (double c = Math.ceil((x + y) / gap) * gap; c < right + bottom; c += gap) {
      double x1 = Math.max(x, c - bottom);
      double x2 = Math.min(right, c - y);
      if (x2 > x1) {
        path.moveTo(x1, c - x1);
        path.lineTo(x2, c - x2);
      }
    }
  }

  static Color alpha(Color colour, double share) {
    return new Color(
        colour.getRed(),
        colour.getGreen(),
        colour.getBlue(),
        (int) Math.round(255 * Math.max(0, Math.min(1, share))));
  }
}
