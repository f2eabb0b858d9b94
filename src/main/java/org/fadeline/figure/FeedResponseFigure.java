package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.analysis.FirstBite.ResponseBin;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;

/** Bites per bait hour by minutes since feeding, from before the feed, with exact limits. */
public final class FeedResponseFigure extends StyledFigure {
  private final LineReview line;
  private final int index;

  /**
   * Makes the figure of one line.
   *
   * @param lineId a line of the review
   * @throws IllegalArgumentException if the review has no such line
   */
  public FeedResponseFigure(Review review, String lineId, FigureStyle style) {
    super(style, 1.8);
    this.line =
        review
            .line(lineId)
            .orElseThrow(() -> new IllegalArgumentException("no such line: " + lineId));
    this.index = review.lines().indexOf(line);
  }

  @Override
  public String title() {
    return "Bites after feeding, " + line.line().name();
  }

  private List<ResponseBin> bins() {
    return line.firstBite().feedResponse();
  }

  @Override
  public String description() {
    StringBuilder text =
        new StringBuilder("Bites an hour of bait time on ")
            .append(line.line().name())
            .append(", by minutes since feeding. ");
    for (ResponseBin bin : bins()) {
      Rate rate = bin.rate();
      if (rate != null) {
        text.append(FigureText.number(bin.fromMinute()))
            .append(" to ")
            .append(FigureText.number(bin.toMinute()))
            .append(" min: ")
            .append(FigureText.perHour(rate))
            .append(", ")
            .append(FigureText.bites(bin.bites()))
            .append(". ");
      }
    }
    return text.toString().strip();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (bins().stream().noneMatch(b -> b.rate() != null)) {
      double y = 14 + pen.bodyRow();
      String none = "This record cannot tell: the line was not fished around a feed.";
      for (String row : Pen.wrapped(pen.body, width - 28, none)) {
        pen.text(row, 14, y, pen.body, pen.theme.secondInk());
        y += pen.bodyRow();
      }
      return;
    }
    double most = 1;
    for (ResponseBin bin : bins()) {
      Rate rate = bin.rate();
      // A bin of a minute or two has limits that would squeeze all others: it runs off with a mark.
      if (rate != null && bin.baitHours() > 0.05) {
        most = Math.max(most, rate.high());
      }
    }
    double top = pen.smallRow() * 1.7;
    Rectangle2D area = Plot.area(pen, top, width, height, 2.2);
    double from = bins().get(0).fromMinute();
    double to = bins().get(bins().size() - 1).toMinute();
    boolean counted = area.getWidth() / bins().size() > Type.width(pen.small, "000");
    if (!counted) {
      area = Plot.area(pen, top, width, height, 0.4);
    }
    Plot plot = new Plot(pen, area, from, to, most * 1.04);
    plot.paintY("bites an hour of bait time");
    plot.paintX("min since the feed");
    Color hue = pen.theme.line(index);
    for (ResponseBin bin : bins()) {
      paintBin(plot, bin, hue);
    }
    if (counted) {
      paintCounts(plot);
    }
    pen.fill(pen.theme.ink(), plot.x(0) - 1, area.getY(), 2, area.getHeight());
    // On the side where no limit stands as high as the word.
    boolean left = reaches(plot, 0) && !reaches(plot, -1);
    pen.text(
        "fed",
        plot.x(0) + (left ? -5 : 5),
        area.getY() + 10 * style.textScale(),
        pen.smallStrong,
        pen.theme.ink(),
        left ? Pen.Align.RIGHT : Pen.Align.LEFT);
  }

  /** Returns whether the limits of the rate at a minute run up beside the word at the top. */
  private boolean reaches(Plot plot, double minute) {
    double word = plot.area.getY() + plot.pen.smallRow() + 4;
    return bins().stream()
        .filter(bin -> bin.fromMinute() <= minute && minute < bin.toMinute())
        .anyMatch(bin -> bin.rate() != null && plot.y(bin.rate().high()) < word);
  }

  private static double middle(Plot plot, ResponseBin bin) {
    return (plot.x(bin.fromMinute()) + plot.x(bin.toMinute())) / 2;
  }

  /** Writes below each bar what it rests on. */
  private void paintCounts(Plot plot) {
    Pen pen = plot.pen;
    double row = plot.area.getMaxY() + pen.smallRow() * 2;
    double below = row + pen.smallRow();
    pen.text("bites", 4, row, pen.small, pen.theme.secondInk());
    pen.text("min", 4, below, pen.small, pen.theme.secondInk());
    for (ResponseBin bin : bins()) {
      double x = middle(plot, bin);
      String bites = Integer.toString(bin.bites());
      String minutes = Long.toString(Math.round(bin.baitHours() * 60));
      pen.text(bites, x, row, pen.small, pen.theme.ink(), Pen.Align.MIDDLE);
      pen.text(minutes, x, below, pen.small, pen.theme.secondInk(), Pen.Align.MIDDLE);
    }
  }

  private static void paintBin(Plot plot, ResponseBin bin, Color hue) {
    Pen pen = plot.pen;
    Rate rate = bin.rate();
    if (rate == null) {
      return;
    }
    double middle = middle(plot, bin);
    plot.bar(
        Theme.mix(hue, bin.fromMinute() < 0 ? 0.3 : 0.62, pen.theme.panel()),
        bin.fromMinute(),
        bin.toMinute(),
        rate.perHour());
    double high = plot.y(Math.min(rate.high(), plot.yHigh));
    pen.line(pen.theme.ink(), 1.4, middle, plot.y(rate.low()), middle, high);
    pen.line(pen.theme.ink(), 1.4, middle - 3, plot.y(rate.low()), middle + 3, plot.y(rate.low()));
    if (rate.high() <= plot.yHigh) {
      pen.line(pen.theme.ink(), 1.4, middle - 3, high, middle + 3, high);
    } else {
      pen.line(pen.theme.ink(), 1.4, middle, high, middle - 3, high + 4);
      pen.line(pen.theme.ink(), 1.4, middle, high, middle + 3, high + 4);
    }
  }
}
