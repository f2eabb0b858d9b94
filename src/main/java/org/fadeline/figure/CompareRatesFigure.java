package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairRates;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.RatePair;
import org.fadeline.analysis.compare.RatioText;
import org.fadeline.stats.Interval;
import org.jspecify.annotations.Nullable;

/**
 * What each pair of lines paid an hour, first over second, on a scale of doublings: the ratio, the
 * limits on what was caught alone (heavy) and those that allow for days differing (light). In
 * weight where both sessions carry weights, else in fish.
 */
public final class CompareRatesFigure extends StyledFigure {
  private static final double LEAST = 1.0 / 16;
  private static final double MOST = 16;

  private final Comparison comparison;
  private final boolean weights;
  private final List<Row> rows = new ArrayList<>();

  /** One ratio; the hue is null for all lines together. */
  private record Row(String name, @Nullable Integer hue, RatePair pair) {}

  /** Makes the figure. */
  public CompareRatesFigure(Comparison comparison, FigureStyle style) {
    super(style, 1.9);
    this.comparison = comparison;
    this.weights = comparison.lines().whole().weight().ratio() != null;
    Map<String, Integer> hues = PairedHues.of(comparison).first();
    rows.add(new Row("All lines", null, rate(comparison.lines().whole())));
    for (PairedLines pair : comparison.lines().pairs()) {
      rows.add(
          new Row(
              FigureText.capital(pair.pair().name()),
              hues.get(pair.pair().first().id()),
              rate(pair.rates())));
    }
  }

  private RatePair rate(PairRates rates) {
    return weights ? rates.weight() : rates.fish();
  }

  @Override
  public String title() {
    return weights ? "Weight an hour, first over second" : "Fish an hour, first over second";
  }

  @Override
  public String description() {
    StringBuilder text =
        new StringBuilder(title())
            .append(
                ": the ratio with its limits at 95%, on what was caught alone and allowing for"
                    + " days that differ by themselves. ");
    for (Row row : rows) {
      text.append(row.name()).append(": ").append(words(row.pair())).append(". ");
    }
    return text.append(comparison.findings().caution()).toString();
  }

  private static String words(RatePair pair) {
    RatePair.Ratio ratio = pair.ratio();
    if (ratio == null || ratio.value() == null) {
      return "cannot tell";
    }
    return RatioText.of(ratio.value())
        + " ("
        + RatioText.of(ratio.fishing())
        + "; with days "
        + RatioText.of(ratio.widest())
        + ")";
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double names = 0;
    double values = 0;
    for (Row row : rows) {
      names = Math.max(names, Type.width(pen.body, row.name()));
      values = Math.max(values, Type.width(pen.small, words(row.pair())));
    }
    names = Math.min(names + 34 * style.textScale(), width * 0.3);
    boolean told = width - names - values > width * 0.3;
    double left = names + 8;
    double right = width - (told ? values + 20 : 16);
    double top = pen.smallRow() * 1.7;
    double bottom = height - pen.smallRow() * 1.8;
    Rectangle2D area = new Rectangle2D.Double(left, top, right - left, bottom - top);
    pen.text(
        Pen.fitting(
            pen.small,
            width - 16,
            List.of(
                "times as much in the first as in the second; heavy: limits on what was caught"
                    + " alone, light: allowing for days that differ",
                "first over second; heavy: on the catch alone, light: with days",
                "first over second")),
        8,
        pen.smallRow(),
        pen.small,
        pen.theme.secondInk());
    paintScale(pen, area);
    double tall = area.getHeight() / rows.size();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      double y = area.getY() + (i + 0.5) * tall;
      double nameLeft = 8;
      if (row.hue() != null) {
        nameLeft += pen.badge(row.hue(), 8, y) + 6;
      }
      pen.text(
          Pen.shortened(pen.body, left - nameLeft - 6, row.name()),
          nameLeft,
          y + Type.drop(pen.body),
          row.hue() == null ? pen.strong : pen.body,
          pen.theme.ink());
      paint(pen, row, area, y);
      pen.text(
          told ? words(row.pair()) : "",
          width - 8,
          y + Type.drop(pen.small),
          pen.small,
          pen.theme.secondInk(),
          Pen.Align.RIGHT);
    }
  }

  private static double x(Rectangle2D area, double ratio) {
    double share = Math.log(ratio / LEAST) / Math.log(MOST / LEAST);
    return area.getX() + area.getWidth() * Math.max(0, Math.min(1, share));
  }

  private static void paintScale(Pen pen, Rectangle2D area) {
    double last = Double.NEGATIVE_INFINITY;
    for (double ratio = LEAST; ratio <= MOST; ratio *= 2) {
      double x = x(area, ratio);
      boolean even = ratio == 1;
      pen.fill(
          even ? pen.theme.secondInk() : pen.theme.hairline(),
          x - 0.5,
          area.getY(),
          even ? 1.5 : 1,
          area.getHeight());
      String text = ratio < 1 ? "1/" + Math.round(1 / ratio) : Long.toString(Math.round(ratio));
      double half = Type.width(pen.small, text) / 2;
      if (x - half > last + 6) {
        pen.text(
            text,
            x,
            area.getMaxY() + pen.smallRow(),
            pen.small,
            pen.theme.secondInk(),
            Pen.Align.MIDDLE);
        last = x + half;
      }
    }
  }

  private static void paint(Pen pen, Row row, Rectangle2D area, double y) {
    RatePair.Ratio ratio = row.pair().ratio();
    if (ratio == null) {
      return;
    }
    Color hue = row.hue() == null ? pen.theme.ink() : pen.theme.line(row.hue());
    bar(pen, Theme.mix(hue, 0.35, pen.theme.panel()), ratio.widest(), area, y, 4);
    bar(pen, hue, ratio.fishing(), area, y, 7);
    Double value = ratio.value();
    if (value != null && value > 0) {
      double x = x(area, value);
      pen.disc(pen.theme.panel(), x, y, 7);
      pen.disc(hue, x, y, 5.5);
    }
  }

  private static void bar(
      Pen pen, Color colour, Interval limits, Rectangle2D area, double y, double thick) {
    double left = x(area, Math.max(LEAST, limits.low()));
    double right = x(area, Math.min(MOST, limits.high()));
    pen.fill(colour, left, y - thick / 2, right - left, thick);
  }
}
