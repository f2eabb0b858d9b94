package org.fadeline.io;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.model.Stamp;

/**
 * Times as files write them (ISO 8601) to epoch milliseconds and back. A clock time that a clock
 * change makes ambiguous or missing is refused with both readings, never guessed.
 */
public final class ClockTimes {
  private static final Pattern CLOCK =
      Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:\\.(\\d{1,9}))?)?");
  private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
  private static final Pattern DATE_TIME =
      Pattern.compile(
          DATE.pattern() + "[Tt ]" + CLOCK.pattern() + "(Z|z|[+-]\\d{2}:\\d{2}(?::\\d{2})?)?");
  private static final DateTimeFormatter WITH_OFFSET =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSxxxxx", Locale.ROOT);
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS", Locale.ROOT);

  /** A clock time this long or less before all in is before all in; longer, after midnight. */
  private static final Duration BEFORE_ALL_IN = Duration.ofHours(6);

  private static final String HOW = "write it as 2026-08-15T10:42:00.000+01:00";

  private ClockTimes() {}

  /** Returns the instant as ISO 8601 with milliseconds and the zone's offset. */
  public static String withOffset(long at, ZoneId zone) {
    return WITH_OFFSET.format(Instant.ofEpochMilli(at).atZone(zone));
  }

  /**
   * Returns the instant as a local date-time, with its offset only where the clock is ambiguous.
   */
  static String local(long at, ZoneId zone) {
    LocalDateTime local = LocalDateTime.ofInstant(Instant.ofEpochMilli(at), zone);
    return zone.getRules().getValidOffsets(local).size() == 1
        ? LOCAL.format(local)
        : withOffset(at, zone);
  }

  /** Reads an ISO 8601 date-time, with offset or on the zone's clock. */
  public static long instant(String text, ZoneId zone) throws Refused {
    return instant(text, zone, ClockChange.REFUSE);
  }

  /**
   * Reads an ISO 8601 date-time, with offset or on the zone's clock.
   *
   * @param change how to read a clock time that came twice or never
   */
  static long instant(String text, ZoneId zone, ClockChange change) throws Refused {
    Matcher matcher = DATE_TIME.matcher(text);
    if (!matcher.matches()) {
      throw new Refused(Shown.value(text) + " is not a date and time", HOW);
    }
    LocalDateTime local;
    try {
      local =
          LocalDateTime.of(
              date(matcher.group(1), matcher.group(2), matcher.group(3)), clock(matcher, 3));
    } catch (DateTimeException e) {
      throw new Refused(Shown.value(text) + " is no date and time of the calendar", HOW);
    }
    String offset = matcher.group(8);
    if (offset == null) {
      return resolve(local, zone, change);
    }
    try {
      return inRange(
          OffsetDateTime.of(local, ZoneOffset.of(offset.toUpperCase(Locale.ROOT)))
              .toInstant()
              .toEpochMilli());
    } catch (DateTimeException e) {
      throw new Refused(Shown.value(offset) + " is no offset from UTC", HOW);
    }
  }

  /** Returns whether the text has the form of a date-time (and not of a clock time alone). */
  public static boolean looksLikeDateTime(String text) {
    return DATE_TIME.matcher(text).matches();
  }

  /** Reads a clock time: HH:MM, HH:MM:SS or HH:MM:SS.mmm. */
  public static LocalTime clock(String text) throws Refused {
    Matcher matcher = CLOCK.matcher(text);
    if (!matcher.matches()) {
      throw new Refused(
          Shown.value(text) + " is not a time", "write it as 10:42, 10:42:05 or 10:42:05.250");
    }
    try {
      return clock(matcher, 0);
    } catch (DateTimeException e) {
      throw new Refused(Shown.value(text) + " is no time of the day", "hours go from 00 to 23");
    }
  }

  /** Reads an ISO 8601 date. */
  static LocalDate date(String text) throws Refused {
    Matcher matcher = DATE.matcher(text);
    try {
      if (matcher.matches()) {
        LocalDate date = date(matcher.group(1), matcher.group(2), matcher.group(3));
        inRange(date.atTime(12, 0).toInstant(ZoneOffset.UTC).toEpochMilli());
        return date;
      }
    } catch (DateTimeException e) {
      throw new Refused(
          Shown.value(text) + " is no date of the calendar", "write it as 2026-08-15");
    }
    throw new Refused(Shown.value(text) + " is not a date", "write it as 2026-08-15");
  }

  private static LocalDate date(String year, String month, String day) {
    return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
  }

  private static LocalTime clock(Matcher matcher, int before) throws Refused {
    String second = matcher.group(before + 3);
    String fraction = matcher.group(before + 4);
    int nano = 0;
    if (fraction != null) {
      nano = Integer.parseInt((fraction + "00000000").substring(0, 9));
      if (nano % 1_000_000 != 0) {
        throw new Refused("the time is finer than a millisecond", "round it to three decimals");
      }
    }
    return LocalTime.of(
        Integer.parseInt(matcher.group(before + 1)),
        Integer.parseInt(matcher.group(before + 2)),
        second == null ? 0 : Integer.parseInt(second),
        nano);
  }

  /**
   * Returns the day of a clock time given alone: the match's, or the day after where it lies more
   * than six hours before all in.
   *
   * @param date of all in
   * @param allIn its clock time
   */
  public static LocalDate dayOf(LocalTime clock, LocalDate date, LocalTime allIn) {
    boolean afterMidnight = Duration.between(clock, allIn).compareTo(BEFORE_ALL_IN) > 0;
    return afterMidnight ? date.plusDays(1) : date;
  }

  /** Returns the instant of a local date-time, refusing one that the clock had twice or never. */
  public static long resolve(LocalDateTime local, ZoneId zone) throws Refused {
    return resolve(local, zone, ClockChange.REFUSE);
  }

  /**
   * Returns the instant of a local date-time.
   *
   * @param reading how to read one that the clock had twice or never
   */
  static long resolve(LocalDateTime local, ZoneId zone, ClockChange reading) throws Refused {
    List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
    if (offsets.size() == 1) {
      return inRange(local.toInstant(offsets.get(0)).toEpochMilli());
    }
    ZoneOffsetTransition change = zone.getRules().getTransition(local);
    if (reading != ClockChange.REFUSE) {
      boolean before = reading == ClockChange.BEFORE;
      ZoneOffset offset = before ? change.getOffsetBefore() : change.getOffsetAfter();
      return inRange(local.toInstant(offset).toEpochMilli());
    }
    String first = WITH_OFFSET.format(local.atOffset(change.getOffsetBefore()));
    String second = WITH_OFFSET.format(local.atOffset(change.getOffsetAfter()));
    String what =
        offsets.isEmpty()
            ? local + " did not exist in " + zone + ": the clock was put forward over it"
            : local + " came twice in " + zone + ": the clock was put back over it";
    throw new Refused(what, "write which is meant, " + first + " or " + second);
  }

  private static long inRange(long at) throws Refused {
    if (at < Stamp.EARLIEST || at > Stamp.LATEST) {
      int year = Instant.ofEpochMilli(at).atOffset(ZoneOffset.UTC).getYear();
      throw new Refused("the year " + year + " is outside 1900 to 2199", "correct the date");
    }
    return at;
  }

  /** Reads a time zone name of the IANA database, or a fixed offset. */
  public static ZoneId zone(String name) throws Refused {
    try {
      return ZoneId.of(name);
    } catch (DateTimeException e) {
      throw new Refused(
          Shown.value(name) + " is no time zone known here",
          "write a name of the IANA database, such as Europe/London");
    }
  }
}
