package org.fadeline.io;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.fadeline.io.Problem.Severity;
import org.fadeline.model.Document;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Venue;
import org.jspecify.annotations.Nullable;

/** Makes a session of a table of events. */
final class CsvImport implements SessionRules.Places {
  private static final int ROWS_BETWEEN_LOOKS = 500;
  private final CsvTable table;
  private final ReadOptions options;
  private final CsvMapping mapping;
  private final ZoneId zone;
  private final ImportReport.Collector problems;
  private final Map<String, Line> lines = new LinkedHashMap<>();
  private final Map<String, CsvRow> rowOfEvent = new HashMap<>();
  private final Map<String, String> unknown = new HashMap<>();
  private final TreeMap<Integer, CsvRow> bad = new TreeMap<>();
  private final List<Read> reads = new ArrayList<>();
  private final EventCsv.Watcher watcher;

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

  /** A row whose kind and written time could be read. */
  private record Read(CsvRow row, EventKind kind, CsvTimes.Written time) {}

  /**
   * Returns the session.
   *
   * @param title of the session
   * @param documentId of the session
   * @param otherDate date to take where neither the file nor the options give one
   */
  ReadResult session(String title, String documentId, Dated otherDate) {
    int beforeRows = problems.errors();
    readRows();
    if (options.zone() == null) {
      addAtTop(
          Severity.WARNING,
          "no time zone is given, so the machine's is taken: " + zone,
          "give the water's zone if it is another");
    }
    Session session = reads.isEmpty() ? none() : build(title, documentId, otherDate);
    bad.values().forEach(row -> reject(row));
    boolean usable = problems.errors() == 0 || (options.skipBad() && beforeRows == 0);
    return new ReadResult(
        usable ? Optional.ofNullable(session) : Optional.empty(),
        problems.report(),
        Optional.empty());
  }

  /**
   * A date and where it comes from.
   *
   * @param date the date
   * @param source in words, such as "that of the file"
   */
  record Dated(LocalDate date, String source) {}

  private void reject(CsvRow row) {
    if (problems.rejected() == 0) {
      problems.reject(table.header());
    }
    problems.reject(row.cells());
  }

  private @Nullable Session none() {
    addAtTop(Severity.ERROR, "there is no event that can be read", "write one row an event");
    return null;
  }

  private void addAtTop(Severity severity, String what, String whatToDo) {
    problems.add(new Problem(table.file(), 1, 1, null, severity, what, whatToDo));
  }

  private void readRows() {
    CsvMapping given = options.mapping();
    boolean comma = mapping.decimalComma() || (given == null && table.delimiter() == ';');
    for (CsvTable.Row row : table.rows()) {
      CsvRow cells = new CsvRow(table, row, comma, problems);
      int before = problems.errors();
      EventKind kind = kind(cells);
      CsvTimes.Written time = time(cells);
      if (kind != null && time != null) {
        reads.add(new Read(cells, kind, time));
      }
      markIfBad(cells, before);
      if (row.number() % ROWS_BETWEEN_LOOKS == 0) {
        watcher.rows(row.number(), table.rows().size());
      }
    }
  }

  private void markIfBad(CsvRow row, int errorsBefore) {
    if (problems.errors() > errorsBefore) {
      bad.put(row.number(), row);
    }
  }

