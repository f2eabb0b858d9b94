package org.fadeline.io;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.model.Match;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * By how much the clock of a device was wrong.
 *
 * @param movedMillis true time minus that of the device, milliseconds, at most a day either way
 */
public record ClockCorrection(long movedMillis) {
  /** The clock was right. */
  public static final ClockCorrection NONE = new ClockCorrection(0);

  private static final long DAY = 86_400_000;
  private static final Pattern PARTS =
      Pattern.compile("([+\\-−]?)\\s*(?:(\\d{1,2}):)?(\\d{1,4}):(\\d{2})");
  private static final Pattern AMOUNT =
      Pattern.compile("([+\\-−]?)\\s*(\\d{1,6})\\s*(s|sec|seconds?|m|min|minutes?|h|hours?)");

  /** Checks the range. */
  public ClockCorrection {
    if (Math.abs(movedMillis) > DAY) {
      throw new IllegalArgumentException("more than a day: " + movedMillis);
    }
  }

  /**
   * Reads by how much times are to be moved: {@code -1:30} is a minute and a half earlier, {@code
   * 1:02:00} an hour and two minutes later, {@code 90 s}, {@code -2 min}.
   */
  public static ClockCorrection offset(String text) throws Refused {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    Matcher parts = PARTS.matcher(typed);
    Matcher amount = AMOUNT.matcher(typed);
    long seconds;
    String sign;
    if (parts.matches()) {
      sign = parts.group(1);
      long hours = parts.group(2) == null ? 0 : Long.parseLong(parts.group(2));
      long minutes = Long.parseLong(parts.group(3));
      long rest = Long.parseLong(parts.group(4));
      if (rest > 59 || (parts.group(2) != null && minutes > 59)) {
        throw notAnOffset(text);
      }
      seconds = hours * 3600 + minutes * 60 + rest;
    } else if (amount.matches()) {
      sign = amount.group(1);
      char unit = amount.group(3).charAt(0);
      seconds = Long.parseLong(amount.group(2)) * (unit == 'h' ? 3600 : unit == 'm' ? 60 : 1);
    } else {
      throw notAnOffset(text);
    }
    long millis = seconds * 1000;
    if (millis > DAY) {
      throw new Refused(Shown.value(text) + " is more than a day", "correct the date instead");
    }
    return new ClockCorrection(sign.isEmpty() || sign.equals("+") ? millis : -millis);
  }

  private static Refused notAnOffset(String text) {
    return new Refused(
        Shown.value(text) + " does not say by how much", "write it as -1:30, 0:12:05 or 90 s");
  }

  /**
   * Returns the correction of a device that said one clock time when it was another; the two are
   * taken to lie less than half a day apart.
   *
   * @param said clock time of the device, such as {@code 11:42}
   * @param was the true one, such as {@code 11:40:30}
   */
  private static ClockCorrection clocks(String said, String was) throws Refused {
    LocalTime device = ClockTimes.clock(said.strip());
    LocalTime truth = ClockTimes.clock(was.strip());
    long moved = device.until(truth, ChronoUnit.MILLIS);
    if (moved > DAY / 2) {
      moved -= DAY;
    } else if (moved < -DAY / 2) {
      moved += DAY;
    }
    return new ClockCorrection(moved);
  }

  /**
   * Reads both clocks from one text, {@code 11:42=11:40:30}: what the device said, and what it was.
   */
  public static ClockCorrection pair(String text) throws Refused {
    String[] both = text.split("=", -1);
    if (both.length != 2) {
      throw new Refused(
          Shown.value(text) + " is no pair of times",
          "write what the device said and what it was, as 11:42=11:40:30");
    }
    return clocks(both[0], both[1]);
  }

  /** Returns whether the clock was right. */
  public boolean isNone() {
    return movedMillis == 0;
  }

  /**
   * Returns a session, all of whose times come from the device, with its events and calls moved.
   *
   * @param file name of the file it was read from, under which the correction is kept
   */
  public Session applied(Session session, String file) {
    if (isNone()) {
      return session;
    }
    List<SessionEvent> events =
        session.events().stream().map(e -> e.retimed(at -> at + movedMillis)).toList();
    Match match = session.match();
    return session
        .withEvents(events)
        .withMatch(
            new Match(match.allIn() + movedMillis, match.allOut() + movedMillis, match.rules()))
        .withOutcome(session.outcome().withImport(new Outcome.Imported(file, movedMillis)));
  }

  /** Returns it as it is typed: {@code -1:30}, {@code +1:02:00}; {@code 0:00} for none. */
  @Override
  public String toString() {
    long seconds = Math.round(Math.abs(movedMillis) / 1000.0);
    String sign = movedMillis < 0 ? "-" : movedMillis > 0 ? "+" : "";
    return seconds >= 3600
        ? String.format(
            Locale.ROOT, "%s%d:%02d:%02d", sign, seconds / 3600, seconds / 60 % 60, seconds % 60)
        : String.format(Locale.ROOT, "%s%d:%02d", sign, seconds / 60, seconds % 60);
  }
}
