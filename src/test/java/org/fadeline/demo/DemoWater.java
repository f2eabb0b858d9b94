package org.fadeline.demo;

import java.time.LocalDateTime;
import java.util.List;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Peg;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;

/**
 * An invented water with its lines.
 *
 * @param name short name, "A", "B" or "C"
 * @param venue invented name and place
 * @param peg the peg
 * @param rules the match's rules
 * @param lines the lines
 * @param day the usual day of a match
 */
public record DemoWater(
    String name, Venue venue, Peg peg, MatchRules rules, List<DemoLine> lines, Day day) {
  /** Copies the lines. */
  public DemoWater {
    lines = List.copyOf(lines);
  }

  /** Returns the line with the given id. */
  public DemoLine line(String id) {
    return lines.stream()
        .filter(line -> line.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no line " + id + " on water " + name));
  }

  /** Returns this water on another day. */
  public DemoWater on(Day other) {
    return new DemoWater(name, venue, peg, rules, lines, other);
  }

  /**
   * One day of a match of five hours.
   *
   * @param title what the angler calls it
   * @param allIn local time of all in, Europe/London
   * @param weather notes; their instants are milliseconds after all in
   */
  public record Day(String title, LocalDateTime allIn, List<WeatherNote> weather) {
    /** Copies the notes. */
    public Day {
      weather = List.copyOf(weather);
    }
  }
}
