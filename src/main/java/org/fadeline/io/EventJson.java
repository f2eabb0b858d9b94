package org.fadeline.io;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/** One event as a JSON object, both ways. */
public final class EventJson {
  /** Largest weight a file may hold, grams. */
  public static final double MOST_GRAMS = 1e6;

  /** Largest amount of feed, in its unit. */
  public static final double MOST_FEED = 1e6;

  /** Most fish of one event. */
  static final int MOST_FISH = 100_000;

  private EventJson() {}

  /** Returns where the unknown fields of an event belong. */
  static String place(String eventId) {
    return "/events/" + JsonPointer.escape(eventId);
  }

  /** Returns events with their unknown fields, times with the zone's offsets. */
  public static Json.Arr write(List<SessionEvent> events, ZoneId zone, UnknownFields unknown) {
    return Json.Arr.of(
        events.stream().map(e -> unknown.addTo(write(e, zone), place(e.id()))).toList());
  }

  private static Json.Obj write(SessionEvent event, ZoneId zone) {
    Json.Obj out =
        Json.Obj.make()
            .put("id", event.id())
            .put("at", ClockTimes.withOffset(event.at(), zone))
            .put("line", event.lineId())
            .put("kind", event.kind().word());
    writeOwn(event, zone, out);
    return out.put("note", event.note());
  }

  private static void writeOwn(SessionEvent event, ZoneId zone, Json.Obj out) {
    if (event instanceof SessionEvent.Fed fed) {
      writeFeed(fed.feed(), zone, out);
    } else if (event instanceof SessionEvent.Lost lost) {
      out.put("species", lost.species());
    } else if (event instanceof SessionEvent.Move move) {
      out.put("reason", move.reason());
    } else if (event instanceof SessionEvent.Off off) {
      out.put("reason", off.reason());
    } else if (event instanceof SessionEvent.Stopped stopped) {
      out.put("reason", stopped.reason());
    } else if (event instanceof SessionEvent.Change change) {
      out.put("hookbait", change.hookbait());
    } else if (event instanceof SessionEvent.Net net) {
      out.put("net", net.net());
    } else {
      if (event instanceof SessionEvent.Neighbour neighbour) {
        out.put("peg", neighbour.peg());
      }
      Fish fish = event.fishOrNull();
      if (fish != null) {
        writeFish(fish, out);
      }
    }
  }

  private static void writeFish(Fish fish, Json.Obj out) {
    out.put("count", (long) fish.count())
        .put("species", fish.species())
        .put("weightG", fish.grams());
    if (fish.weighed() || fish.grams() != null) {
      out.put("weightFrom", fish.weighed() ? "weighed" : "estimated");
    }
  }

  private static void writeFeed(Feed feed, ZoneId zone, Json.Obj out) {
    out.put("bait", feed.bait());
    Feed.Amount amount = feed.amount();
    if (amount != null) {
      out.put("amount", amount.value()).put("unit", amount.unit().word());
    }
    out.put("method", feed.method());
    Feed.Pattern pattern = feed.pattern();
    if (pattern != null) {
      out.put("everyS", pattern.everySeconds());
      Long until = pattern.until();
      if (until != null) {
        out.put("until", ClockTimes.withOffset(until, zone));
      }
    }
  }

  /**
   * Reads an event, or returns null after adding its problems.
   *
   * @param id the event's id where the file gives none
   */
  public static @Nullable SessionEvent read(JsonFields fields, String id, ZoneId zone) {
    int before = fields.scope().problems().errors();
    Long at = fields.requiredInstant("at", zone);
    fields.raw("id");
    String line = fields.text("line");
    String word = fields.requiredText("kind", "write one of " + words());
    EventKind kind = word == null ? null : EventKind.ofWord(word).orElse(null);
    if (word != null && kind == null) {
      fields.error(
          "kind", Shown.value(word) + " is no kind of event known here", "write one of " + words());
    }
    Stamp stamp = new Stamp(id, at == null ? 0 : at, line, fields.text("note"));
    SessionEvent event = kind == null ? null : readOwn(kind, stamp, fields, zone);
    return fields.scope().problems().errors() > before ? null : event;
  }

