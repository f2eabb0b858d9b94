package org.fadeline.demo;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.fadeline.model.Document;
import org.fadeline.model.Match;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.WeatherNote;

/** Plays an invented match of five hours on an invented water, second by second. */
public final class DemoMatch {
  /** Length of the match, minutes. */
  public static final int MINUTES = 300;

  private static final ZoneId ZONE = ZoneId.of("Europe/London");

  private DemoMatch() {}

  /**
   * A match and the truth behind it.
   *
   * @param session the full log, as one would take it from film
   * @param bitesPerHour true rate that a bait would have met at each minute 0 to 299 after all in,
   *     by line id, fished or not
   * @param trueGrams true weight of each fish landed (foul-hooked ones too), by event id
   */
  public record Played(
      Session session, Map<String, List<Double>> bitesPerHour, Map<String, Double> trueGrams) {
    /** Copies the maps. */
    public Played {
      bitesPerHour = Map.copyOf(bitesPerHour);
      trueGrams = Map.copyOf(trueGrams);
    }

    /** Returns how many fish were landed and counted (foul-hooked ones do not count). */
    public int fish() {
      return (int) session.events().stream().filter(SessionEvent.Landed.class::isInstance).count();
    }

    /** Returns the true weight in grams of the fish counted by {@link #fish}. */
    public double grams() {
      return session.events().stream()
          .filter(SessionEvent.Landed.class::isInstance)
          .mapToDouble(event -> trueGrams.getOrDefault(event.id(), 0.0))
          .sum();
    }
  }

  /** Returns the session of a match; the same seed gives the same match. */
  public static Session generate(DemoWater water, DemoPlan plan, long seed) {
    return play(water, plan, seed).session();
  }

  /** Returns a match with the truth behind it. */
  public static Played play(DemoWater water, DemoPlan plan, long seed) {
    DemoWater.Day day = water.day();
    long allIn = day.allIn().atZone(ZONE).toInstant().toEpochMilli();
    DemoAngler angler = new DemoAngler(water, plan, seed, allIn);
    angler.fish();
    Match match = new Match(allIn, allIn + MINUTES * 60_000L, water.rules());
    Occasion occasion =
        new Occasion(
            day.title(),
            day.allIn().toLocalDate(),
            ZONE,
            water.venue(),
            water.peg(),
            day.weather().stream().map(note -> from(note, allIn)).toList());
    String id =
        UUID.nameUUIDFromBytes((day.title() + " " + seed).getBytes(StandardCharsets.UTF_8))
            .toString();
    Session session =
        new Session(
            Document.of(id, 0),
            occasion,
            match,
            water.lines().stream().map(DemoLine::line).toList(),
            angler.events(),
            new Outcome(angler.weighIn(), angler.result(), List.of()));
    return new Played(session, angler.bitesPerHour(), angler.trueGrams());
  }

  private static WeatherNote from(WeatherNote note, long allIn) {
    return new WeatherNote(
        allIn + note.at(), note.wind(), note.cloudOktas(), note.airC(), note.waterC(), note.note());
  }
}
