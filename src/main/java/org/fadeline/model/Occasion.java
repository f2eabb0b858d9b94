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
}
