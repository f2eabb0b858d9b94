package org.fadeline.io;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fadeline.io.Problem.Severity;
import org.fadeline.model.Document;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Match;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Venue;
import org.jspecify.annotations.Nullable;

/** Makes a session of a table of events: its rows, its events and where what is wrong stands. */
final class CsvImport implements SessionRules.ProblemPlaces {
  private static final int ROWS_BETWEEN_LOOKS = 500;
  private final CsvTable table;
  private final ReadOptions options;
  private final CsvMapping mapping;
  private final ZoneId zone;
  private final ImportReport.Collector problems;
  private final Map<String, Line> lines = new LinkedHashMap<>();
  private final Map<String, CsvRow> rowOfEvent = new HashMap<>();
  private final Map<String, String> unknown = new HashMap<>();
  private final List<CsvRow> all = new ArrayList<>();
  private final List<CsvRead> reads = new ArrayList<>();
  private final EventCsv.Watcher watcher;
  private boolean undated;

  CsvImport(
      CsvTable table,
      ReadOptions options,
      ImportReport.Collector problems,
      EventCsv.Watcher watcher) {
    this.table = table;
    this.watcher = watcher;
    this.options = options;
    this.problems = problems;
    CsvMapping given = options.mapping();
    this.mapping = given == null ? CsvMapping.NONE : given;
    ZoneId givenZone = options.zone();
    this.zone = givenZone == null ? ZoneId.systemDefault() : givenZone;
  }

  /**
   * Returns the session.
   *
   * @param title of the session
   * @param documentId of the session
   * @param otherDate date to take where neither the file nor the options give one
   */
  ReadResult session(String title, String documentId, CsvFrame.Dated otherDate) {
    int beforeRows = problems.errors();
    readRows();
    if (options.zone() == null) {
      table.addAtTop(
          problems,
          Severity.WARNING,
          "no time zone is given, so the machine's is taken: " + zone,
          "give the water's zone if it is another");
    }
    Session session = reads.isEmpty() ? none() : build(title, documentId, otherDate);
    all.stream().filter(CsvRow::isBad).forEach(this::reject);
    boolean usable = problems.errors() == 0 || (options.skipBad() && beforeRows == 0);
    return new ReadResult(
        usable ? Optional.ofNullable(session) : Optional.empty(),
        problems.report(),
        Optional.empty(),
        undated);
  }

  private void reject(CsvRow row) {
    if (problems.rejected() == 0) {
      problems.reject(table.header());
    }
    problems.reject(row.cells());
  }

  private @Nullable Session none() {
    table.addAtTop(
        problems, Severity.ERROR, "there is no event that can be read", "write one row an event");
    return null;
  }

  private void readRows() {
    CsvMapping given = options.mapping();
    boolean comma = mapping.decimalComma() || (given == null && table.delimiter() == ';');
    for (CsvTable.Row row : table.rows()) {
      CsvRow cells = new CsvRow(table, row, comma, problems);
      all.add(cells);
      EventKind kind = kind(cells);
      CsvTimes.Written time = time(cells);
      if (kind != null && time != null) {
        reads.add(new CsvRead(cells, kind, time));
      }
      if (row.number() % ROWS_BETWEEN_LOOKS == 0) {
        watcher.rows(row.number(), table.rows().size());
      }
    }
  }

  private @Nullable EventKind kind(CsvRow row) {
    String cell = row.plain("event");
    if (cell == null) {
      row.error("event", "the row has no event", "write one of " + EventJson.words());
      return null;
    }
    String word = cell.toLowerCase(Locale.ROOT);
    EventKind kind = mapping.events().get(word);
    if (kind == null) {
      kind = EventKind.ofWord(word.replaceAll("[\\s_]+", "-")).orElse(null);
    }
    if (kind == null) {
      row.error(
          "event",
          Shown.value(cell) + " is no event known here",
          "write one of " + EventJson.words() + ", or map the word");
    }
    return kind;
  }

  private CsvTimes.@Nullable Written time(CsvRow row) {
    String cell = row.plain("time");
    String date = row.plain("date");
    if (cell == null) {
      row.error("time", "the row has no time", "write it as 10:42 or 10:42:05");
      return null;
    }
    try {
      return CsvTimes.written(cell, date, mapping);
    } catch (Refused refused) {
      row.error("time", refused.what(), refused.whatToDo());
      return null;
    }
  }

