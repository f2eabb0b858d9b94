package org.fadeline.io;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/** What each kind of event carries as cells of its row, both ways. */
final class EventCells {
  private EventCells() {}

  /**
   * Writes what an event carries into the cells of its row, by column; what is not known has no
   * cell.
   *
   * @param zone whose clock times are written by
   */
  static void write(SessionEvent event, ZoneId zone, Map<String, String> row) {
    if (event instanceof SessionEvent.Fed fed) {
      writeFeed(fed.feed(), zone, row);
    } else if (event instanceof SessionEvent.Lost lost) {
      put(row, "species", lost.species());
    } else if (event instanceof SessionEvent.Move move) {
      put(row, "reason", move.reason());
    } else if (event instanceof SessionEvent.Off off) {
      put(row, "reason", off.reason());
    } else if (event instanceof SessionEvent.Stopped stopped) {
      put(row, "reason", stopped.reason());
    } else if (event instanceof SessionEvent.Change change) {
      put(row, "bait", change.hookbait());
    } else if (event instanceof SessionEvent.Net net) {
      Integer number = net.net();
      if (number != null) {
        row.put("count", number.toString());
      }
    } else {
      if (event instanceof SessionEvent.Neighbour neighbour) {
        put(row, "peg", neighbour.peg());
      }
      Fish fish = event.fishOrNull();
      if (fish != null) {
        writeFish(fish, row);
      }
    }
  }

  private static void writeFish(Fish fish, Map<String, String> row) {
    row.put("count", Integer.toString(fish.count()));
    put(row, "species", fish.species());
    put(row, "weight_g", fish.grams());
    if (fish.weighed()) {
      row.put("weighed", "yes");
    } else if (fish.grams() != null) {
      row.put("weighed", "no");
    }
  }

  private static void writeFeed(Feed feed, ZoneId zone, Map<String, String> row) {
    put(row, "bait", feed.bait());
    Feed.Amount amount = feed.amount();
    if (amount != null) {
      put(row, "amount", amount.value());
      row.put("unit", amount.unit().word());
    }
    put(row, "method", feed.method());
    Feed.Pattern pattern = feed.pattern();
    if (pattern != null) {
      put(row, "every_s", pattern.everySeconds());
      Long until = pattern.until();
      if (until != null) {
        row.put("until", ClockTimes.local(until, zone));
      }
    }
  }

  /** Puts a text into its cell, guarded, where there is one. */
  static void put(Map<String, String> row, String name, @Nullable String value) {
    if (value != null) {
      row.put(name, CsvText.guard(value));
    }
  }

  private static void put(Map<String, String> row, String name, @Nullable Double value) {
    if (value != null) {
      row.put(name, Json.Num.of(value).digits());
    }
  }

  /** Reads an event; where a cell is bad, its problem is added and the value is not to be used. */
  static SessionEvent read(
      EventKind kind, Stamp stamp, CsvRow row, CsvTimes times, Map<String, String> unknown) {
    other(row, EventJson.place(stamp.id()) + "/", unknown);
    return switch (kind) {
      case CAST -> new SessionEvent.Cast(stamp);
      case BITE -> new SessionEvent.Bite(stamp);
      case HOOKED -> new SessionEvent.Hooked(stamp);
      case LANDED -> new SessionEvent.Landed(stamp, fish(row, 1, 1));
      case LOST -> new SessionEvent.Lost(stamp, row.text("species"));
      case FOUL -> new SessionEvent.Foul(stamp, fish(row, 1, 1));
      case MOVE -> new SessionEvent.Move(stamp, row.text("reason"));
      case OFF -> new SessionEvent.Off(stamp, row.text("reason"));
      case STOPPED -> new SessionEvent.Stopped(stamp, row.text("reason"));
      case RESUMED -> new SessionEvent.Resumed(stamp);
      case FED -> new SessionEvent.Fed(stamp, feed(row, times));
      case COUNT -> new SessionEvent.Count(stamp, count(row));
      case CHANGE -> new SessionEvent.Change(stamp, row.text("bait"));
      case NET -> new SessionEvent.Net(stamp, row.whole("count", 1, Integer.MAX_VALUE));
      case INDICATION -> new SessionEvent.Indication(stamp);
      case SIGN -> new SessionEvent.Sign(stamp);
      case NEIGHBOUR -> new SessionEvent.Neighbour(stamp, row.text("peg"), fish(row, 0, 1));
      case WEATHER -> new SessionEvent.Weather(stamp);
      case NOTE -> new SessionEvent.Note(stamp);
      case ALL_IN -> new SessionEvent.AllIn(stamp);
      case ALL_OUT -> new SessionEvent.AllOut(stamp);
    };
  }

  private static void other(CsvRow row, String place, Map<String, String> unknown) {
    String text = row.text("other");
    if (text == null) {
      return;
    }
    ImportReport.Collector inside = new ImportReport.Collector();
    if (JsonParse.parse("", text, inside) instanceof Json.Obj obj && inside.errors() == 0) {
      obj.members()
          .forEach(
              (name, value) ->
                  unknown.put(place + JsonPointer.escape(name), JsonText.compact(value)));
    } else {
      row.error("other", "this is no JSON object", "write it as {\"name\": value}");
    }
  }

