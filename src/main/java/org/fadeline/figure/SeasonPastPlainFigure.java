package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.PastPlainTally;
import org.fadeline.analysis.season.SessionSummary;

/**
 * How long stays went past plain, by date: a point a session at the minutes of all its stays, a
 * ring at 0 where it has none. Sessions whose fades are not worked out are left out and counted.
 */
public final class SeasonPastPlainFigure extends SeasonFigure {
  private final List<SessionSummary> judged;

  /** Makes the figure. */
  public SeasonPastPlainFigure(Season season, FigureStyle style) {
    super(season, style, 2.2);
    this.judged = season.dated().stream().filter(SessionSummary::hasFades).toList();
  }

  @Override
  public String title() {
    return "Minutes stayed past plain, each match";
  }

  @Override
  public String description() {
    if (judged.isEmpty()) {
      return title() + ": no match with its fades worked out.";
    }
    List<PastPlainTally> stayed =
        judged.stream().map(season::pastPlain).filter(tally -> tally.stays() > 0).toList();
    String text =
        title()
            + ": "
            + stayed.size()
            + " of "
            + FigureText.sessions(judged.size())
            + " stayed past plain";
    double longest = stayed.stream().mapToDouble(PastPlainTally::minutes).max().orElse(0);
    return text
        + (stayed.isEmpty() ? "" : ", " + FigureText.minutes(longest) + " at most")
        + "."
        + (unjudged() == 0 ? "" : " " + notYet() + ".")
        + (undatedLeftOut().isEmpty() ? "" : " " + undatedLeftOut() + ".");
  }

  private int unjudged() {
    return season.dated().size() - judged.size();
  }

  private String notYet() {
    return "Not worked out yet: " + FigureText.sessions(unjudged());
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (judged.isEmpty()) {
      pen.text(
          Pen.shortened(pen.body, width - 28, "No match with its fades worked out."),
          14,
          30,
          pen.body,
          pen.theme.secondInk());
      return;
    }
    double most = 0;
    for (SessionSummary session : judged) {
      most = Math.max(most, season.pastPlain(session).minutes());
    }
    Rectangle2D area = Plot.area(pen, pen.smallRow() * 1.7, width, height, 0.4);
    double first = day(judged.get(0));
    double last = day(judged.get(judged.size() - 1));
    Plot plot =
        new Plot(pen, area, first - 1, Math.max(last, first + 1) + 1, Math.max(10, most * 1.08));
    plot.paintY(
        captioned(
            pen,
            width - area.getX() - 8,
            "min stayed past plain (ring: none)",
            String.join(
                ". ",
                Stream.of(unjudged() == 0 ? "" : notYet(), undatedLeftOut())
                    .filter(text -> !text.isEmpty())
                    .toList())));
    DayAxis.paint(plot, judged, width);
    double radius = pointRadius(judged.size());
    for (SessionSummary session : judged) {
      PastPlainTally stayed = season.pastPlain(session);
      double x = plot.x(day(session));
      if (stayed.stays() == 0) {
        pen.ring(pen.theme.ink(), x, plot.y(0), radius, 1.3);
      } else {
        pen.fill(
            pen.theme.warning(),
            x - 0.75,
            plot.y(stayed.minutes()),
            1.5,
            plot.y(0) - plot.y(stayed.minutes()));
        pen.disc(pen.theme.warning(), x, plot.y(stayed.minutes()), radius * 0.8);
      }
    }
  }

  private static double day(SessionSummary session) {
    return session.about().date().toEpochDay();
  }
}
