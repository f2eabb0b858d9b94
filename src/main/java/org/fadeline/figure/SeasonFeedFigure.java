package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.fadeline.analysis.season.FeedGroup;
import org.fadeline.analysis.season.FeedGroup.Fed;
import org.fadeline.analysis.season.FeedGroup.Share;
import org.fadeline.analysis.season.Season;
import org.jspecify.annotations.Nullable;

/**
 * Feed given against what came: a panel a kind of line, a point a session at how often it was fed
 * and what an hour fished gave; a bar for the sessions fed less and one for those fed more, with
 * limits where there are enough. All panels have the same scales.
 */
public final class SeasonFeedFigure extends SeasonFigure {
  private static final double PANEL_WIDTH = 210;
  private static final double PANEL_HEIGHT = 104;
  private static final float[] DASHED = {4, 3};

  private final List<FeedGroup> groups;
  private final boolean weights;

  /** Makes the figure: of weight where any is known, else of fish. */
  public SeasonFeedFigure(Season season, FigureStyle style) {
    super(season, style, 2);
    this.groups = season.feed().stream().filter(g -> !g.sessions().isEmpty()).toList();
    this.weights =
        groups.stream()
            .flatMap(g -> g.sessions().stream())
            .anyMatch(one -> one.grams() != null && one.grams() > 0);
  }

  @Override
  public String title() {
    return "Feed given against what came, each match";
  }

  @Override
  public String description() {
    if (groups.isEmpty()) {
      return title() + ": no line that was fed and fished.";
    }
    StringBuilder text = new StringBuilder(title()).append(". ");
    for (FeedGroup group : groups) {
      text.append(FigureText.capital(group.group())).append(": ").append(sessions(group));
      for (Share share : shares(group)) {
        text.append("; fed ").append(share.feeds()).append("× ").append(rate(share));
      }
      text.append(". ");
    }
    return text.append("More is often fed because fish come.").toString();
  }

  private static String sessions(FeedGroup group) {
    int n = group.sessions().size();
    return FigureText.sessions(n);
  }

  private static List<Share> shares(FeedGroup group) {
    return Stream.of(group.fewer(), group.more())
        .filter(Objects::nonNull)
        .map(Objects::requireNonNull)
        .toList();
  }

  private Season.PerHour perHour(Share share) {
    return weights ? share.weight() : share.fish();
  }

  private String rate(Share share) {
    Double rate = perHour(share).perHour();
    Season.Limits limits = perHour(share).limits();
    if (rate == null) {
      return "weights not known";
    }
    return say(rate)
        + " an hour"
        + (limits == null
            ? ", too few to tell"
            : " (" + say(limits.low()) + "–" + say(limits.high()) + ")");
  }

  private String say(double rate) {
    return weights ? words.weightAmount(rate) : FigureText.number(rate);
  }

  private double axis(double rate) {
    return weights ? words.axisWeight(rate) : rate;
  }

  private @Nullable Double rate(Fed fed) {
    return weights ? fed.gramsPerHour() : (Double) fed.fishPerHour();
  }

  /** How the panels lie. */
  private record Grid(int columns, int rows, double each, double tall, double top) {
    static Grid of(Pen pen, int groups, double width, double height) {
      double scale = pen.style.textScale();
      double top = pen.smallRow() * 1.6;
      int most = (int) Math.max(1, Math.floor(width / (PANEL_WIDTH * scale)));
      int room = (int) Math.max(1, Math.floor((height - top) / (PANEL_HEIGHT * scale)));
      int columns = Math.min(most, groups);
      int rows = Math.min(room, (groups + columns - 1) / columns);
      // No emptier last row than need be.
      columns = Math.min(columns, (groups + rows - 1) / rows);
      return new Grid(columns, rows, (width - 8) / columns, (height - top) / rows, top);
    }

