package org.fadeline.ui.control;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.SentenceText;
import org.fadeline.io.SessionNames;
import org.fadeline.model.Line;
import org.fadeline.model.RoughText;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;

/** Numbers, times and weights as screens say them. */
public final class Say {
  private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss");
  private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("HH:mm");
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);

  private Say() {}

  /** Returns 24 h clock time to the second. */
  public static String clock(long at, ZoneId zone) {
    return Instant.ofEpochMilli(at).atZone(zone).format(SECONDS);
  }

  /** Returns 24 h clock time to the minute. */
  public static String shortClock(long at, ZoneId zone) {
    return Instant.ofEpochMilli(at).atZone(zone).format(MINUTES);
  }

  /** Returns a day in full. */
  public static String day(LocalDate date) {
    return date.format(DAY);
  }

  /** Returns a length of time: "40 s", "6 min", "2 h 12 min". */
  public static String span(long millis) {
    long seconds = Math.abs(millis) / 1000;
    if (seconds < 100) {
      return seconds + " s";
    }
    return SentenceText.minutes(Math.floor(seconds / 60.0));
  }

  /** Returns a difference of time to the second: "12:05" or "1:02:05". */
  public static String difference(long millis) {
    long seconds = Math.round(Math.abs(millis) / 1000.0);
    long minutes = seconds / 60;
    return minutes >= 60
        ? minutes / 60 + ":" + two(minutes % 60) + ":" + two(seconds % 60)
        : minutes + ":" + two(seconds % 60);
  }

  private static String two(long value) {
    return value < 10 ? "0" + value : Long.toString(value);
  }

  /** Returns a weight to the ounce or ten grams. */
  public static String weight(double grams, Units units) {
    return WeightText.format(grams, units.weight());
  }

  /** Returns the weight of a single fish, finer where it is small. */
  public static String fishWeight(double grams, Units units) {
    return WeightText.formatFine(grams, units.weight());
  }

  /** Returns a weight no finer than a rate or a forecast can be known: whole pounds from 10 lb. */
  public static String roughWeight(double grams, Units units) {
    return RoughText.weight(grams, units.weight());
  }

  /** Returns a weight interval with its unit once where it can: "108–163 lb". */
  public static String roughWeights(double low, double high, Units units) {
    return RoughText.weights(low, high, units.weight());
  }

  /** Returns a number to a tenth below 20, else whole; no trailing ".0". */
  public static String number(double value) {
    return RoughText.number(value);
  }

  /** Returns the limits of a rate: "4.1–11.4". */
  public static String limits(Rate rate) {
    return number(rate.low()) + "–" + number(rate.high());
  }

  /** Returns a count of fish: "no fish", "1 fish". */
  public static String fish(int count) {
    return count == 0 ? "no fish" : count + " fish";
  }

  /** Returns a count with its noun: "1 bite", "3 bites". */
  public static String count(int n, String noun) {
    return n == 1 ? "1 " + noun : n + " " + noun + (noun.endsWith("ch") ? "es" : "s");
  }

  /** Returns a line's name with how far it lies: "Shallow, 14.5 m". */
  public static String line(Line line, Units units) {
    Double distance = line.place().distanceM();
    return distance == null ? line.name() : line.name() + ", " + units.distance(distance);
  }

  /** Returns the name of a match's file as words: "Far bank winter". */
  public static String title(Path file) {
    return capital(SessionNames.bare(file).replace('-', ' ').replace('_', ' '));
  }

  /** Returns a text with a capital first letter. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /**
   * Returns the instant that a typed clock time means in a match: "12:48", "1248", "12:48:30"; the
   * day is the one that puts it nearest to an instant of the match.
   *
   * @param text what was typed
   * @param near epoch milliseconds
   */
  public static Optional<Long> typedTime(String text, long near, ZoneId zone) {
    String digits = text.strip().replace('.', ':');
    if (digits.matches("\\d{3,4}")) {
      int cut = digits.length() - 2;
      digits = digits.substring(0, cut) + ":" + digits.substring(cut);
    }
    if (!digits.matches("\\d{1,2}:\\d{2}(:\\d{2})?")) {
      return Optional.empty();
    }
    String[] parts = digits.split(":", -1);
    try {
      LocalTime time =
          LocalTime.of(
              Integer.parseInt(parts[0]),
              Integer.parseInt(parts[1]),
              parts.length > 2 ? Integer.parseInt(parts[2]) : 0);
      ZonedDateTime day = Instant.ofEpochMilli(near).atZone(zone);
      long best = 0;
      long least = Long.MAX_VALUE;
      for (int d = -1; d <= 1; d++) {
        long at =
            day.toLocalDate().plusDays(d).atTime(time).atZone(zone).toInstant().toEpochMilli();
        if (Math.abs(at - near) < least) {
          least = Math.abs(at - near);
          best = at;
        }
      }
      return Optional.of(best);
    } catch (DateTimeException notATime) {
      return Optional.empty();
    }
  }
}
