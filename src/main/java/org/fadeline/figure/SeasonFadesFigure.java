package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.FadeGroup;
import org.fadeline.analysis.season.SessionSummary;

/** When each kind of line faded: a point a fade, the middle one marked. */
public final class SeasonFadesFigure extends SeasonFigure {

  /** Makes the figure. */
  public SeasonFadesFigure(Season season, FigureStyle style) {
    super(season, style, 2.2);
  }

  @Override
  public String title() {
    return "When lines faded, by kind of line";
  }

  @Override
  public String description() {
    StringBuilder text = new StringBuilder(title()).append(", minutes after all in. ");
    for (FadeGroup group : season.fades()) {
      Double middle = group.medianMinute();
      text.append(FigureText.capital(group.group())).append(": ").append(tally(group));
      if (middle != null) {
        text.append(", the middle one ").append(FigureText.minutes(middle)).append(" in");
      }
      text.append(". ");
    }
    return text.toString().strip();
  }

  private String none() {
    return season.sessions().stream().allMatch(SessionSummary::hasFades)
        ? "No spell that a fade could be judged in."
        : "Fades are not worked out yet.";
  }

  private static String tally(FadeGroup group) {
    return group.faded() + " of " + group.spells() + (group.spells() == 1 ? " spell" : " spells");
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double foot = height - pen.smallRow() * 1.6 - 8;
    List<FadeGroup> groups = fitting(season.fades(), foot - 10, pen.bodyRow(), FadeGroup::spells);
    if (groups.isEmpty()) {
      pen.text(
          Pen.shortened(pen.body, width - 28, none()), 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    double names = 0;
    double tallies = 0;
    for (FadeGroup group : groups) {
      names = Math.max(names, Type.width(pen.body, FigureText.capital(group.group())));
      tallies = Math.max(tallies, Type.width(pen.small, tally(group)));
    }
    double left = Math.min(width * 0.3, names + 30);
    double right = width - tallies - 20;
    double longest =
        season.sessions().stream().mapToDouble(s -> s.about().matchMinutes()).max().orElse(300);
    Plot plot =
        new Plot(
            pen,
            new Rectangle2D.Double(left, 10, Math.max(10, right - left - 16), foot - 10),
            0,
            longest,
            1);
    plot.paintX("min after all in");
    paintLeftOut(pen, season.fades().size() - groups.size(), left - 22, height - 8);
    double row = Math.min(plot.area.getHeight() / groups.size(), 70 * style().textScale());
    for (int i = 0; i < groups.size(); i++) {
      paint(plot, groups.get(i), plot.area.getY() + row * (i + 0.5), row, width);
    }
  }

  private static void paint(Plot plot, FadeGroup group, double middle, double row, double width) {
    Pen pen = plot.pen;
    double ascent = Type.drop(pen.small);
    pen.text(
        Pen.shortened(pen.body, plot.area.getX() - 22, FigureText.capital(group.group())),
        14,
        middle + ascent,
        pen.body,
        pen.theme.ink());
    pen.fill(pen.theme.hairline(), plot.area.getX(), middle - 0.5, plot.area.getWidth(), 1);
    for (double minute : group.minutes()) {
      pen.disc(Pen.alpha(pen.theme.warning(), 0.75), plot.x(minute), middle, 3.6);
    }
    Double half = group.medianMinute();
    if (half != null && group.minutes().size() >= Season.FEWEST_FOR_LIMITS) {
      pen.fill(pen.theme.ink(), plot.x(half) - 1, middle - row * 0.32, 2, row * 0.64);
    }
    pen.text(
        tally(group),
        width - 10,
        middle + ascent,
        pen.small,
        pen.theme.secondInk(),
        Pen.Align.RIGHT);
  }
}