  private @Nullable EventKind kind(CsvRow row) {
    String cell = row.plain("event");
    if (cell == null) {
      row.error("event", "the row has no event", "write one of " + EventJson.words());
      return null;
    }
    String word = cell.toLowerCase(java.util.Locale.ROOT);
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

  private @Nullable Session build(String title, String documentId, Dated otherDate) {
    Read first = firstOf(EventKind.ALL_IN);
    CsvTimes times = times(first == null ? reads.get(0) : first, otherDate);
    List<SessionEvent> events = events(times);
    Match match = match(times, events);
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
        bad.put(row.number(), row);
      }
    }
    return session.withEvents(events.stream().filter(e -> !badIds.contains(e.id())).toList());
  }

  /** Returns the row that sets the frame: one without id before one that is an event as well. */
  private @Nullable Read firstOf(EventKind kind) {
    Read found = null;
    for (Read read : reads) {
      if (read.kind == kind && !read.row.has("id")) {
        return read;
      }
      // The first start call, the last finish call.
      if (read.kind == kind && (found == null || kind == EventKind.ALL_OUT)) {
        found = read;
      }
    }
    return found;
  }

  private CsvTimes times(Read reference, Dated otherDate) {
    boolean needsDate =
        reads.stream().anyMatch(r -> r.time.full() == null && r.time.date() == null);
    LocalDate date = dateOf(reference.time);
    if (date == null) {
      date = options.date();
    }
    for (int i = 0; date == null && i < reads.size(); i++) {
      date = dateOf(reads.get(i).time);
    }
    if (date == null) {
      date = otherDate.date;
      if (needsDate) {
        addAtTop(
            Severity.WARNING,
            "no date is given, so " + otherDate.source + " is taken: " + date,
            "give the date of the match if it is another");
      }
    }
    return new CsvTimes(zone, date, clockOf(reference.time), options);
  }

  private @Nullable LocalDate dateOf(CsvTimes.Written time) {
    String full = time.full();
    if (full == null) {
      return time.date();
    }
    try {
      return Instant.ofEpochMilli(ClockTimes.instant(full, zone, options.clockChange()))
          .atZone(zone)
          .toLocalDate();
    } catch (Refused refused) {
      return null;
    }
  }

  private LocalTime clockOf(CsvTimes.Written time) {
    LocalTime clock = time.clock();
    String full = time.full();
    if (clock != null || full == null) {
      return clock == null ? LocalTime.MIDNIGHT : clock;
    }
    try {
      return Instant.ofEpochMilli(ClockTimes.instant(full, zone, options.clockChange()))
          .atZone(zone)
          .toLocalTime();
    } catch (Refused refused) {
      return LocalTime.MIDNIGHT;
    }
  }

  private List<SessionEvent> events(CsvTimes times) {
    Set<String> taken = new HashSet<>();
    for (Read read : reads) {
      String id = read.row.text("id");
      if (id != null) {
        int before = problems.errors();
        if (!taken.add(id)) {
          read.row.error(
              "id",
              "there are two events with the id " + Shown.value(id),
              "give each event an id of its own, or none");
        } else if (id.isEmpty()) {
          read.row.error("id", "the id is empty", "leave the cell blank");
        }
        markIfBad(read.row, before);
      }
    }
    FreshIds fresh = new FreshIds(taken);
    List<SessionEvent> events = new ArrayList<>();
    for (Read read : reads) {
      int before = problems.errors();
      SessionEvent event = event(read, times, fresh);
      markIfBad(read.row, before);
      if (event != null && !bad.containsKey(read.row.number())) {
        events.add(event);
        rowOfEvent.put(event.id(), read.row);
      }
    }
    return events;
  }

  private @Nullable SessionEvent event(Read read, CsvTimes times, FreshIds fresh) {
    CsvRow row = read.row;
    String given = row.text("id");
    boolean frameOnly =
        read.kind.group() == EventKind.Group.FRAME
            && given == null
            && !row.has("note")
            && !row.has("line");
    Long at = instant(read, times);
    String line = line(row);
    String note = row.text("note");
    if (at == null || frameOnly) {
      row.checkRest(read.kind.word());
      return null;
    }
    String id = given == null ? fresh.next() : given;
    SessionEvent event =
        EventCells.read(read.kind, new Stamp(id, at, line, note), row, times, unknown);
    row.checkRest(read.kind.word());
    return event;
  }

  private @Nullable Long instant(Read read, CsvTimes times) {
    try {
      return times.instant(read.time);
    } catch (Refused refused) {
      read.row.error("time", refused.what(), refused.whatToDo());
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

  private @Nullable Match match(CsvTimes times, List<SessionEvent> events) {
    Read in = firstOf(EventKind.ALL_IN);
    Read out = firstOf(EventKind.ALL_OUT);
    checkOnce(EventKind.ALL_IN, in);
    checkOnce(EventKind.ALL_OUT, out);
    long first = events.stream().mapToLong(SessionEvent::at).min().orElse(0);
    long last = events.stream().mapToLong(SessionEvent::at).max().orElse(0);
    Long allIn = in == null ? Long.valueOf(first) : quietly(in, times);
    Long allOut = out == null ? Long.valueOf(last) : quietly(out, times);
    if ((in == null || out == null) && !events.isEmpty()) {
      addAtTop(
          Severity.WARNING,
          in == null && out == null
              ? "there is no all-in and no all-out, so the first and the last event are taken for them"
              : in == null
                  ? "there is no all-in, so the first event is taken for it"
                  : "there is no all-out, so the last event is taken for it",
          "add a row for it if the match was longer");
    }
    if (allIn == null || allOut == null) {
      return null;
    }
    if (allOut <= allIn) {
      Read place = out == null ? in == null ? reads.get(0) : in : out;
      int before = problems.errors();
      place.row.error(
          "time",
          "all out does not come after all in",
          "correct the times, or add the rows all-in and all-out");
      markIfBad(place.row, before);
      return null;
    }
    return new Match(allIn, allOut, MatchRules.UNSTATED);
  }

  private void checkOnce(EventKind kind, @Nullable Read used) {
    for (Read read : reads) {
      if (read.kind == kind && used != null && !read.equals(used) && !read.row.has("id")) {
        int before = problems.errors();
        read.row.error("event", "there is a second " + kind.word(), "keep the one that is right");
        markIfBad(read.row, before);
      }
    }
  }

  private static @Nullable Long quietly(Read read, CsvTimes times) {
    try {
      return times.instant(read.time);
    } catch (Refused refused) {
      return null; // its own row has already said so
    }
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