    int shown() {
      return columns * rows;
    }
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (groups.isEmpty()) {
      String none = "No line that was fed and fished.";
      pen.text(Pen.shortened(pen.body, width - 28, none), 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    Grid grid = Grid.of(pen, groups.size(), width, height);
    int left = groups.size() - grid.shown();
    List<FeedGroup> shown =
        left <= 0
            ? groups
            : groups.stream()
                .sorted(Comparator.comparingInt((FeedGroup f) -> -f.sessions().size()))
                .limit(grid.shown())
                .toList();
    String unit = (weights ? words.axisUnit() : "fish") + " an hour fished, against times fed";
    pen.text(
        Pen.fitting(
            pen.small,
            width - 28,
            List.of(
                unit
                    + ". Bars: the half fed less, the half fed more"
                    + (left > 0 ? "; " + left + " more in the table" : ""),
                unit + ". Bars: the half fed less, the half fed more",
                unit)),
        14,
        pen.smallRow(),
        pen.small,
        pen.theme.secondInk());
    double mostFeeds = 1;
    double most = 0;
    for (FeedGroup group : shown) {
      for (Fed fed : group.sessions()) {
        Double rate = rate(fed);
        mostFeeds = Math.max(mostFeeds, fed.feeds());
        most = Math.max(most, rate == null ? 0 : axis(rate));
      }
    }
    for (int i = 0; i < shown.size(); i++) {
      double x = i % grid.columns * grid.each;
      double y = grid.top + Math.floorDiv(i, grid.columns) * grid.tall;
      panel(pen, shown.get(i), new Rectangle2D.Double(x, y, grid.each, grid.tall), mostFeeds, most);
    }
  }

  private void panel(
      Pen pen, FeedGroup group, Rectangle2D panel, double mostFeeds, double mostRate) {
    double left = panel.getX() + Type.width(pen.small, "0,000") + 12;
    double top = panel.getY() + pen.bodyRow() + 4;
    double foot = panel.getMaxY() - pen.smallRow() * 1.4 - 4;
    Plot plot =
        new Plot(
            pen,
            new Rectangle2D.Double(
                left, top, Math.max(10, panel.getMaxX() - left - 14), Math.max(10, foot - top)),
            -mostFeeds * 0.03,
            mostFeeds * 1.03,
            roundUp(mostRate));
    plot.paintY("");
    plot.paintX("");
    String sessions = sessions(group);
    double right = plot.area.getMaxX();
    double room = right - left - Type.width(pen.small, sessions) - 10;
    double base = panel.getY() + pen.bodyRow() - 4;
    pen.text(
        Pen.shortened(pen.body, room, FigureText.capital(group.group())),
        left,
        base,
        pen.body,
        pen.theme.ink());
    pen.text(sessions, right, base, pen.small, pen.theme.secondInk(), Pen.Align.RIGHT);
    for (Share share : shares(group)) {
      bar(plot, share, mostFeeds);
    }
    int n = group.sessions().size();
    Color colour = Pen.alpha(pen.theme.accent(), n > 60 ? 0.35 : 0.8);
    for (Fed fed : group.sessions()) {
      Double rate = rate(fed);
      if (rate != null) {
        pen.disc(colour, plot.x(fed.feeds()), plot.y(axis(rate)), n > 400 ? 1.6 : 3);
      }
    }
  }

  /** Returns a round number from there on, so that a small panel still has one on its scale. */
  private static double roundUp(double most) {
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(most, 1e-3))));
    for (double factor : new double[] {1, 1.5, 2, 3, 4, 5, 6, 8}) {
      if (factor * power >= most) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  private void bar(Plot plot, Share share, double mostFeeds) {
    Season.PerHour given = perHour(share);
    Double rate = given.perHour();
    if (rate == null) {
      return;
    }
    Pen pen = plot.pen;
    double x = plot.x(share.fewest() - mostFeeds * 0.02);
    double width = plot.x(share.most() + mostFeeds * 0.02) - x;
    double y = plot.y(axis(rate));
    Season.Limits limits = given.limits();
    if (limits == null) {
      pen.stroke(pen.theme.secondInk(), 1, DASHED, new Line2D.Double(x, y, x + width, y));
      return;
    }
    double high = plot.y(axis(limits.high()));
    pen.fill(
        Theme.mix(pen.theme.ink(), 0.13, pen.theme.panel()),
        x,
        high,
        width,
        plot.y(axis(limits.low())) - high);
    pen.fill(pen.theme.ink(), x, y - 0.75, width, 1.5);
  }
}
