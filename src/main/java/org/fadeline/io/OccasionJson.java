package org.fadeline.io;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Peg;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.jspecify.annotations.Nullable;

/** Reads when and where, the frame and the rules. */
public final class OccasionJson {
  private static final double MOST = 1e6;

  private OccasionJson() {}

  public static @Nullable Match match(JsonFields root, ZoneId zone) {
    JsonFields fields = root.object("match");
    if (fields == null) {
      if (root.isMissing("match")) {
        root.error("match", "the field \"match\" is missing", "write it with allIn and allOut");
      }
      return null;
    }
    Long allIn = fields.requiredInstant("allIn", zone);
    Long allOut = fields.requiredInstant("allOut", zone);
    MatchRules rules = rules(fields);
    fields.keepRest("/match");
    if (allIn == null || allOut == null) {
      return null;
    }
    if (allOut <= allIn) {
      fields.error("allOut", "all out does not come after all in", "correct one of the two");
      return null;
    }
    return new Match(allIn, allOut, rules);
  }

  private static MatchRules rules(JsonFields fields) {
    fields.notNull("playingAtWhistleMinutes");
    Double minutes = fields.number("playingAtWhistleMinutes", 0, 60);
    MatchRules.NetLimit limit = null;
    JsonFields net = fields.object("netLimit");
    if (net != null) {
      Double grams = net.number("weightG", Double.MIN_VALUE, MOST);
      Double tolerance = net.number("toleranceG", 0, MOST);
      if (net.isMissing("weightG")) {
        net.error("weightG", "the net limit has no weight", "write it in grams");
      }
      String exceeding = net.text("exceeding");
      if (grams != null) {
        limit = new MatchRules.NetLimit(grams, tolerance == null ? 0 : tolerance, exceeding);
      }
      net.keepRest("/match/netLimit");
    }
    return new MatchRules(
        minutes == null ? 0 : minutes,
        fields.flag("foulHookedCounts", false),
        fields.flag("liveFiguresAllowed", false),
        limit,
        fields.text("organiserRules"));
  }

  public static @Nullable Occasion occasion(
      JsonFields root, @Nullable LocalDate dateOfAllIn, ZoneId zone) {
    String title = root.text("title");
    LocalDate date = root.date("date");
    Venue venue = venue(root.object("venue"));
    Peg peg = peg(root.object("peg"));
    List<WeatherNote> weather = weather(root, zone);
    if (date != null && dateOfAllIn != null && !date.equals(dateOfAllIn)) {
      root.warning(
          "date",
          "the date is not that of all in, " + dateOfAllIn,
          "correct the one that is wrong");
    }
    LocalDate used = date == null ? dateOfAllIn : date;
    return used == null
        ? null
        : new Occasion(title == null ? "" : title, used, zone, venue, peg, weather);
  }

  private static Venue venue(@Nullable JsonFields fields) {
    if (fields == null) {
      return Venue.UNKNOWN;
    }
    String name = fields.text("name");
    Double latitude = fields.number("latitude", -90, 90);
    Double longitude = fields.number("longitude", -180, 180);
    if (fields.isMissing("latitude") != fields.isMissing("longitude")) {
      fields.error(
          "latitude", "latitude and longitude belong together", "write both, or leave both out");
    }
    fields.keepRest("/venue");
    return latitude == null || longitude == null
        ? new Venue(name, null, null)
        : new Venue(name, latitude, longitude);
  }

  private static Peg peg(@Nullable JsonFields fields) {
    if (fields == null) {
      return Peg.UNKNOWN;
    }
    List<Peg.Feature> features = new ArrayList<>();
    int index = 0;
    for (JsonFields one : fields.objects("features")) {
      String name = one.requiredText("name", "say what it is, such as reeds");
      Double distance = required(one, "distanceM", 0, 500);
      Double bearing = required(one, "bearingDegrees", -180, 180);
      Double width = one.number("widthM", 0, 500);
      if (name != null && distance != null && bearing != null) {
        features.add(new Peg.Feature(name, distance, bearing, width));
      }
      one.keepRest("/peg/features/" + index++);
    }
    Peg peg =
        new Peg(
            fields.text("number"),
            fields.number("facingDegrees", 0, 360),
            fields.number("bankHeightM", 0, 20),
            features);
    fields.keepRest("/peg");
    return peg;
  }

  private static List<WeatherNote> weather(JsonFields root, ZoneId zone) {
    List<WeatherNote> notes = new ArrayList<>();
    int index = 0;
    for (JsonFields one : root.objects("weather")) {
      Long at = one.requiredInstant("at", zone);
      Double from = one.number("windFromDegrees", 0, 360);
      Integer force = one.whole("windForce", 0, 12);
      if (force != null && one.isMissing("windFromDegrees")) {
        one.error(
            "windForce", "the wind has a force but no direction", "write windFromDegrees as well");
      }
      WeatherNote note =
          new WeatherNote(
              at == null ? 0 : at,
              from == null ? null : new WeatherNote.Wind(from, force),
              one.number("cloudOktas", 0, 8),
              one.number("airC", -60, 60),
              one.number("waterC", -2, 50),
              one.text("note"));
      notes.add(note);
      one.keepRest("/weather/" + index++);
    }
    return notes;
  }

  /** Reads a number, adding an error where it is absent. */
  static @Nullable Double required(JsonFields fields, String name, double low, double high) {
    if (fields.isMissing(name)) {
      fields.error(name, "the field \"" + name + "\" is missing", "write a number");
      return null;
    }
    return fields.number(name, low, high);
  }
}
