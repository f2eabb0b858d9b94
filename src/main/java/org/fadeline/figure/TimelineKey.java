package org.fadeline.figure;

import java.awt.Color;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The row at the foot of a timeline that says what its marks mean. */
final class TimelineKey {
  private TimelineKey() {}

  private enum Entry {
    FED("fed"),
    CAST("cast"),
    BITE("bite missed"),
    LANDED("landed, size by weight"),
    LOST("lost"),
    FOUL("foul-hooked"),
    RATE("%s an hour, last %s min, with its limits"),
    UNFISHED("not fished"),
    UNASSIGNED("not said which line"),
    FADED("when it faded: the darker, the likelier"),
    PLAIN("plain from what had been seen"),
    STAYED("stayed after that");

    final String words;

    Entry(String words) {
      this.words = words;
    }
  }

  private record Placed(Entry entry, String words, double x, double row) {}

  private static double swatch(FigureStyle style) {
    return 16 * Math.sqrt(style.textScale());
  }

  private static double row(FigureStyle style) {
    return Math.ceil(17 * style.textScale());
  }

  static double height(TimelineFigure figure, double width) {
    List<Placed> placed = place(figure, width);
    double rows = placed.get(placed.size() - 1).row + 1;
    return rows * row(figure.style()) + 8;
  }

  private static List<Placed> place(TimelineFigure figure, double width) {
    FigureStyle style = figure.style();
    String measure = figure.view().measure() == TimelineView.Measure.WEIGHT ? "weight" : "fish";
    String window = FigureText.number(figure.review().settings().windowMinutes());
    var font = Type.regular(11 * style.textScale());
    List<Placed> placed = new ArrayList<>();
    double x = 12;
    int row = 0;
    for (Entry entry : Entry.values()) {
      String words = String.format(Locale.ROOT, entry.words, measure, window);
      double needed = swatch(style) + 5 + Type.width(font, words);
      if (x > 12 && x + needed > width - 12) {
        x = 12;
        row++;
      }
      placed.add(new Placed(entry, words, x, row));
      x += needed + 16;
    }
    return placed;
  }

  static void paint(Pen pen, TimelineFigure figure, double width, double top) {
    for (Placed placed : place(figure, width)) {
      double middle = top + 6 + (placed.row + 0.5) * row(pen.style);
      paintSwatch(pen, placed.entry, placed.x, middle, swatch(pen.style));
      pen.text(
          placed.words,
          placed.x + swatch(pen.style) + 5,
          middle + Type.drop(pen.small),
          pen.small,
          pen.theme.secondInk());
    }
  }

  private static void paintSwatch(Pen pen, Entry entry, double x, double y, double side) {
    Theme theme = pen.theme;
    Color hue = theme.line(0);
    Color red = theme.warning();
    double middle = x + side / 2;
    switch (entry) {
      case FED -> pen.fill(theme.ink(), middle - 1, y - 5, 2.2, 10);
      case CAST -> pen.fill(Theme.mix(hue, 0.85, theme.panel()), middle, y - 2, 1, 4.5);
      case BITE -> pen.fill(hue, middle, y - 5, 1.6, 10);
      case LANDED -> {
        pen.fill(hue, new Arc2D.Double(x - 2, y - 3, 6, 6, -90, 180, Arc2D.CHORD));
        pen.fill(hue, new Arc2D.Double(middle - 6, y - 6, 12, 12, -90, 180, Arc2D.CHORD));
      }
      case LOST -> {
        Path2D cross = new Path2D.Double();
        cross.moveTo(middle - 3.6, y - 3.6);
        cross.lineTo(middle + 3.6, y + 3.6);
        cross.moveTo(middle - 3.6, y + 3.6);
        cross.lineTo(middle + 3.6, y - 3.6);
        pen.stroke(theme.ink(), 1.7, cross);
      }
      case FOUL -> {
        Arc2D half = new Arc2D.Double(middle - 8, y - 5, 10, 10, -90, 180, Arc2D.CHORD);
        pen.stroke(hue, 1.3, half);
        pen.line(hue, 1.3, middle - 3, y, middle + 2, y);
      }
      case RATE -> {
        pen.fill(Pen.alpha(hue, 0.2), x, y - 6, side, 12);
        pen.line(hue, 1.8, x, y + 1, x + side, y + 1);
      }
      case UNFISHED -> {
        Path2D hatch = new Path2D.Double();
        Pen.hatch(hatch, x, y - 6, side, 12, 5);
        pen.stroke(Theme.mix(theme.secondInk(), 0.5, theme.panel()), 1, hatch);
      }
      case UNASSIGNED -> {
        for (double dy = -4; dy <= 4; dy += 4) {
          for (double dx = 1; dx < side; dx += 4) {
            pen.fill(theme.secondInk(), x + dx, y + dy, 1.5, 1.5);
          }
        }
      }
      case FADED -> {
        for (int i = 0; i < 8; i++) {
          double share = 1 - Math.abs(i - 3.5) / 4;
          pen.fill(Pen.alpha(red, 0.42 * share), x + i * side / 8, y - 6, side / 8, 12);
        }
        pen.fill(red, middle - 0.9, y - 6, 1.8, 12);
      }
      case PLAIN ->
          pen.stroke(
              red, 1.8, new float[] {1, 1.6f}, new Line2D.Double(middle, y - 6, middle, y + 6));
      case STAYED -> pen.fill(red, x, y - 2.5, side, 5);
    }
  }
}
