package org.fadeline.figure;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Locale;
import org.fadeline.analysis.Rate;
import org.fadeline.model.Line;
import org.fadeline.model.RoughText;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;

/** Numbers and times as figures say them. */
final class FigureText {
  private final Units units;
  private final ZoneId zone;

  FigureText(Session session, Units units) {
    this.units = units;
    this.zone = session.occasion().zone();
  }

  /** Texts for many sessions, which have no clock in common: clock times are in UTC. */
  FigureText(Units units) {
    this.units = units;
    this.zone = ZoneOffset.UTC;
  }

  Units units() {
    return units;
  }

  /** Returns 24 h clock time to the minute. */
  String clock(long at) {
    ZonedDateTime time = time(at);
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }

  /** Returns 24 h clock time to the second. */
  String clockSeconds(long at) {
    ZonedDateTime time = time(at);
    return String.format(
        Locale.ROOT, "%02d:%02d:%02d", time.getHour(), time.getMinute(), time.getSecond());
  }

  private ZonedDateTime time(long at) {
    return Instant.ofEpochMilli(at).atZone(zone);
  }

  String weight(double grams) {
    return WeightText.format(grams, units.weight());
  }

  String fineWeight(double grams) {
    return WeightText.formatFine(grams, units.weight());
  }

  /** Returns grams in the unit an axis counts in. */
  double axisWeight(double grams) {
    return grams / gramsPerAxisUnit();
  }

  double gramsPerAxisUnit() {
    return units.weight() == Units.Weight.KG ? 1000 : WeightText.GRAMS_PER_POUND;
  }

  String axisUnit() {
    return units.weight() == Units.Weight.KG ? "kg" : "lb";
  }

  /** Returns a rate of weight, no finer than it can be known: whole pounds from 10 lb up. */
  String weightAmount(double gramsPerHour) {
    return RoughText.weight(gramsPerHour, units.weight());
  }

  String weightPerHour(double gramsPerHour) {
    return weightAmount(gramsPerHour) + " an hour";
  }

  String weightPerHour(Rate rate) {
    return weightPerHour(rate.perHour())
        + " ("
        + RoughText.weights(rate.low(), rate.high(), units.weight())
        + ")";
  }

  static String perHour(double rate) {
    return number(rate) + " an hour";
  }

  static String perHour(Rate rate) {
    return perHour(rate.perHour()) + " (" + number(rate.low()) + "–" + number(rate.high()) + ")";
  }

  static String number(double value) {
    return RoughText.number(value);
  }

  static String sessions(int count) {
    return count == 1 ? "1 match" : count + " matches";
  }

  static String fish(int count) {
    return count == 0 ? "no fish" : count + " fish";
  }

  static String bites(int count) {
    return count == 0 ? "no bites" : count == 1 ? "1 bite" : count + " bites";
  }

  static String feeds(int count) {
    return count == 1 ? "1 feed" : count + " feeds";
  }

  static String minutes(double minutes) {
    return Math.round(minutes) + " min";
  }

  String line(Line line) {
    String distance = distance(line);
    // "pole 13 m" says it already.
    return distance.isEmpty() || line.name().contains(distance)
        ? line.name()
        : line.name() + ", " + distance;
  }

  /** Returns how far a line lies, or an empty text. */
  String distance(Line line) {
    Double distance = line.place().distanceM();
    return distance == null ? "" : units.distance(distance);
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
