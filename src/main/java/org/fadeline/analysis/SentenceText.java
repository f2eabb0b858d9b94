package org.fadeline.analysis;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Pattern;
import org.fadeline.model.RoughText;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;

/** Says numbers the way anglers read them: clock times, rates, weights, counts. */
public final class SentenceText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

  private static final Pattern STANDS_ALONE =
      Pattern.compile("(line|edge|margin|waggler|feeder|bomb|whip|pole|caster)$");

  private static final Pattern DIGIT = Pattern.compile("\\d");

  /** What a time to the first bite leaves open, for every text that tells one. */
  public static final String LEAVING_SHORTENS =
      "Leaving a line because it is dead makes these times look shorter than they are.";

  private final Session session;
  private final Units units;

  /**
   * Makes the words of one session.
   *
   * @param session whose zone and line names are used
   * @param units of the weights
   */
  public SentenceText(Session session, Units units) {
    this.session = session;
    this.units = units;
  }

  /** Returns the units of the weights. */
  Units units() {
    return units;
  }

  /** Returns a clock time, to the minute it lies in. */
  public String clock(long at) {
    return CLOCK.format(session.clock(at));
  }

  /** Returns two clock times as a range. */
  public String clocks(long from, long to) {
    return clock(from) + "–" + clock(to);
  }

  /** Returns the line's name as written in a sentence. */
  public String line(String id) {
    return session.line(id).map(l -> named(l.name())).orElse("that line");
  }

  /** Returns a line's name as a sentence says it: "the short line", but "pole 11 m" as it is. */
  public static String named(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (DIGIT.matcher(lower).find()) {
      return name;
    }
    return "the " + lower + (STANDS_ALONE.matcher(lower).find() ? "" : " line");
  }

  /** Returns a weight in the chosen unit. */
  public String weight(double grams) {
    return WeightText.format(grams, units.weight());
  }

  /** Returns a rate to one decimal below ten, whole above. */
  public static String rate(double perHour) {
    return String.format(Locale.ROOT, pattern(perHour), perHour);
  }

  /** Returns a rate with its limits, as finely as the rate itself is told. */
  public static String rate(Rate rate) {
    String pattern = pattern(rate.perHour());
    return String.format(
        Locale.ROOT,
        pattern + " an hour (" + pattern + "–" + pattern + ")",
        rate.perHour(),
        rate.low(),
        rate.high());
  }

  private static String pattern(double perHour) {
    return perHour < 9.95 ? "%.1f" : "%.0f";
  }

  /** Returns a weight no finer than a rate can be known. */
  public String roughWeight(double grams) {
    return RoughText.weight(grams, units.weight());
  }

  /** Returns a weight rate with its limits. */
  public String weightRate(Rate rate) {
    return roughWeight(rate.perHour())
        + " an hour ("
        + RoughText.weights(rate.low(), rate.high(), units.weight())
        + ")";
  }

  /** Returns whole minutes, with hours from a hundred on: "47 min", "1 h 46 min". */
  public static String minutes(double minutes) {
    if (minutes > 0 && minutes < 1) {
      return "under a minute";
    }
    long whole = Math.round(minutes);
    return whole < 100 ? whole + " min" : whole / 60 + " h " + pad(whole % 60) + " min";
  }

  private static String pad(long value) {
    return value < 10 ? "0" + value : Long.toString(value);
  }

  /** Returns a number of fish in words an angler uses. */
  public static String fish(int count) {
    return switch (count) {
      case 0 -> "no fish";
      case 1 -> "one fish";
      default -> count + " fish";
    };
  }

  /** Returns a number of bites. */
  public static String bites(int count) {
    return count == 0 ? "no bites" : count == 1 ? "one bite" : count + " bites";
  }

  /** Returns the sentence with its first letter in upper case. */
  public static String sentence(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
