package org.fadeline.ui.control.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.DoubleFunction;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.figure.Type;

/** Rates side by side, each a point on its interval, from nought on one scale. */
public final class IntervalChart implements FigureCanvas.Painter {
  private static final double ROW = 34;
  private static final double LABELS = 150;
  private static final double FOOT = 26;

  private final List<Row> rows;
  private final FigureStyle style;
  private final DoubleFunction<String> words;

  /**
   * One rate.
   *
   * @param label what it is the rate of
   * @param line place of the line in the session, from 0, for its hue
   * @param low lower limit
   * @param value the rate
   * @param high upper limit
   * @param note what it rests on
   * @param strong whether it is the one in question
   */
  public record Row(
      String label, int line, double low, double value, double high, String note, boolean strong) {}

  /**
   * Makes the chart.
   *
   * @param words says a value of the scale with its unit
   */
  public IntervalChart(List<Row> rows, FigureStyle style, DoubleFunction<String> words) {
    this.rows = List.copyOf(rows);
    this.style = style;
    this.words = words;
  }

  /** Returns the height it needs, pixels. */
  public double height() {
    return (rows.size() * ROW + FOOT) * style.textScale();
  }

  /** Returns the picture in words. */
  public String description() {
    StringBuilder text = new StringBuilder("Rates with their limits. ");
    for (Row row : rows) {
      text.append(row.label())
          .append(": ")
          .append(words.apply(row.value()))
          .append(" (")
          .append(words.apply(row.low()))
          .append(" to ")
          .append(words.apply(row.high()))
          .append("), ")
          .append(row.note())
          .append(". ");
    }
    return text.toString();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    double scale = style.textScale();
    Theme theme = style.theme();
    double left = LABELS * scale;
    double right = width - 16;
    double top = 0;
    double most = rows.stream().mapToDouble(Row::high).max().orElse(1);
    double middle = rows.stream().mapToDouble(Row::value).max().orElse(1);
    // One wide interval must not squeeze the rest: it then runs off the edge, and says so.
    double end = middle > 0 ? Math.min(most, middle * 3.2) : most > 0 ? most : 1;
    double step = step(end);
    double bottom = rows.size() * ROW * scale;
    Font small = Type.regular(12 * scale);
    for (double at = 0; at <= end; at += step) {
      double x = left + (right - left) * at / end;
      g.setColor(theme.hairline());
      g.fill(new Rectangle2D.Double(x - 0.5, top, 1, bottom));
      String label = words.apply(at);
      double w = Type.width(small, label);
      g.setFont(small);
      g.setColor(theme.secondInk());
      g.drawString(
          label,
          (float) Math.max(0, Math.min(right - w, x - w / 2)),
          (float) (bottom + 16 * scale));
    }
    for (int i = 0; i < rows.size(); i++) {
      paint(g, rows.get(i), left, right, end, (i + 0.5) * ROW * scale, scale);
    }
  }

  private void paint(
      Graphics2D g, Row row, double left, double right, double end, double y, double scale) {
    Theme theme = style.theme();
    Color hue = theme.line(row.line());
    g.setFont(row.strong() ? Type.semiBold(13 * scale) : Type.regular(13 * scale));
    g.setColor(theme.ink());
    g.drawString(row.label(), 0, (float) (y - 1));
    g.setFont(Type.regular(11.5 * scale));
    g.setColor(theme.secondInk());
    g.drawString(row.note(), 0, (float) (y + 13 * scale));
    double from = left + (right - left) * Math.min(1, row.low() / end);
    double to = left + (right - left) * Math.min(1, row.high() / end);
    double at = left + (right - left) * Math.min(1, row.value() / end);
    g.setColor(Theme.mix(hue, row.strong() ? 0.55 : 0.35, theme.panel()));
    g.fill(new Rectangle2D.Double(from, y - 4 * scale, Math.max(1, to - from), 8 * scale));
    // The limits themselves in the full hue: the bar alone is paler than a graphic may be.
    g.setColor(hue);
    g.fill(new Rectangle2D.Double(from, y - 4 * scale, 1.6 * scale, 8 * scale));
    if (row.high() <= end) {
      g.fill(new Rectangle2D.Double(to - 1.6 * scale, y - 4 * scale, 1.6 * scale, 8 * scale));
    } else {
      // Runs on beyond the scale: an open end.
      g.setColor(theme.panel());
      for (int gap = 1; gap <= 3; gap++) {
        g.fill(new Rectangle2D.Double(right - gap * 6 * scale, y - 4 * scale, 2, 8 * scale));
      }
    }
    g.setColor(hue);
    double r = (row.strong() ? 6.5 : 5) * scale;
    g.fill(new Ellipse2D.Double(at - r, y - r, 2 * r, 2 * r));
  }

  private static double step(double end) {
    double rough = end / 5;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : new double[] {1, 2, 2.5, 5, 10}) {
      if (rough <= factor * power * 1.12) {
        return factor * power;
      }
    }
    return 10 * power;
  }
}
