package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.model.Session;
import org.fadeline.model.Units;

/**
 * A figure with its title above, and small below it what it rests on: the session, the grade of its
 * record, the units, the program and the settings.
 */
public final class FigureSheet implements Figure {
  private final Figure figure;
  private final String heading;
  private final List<String> foot;

  private FigureSheet(Figure figure, String heading, List<String> foot) {
    this.figure = figure;
    this.heading = heading;
    this.foot = foot;
  }

  /**
   * Puts a figure of a review on a sheet.
   *
   * @param figure the figure
   * @param review what it shows; session and date are named
   */
  public static FigureSheet of(Figure figure, Review review) {
    return new FigureSheet(figure, figure.title(), footOf(review, figure.style(), true));
  }

  /**
   * Puts a figure of two sessions on a sheet.
   *
   * @param figure the figure
   * @param comparison what it shows; sessions and dates are named
   */
  public static FigureSheet of(Figure figure, Comparison comparison) {
    return new FigureSheet(figure, figure.title(), footOf(comparison, figure.style(), true));
  }

  /** Puts a figure of many sessions on a sheet; no session is named. */
  public static FigureSheet of(Figure figure, Season season) {
    return new FigureSheet(figure, figure.title(), footOf(season, figure.style()));
  }

  /** Returns the statements at the foot of a sheet of many sessions. */
  public static List<String> footOf(Season season, FigureStyle style) {
    return List.of(
        sourceOf(season.sessions())
            + (season.filter().equals(SeasonFilter.ALL) ? "" : ", chosen by a filter")
            + "  ·  limits at 95% from drawing whole matches; none below "
            + Season.FEWEST_FOR_LIMITS
            + " matches",
        // Seasons are reviewed at the usual settings alone.
        about(ReviewSettings.DEFAULT, style));
  }

  private static String sourceOf(List<SessionSummary> sessions) {
    int n = sessions.size();
    if (n == 0) {
      return "no match";
    }
    List<SessionSummary> dated = sessions.stream().filter(s -> s.about().dated()).toList();
    if (dated.isEmpty()) {
      return FigureText.sessions(n) + ", undated";
    }
    String first = DayAxis.say(dated.get(0).about().date());
    String last = DayAxis.say(dated.get(dated.size() - 1).about().date());
    return FigureText.sessions(n)
        + ", "
        + (first.equals(last) ? first : first + " to " + last)
        + (dated.size() == n ? "" : ", " + (n - dated.size()) + " undated");
  }

  /** Returns the statements at the foot of a sheet of two sessions, named or not. */
  public static List<String> footOf(Comparison comparison, FigureStyle style, boolean named) {
    List<String> first = footOf(comparison.first(), style, named);
    return List.of(
        "first: " + first.get(0),
        "second: " + footOf(comparison.second(), style, named).get(0),
        comparison.setup().alignment().stated() + "  ·  " + first.get(1));
  }

  /**
   * Returns the statements at the foot of a sheet, most telling first; its session named or not.
   */
  public static List<String> footOf(Review review, FigureStyle style, boolean named) {
    Session session = review.session();
    FigureText words = new FigureText(session, style.units());
    String source =
        named
            ? session.occasion().title() + ", " + DayAxis.say(session.occasion().date())
            : "one match";
    String rests =
        review.summary().grade().label()
            + ", "
            + FigureText.fish(review.summary().caught().landed())
            + (review.summary().caught().weightG() > 0
                ? ", "
                    + words.weight(review.summary().caught().weightG())
                    + " "
                    + review.summary().weightFrom().word()
                : "");
    return List.of(source + "  ·  rests on: " + rests, about(review.settings(), style));
  }

  /** Returns settings, units and program. */
  private static String about(ReviewSettings settings, FigureStyle style) {
    return "window "
        + FigureText.number(settings.windowMinutes())
        + " min, call level "
        + settings.callLevel()
        + ", change hazard "
        + settings.changeHazard()
        + "/h, move "
        + FigureText.number(settings.moveCostMinutes())
        + " min  ·  "
        + (style.units().weight() == Units.Weight.KG ? "kilograms" : "pounds and ounces")
        + (style.units().length() == Units.Length.M ? ", metres" : ", feet")
        + "  ·  "
        + ProgramVersion.NAME;
  }

  @Override
  public String title() {
    return heading;
  }

  @Override
  public String description() {
    return figure.description() + " " + String.join(". ", foot) + ".";
  }

  @Override
  public double aspect() {
    return figure.aspect() * 0.92;
  }

  @Override
  public FigureStyle style() {
    return figure.style();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    double scale = style().textScale();
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    double pad = 14 * scale;
    double top = 34 * scale;
    double row = 12.5 * scale;
    double bottom = height - row * foot.size() - 12 * scale;
    var title = Type.semiBold(16 * scale);
    pen.text(
        Pen.shortened(title, width - 2 * pad, heading), pad, 24 * scale, title, pen.theme.ink());
    if (bottom - top > 40) {
      AffineTransform before = g.getTransform();
      g.translate(pad / 2, top);
      figure.paint(g, width - pad, bottom - top);
      g.setTransform(before);
    }
    var tiny = Type.regular(9 * scale);
    for (int i = 0; i < foot.size(); i++) {
      pen.text(
          Pen.shortened(tiny, width - 2 * pad, foot.get(i)),
          pad,
          bottom + 6 * scale + row * (i + 0.7),
          tiny,
          pen.theme.secondInk());
    }
  }
}
