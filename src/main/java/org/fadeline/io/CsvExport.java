package org.fadeline.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVPrinter;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** Writes the event CSV. */
final class CsvExport {
  private final Session session;
  private final ZoneId zone;
  private final UnknownFields unknown;
  private final Map<String, Line> lines = new HashMap<>();
  private final Set<String> sharedSlugs = new HashSet<>();

  private CsvExport(Session session) {
    this.session = session;
    this.zone = session.occasion().zone();
    this.unknown = new UnknownFields(session.document().unknown());
    Set<String> slugs = new HashSet<>();
    for (Line line : session.lines()) {
      lines.put(line.id(), line);
      if (!slugs.add(CsvText.slug(line.name()))) {
        sharedSlugs.add(CsvText.slug(line.name()));
      }
    }
  }

  static String write(Session session) {
    List<Map<String, String>> rows = new CsvExport(session).rows();
    Set<String> columns = new LinkedHashSet<>(CsvColumns.WRITTEN);
    for (String name : CsvColumns.WRITTEN_IF_USED) {
      if (rows.stream().anyMatch(row -> row.containsKey(name))) {
        columns.add(name);
      }
    }
    List<List<String>> cells = new ArrayList<>();
    cells.add(List.copyOf(columns));
    for (Map<String, String> row : rows) {
      cells.add(columns.stream().map(name -> row.getOrDefault(name, "")).toList());
    }
    return print(cells);
  }

  static String rejects(List<List<String>> rows) {
    return rows.isEmpty()
        ? ""
        : print(rows.stream().map(r -> r.stream().map(CsvExport::harmless).toList()).toList());
  }

  /** A cell as it was read, guarded where it would start a formula. */
  private static String harmless(String cell) {
    return CsvText.startsLikeFormula(cell) && !cell.matches("[+-]?[\\d.,]+") ? "'" + cell : cell;
  }

  private static String print(List<List<String>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CsvTable.format(','))) {
      for (List<String> row : rows) {
        printer.printRecord(row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a string builder took no text", e);
    }
    return out.toString();
  }

  private List<Map<String, String>> rows() {
    List<Map<String, String>> rows = new ArrayList<>();
    List<SessionEvent> events = session.events();
    long allIn = session.match().allIn();
    long allOut = session.match().allOut();
    // The frame rows stand beside events of other times or none; they make no event when read.
    boolean inRow = !isOnly(EventKind.ALL_IN, allIn);
    boolean outRow = !isOnly(EventKind.ALL_OUT, allOut);
    for (SessionEvent event : events) {
      if (inRow && event.at() >= allIn) {
        rows.add(frame(EventKind.ALL_IN, allIn));
        inRow = false;
      }
      if (outRow && event.at() > allOut) {
        rows.add(frame(EventKind.ALL_OUT, allOut));
        outRow = false;
      }
      rows.add(row(event));
    }
    if (inRow) {
      rows.add(frame(EventKind.ALL_IN, allIn));
    }
    if (outRow) {
      rows.add(frame(EventKind.ALL_OUT, allOut));
    }
    return rows;
  }

  private boolean isOnly(EventKind kind, long at) {
    List<SessionEvent> all = session.events().stream().filter(e -> e.kind() == kind).toList();
    return all.size() == 1 && all.get(0).at() == at;
  }

  private Map<String, String> frame(EventKind kind, long at) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("time", ClockTimes.local(at, zone));
    row.put("event", kind.word());
    return row;
  }

  private Map<String, String> row(SessionEvent event) {
    Map<String, String> row = frame(event.kind(), event.at());
    text(row, "id", event.id());
    String lineId = event.lineId();
    if (lineId != null) {
      putLine(row, lineId);
    }
    text(row, "note", event.note());
    text(row, "other", unknown.ofEvent(event.id()));
    putOwn(row, event);
    return row;
  }

  private void putLine(Map<String, String> row, String lineId) {
    Line line = lines.get(lineId);
    String name = line == null || line.name().isBlank() ? lineId : line.name();
    text(row, "line", name);
    String slug = CsvText.slug(name);
    if (!slug.equals(lineId) || sharedSlugs.contains(slug)) {
      text(row, "line_id", lineId);
    }
  }

  private void putOwn(Map<String, String> row, SessionEvent event) {
    if (event instanceof SessionEvent.Fed fed) {
      putFeed(row, fed.feed());
    } else if (event instanceof SessionEvent.Lost lost) {
      text(row, "species", lost.species());
    } else if (event instanceof SessionEvent.Move move) {
      text(row, "reason", move.reason());
    } else if (event instanceof SessionEvent.Off off) {
      text(row, "reason", off.reason());
    } else if (event instanceof SessionEvent.Stopped stopped) {
      text(row, "reason", stopped.reason());
    } else if (event instanceof SessionEvent.Change change) {
      text(row, "bait", change.hookbait());
    } else if (event instanceof SessionEvent.Net net) {
      Integer number = net.net();
      if (number != null) {
        row.put("count", number.toString());
      }
    } else {
      if (event instanceof SessionEvent.Neighbour neighbour) {
        text(row, "peg", neighbour.peg());
      }
      Fish fish = event.fishOrNull();
      if (fish != null) {
        putFish(row, fish);
      }
    }
  }

  private static void putFish(Map<String, String> row, Fish fish) {
    row.put("count", Integer.toString(fish.count()));
    text(row, "species", fish.species());
    number(row, "weight_g", fish.grams());
    if (fish.weighed()) {
      row.put("weighed", "yes");
    } else if (fish.grams() != null) {
      row.put("weighed", "no");
    }
  }

  private void putFeed(Map<String, String> row, Feed feed) {
    text(row, "bait", feed.bait());
    Feed.Amount amount = feed.amount();
    if (amount != null) {
      number(row, "amount", amount.value());
      row.put("unit", amount.unit().word());
    }
    text(row, "method", feed.method());
    Feed.Pattern pattern = feed.pattern();
    if (pattern != null) {
      number(row, "every_s", pattern.everySeconds());
      Long until = pattern.until();
      if (until != null) {
        row.put("until", ClockTimes.local(until, zone));
      }
    }
  }

  private static void text(Map<String, String> row, String name, @Nullable String value) {
    if (value != null) {
      row.put(name, CsvText.guard(value));
    }
  }

  private static void number(Map<String, String> row, String name, @Nullable Double value) {
    if (value != null) {
      row.put(name, Json.Num.of(value).digits());
    }
  }
}
