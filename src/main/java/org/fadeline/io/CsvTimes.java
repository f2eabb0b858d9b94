package org.fadeline.io;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Times of a CSV: a clock time alone takes the date of all in, or the day after where it lies more
 * than six hours before all in's clock time.
 */
final class CsvTimes {
  private static final Pattern OWN_DATE =
      Pattern.compile("(\\d{1,4})[/.-](\\d{1,2})[/.-](\\d{1,4})");

  private final ZoneId zone;
  private final LocalDate date;
  private final LocalTime allIn;
  private final ReadOptions options;

  /**
   * Makes times for one file.
   *
   * @param options give the order of dates and how times at a clock change are read
   * @param date of all in
   * @param allIn clock time of all in, or of the first event
   */
  CsvTimes(ZoneId zone, LocalDate date, LocalTime allIn, ReadOptions options) {
    this.zone = zone;
    this.date = date;
    this.allIn = allIn;
    this.options = options;
  }

  /**
   * A time as a file gives it: date-time with or without offset, or clock time.
   *
   * @param full ISO 8601 text, or null
   * @param date or null
   * @param clock or null, where {@code full} is given
   */
  record Written(@Nullable String full, @Nullable LocalDate date, @Nullable LocalTime clock) {}

  long instant(Written written) throws Refused {
    String full = written.full;
    LocalTime clock = written.clock;
    if (full != null || clock == null) {
      return ClockTimes.instant(String.valueOf(full), zone, options.clockChange());
    }
    LocalDate given = written.date;
    LocalDate day = given == null ? ClockTimes.dayOf(clock, date, allIn) : given;
    return ClockTimes.resolve(LocalDateTime.of(day, clock), zone, options.clockChange());
  }

  long instant(String text) throws Refused {
    CsvMapping mapping = options.mapping();
    return instant(written(text, null, mapping == null ? CsvMapping.NONE : mapping));
  }

  /** Reads the form of a time, with the date of its own column where there is one. */
  static Written written(String text, @Nullable String dateText, CsvMapping mapping)
      throws Refused {
    if (ClockTimes.looksLikeDateTime(text)) {
      return new Written(text, null, null);
    }
    int blank = text.indexOf(' ');
    if (dateText == null && blank > 0 && OWN_DATE.matcher(text.substring(0, blank)).matches()) {
      return new Written(
          null,
          date(text.substring(0, blank), mapping),
          ClockTimes.clock(text.substring(blank + 1).strip()));
    }
    return new Written(
        null, dateText == null ? null : date(dateText, mapping), ClockTimes.clock(text));
  }

  /** Reads a date in the mapping's order; without mapping only ISO 8601 is unambiguous. */
  private static LocalDate date(String text, CsvMapping mapping) throws Refused {
    Matcher matcher = OWN_DATE.matcher(text);
    if (text.matches("\\d{4}-\\d{2}-\\d{2}") || !matcher.matches()) {
      return ClockTimes.date(text);
    }
    int first = Integer.parseInt(matcher.group(1));
    int second = Integer.parseInt(matcher.group(2));
    int third = Integer.parseInt(matcher.group(3));
    CsvMapping.DateOrder order = mapping.dateOrder();
    if (order == null) {
      throw new Refused(
          "the date " + Shown.value(text) + " can be read day first or month first",
          "write it as 2026-08-15, or give a mapping with dateOrder");
    }
    try {
      return switch (order) {
        case DAY_MONTH_YEAR -> checked(third, second, first);
        case MONTH_DAY_YEAR -> checked(third, first, second);
        case YEAR_MONTH_DAY -> checked(first, second, third);
      };
    } catch (DateTimeException e) {
      throw new Refused(
          Shown.value(text) + " is no date in the order " + order.word(), "correct the date");
    }
  }

  private static LocalDate checked(int year, int month, int day) throws Refused {
    return ClockTimes.date(LocalDate.of(year, month, day).toString());
  }
}
