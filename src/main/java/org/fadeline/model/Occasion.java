package org.fadeline.model;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * Where and when a session took place.
 *
 * @param title what the angler calls it
 * @param date local date of all in
 * @param zone IANA time zone of the water
 * @param venue the water
 * @param peg the drawn peg
 * @param weather notes over time, in order
 */
public record Occasion(
    String title, LocalDate date, ZoneId zone, Venue venue, Peg peg, List<WeatherNote> weather) {
  /** Copies the weather notes. */
  public Occasion {
    weather = List.copyOf(weather);
  }

  /** Returns this occasion with another title. */
  public Occasion withTitle(String newTitle) {
    return new Occasion(newTitle, date, zone, venue, peg, weather);
  }

  /** Returns this occasion with another date. */
  public Occasion withDate(LocalDate newDate) {
    return new Occasion(title, newDate, zone, venue, peg, weather);
  }

  /** Returns this occasion with another water. */
  public Occasion withVenue(Venue newVenue) {
    return new Occasion(title, date, zone, newVenue, peg, weather);
  }

  /** Returns this occasion with another peg. */
  public Occasion withPeg(Peg newPeg) {
    return new Occasion(title, date, zone, venue, newPeg, weather);
  }

  /** Returns this occasion with another weather. */
  public Occasion withWeather(List<WeatherNote> newWeather) {
    return new Occasion(title, date, zone, venue, peg, newWeather);
  }
}
