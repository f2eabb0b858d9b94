package org.fadeline.io;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fadeline.model.Line;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;

/** Writes the parts of a session as JSON, with the unknown fields that belong to them. */
public final class SessionParts {
  private final ZoneId zone;
  private final TreeMap<String, String> unknown;

  /**
   * Makes a writer of parts.
   *
   * @param zone whose offsets times are written with
   * @param unknown place to JSON text
   */
  public SessionParts(ZoneId zone, Map<String, String> unknown) {
    this.zone = zone;
    this.unknown = new TreeMap<>(unknown);
  }

  /** Adds the unknown fields that belong directly to an object, in the order of their names. */
  Json.Obj withUnknown(Json.Obj object, String place) {
    String from = place + "/";
    for (Map.Entry<String, String> entry : unknown.tailMap(from).entrySet()) {
      if (!entry.getKey().startsWith(from)) {
        break;
      }
      String name = entry.getKey().substring(from.length());
      if (name.indexOf('/') < 0) {
        object.members().putIfAbsent(JsonFields.unescape(name), unknownValue(entry.getValue()));
      }
    }
    return object;
  }

  private static Json unknownValue(String text) {
    Json value = JsonParse.parse("", text, new ImportReport.Collector());
    if (value == null) {
      throw new IllegalArgumentException("an unknown field does not hold JSON: " + text);
    }
    return value;
  }

  /** Puts when and where into an object. */
  public void putOccasion(Occasion occasion, Json.Obj root) {
    root.put("title", occasion.title())
        .put("date", occasion.date().toString())
        .put("zone", occasion.zone().getId())
        .put("venue", venue(occasion.venue()))
        .put("peg", peg(occasion.peg()))
        .put("weather", weather(occasion.weather()));
  }

  private Json.Obj venue(Venue venue) {
    return withUnknown(
        Json.Obj.make()
            .put("name", venue.name())
            .put("latitude", venue.latitude())
            .put("longitude", venue.longitude()),
        "/venue");
  }

  private Json.Obj peg(Peg peg) {
    Json.Obj out =
        Json.Obj.make()
            .put("number", peg.number())
            .put("facingDegrees", peg.facingDegrees())
            .put("bankHeightM", peg.bankHeightM());
    List<Json> features = new ArrayList<>();
    for (Peg.Feature feature : peg.features()) {
      features.add(
          withUnknown(
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
    return withUnknown(out, "/peg");
  }

  public Json.Obj match(Match match) {
    MatchRules rules = match.rules();
    Json.Obj out =
        Json.Obj.make()
            .put("allIn", ClockTimes.withOffset(match.allIn(), zone))
            .put("allOut", ClockTimes.withOffset(match.allOut(), zone))
            .put("playingAtWhistleMinutes", rules.playingAtWhistleMinutes())
            .put("foulHookedCounts", rules.foulHookedCounts())
            .put("liveFiguresAllowed", rules.liveFiguresAllowed());
    MatchRules.NetLimit limit = rules.netLimit();
    if (limit != null) {
      out.put(
          "netLimit",
          withUnknown(
              Json.Obj.make()
                  .put("weightG", limit.grams())
                  .put("toleranceG", limit.toleranceGrams())
                  .put("exceeding", limit.exceeding()),
              "/match/netLimit"));
    }
    out.put("organiserRules", rules.organiserRules());
    return withUnknown(out, "/match");
  }

  private Json.Arr weather(List<WeatherNote> notes) {
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
      out.add(withUnknown(one, "/weather/" + out.size()));
    }
    return Json.Arr.of(out);
  }

  public Json.Arr lines(List<Line> lines) {
    return Json.Arr.of(lines.stream().map(this::line).toList());
  }

  private Json.Obj line(Line line) {
    String place = "/lines/" + JsonFields.escape(line.id());
    return LineJson.write(
        line, rig -> withUnknown(rig, place + "/rig"), o -> withUnknown(o, place));
  }

  Json.Arr events(List<SessionEvent> events) {
    List<Json> out = new ArrayList<>(events.size());
    for (SessionEvent event : events) {
      out.add(
          withUnknown(EventJson.write(event, zone), "/events/" + JsonFields.escape(event.id())));
    }
    return Json.Arr.of(out);
  }

  /** Puts weigh-in, result and footage into an object. */
  public void putOutcome(Outcome outcome, Json.Obj root) {
    List<Json> nets = new ArrayList<>();
    for (Outcome.NetWeight net : outcome.weighIn()) {
      nets.add(
          withUnknown(
              Json.Obj.make()
                  .put("net", (long) net.net())
                  .put("weightG", net.grams())
                  .put("holds", net.holds()),
              "/weighIn/" + nets.size()));
    }
    root.put("weighIn", Json.Arr.of(nets));
    Outcome.Result result = outcome.result();
    if (result != null) {
      root.put("result", result(result));
    }
    List<Json> media = new ArrayList<>();
    for (Outcome.Media one : outcome.media()) {
      media.add(
          withUnknown(
              Json.Obj.make()
                  .put("path", one.path())
                  .put("offsetMs", one.offsetMillis())
                  .put("rate", one.rate()),
              "/media/" + media.size()));
    }
    root.put("media", Json.Arr.of(media));
    List<Json> imports = new ArrayList<>();
    for (Outcome.Imported one : outcome.imports()) {
      imports.add(
          withUnknown(
              Json.Obj.make().put("file", one.file()).put("movedMs", one.movedMillis()),
              "/imports/" + imports.size()));
    }
    if (!imports.isEmpty()) {
      root.put("imports", Json.Arr.of(imports));
    }
  }

  private Json.Obj result(Outcome.Result result) {
    Json.Obj out =
        Json.Obj.make()
            .put("position", result.position())
            .put("section", result.section())
            .put("sectionPosition", result.sectionPosition())
            .put("of", result.of());
    List<Json> neighbours = new ArrayList<>();
    for (Outcome.NeighbourWeight one : result.neighbours()) {
      neighbours.add(
          withUnknown(
              Json.Obj.make().put("peg", one.peg()).put("weightG", one.grams()),
              "/result/neighbours/" + neighbours.size()));
    }
    out.put("neighbours", Json.Arr.of(neighbours));
    return withUnknown(out, "/result");
  }
}
