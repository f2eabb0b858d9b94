package org.fadeline.figure;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One slide of a talk: a title, words, one figure and, small, what the figure rests on. Sizes are
 * points on a page 540 points high; text that is to be read is at least 24 points.
 */
public final class SlideFigure implements Figure {
  /** Height of every slide, points. */
  public static final double HEIGHT = 540;

  /** Smallest size of text that is to be read, points. */
  public static final double SMALLEST_TEXT = 24;

  private static final double MARGIN = 36;

  /** Sizes tried for words that stand alone, points: few words fill the slide. */
  private static final List<Double> ALONE = List.of(40.0, 36.0, 32.0, 28.0);

  /** Of the room, what words may take when set larger: a replaced typeface may run wider. */
  private static final double AIR = 0.72;

  /** Of its row, what a title may take before it is set smaller, for the same reason. */
  private static final double TITLE_AIR = 0.8;

  private static final double FOOT_ROW = 13;
  private static final double ROW = 1.25;

  private final String title;
  private final List<String> words;
  private final @Nullable Figure figure;
  private final List<String> foot;
  private final FigureStyle style;
  private final double width;

  /**
   * Makes a slide.
   *
   * @param text title first, then the words, a paragraph each
   * @param figure the figure, its text at least 24 points, or null
   * @param foot what the figure rests on
   * @param style theme and units
   * @param width points: 960 for 16:9, 720 for 4:3
   */
  public SlideFigure(
      List<String> text,
      @Nullable Figure figure,
      List<String> foot,
      FigureStyle style,
      double width) {
    this.title = text.isEmpty() ? "" : text.get(0);
    this.words = text.isEmpty() ? List.of() : List.copyOf(text.subList(1, text.size()));
    this.figure = figure;
    this.foot = List.copyOf(foot);
    this.style = style;
    this.width = width;
  }

