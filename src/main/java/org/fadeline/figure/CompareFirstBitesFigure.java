package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.stats.LogRank;

/**
 * First bites after feeding, a small chart a pair of lines: both curves on one scale, the first
 * session's whole, the second's dashed, with what the log-rank test makes of them. A line with too
 * few feeds for a curve shows its feeds, a row each: the first session's above, the second's below.
 */
public final class CompareFirstBitesFigure extends StyledFigure {
  private final Comparison comparison;
  private final Map<String, Integer> hues;
  private final List<PairedLines> shown = new ArrayList<>();

  /** Makes the figure of every pair of which one line at least was fed and fished. */
  public CompareFirstBitesFigure(Comparison comparison, FigureStyle style) {
    super(style, 1.5);
    this.comparison = comparison;
    this.hues = PairedHues.of(comparison).first();
    for (PairedLines pair : comparison.lines().pairs()) {
      if (!bites(pair, true).rows().isEmpty() || !bites(pair, false).rows().isEmpty()) {
        shown.add(pair);
      }
    }
  }

  private static FirstBite bites(PairedLines pair, boolean ofFirst) {
    return (ofFirst ? pair.first() : pair.second()).line().firstBite();
  }

  @Override
  public String title() {
    return "First bites after feeding, two matches";
  }

  @Override
  public String description() {
    if (shown.isEmpty()) {
      return "First bites after feeding: no pair of lines was fed and then fished.";
    }
    StringBuilder text =
        new StringBuilder(
            "Share of feeds that had brought a bite, by minutes since the feed; the first match"
                + " in whole strokes, the second dashed. ");
    for (PairedLines pair : shown) {
      text.append(FigureText.capital(pair.pair().name()))
          .append(": first ")
          .append(half(bites(pair, true)))
          .append(", second ")
          .append(half(bites(pair, false)))
          .append("; ")
          .append(test(pair.firstBites()))
          .append(". ");
    }
    return text.append("All pairs together: ")
        .append(test(comparison.lines().firstBites()))
        .append('.')
        .toString();
  }

  private static String half(FirstBite first) {
    FirstBite.Median median = first.median();
    String feeds = FigureText.feeds(first.tally().episodes());
    if (first.curve().isEmpty()) {
      return "too few feeds for a curve ("
          + feeds
          + ", "
          + FigureText.bites(first.tally().bites())
          + ")";
    }
    return median == null
        ? "fewer than half bitten (" + feeds + ")"
        : "half by " + FigureText.number(median.minutes()) + " min (" + feeds + ")";
  }

  /** Says a test's figures: of two days alone, for days differ by themselves too. */
  private static String test(LogRank test) {
    return test.p() == null
        ? "too little to tell them apart"
        : "log-rank p "
            + (test.p() < 0.001 ? "under 0.001" : String.format(Locale.ROOT, "= %.3f", test.p()))
            + ", of these two days alone";
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (shown.isEmpty()) {
      pen.text(
          Pen.shortened(pen.body, width - 28, "No pair of lines was fed and then fished."),
          14,
          14 + pen.bodyRow(),
          pen.body,
          pen.theme.secondInk());
      return;
    }
    double head = pen.smallRow() * 2.7;
    Grid grid = Grid.of(pen, shown.size(), width, height - head);
    paintKey(pen, width, shown.size() - grid.cells());
    double longest = longest();
    for (int k = 0; k < Math.min(shown.size(), grid.cells()); k++) {
      double x = k % grid.columns * grid.across;
      double y = head + Math.floorDiv(k, grid.columns) * grid.down;
      Rectangle2D box = new Rectangle2D.Double(x, y, grid.across - 6, grid.down);
      paint(pen, shown.get(k), box, longest, grid.wordRows);
    }
  }

  /** How the charts lie, and for how many of the rows of words below each there is room. */
  private record Grid(int columns, int rows, double across, double down, int wordRows) {
    private static final int WORD_ROWS = 3;

    /** Least width of a chart without words, pixels. */
    private static final double NARROW = 120;

