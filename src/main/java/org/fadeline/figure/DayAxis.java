package org.fadeline.figure;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.season.SessionSummary;

/** The foot of a chart over the days of a season. */
public final class DayAxis {
  /** A date as good as none: days from here on are told as day 1, day 2, with no date. */
  public static final LocalDate COUNTED_FROM = LocalDate.of(1, 1, 1);

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  private DayAxis() {}

  /** Returns a day in words: its date, or which day it is where dates are left out. */
  public static String say(LocalDate date) {
    return date.getYear() < 1000
        ? "day " + (date.toEpochDay() - COUNTED_FROM.toEpochDay() + 1)
        : DAY.format(date);
  }

  /**
   * Writes the days of the sessions, in order, below the foot; those that would collide are out.
   */
  static void paint(Plot plot, List<SessionSummary> sessions, double width) {
    Pen pen = plot.pen;
    double free = -1;
    double base = plot.area.getMaxY() + pen.smallRow();
    for (SessionSummary session : sessions) {
      LocalDate date = session.about().date();
      String day = say(date);
      double half = Type.width(pen.small, day) / 2;
      double x = plot.x((double) date.toEpochDay());
      double middle = Math.max(half + 4, Math.min(width - half - 4, x));
      if (middle - half > free) {
        pen.fill(pen.theme.secondInk(), x - 0.5, plot.area.getMaxY(), 1, 4);
        pen.text(day, middle, base, pen.small, pen.theme.secondInk(), Pen.Align.MIDDLE);
        free = middle + half + 34 * pen.style.textScale();
      }
    }
  }
}
