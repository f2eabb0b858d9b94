package org.fadeline.io;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fadeline.model.Line;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.jspecify.annotations.Nullable;

/**
 * Writes session JSON, version 1: keys in a fixed order, one line an event, so that saving without
 * an edit gives the same bytes and a comparison of two versions shows what changed.
 */
public final class SessionWriter {
  /** Value of the field {@code format}. */
  public static final String FORMAT = "fadeline-session";

  /** The version written, and the newest that can be read for editing. */
  public static final int VERSION = 1;

  /** Name of the field that holds the hash. */
  static final String HASH = "sha256";

  private final Session session;
  private final ZoneId zone;
  private final TreeMap<String, String> unknown;

  private SessionWriter(Session session) {
    this.session = session;
    this.zone = session.occasion().zone();
    this.unknown = new TreeMap<>(session.document().unknown());
  }

  /** Returns the session as JSON text with its hash. */
  public static String toJson(Session session) {
    Json.Obj root = new SessionWriter(session).root();
    // The hash is taken over the text whose hash is empty; the file then holds it in that place.
    String empty = JsonText.pretty(root.put(HASH, ""));
    return JsonText.pretty(root.put(HASH, hashOf(empty)));
  }

  /** Returns the session as UTF-8 JSON with its hash. */
  public static byte[] toBytes(Session session) {
    return toJson(session).getBytes(StandardCharsets.UTF_8);
  }

  /** Returns the SHA-256 (FIPS 180-4) of the text's UTF-8 bytes, 64 lower-case hex digits. */
  static String hashOf(String text) {
    return hashOf(text.getBytes(StandardCharsets.UTF_8));
  }

  static String hashOf(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private Json.Obj root() {
    Occasion occasion = session.occasion();
    Json.Obj root =
        Json.Obj.make()
            .put("format", FORMAT)
            .put("version", (long) VERSION)
            .put("id", session.document().id())
            .put("sequence", session.document().sequence())
            .put(HASH, "")
            .put("title", occasion.title())
            .put("date", occasion.date().toString())
            .put("zone", zone.getId())
            .put("venue", venue(occasion.venue()))
            .put("peg", peg(occasion.peg()))
            .put("match", match(session.match()))
            .put("weather", weather(occasion.weather()))
            .put("lines", lines())
            .put("events", events());
    outcome(session.outcome(), root);
    return withUnknown(root, "");
  }

  /** Adds the unknown fields that belong directly to an object, in the order of their names. */
  private Json.Obj withUnknown(Json.Obj object, String place) {
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

  private Json.Obj match(Match match) {
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

  private Json.Arr lines() {
    return Json.Arr.of(session.lines().stream().map(this::line).toList());
  }

  private Json.Obj line(Line line) {
    String place = "/lines/" + JsonFields.escape(line.id());
    return LineJson.write(
        line, rig -> withUnknown(rig, place + "/rig"), o -> withUnknown(o, place));
  }

  private Json.Arr events() {
    List<Json> out = new ArrayList<>(session.events().size());
    for (SessionEvent event : session.events()) {
      out.add(
          withUnknown(EventJson.write(event, zone), "/events/" + JsonFields.escape(event.id())));
    }
    return Json.Arr.of(out);
  }

  private void outcome(Outcome outcome, Json.Obj root) {
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

  /** Returns the JSON text of the unknown fields of one event, or null where it has none. */
  static @Nullable String unknownOf(Session session, String eventId) {
    Json.Obj object =
        new SessionWriter(session)
            .withUnknown(Json.Obj.make(), "/events/" + JsonFields.escape(eventId));
    return object.members().isEmpty() ? null : JsonText.compact(object);
  }
}
