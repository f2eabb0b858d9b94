package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SessionSummary;

/** What each session came to, by date: logged a full point, at the scales a ring. */
public final class SeasonResultsFigure extends SeasonFigure {
  private final boolean weights;
  private final List<SessionSummary> dated;

  /** Makes the figure: of weight where any is known, else of fish. */
  public SeasonResultsFigure(Season season, FigureStyle style) {
    super(season, style, 2.2);
    this.dated = season.dated();
    this.weights = season.sessions().stream().anyMatch(s -> s.result().grams() > 0);
  }

  @Override
  public String title() {
    return weights ? "Weight of each match" : "Fish of each match";
  }

  @Override
  public String description() {
    if (dated.isEmpty()) {
      return nothing();
    }
    List<Double> sorted = dated.stream().map(this::logged).sorted().toList();
    int n = sorted.size();
    return title()
        + ", "
        + DayAxis.say(date(0))
        + " to "
        + DayAxis.say(date(n - 1))
        + ": "
        + FigureText.sessions(n)
        + ", least "
        + say(sorted.get(0))
        + ", middle "
        + say((sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2)
        + ", most "
        + say(sorted.get(n - 1))
        + "."
        + (undatedLeftOut().isEmpty() ? "" : " " + undatedLeftOut() + ".");
  }

  private String nothing() {
    return undatedLeftOut().isEmpty() ? "No match." : "No match with a date.";
  }

  private String say(double value) {
    return weights ? words.weight(value) : FigureText.number(value) + " fish";
  }

  private LocalDate date(int session) {
    return dated.get(session).about().date();
  }

  private double logged(SessionSummary session) {
    return weights ? session.result().grams() : session.result().fish();
  }

  private double axis(double value) {
    return weights ? words.axisWeight(value) : value;
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    int n = dated.size();
    if (n == 0) {
      pen.text(nothing(), 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    double most = 0;
    for (SessionSummary session : dated) {
      Double weighed = session.result().weighedGrams();
      most = Math.max(most, axis(logged(session)));
      most = Math.max(most, weights && weighed != null ? axis(weighed) : 0);
    }
    Rectangle2D area = Plot.area(pen, pen.smallRow() * 1.7, width, height, 0.4);
    double first = date(0).toEpochDay();
    double last = date(n - 1).toEpochDay();
    Plot plot = new Plot(pen, area, first - 1, Math.max(last, first + 1) + 1, most * 1.08);
    String what = weights ? words.axisUnit() + " logged (ring: at the scales)" : "fish landed";
    plot.paintY(captioned(pen, width - area.getX() - 8, what, undatedLeftOut()));
    DayAxis.paint(plot, dated, width);
    double radius = pointRadius(n);
    for (SessionSummary session : dated) {
      double x = plot.x((double) session.about().date().toEpochDay());
      Double weighed = session.result().weighedGrams();
      if (weights && weighed != null) {
        pen.ring(pen.theme.ink(), x, plot.y(axis(weighed)), radius, 1.3);
      }
      pen.disc(pen.theme.accent(), x, plot.y(axis(logged(session))), radius * 0.8);
    }
  }
}