  /** Returns the text scale at which the smallest text of a figure has 24 points. */
  public static double figureTextScale() {
    return SMALLEST_TEXT / 11;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public String description() {
    Figure shown = figure;
    return (String.join(" ", words) + (shown == null ? "" : " " + shown.description())).strip();
  }

  @Override
  public double aspect() {
    return width / HEIGHT;
  }

  @Override
  public FigureStyle style() {
    return style;
  }

  /** Returns the words, a paragraph each. */
  public List<String> words() {
    return words;
  }

  /** Returns where the title stands, points. */
  public Rectangle2D titleBox() {
    return new Rectangle2D.Double(MARGIN, 18 + lowered(), width - 2 * MARGIN, 52);
  }

  /** Returns where a short rule in the accent stands above words that stand alone, points. */
  public Rectangle2D ruleBox() {
    return new Rectangle2D.Double(MARGIN, titleBox().getY() - 12, figure == null ? 72 : 0, 6);
  }

  /** How far title and words stand lower than on a slide with a figure: alone, near the middle. */
  private double lowered() {
    return figure == null ? Math.max(16, 0.38 * (roomForWords() - neededForWords())) : 0;
  }

  /** Returns where the words stand, points; empty without words. */
  public Rectangle2D wordsBox() {
    if (words.isEmpty()) {
      return new Rectangle2D.Double(MARGIN, 76 + lowered(), width - 2 * MARGIN, 0);
    }
    double height = Math.min(roomForWords(), neededForWords());
    double top = 76 + lowered() + (figure == null ? 10 : 0);
    return new Rectangle2D.Double(MARGIN, top, width - 2 * MARGIN, height);
  }

  /** Returns whether all the words have room. */
  public boolean wordsFit() {
    return neededForWords() <= roomForWords() + 0.5;
  }

  /** Returns whether the title fits on its row at no less than {@value #SMALLEST_TEXT} points. */
  public boolean titleFits() {
    return Type.width(Type.semiBold(SMALLEST_TEXT), title) <= width - 2 * MARGIN;
  }

  private double roomForWords() {
    return figure == null ? HEIGHT - 76 - 50 : 190;
  }

  private double neededForWords() {
    return neededAt(wordsSize());
  }

  private double neededAt(double size) {
    return rows(Type.regular(size)).size() * size * ROW + words.size() * paragraphGap() + 8;
  }

  /** Returns where the figure stands, points. */
  public Rectangle2D figureBox() {
    double top = wordsBox().getMaxY() + 4;
    return new Rectangle2D.Double(
        MARGIN / 2, top, width - MARGIN, Math.max(10, footBox().getY() - 4 - top));
  }

  /** Returns where the small print stands, points. */
  public Rectangle2D footBox() {
    double height = Math.max(2, foot.size()) * FOOT_ROW;
    return new Rectangle2D.Double(MARGIN, HEIGHT - 7 - height, width - 2 * MARGIN, height);
  }

  /** Returns the space after a paragraph, points: words that stand alone get more air. */
  public double paragraphGap() {
    return figure == null ? 14 : 2;
  }

  /** Returns the size of the words, points: beside a figure {@value #SMALLEST_TEXT}. */
  public double wordsSize() {
    if (figure != null) {
      return SMALLEST_TEXT;
    }
    return ALONE.stream()
        .filter(size -> neededAt(size) <= AIR * roomForWords())
        .findFirst()
        .orElse(ALONE.get(ALONE.size() - 1));
  }

  /**
   * Returns the size of the title, points: 32, without a figure 40, or less where it would not fit
   * on its row.
   */
  public double titleSize() {
    double size = figure == null ? ALONE.get(0) : 32;
    while (size > SMALLEST_TEXT
        && Type.width(Type.semiBold(size), title) > TITLE_AIR * (width - 2 * MARGIN)) {
      size--;
    }
    return size;
  }

  private List<String> rows(Font font) {
    return words.stream().flatMap(w -> Pen.wrapped(font, width - 2 * MARGIN, w).stream()).toList();
  }

  @Override
  public void paint(Graphics2D g, double targetWidth, double targetHeight) {
    AffineTransform before = g.getTransform();
    g.scale(targetWidth / width, targetHeight / HEIGHT);
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, HEIGHT);
    Font heading = Type.semiBold(titleSize());
    Rectangle2D rule = ruleBox();
    if (rule.getWidth() > 0) {
      pen.fill(pen.theme.accent(), rule);
    }
    pen.text(
        Pen.shortened(heading, width - 2 * MARGIN, title),
        MARGIN,
        titleBox().getY() + 36,
        heading,
        pen.theme.ink());
    Font font = Type.regular(wordsSize());
    double y = wordsBox().getY() + font.getSize2D();
    for (String paragraph : words) {
      for (String row : Pen.wrapped(font, width - 2 * MARGIN, paragraph)) {
        if (y <= wordsBox().getMaxY() + 2) {
          pen.text(row, MARGIN, y, font, pen.theme.ink());
        }
        y += font.getSize2D() * ROW;
      }
      y += paragraphGap();
    }
    Figure shown = figure;
    if (shown != null) {
      Rectangle2D box = figureBox();
      AffineTransform here = g.getTransform();
      g.translate(box.getX(), box.getY());
      shown.paint(g, box.getWidth(), box.getHeight());
      g.setTransform(here);
      Font tiny = Type.regular(10.5);
      for (int i = 0; i < foot.size(); i++) {
        pen.text(
            Pen.shortened(tiny, width - 2 * MARGIN, foot.get(i)),
            MARGIN,
            footBox().getY() + (i + 0.9) * FOOT_ROW,
            tiny,
            pen.theme.secondInk());
      }
    }
    g.setTransform(before);
  }

  /** Returns the figure, or null. */
  public @Nullable Figure figure() {
    return figure;
  }

  /** Returns what the figure rests on. */
  public List<String> foot() {
    return foot;
  }
}
