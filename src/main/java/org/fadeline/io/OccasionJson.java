package org.fadeline.io;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.Occasion;
import org.fadeline.model.Peg;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.jspecify.annotations.Nullable;

/** When and where a session was fished, as fields of its JSON object, both ways. */
public final class OccasionJson {
  private OccasionJson() {}

  /**
   * Puts when and where into an object, with its unknown fields.
   *
   * @param zone whose offsets times are written with
   */
  public static void put(Occasion occasion, ZoneId zone, UnknownFields unknown, Json.Obj root) {
    root.put("title", occasion.title())
        .put("date", occasion.date().toString())
        .put("zone", occasion.zone().getId())
        .put("venue", venue(occasion.venue(), unknown))
        .put("peg", peg(occasion.peg(), unknown))
        .put("weather", weather(occasion.weather(), zone, unknown));
  }

  private static Json.Obj venue(Venue venue, UnknownFields unknown) {
    return unknown.addTo(
        Json.Obj.make()
            .put("name", venue.name())
            .put("latitude", venue.latitude())
            .put("longitude", venue.longitude()),
        "/venue");
  }

  private static Json.Obj peg(Peg peg, UnknownFields unknown) {
    Json.Obj out =
        Json.Obj.make()
            .put("number", peg.number())
            .put("facingDegrees", peg.facingDegrees())
            .put("bankHeightM", peg.bankHeightM());
    List<Json> features = new ArrayList<>();
    for (Peg.Feature feature : peg.features()) {
      features.add(
          unknown.addTo(
              Json.Obj.make()
                  .put("name", feature.name())
                  .put("distanceM", feature.distanceM())
                  .put("bearingDegrees", feature.bearingDegrees())
                  .put("widthM", feature.widthM()),
              "/peg/features/" + features.size()));
    }
    if (!features.isEmpty()) {
      out.put("features", Json.Arr.of(features));
    }
    return unknown.addTo(out, "/peg");
  }

  private static Json.Arr weather(List<WeatherNote> notes, ZoneId zone, UnknownFields unknown) {
    List<Json> out = new ArrayList<>();
    for (WeatherNote note : notes) {
      Json.Obj one = Json.Obj.make().put("at", ClockTimes.withOffset(note.at(), zone));
      WeatherNote.Wind wind = note.wind();
      if (wind != null) {
        one.put("windFromDegrees", wind.fromDegrees()).put("windForce", wind.force());
      }
      one.put("cloudOktas", note.cloudOktas())
          .put("airC", note.airC())
          .put("waterC", note.waterC())
          .put("note", note.note());
      out.add(unknown.addTo(one, "/weather/" + out.size()));
    }
    return Json.Arr.of(out);
  }

  /**
   * Reads when and where, or returns null where there is no date.
   *
   * @param dateOfAllIn the date where the object has none, or null
   */
  public static @Nullable Occasion read(
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
      Double distance = one.requiredNumber("distanceM", 0, 500);
      Double bearing = one.requiredNumber("bearingDegrees", -180, 180);
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
}
