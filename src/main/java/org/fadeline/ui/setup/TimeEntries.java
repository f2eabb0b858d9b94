package org.fadeline.ui.setup;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.model.WeatherNote;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Entry;

/** The day and the calls, as entries. */
final class TimeEntries {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);
  private static final DateTimeFormatter TYPED =
      new DateTimeFormatterBuilder()
          .parseCaseInsensitive()
          .appendPattern("[uuuu-MM-dd][d MMMM uuuu][d MMM uuuu]")
          .toFormatter(Locale.UK)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final LocalTime NOON = LocalTime.NOON;

  private TimeEntries() {}

  /** Returns the day of the match; everything that has a time moves with it. */
  static Entry<Session> date() {
    return new Entry<>(
        "date",
        "Date",
        "8 Aug 2026",
        (s, units) -> s.occasion().date().format(DAY),
        (s, text, units) -> onDay(s, day(text)));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text.strip(), TYPED);
    } catch (DateTimeException notADay) {
      throw new IllegalArgumentException(
          "“" + text.strip() + "” is no date; write it as 8 Aug 2026 or 2026-08-08");
    }
  }

  /** Returns the session on another day, at the same times by the clock. */
  static Session onDay(Session session, LocalDate day) {
    ZoneId zone = session.occasion().zone();
    Match match = session.match();
    LocalTime start = session.clock(match.allIn()).toLocalTime();
    long by = day.atTime(start).atZone(zone).toInstant().toEpochMilli() - match.allIn();
    List<WeatherNote> weather =
        session.occasion().weather().stream()
            .map(
                n ->
                    new WeatherNote(
                        n.at() + by, n.wind(), n.cloudOktas(), n.airC(), n.waterC(), n.note()))
            .toList();
    return session
        .withOccasion(session.occasion().withDate(day).withWeather(weather))
        .withMatch(new Match(match.allIn() + by, match.allOut() + by, match.rules()))
        .withEvents(session.events().stream().map(e -> e.retimed(at -> at + by)).toList());
  }

  /** Returns the start call; a finish that would come before it keeps its distance. */
  static Entry<Session> allIn() {
    return new Entry<>(
        "all-in",
        "All in",
        "10:00",
        (s, units) -> Say.shortClock(s.match().allIn(), s.occasion().zone()),
        (s, text, units) -> {
          ZoneId zone = s.occasion().zone();
          long noon = s.occasion().date().atTime(NOON).atZone(zone).toInstant().toEpochMilli();
          long at = near(s, noon, text);
          Match match = s.match();
          long out = match.allOut() > at ? match.allOut() : at + match.lengthMillis();
          return s.withMatch(new Match(at, out, match.rules()));
        });
  }

  /** Returns the finish call: the first such time by the clock after the start. */
  static Entry<Session> allOut() {
    return new Entry<>(
        "all-out",
        "All out",
        "15:00",
        (s, units) -> Say.shortClock(s.match().allOut(), s.occasion().zone()),
        (s, text, units) -> {
          long at = near(s, s.match().allIn(), text);
          long out = at > s.match().allIn() ? at : nextDay(s, at);
          return s.withMatch(s.match().withAllOut(out));
        });
  }

  private static long nextDay(Session session, long at) {
    return session.clock(at).plusDays(1).toInstant().toEpochMilli();
  }

  /**
   * Returns the instant a typed clock time means, nearest to another.
   *
   * @throws IllegalArgumentException if it is no clock time
   */
  static long near(Session session, long instant, String text) {
    return Say.typedTime(text, instant, session.occasion().zone())
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "“" + text.strip() + "” is no clock time; write it as 10:00"));
  }
}
