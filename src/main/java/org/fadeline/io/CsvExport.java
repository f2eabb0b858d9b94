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
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/** Writes the event CSV: its columns, its rows and the calls among them. */
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
    EventCells.put(row, "id", event.id());
    String lineId = event.lineId();
    if (lineId != null) {
      putLine(row, lineId);
    }
    EventCells.put(row, "note", event.note());
    EventCells.put(row, "other", unknown.ofEvent(event.id()));
    EventCells.write(event, zone, row);
    return row;
  }

  private void putLine(Map<String, String> row, String lineId) {
    Line line = lines.get(lineId);
    String name = line == null || line.name().isBlank() ? lineId : line.name();
    EventCells.put(row, "line", name);
    String slug = CsvText.slug(name);
    if (!slug.equals(lineId) || sharedSlugs.contains(slug)) {
      EventCells.put(row, "line_id", lineId);
    }
  }
}
