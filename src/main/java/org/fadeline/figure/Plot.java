package org.fadeline.figure;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Axes of a chart: even scales from a left foot to a right top. */
final class Plot {
  final Pen pen;
  final Rectangle2D area;
  final double xLow;
  final double xHigh;
  final double yHigh;

  Plot(Pen pen, Rectangle2D area, double xLow, double xHigh, double yHigh) {
    this.pen = pen;
    this.area = area;
    this.xLow = xLow;
    this.xHigh = xHigh > xLow ? xHigh : xLow + 1;
    this.yHigh = yHigh > 0 ? yHigh : 1;
  }

  /**
   * Returns the area for a plot: room left for the widest number of the axis and below for numbers.
   */
  static Rectangle2D area(Pen pen, double top, double width, double height, double footRows) {
    double left = Type.width(pen.small, "0,000") + 12;
    double bottom = height - pen.smallRow() * (footRows + 1) - 8;
    return new Rectangle2D.Double(
        left, top, Math.max(10, width - left - 16), Math.max(10, bottom - top));
  }

  double x(double value) {
    return area.getX() + area.getWidth() * (value - xLow) / (xHigh - xLow);
  }

  double y(double value) {
    return area.getMaxY() - area.getHeight() * Math.min(1.02, value / yHigh);
  }

  /** Returns round values from low to high, about as many as asked for. */
  static List<Double> ticks(double low, double high, int about) {
    double rough = (high - low) / Math.max(1, about);
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(rough, 1e-9))));
    double step = power * 10;
    for (double factor : new double[] {1, 2, 5}) {
      if (power * factor >= rough) {
        step = power * factor;
        break;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (double value = Math.ceil(low / step - 1e-9) * step; value <= high + step * 1e-6; ) {
      ticks.add(Math.abs(value) < step * 1e-9 ? 0 : value);
      value += step;
    }
    return ticks;
  }

  /** Draws level rules with their numbers; the unit stands once, at the top. */
  void paintY(String unit) {
    int about = (int) Math.max(2, area.getHeight() / (pen.smallRow() * 2.6));
    for (double value : ticks(0, yHigh, about)) {
      double y = y(value);
      pen.fill(
          value == 0 ? pen.theme.secondInk() : pen.theme.hairline(),
          area.getX(),
          y - 0.5,
          area.getWidth(),
          1);
      pen.text(
          number(value),
          area.getX() - 7,
          y + Type.drop(pen.small),
          pen.small,
          pen.theme.secondInk(),
          Pen.Align.RIGHT);
    }
    pen.text(unit, area.getX() - 2, area.getY() - 8, pen.small, pen.theme.secondInk());
  }

  /** Draws numbers below the foot; the unit follows the last, alone where there is no room. */
  void paintX(String what) {
    int about = (int) Math.max(2, area.getWidth() / (Type.width(pen.small, "0000") * 2.4));
    double base = area.getMaxY() + pen.smallRow();
    double right = area.getMaxX() + 14;
    // A scale needs two numbers, and a long unit may leave room for one only.
    boolean roomy = scaled(2 * about, right - Type.width(pen.small, what));
    String unit = roomy || what.isEmpty() ? what : what.substring(0, (what + " ").indexOf(' '));
    double unitLeft = right - Type.width(pen.small, unit);
    boolean scaled = scaled(about, unitLeft);
    for (double value : ticks(xLow, xHigh, scaled ? about : 2 * about)) {
      pen.fill(pen.theme.secondInk(), x(value) - 0.5, area.getMaxY(), 1, 4);
      if (clearOf(unitLeft, value)) {
        pen.text(number(value), x(value), base, pen.small, pen.theme.secondInk(), Pen.Align.MIDDLE);
      }
    }
    pen.text(unit, right, base, pen.small, pen.theme.secondInk(), Pen.Align.RIGHT);
  }

  private boolean scaled(int about, double unitLeft) {
    return ticks(xLow, xHigh, about).stream().filter(v -> clearOf(unitLeft, v)).count() > 1;
  }

  private boolean clearOf(double left, double value) {
    return x(value) + Type.width(pen.small, number(value)) / 2 < left - 6;
  }

  /** Draws clock times below the foot. */
  void paintClock(TimeAxis axis) {
    double base = area.getMaxY() + pen.smallRow();
    for (TimeAxis.Tick tick :
        axis.ticks(14 * pen.style.textScale(), t -> Type.width(pen.small, t))) {
      double half = Type.width(pen.small, tick.label()) / 2;
      pen.fill(pen.theme.secondInk(), tick.x() - 0.5, area.getMaxY(), 1, 4);
      pen.text(
          tick.label(),
          Math.min(tick.x(), area.getMaxX() + 14 - half),
          base,
          pen.small,
          pen.theme.secondInk(),
          Pen.Align.MIDDLE);
    }
  }

  /** Draws an upright bar with its limits. */
  void bar(Color colour, double from, double to, double value) {
    double x1 = x(from) + 1;
    pen.fill(colour, x1, y(value), Math.max(1, x(to) - 1 - x1), area.getMaxY() - y(value));
  }

  static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%,.0f", value)
        : FigureText.number(value);
  }

  /** Puts texts at wanted heights so that none lies on another; returns their baselines. */
  static double[] apart(double[] wanted, double gap, double low, double high) {
    Integer[] order = new Integer[wanted.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> wanted[i]));
    double[] placed = wanted.clone();
    double last = low - gap;
    for (int i : order) {
      placed[i] = Math.max(placed[i], last + gap);
      last = placed[i];
    }
    double next = high + gap;
    for (int k = order.length - 1; k >= 0; k--) {
      int i = order[k];
      placed[i] = Math.min(placed[i], next - gap);
      next = placed[i];
    }
    return placed;
  }
}
