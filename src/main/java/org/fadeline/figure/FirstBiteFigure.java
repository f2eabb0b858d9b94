package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBite.Clock;
import org.fadeline.analysis.FirstBite.LeavingStep;
import org.fadeline.analysis.FirstBite.Times;
import org.fadeline.analysis.Review;
import org.jspecify.annotations.Nullable;

/**
 * How long after feeding the first bite came, a curve a line (Kaplan–Meier with delayed entry,
 * turned over to the share that had bitten), with the feeds at risk below. Beside it, thin, the
 * share bitten where feeds left without a bite count as having brought none (Aalen–Johansen). A
 * line with too few feeds shows its feeds as points instead.
 */
public final class FirstBiteFigure extends StyledFigure {
  /** Minutes after feeding beyond which curves of first bites are cut off. */
  static final double LONGEST_MINUTES = 90;

  private final Review review;
  private final Clock clock;
  private final List<Integer> shown = new ArrayList<>();

  /** Makes the figure of every line that was fed and fished, by minutes since the feed. */
  public FirstBiteFigure(Review review, FigureStyle style) {
    this(review, style, Clock.SINCE_FEED);
  }

  /** Makes the figure of every line that was fed and fished. */
  public FirstBiteFigure(Review review, FigureStyle style, Clock clock) {
    super(style, 1.6);
    this.review = review;
    this.clock = clock;
    for (int i = 0; i < review.lines().size(); i++) {
      if (!review.lines().get(i).firstBite().rows().isEmpty()) {
        shown.add(i);
      }
    }
  }

  @Override
  public String title() {
    return clock == Clock.SINCE_FEED
        ? "First bite after feeding"
        : "First bite, by minutes with a bait in";
  }

  private Times times(int index) {
    return review.lines().get(index).firstBite().on(clock);
  }

  @Override
  public String description() {
    StringBuilder text =
        new StringBuilder(
            clock == Clock.SINCE_FEED
                ? "Share of feeds that had brought a bite, by minutes since the feed. "
                : "Share of feeds that had brought a bite, by minutes with a bait in since the"
                    + " feed. ");
    for (int i : shown) {
      text.append(review.lines().get(i).line().name()).append(": ").append(words(i)).append(". ");
    }
    return text.toString().strip();
  }

  private String words(int index) {
    Times times = times(index);
    FirstBite.Tally tally = review.lines().get(index).firstBite().tally();
    FirstBite.Median median = times.median();
    String rests = FigureText.feeds(tally.episodes()) + ", " + FigureText.bites(tally.bites());
    if (times.fromMinute() == null) {
      return "too few feeds for a curve (" + rests + ")";
    }
    String half =
        median == null
            ? "fewer than half bitten (" + rests + ")"
            : "half by "
                + FigureText.number(median.minutes())
                + " min ("
                + limits(median)
                + rests
                + ")";
    LeavingStep last = times.leaving().last();
    return last == null || last.left() == 0
        ? half
        : half
            + String.format(
                Locale.ROOT,
                ", and with leaving counted %.0f%% bitten and %.0f%% left without a bite by %s min",
                100 * last.bitten(),
                100 * last.left(),
                FigureText.number(last.minutes()));
  }