  private @Nullable Session build(String title, String documentId, CsvFrame.Dated otherDate) {
    CsvFrame frame = new CsvFrame(table, reads, zone, options, problems);
    CsvTimes times = frame.times(otherDate);
    undated = frame.isUndated();
    List<SessionEvent> events = events(times);
    Match match = frame.match(times, events);
    if (match == null) {
      return null;
    }
    Session session =
        new Session(
            new Document(documentId, 0, unknown),
            new Occasion(
                title,
                Instant.ofEpochMilli(match.allIn()).atZone(zone).toLocalDate(),
                zone,
                Venue.UNKNOWN,
                Peg.UNKNOWN,
                List.of()),
            match,
            List.copyOf(lines.values()),
            events,
            Outcome.UNKNOWN);
    Set<String> badIds = SessionRules.check(session, events, this, false, problems);
    for (String id : badIds) {
      CsvRow row = rowOfEvent.get(id);
      if (row != null) {
        row.markBad();
      }
    }
    return session.withEvents(events.stream().filter(e -> !badIds.contains(e.id())).toList());
  }

  private List<SessionEvent> events(CsvTimes times) {
    Set<String> taken = new HashSet<>();
    for (CsvRead read : reads) {
      String id = read.row().text("id");
      if (id != null) {
        if (!taken.add(id)) {
          read.row()
              .error(
                  "id",
                  "there are two events with the id " + Shown.value(id),
                  "give each event an id of its own, or none");
        } else if (id.isEmpty()) {
          read.row().error("id", "the id is empty", "leave the cell blank");
        }
      }
    }
    FreshIds fresh = new FreshIds(taken);
    List<SessionEvent> events = new ArrayList<>();
    for (CsvRead read : reads) {
      SessionEvent event = event(read, times, fresh);
      if (event != null && !read.row().isBad()) {
        events.add(event);
        rowOfEvent.put(event.id(), read.row());
      }
    }
    return events;
  }

  private @Nullable SessionEvent event(CsvRead read, CsvTimes times, FreshIds fresh) {
    CsvRow row = read.row();
    String given = row.text("id");
    boolean frameOnly =
        read.kind().group() == EventKind.Group.FRAME
            && given == null
            && !row.has("note")
            && !row.has("line");
    Long at = instant(read, times);
    String line = line(row);
    String note = row.text("note");
    if (at == null || frameOnly) {
      row.checkRest(read.kind().word());
      return null;
    }
    String id = given == null ? fresh.next() : given;
    SessionEvent event =
        EventCells.read(read.kind(), new Stamp(id, at, line, note), row, times, unknown);
    row.checkRest(read.kind().word());
    return event;
  }

  private @Nullable Long instant(CsvRead read, CsvTimes times) {
    try {
      return times.instant(read.time());
    } catch (Refused refused) {
      read.row().error("time", refused.what(), refused.whatToDo());
      return null;
    }
  }

  /** Returns the id of the row's line, adding the line when it is new. */
  private @Nullable String line(CsvRow row) {
    String name = row.text("line");
    String id = row.text("line_id");
    if (id == null && name == null) {
      return null;
    }
    String key = id == null ? CsvText.slug(String.valueOf(name)) : id;
    if (key.isEmpty()) {
      row.error("line", "the line has no name", "write its name, or leave the cell blank");
      return null;
    }
    lines.computeIfAbsent(key, k -> Line.named(k, name == null ? k : name));
    return key;
  }

  @Override
  public Problem atEvent(
      SessionEvent event, String field, Severity severity, String what, String whatToDo) {
    CsvRow row = rowOfEvent.get(event.id());
    return row == null
        ? atRoot(field, severity, what, whatToDo)
        : row.problem(field.equals("at") ? "time" : field, severity, what, whatToDo);
  }

  @Override
  public Problem atLine(Line line, String field, Severity severity, String what, String whatToDo) {
    return atRoot(field, severity, what, whatToDo);
  }

  @Override
  public Problem atRoot(String field, Severity severity, String what, String whatToDo) {
    return new Problem(table.file(), 1, 1, null, severity, what, whatToDo);
  }
}