    /** Words first narrow the charts, then are left out; last, charts are. */
    static Grid of(Pen pen, int charts, double width, double height) {
      double scale = pen.style.textScale();
      double least = pen.bodyRow() * 1.4 + pen.smallRow() * 3;
      double squeezed = pen.bodyRow() * 1.4 + pen.smallRow() * (WORD_ROWS + 1.6) + 8;
      int usual = columns(charts, width, 300 * scale);
      for (int columns : new int[] {usual, columns(charts, width, NARROW * scale)}) {
        for (int words : new int[] {WORD_ROWS, 1, 0}) {
          int rows = (charts + columns - 1) / columns;
          double needed = words == WORD_ROWS ? squeezed : least + words * pen.smallRow();
          if (height / rows >= needed && (words == 0 || columns == usual)) {
            return new Grid(columns, rows, width / columns, height / rows, words);
          }
        }
      }
      int columns = columns(charts, width, NARROW * scale);
      int rows = (int) Math.max(1, Math.floor(height / least));
      return new Grid(columns, rows, width / columns, height / rows, 0);
    }

    private static int columns(int charts, double width, double each) {
      return (int) Math.max(1, Math.min(charts, Math.floor(width / each)));
    }

    int cells() {
      return columns * rows;
    }
  }

  private void paintKey(Pen pen, double width, int left) {
    pen.text(
        Pen.fitting(
            pen.small,
            width - 16,
            List.of(
                "By minutes since the feed: % of feeds that had brought a bite, or where they are"
                    + " too few, each feed from bait in to a bite (bar)",
                "By minutes since the feed: % with a bite, or each feed to its bite (bar)",
                "By minutes since the feed")),
        8,
        pen.smallRow(),
        pen.small,
        pen.theme.secondInk());
    pen.text(
        Pen.fitting(
            pen.small,
            width - 16,
            left > 0
                ? List.of(
                    "First match whole, second dashed. No room for " + left + " more",
                    "First whole, second dashed; " + left + " more")
                : List.of(
                    "First match whole, second dashed. All pairs: "
                        + test(comparison.lines().firstBites())
                        + ". Leaving a line because it is dead makes the times look shorter than"
                        + " they are.",
                    "First match whole, second dashed. All pairs: "
                        + test(comparison.lines().firstBites()),
                    "First match whole, second dashed")),
        8,
        pen.smallRow() * 2,
        pen.small,
        pen.theme.secondInk());
  }

  private double longest() {
    double longest = 10;
    for (PairedLines pair : shown) {
      longest = Math.max(longest, Math.max(last(bites(pair, true)), last(bites(pair, false))));
    }
    return Math.min(longest, FirstBiteFigure.LONGEST_MINUTES);
  }

  private static double last(FirstBite first) {
    return first.rows().stream().mapToDouble(FirstBite.Stretch::exit).max().orElse(0);
  }

  private void paint(Pen pen, PairedLines pair, Rectangle2D box, double longest, int wordRows) {
    double row = pen.smallRow();
    int hue = hues.getOrDefault(pair.pair().first().id(), 0);
    double left = box.getX() + Type.width(pen.small, "100") + 12;
    double top = box.getY() + pen.bodyRow() * 1.4;
    double words = row * wordRows;
    Rectangle2D area =
        new Rectangle2D.Double(
            left,
            top,
            Math.max(10, box.getMaxX() - left - 12),
            Math.max(10, box.getMaxY() - top - row - words - 8));
    double badge = pen.badge(hue, box.getX() + 8, box.getY() + pen.bodyRow() * 0.6);
    double nameLeft = box.getX() + badge + 14;
    pen.text(
        Pen.shortened(pen.strong, box.getMaxX() - nameLeft, FigureText.capital(pair.pair().name())),
        nameLeft,
        box.getY() + pen.bodyRow() * 0.6 + Type.drop(pen.strong),
        pen.strong,
        pen.theme.ink());
    Plot plot = new Plot(pen, area, 0, longest, 100);
    boolean curves = !bites(pair, true).curve().isEmpty() || !bites(pair, false).curve().isEmpty();
    paintScales(plot, curves);
    Color colour = pen.theme.line(hue);
    paintLine(plot, bites(pair, true), colour, SessionStroke.FIRST);
    paintLine(plot, bites(pair, false), colour, SessionStroke.SECOND);
    List<String> told =
        List.of(
            test(pair.firstBites()),
            "first: " + half(bites(pair, true)),
            "second: " + half(bites(pair, false)));
    if (wordRows > 1) {
      told = List.of(told.get(1), told.get(2), told.get(0));
    }
    double baseline = area.getMaxY() + row * 2 + 2;
    for (String text : told.subList(0, wordRows)) {
      pen.text(
          Pen.shortened(pen.small, box.getWidth() - 12, text),
          box.getX() + 8,
          baseline,
          pen.small,
          pen.theme.ink());
      baseline += row;
    }
  }