  private static String limits(FirstBite.Median median) {
    Double low = median.low();
    Double high = median.high();
    return low == null
        ? ""
        : FigureText.number(low)
            + "–"
            + (high == null ? "not reached" : FigureText.number(high))
            + "; ";
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (shown.isEmpty()) {
      pen.text("No line was fed and then fished.", 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    double labels = labelWidth(pen);
    double footRows = shown.size() + 2.0;
    boolean roomy = height - pen.smallRow() * (footRows + 2.7) > height * 0.42;
    Rectangle2D whole = Plot.area(pen, pen.smallRow() * 1.7, width, height, roomy ? footRows : 0.4);
    Rectangle2D area =
        new Rectangle2D.Double(
            whole.getX(), whole.getY(), whole.getWidth() - labels, whole.getHeight());
    Plot plot = new Plot(pen, area, 0, longest(), 100);
    if (hasCurve()) {
      plot.paintY(Pen.fitting(pen.small, width - area.getX() - 8, heads()));
    } else {
      pen.fill(pen.theme.secondInk(), area.getX(), area.getMaxY() - 0.5, area.getWidth(), 1);
      pen.text(
          Pen.fitting(
              pen.small,
              width - area.getX() - 8,
              List.of(
                  "Too few feeds for a curve. A feed a row: from the first bait in to a bite"
                      + " (full) or to leaving (open).",
                  "Too few feeds for a curve: each from bait in to a bite (full)",
                  "each feed, to its first bite")),
          area.getX(),
          area.getY() - 8,
          pen.small,
          pen.theme.secondInk());
    }
    plot.paintX(clock == Clock.SINCE_FEED ? "min since the feed" : "min with a bait in");
    double[] wanted = new double[shown.size()];
    for (int k = 0; k < shown.size(); k++) {
      wanted[k] = paintLine(plot, shown.get(k), k);
    }
    paintNames(plot, wanted, width);
    if (roomy) {
      paintAtRisk(plot);
    }
  }

  private boolean hasCurve() {
    return shown.stream().anyMatch(i -> !times(i).curve().isEmpty());
  }

  /** What the curves are, the thin ones only where there are some. */
  private List<String> heads() {
    String most = "% of feeds that had brought a bite";
    return shown.stream().noneMatch(i -> leftBehind(times(i)))
        ? List.of(most)
        : List.of(
            most + "; thin: with feeds left without one counted as having brought none",
            most + "; thin: leaving counted",
            most);
  }

  /** Where nothing was left before the last bite both curves are one. */
  private static boolean leftBehind(Times times) {
    LeavingStep last = times.leaving().last();
    if (last == null || times.curve().isEmpty()) {
      return false;
    }
    double survival = times.curve().get(times.curve().size() - 1).survival();
    return 1 - survival - last.bitten() > 0.005;
  }

  private double labelWidth(Pen pen) {
    double most = 0;
    for (int i : shown) {
      most = Math.max(most, Type.width(pen.small, review.lines().get(i).line().name()));
    }
    return most + 34 * style.textScale();
  }

  private double longest() {
    double longest = 10;
    for (int i : shown) {
      for (FirstBite.Stretch row : times(i).rows()) {
        longest = Math.max(longest, row.exit());
      }
    }
    return Math.min(longest, LONGEST_MINUTES);
  }

  /** Draws one line's curve, or its feeds as points; returns the y at which its name belongs. */
  private double paintLine(Plot plot, int index, int row) {
    Pen pen = plot.pen;
    Times first = times(index);
    var hue = pen.theme.line(index);
    Double from = first.fromMinute();
    if (from == null || first.curve().isEmpty()) {
      double share = plot.area.getHeight() / shown.size();
      boolean own = !hasCurve();
      double y = own ? plot.area.getY() + share * (row + 0.5) : plot.area.getMaxY() - 7 - row * 9;
      double apart = own ? share * 0.8 / Math.max(1, first.rows().size()) : 0;
      double middle = y;
      y -= apart * (first.rows().size() - 1) / 2;
      for (FirstBite.Stretch stretch : first.rows()) {
        double x = plot.x(Math.min(stretch.exit(), plot.xHigh));
        pen.line(hue, 1, plot.x(Math.min(stretch.entry(), plot.xHigh)), y, x, y);
        if (stretch.bite()) {
          pen.disc(hue, x, y, 3);
        } else {
          pen.ring(hue, x, y, 2.6, 1.3);
        }
        y += apart;
      }
      return middle;
    }
    Path2D curve = new Path2D.Double();
    double x = plot.x(from);
    double y = plot.y(0);
    curve.moveTo(x, y);
    double previousX = x;
    Double low = null;
    Double high = null;
    for (FirstBite.Step step : first.curve()) {
      x = plot.x(Math.min(step.minutes(), plot.xHigh));
      band(plot, hue, previousX, x, low, high);
      curve.lineTo(x, y);
      y = plot.y(100 * (1 - step.survival()));
      curve.lineTo(x, y);
      low = step.low();
      high = step.high();
      previousX = x;
    }
    double end = plot.x(Math.min(lastAtRisk(first), plot.xHigh));
    band(plot, hue, previousX, end, low, high);
    curve.lineTo(Math.max(end, previousX), y);
    pen.stroke(hue, 2.2, pen.theme.dash(index), curve);
    if (leftBehind(first)) {
      paintLeaving(plot, first, hue);
    }
    if (from > 0) {
      pen.ring(hue, plot.x(from), plot.y(0), 3, 1.5);
    }
    return y;
  }

  private static void band(
      Plot plot, Color hue, double x1, double x2, @Nullable Double low, @Nullable Double high) {
    if (low != null && high != null && x2 > x1) {
      double top = plot.y(100 * (1 - low));
      double foot = plot.y(100 * (1 - high));
      plot.pen.fill(Pen.alpha(hue, 0.1), x1, top, x2 - x1, foot - top);
    }
  }

  private static void paintLeaving(Plot plot, Times times, Color hue) {
    Path2D share = new Path2D.Double();
    boolean started = false;
    double y = plot.y(0);
    for (LeavingStep step : times.leaving().steps()) {
      double x = plot.x(Math.min(step.minutes(), plot.xHigh));
      if (started) {
        share.lineTo(x, y);
      } else {
        share.moveTo(x, y);
        started = true;
      }
      y = plot.y(100 * step.bitten());
      share.lineTo(x, y);
    }
    share.lineTo(plot.x(Math.min(lastAtRisk(times), plot.xHigh)), y);
    plot.pen.stroke(hue, 1, share);
  }

  private static double lastAtRisk(Times first) {
    return first.rows().stream().mapToDouble(FirstBite.Stretch::exit).max().orElse(0);
  }

  private void paintNames(Plot plot, double[] wanted, double width) {
    Pen pen = plot.pen;
    double gap = pen.smallStrong.getSize2D() * 1.6;
    double[] placed = Plot.apart(wanted, gap, plot.area.getY() + 6, plot.area.getMaxY() - 4);
    for (int k = 0; k < shown.size(); k++) {
      int index = shown.get(k);
      double x = plot.area.getMaxX() + 10;
      double badge = pen.badge(index, x, placed[k]);
      pen.text(
          Pen.shortened(pen.small, width - x - badge - 8, review.lines().get(index).line().name()),
          x + badge + 5,
          placed[k] + Type.drop(pen.small),
          pen.small,
          pen.theme.ink());
    }
  }

  /** Numbers of feeds at risk below the curve, and what the curve is given. */
  private void paintAtRisk(Plot plot) {
    Pen pen = plot.pen;
    double row = pen.smallRow();
    double top = plot.area.getMaxY() + row * 2;
    pen.text("feeds still waiting for a bite", plot.area.getX(), top, pen.small, pen.theme.ink());
    List<Double> ticks =
        Plot.ticks(
            0, plot.xHigh, (int) Math.max(2, plot.area.getWidth() / (70 * style.textScale())));
    for (int k = 0; k < shown.size(); k++) {
      int index = shown.get(k);
      Times first = times(index);
      double y = top + row * (k + 1);
      pen.badge(index, 6, y - Type.drop(pen.small));
      for (double minutes : ticks) {
        long waiting =
            first.rows().stream().filter(r -> r.entry() <= minutes && minutes < r.exit()).count();
        pen.text(
            Long.toString(waiting),
            plot.x(minutes),
            y,
            pen.small,
            pen.theme.secondInk(),
            Pen.Align.MIDDLE);
      }
      Double from = first.fromMinute();
      pen.text(
          from == null
              ? "too few feeds"
              : from > 0 ? "from " + FigureText.number(from) + " min" : "",
          plot.area.getMaxX() + 10,
          y,
          pen.small,
          pen.theme.secondInk());
    }
  }
}