  private static Fish count(CsvRow row) {
    Fish fish = fish(row, 0, 0);
    if (!row.has("count") && fish.grams() == null) {
      row.error("count", "a count needs fish or weight since the last one", "write the number");
    }
    return fish;
  }

  private static Fish fish(CsvRow row, int fewest, int otherwise) {
    Integer count = row.whole("count", fewest, EventJson.MOST_FISH);
    return new Fish(
        count == null ? otherwise : count, row.text("species"), grams(row), weighed(row));
  }

  private static boolean weighed(CsvRow row) {
    String cell = row.plain("weighed");
    if (cell == null) {
      return false;
    }
    switch (cell.toLowerCase(Locale.ROOT)) {
      case "yes", "y", "true", "1", "weighed" -> {
        return true;
      }
      case "no", "n", "false", "0", "estimated" -> {
        return false;
      }
      default -> {
        row.error("weighed", Shown.value(cell) + " is neither yes nor no", "write yes or no");
        return false;
      }
    }
  }

  private static @Nullable Double grams(CsvRow row) {
    Double grams = row.number("weight_g", 0, EventJson.MOST_GRAMS);
    Double kilograms = row.number("weight_kg", 0, EventJson.MOST_GRAMS / 1000);
    Double imperial = imperial(row);
    Double said = said(row);
    int given = 0;
    for (String name : List.of("weight_g", "weight_kg", "weight")) {
      given += row.has(name) ? 1 : 0;
    }
    given += row.has("weight_lb") || row.has("weight_oz") || row.has("weight_dr") ? 1 : 0;
    if (given > 1) {
      row.error("weight_g", "the weight is given in two columns", "keep one of them");
      return null;
    }
    if (kilograms != null) {
      return kilograms * 1000;
    }
    return grams != null ? grams : imperial != null ? imperial : said;
  }

  private static @Nullable Double imperial(CsvRow row) {
    Double pounds = row.number("weight_lb", 0, 2204);
    Double ounces = row.number("weight_oz", 0, pounds == null ? 35_000 : 15.999999);
    Double drams = row.number("weight_dr", 0, pounds == null && ounces == null ? 1e5 : 15.999999);
    if (pounds == null && ounces == null && drams == null) {
      return null;
    }
    return (pounds == null ? 0 : pounds) * WeightText.GRAMS_PER_POUND
        + (ounces == null ? 0 : ounces) * WeightText.GRAMS_PER_OUNCE
        + (drams == null ? 0 : drams) * WeightText.GRAMS_PER_DRAM;
  }

  private static @Nullable Double said(CsvRow row) {
    String text = row.plain("weight");
    try {
      return text == null ? null : WeightText.grams(text, Units.Weight.LB_OZ);
    } catch (IllegalArgumentException e) {
      String[] parts = String.valueOf(e.getMessage()).split("; ", 2);
      row.error("weight", parts[0], parts.length > 1 ? parts[1] : "correct it");
      return null;
    }
  }

  private static Feed feed(CsvRow row, CsvTimes times) {
    Double value = row.number("amount", Double.MIN_VALUE, EventJson.MOST_FEED);
    String word = row.plain("unit");
    Feed.Unit unit =
        word == null ? null : Feed.Unit.ofWord(word.toLowerCase(Locale.ROOT)).orElse(null);
    if (word != null && unit == null) {
      row.error(
          "unit",
          Shown.value(word) + " is no unit of bait",
          "write pieces, ml, g, balls or pouchfuls");
    }
    if (row.has("amount") && word == null) {
      row.error("unit", "the amount has no unit", "write pieces, ml, g, balls or pouchfuls");
    }
    if (word != null && !row.has("amount") && !row.has("count")) {
      row.error("amount", "the unit has no amount", "write the amount, or leave the unit out");
    }
    if (!row.has("amount")) {
      // "fed, 10" with the number under count: that many pieces.
      value = row.number("count", Double.MIN_VALUE, EventJson.MOST_FEED);
      unit = word == null ? Feed.Unit.PIECES : unit;
    }
    Double every = row.number("every_s", Double.MIN_VALUE, 86_400);
    Long until = until(row, times);
    if (until != null && !row.has("every_s")) {
      row.error("every_s", "the feed has an end but no interval", "write how many seconds apart");
    }
    return new Feed(
        row.text("bait"),
        value == null || unit == null ? null : new Feed.Amount(value, unit),
        row.text("method"),
        every == null ? null : new Feed.Pattern(every, until));
  }

  private static @Nullable Long until(CsvRow row, CsvTimes times) {
    String cell = row.plain("until");
    try {
      return cell == null ? null : times.instant(cell);
    } catch (Refused refused) {
      row.error("until", refused.what(), refused.whatToDo());
      return null;
    }
  }
}