  private static void paintScales(Plot plot, boolean curves) {
    Pen pen = plot.pen;
    Rectangle2D area = plot.area;
    double[] shares =
        area.getHeight() > pen.smallRow() * 3.2 ? new double[] {0, 50, 100} : new double[] {0, 100};
    for (double share : shares) {
      if (share > 0 && !curves) {
        continue;
      }
      pen.fill(
          share == 0 ? pen.theme.secondInk() : pen.theme.hairline(),
          area.getX(),
          plot.y(share) - 0.5,
          area.getWidth(),
          1);
      if (curves && (share == 0 || area.getHeight() > pen.smallRow() * 1.4)) {
        pen.text(
            Plot.number(share),
            area.getX() - 6,
            plot.y(share) + Type.drop(pen.small),
            pen.small,
            pen.theme.secondInk(),
            Pen.Align.RIGHT);
      }
    }
    int about = (int) Math.max(2, area.getWidth() / (Type.width(pen.small, "000") * 3));
    for (double minutes : Plot.ticks(0, plot.xHigh, about)) {
      if (minutes > 0) {
        pen.fill(pen.theme.secondInk(), plot.x(minutes) - 0.5, area.getMaxY(), 1, 4);
        pen.text(
            Plot.number(minutes),
            plot.x(minutes),
            area.getMaxY() + pen.smallRow(),
            pen.small,
            pen.theme.secondInk(),
            Pen.Align.MIDDLE);
      }
    }
  }

  private static void paintLine(Plot plot, FirstBite first, Color colour, SessionStroke stroke) {
    Double from = first.fromMinute();
    if (from == null || first.curve().isEmpty()) {
      paintFeeds(plot, first.rows(), colour, stroke);
    } else {
      paintCurve(plot, first, from, colour, stroke);
    }
  }

  /** Draws each feed from the first bait in to a bite, which is a bar, or to leaving. */
  private static void paintFeeds(
      Plot plot, List<FirstBite.Stretch> rows, Color colour, SessionStroke stroke) {
    double half = plot.area.getHeight() / 2;
    double apart = half / (rows.size() + 1);
    double y = plot.area.getY() + (stroke == SessionStroke.FIRST ? 0 : half);
    double bar = Math.min(5, apart * 0.45);
    for (FirstBite.Stretch row : rows) {
      y += apart;
      double left = plot.x(Math.min(row.entry(), plot.xHigh));
      double right = plot.x(Math.min(row.exit(), plot.xHigh));
      plot.pen.stroke(colour, 2, stroke.dash(), new Line2D.Double(left, y, right, y));
      if (row.bite()) {
        plot.pen.line(colour, 3, right, y - bar, right, y + bar);
      }
    }
  }

  private static void paintCurve(
      Plot plot, FirstBite first, double from, Color colour, SessionStroke stroke) {
    Path2D curve = new Path2D.Double();
    double x = plot.x(Math.min(from, plot.xHigh));
    double y = plot.y(0);
    curve.moveTo(x, y);
    for (FirstBite.Step step : first.curve()) {
      x = plot.x(Math.min(step.minutes(), plot.xHigh));
      curve.lineTo(x, y);
      y = plot.y(100 * (1 - step.survival()));
      curve.lineTo(x, y);
    }
    curve.lineTo(Math.max(x, plot.x(Math.min(last(first), plot.xHigh))), y);
    plot.pen.stroke(colour, 2.4, stroke.dash(), curve);
  }
}