  /** Returns the words of all kinds, for messages. */
  public static String words() {
    return Arrays.stream(EventKind.values()).map(EventKind::word).collect(Collectors.joining(", "));
  }

  private static SessionEvent readOwn(EventKind kind, Stamp stamp, JsonFields fields, ZoneId zone) {
    return switch (kind) {
      case CAST -> new SessionEvent.Cast(stamp);
      case BITE -> new SessionEvent.Bite(stamp);
      case HOOKED -> new SessionEvent.Hooked(stamp);
      case LANDED -> new SessionEvent.Landed(stamp, readFish(fields, 1));
      case FOUL -> new SessionEvent.Foul(stamp, readFish(fields, 1));
      case LOST -> new SessionEvent.Lost(stamp, fields.text("species"));
      case MOVE -> new SessionEvent.Move(stamp, fields.text("reason"));
      case OFF -> new SessionEvent.Off(stamp, fields.text("reason"));
      case STOPPED -> new SessionEvent.Stopped(stamp, fields.text("reason"));
      case RESUMED -> new SessionEvent.Resumed(stamp);
      case FED -> new SessionEvent.Fed(stamp, readFeed(fields, zone));
      case COUNT -> new SessionEvent.Count(stamp, readCount(fields));
      case CHANGE -> new SessionEvent.Change(stamp, fields.text("hookbait"));
      case NET -> new SessionEvent.Net(stamp, fields.whole("net", 1, Integer.MAX_VALUE));
      case INDICATION -> new SessionEvent.Indication(stamp);
      case SIGN -> new SessionEvent.Sign(stamp);
      case NEIGHBOUR -> new SessionEvent.Neighbour(stamp, fields.text("peg"), readFish(fields, 0));
      case WEATHER -> new SessionEvent.Weather(stamp);
      case NOTE -> new SessionEvent.Note(stamp);
      case ALL_IN -> new SessionEvent.AllIn(stamp);
      case ALL_OUT -> new SessionEvent.AllOut(stamp);
    };
  }

  private static Fish readCount(JsonFields fields) {
    if (!fields.has("count") && !fields.has("weightG")) {
      fields.error(
          "count", "a count needs fish or weight since the last one", "write count or weightG");
    }
    Fish fish = readFish(fields, 0);
    return fields.has("count") ? fish : new Fish(0, fish.species(), fish.grams(), fish.weighed());
  }

  private static Fish readFish(JsonFields fields, int fewest) {
    fields.notNull("count");
    Integer count = fields.whole("count", fewest, MOST_FISH);
    String from = fields.text("weightFrom");
    if (from != null && !from.equals("weighed") && !from.equals("estimated")) {
      fields.error(
          "weightFrom",
          Shown.value(from) + " says not where the weight comes from",
          "write weighed or estimated");
    }
    return new Fish(
        count == null ? 1 : count,
        fields.text("species"),
        fields.number("weightG", 0, MOST_GRAMS),
        "weighed".equals(from));
  }

  private static Feed readFeed(JsonFields fields, ZoneId zone) {
    Double value = fields.number("amount", Double.MIN_VALUE, MOST_FEED);
    String word = fields.text("unit");
    Feed.Unit unit = word == null ? null : Feed.Unit.ofWord(word).orElse(null);
    if (word != null && unit == null) {
      fields.error(
          "unit",
          Shown.value(word) + " is no unit of bait",
          "write pieces, ml, g, balls or pouchfuls");
    }
    if (!fields.isMissing("amount") && fields.isMissing("unit")) {
      fields.error("unit", "the amount has no unit", "write pieces, ml, g, balls or pouchfuls");
    }
    if (fields.isMissing("amount") && !fields.isMissing("unit")) {
      fields.error("amount", "the unit has no amount", "write the amount, or leave the unit out");
    }
    Double every = fields.number("everyS", Double.MIN_VALUE, 86_400);
    Long until = fields.instant("until", zone);
    if (until != null && fields.isMissing("everyS")) {
      fields.error(
          "everyS", "the feed has an end but no interval", "write everyS, or leave until out");
    }
    return new Feed(
        fields.text("bait"),
        value == null || unit == null ? null : new Feed.Amount(value, unit),
        fields.text("method"),
        every == null ? null : new Feed.Pattern(every, until));
  }
}
