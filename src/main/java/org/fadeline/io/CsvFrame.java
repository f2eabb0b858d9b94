package org.fadeline.io;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.fadeline.io.Problem.Severity;
import org.fadeline.model.EventKind;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** The frame of a table of events: the date its times lie on, and the calls. */
final class CsvFrame {
  private final CsvTable table;
  private final List<CsvRead> reads;
  private final ZoneId zone;
  private final ReadOptions options;
  private final ImportReport.Collector problems;
  private boolean undated;

  /**
   * The frame of one table.
   *
   * @param reads its rows, at least one
   */
  CsvFrame(
      CsvTable table,
      List<CsvRead> reads,
      ZoneId zone,
      ReadOptions options,
      ImportReport.Collector problems) {
    this.table = table;
    this.reads = reads;
    this.zone = zone;
    this.options = options;
    this.problems = problems;
  }

  /**
   * A date and where it comes from.
   *
   * @param date the date
   * @param source in words, such as "that of the file"
   * @param guess whether it may as well be another
   */
  record Dated(LocalDate date, String source, boolean guess) {}

  /** Returns the row that sets the frame: one without id before one that is an event as well. */
  private @Nullable CsvRead firstOf(EventKind kind) {
    CsvRead found = null;
    for (CsvRead read : reads) {
      if (read.kind() == kind && !read.row().has("id")) {
        return read;
      }
      // The first start call, the last finish call.
      if (read.kind() == kind && (found == null || kind == EventKind.ALL_OUT)) {
        found = read;
      }
    }
    return found;
  }

  /**
   * Returns how the times of the table are read: on the date of its start call, else of the first
   * row that has one.
   */
  CsvTimes times(Dated otherDate) {
    CsvRead start = firstOf(EventKind.ALL_IN);
    CsvRead reference = start == null ? reads.get(0) : start;
    boolean needsDate =
        reads.stream().anyMatch(r -> r.time().full() == null && r.time().date() == null);
    LocalDate date = dateOf(reference.time());
    if (date == null) {
      date = options.date();
    }
    for (int i = 0; date == null && i < reads.size(); i++) {
      date = dateOf(reads.get(i).time());
    }
    if (date == null) {
      date = otherDate.date();
      if (needsDate) {
        undated = otherDate.guess;
        table.addAtTop(
            problems,
            Severity.WARNING,
            "no date is given, so " + otherDate.source + " is taken: " + date,
            "give the date of the match if it is another");
      }
    }
    return new CsvTimes(zone, date, clockOf(reference.time()), options);
  }

  /** Returns whether the date taken is a guess, once {@link #times} was asked for. */
  boolean isUndated() {
    return undated;
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

  /** Returns the match between the calls, or null where there can be none. */
  @Nullable Match match(CsvTimes times, List<SessionEvent> events) {
    CsvRead in = firstOf(EventKind.ALL_IN);
    CsvRead out = firstOf(EventKind.ALL_OUT);
    checkOnce(EventKind.ALL_IN, in);
    checkOnce(EventKind.ALL_OUT, out);
    long first = events.stream().mapToLong(SessionEvent::at).min().orElse(0);
    long last = events.stream().mapToLong(SessionEvent::at).max().orElse(0);
    Long allIn = in == null ? Long.valueOf(first) : quietly(in, times);
    Long allOut = out == null ? Long.valueOf(last) : quietly(out, times);
    if ((in == null || out == null) && !events.isEmpty()) {
      table.addAtTop(
          problems,
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
      CsvRead place = out == null ? in == null ? reads.get(0) : in : out;
      place
          .row()
          .error(
              "time",
              "all out does not come after all in",
              "correct the times, or add the rows all-in and all-out");
      return null;
    }
    return new Match(allIn, allOut, MatchRules.UNSTATED);
  }

  private void checkOnce(EventKind kind, @Nullable CsvRead used) {
    for (CsvRead read : reads) {
      if (read.kind() == kind && used != null && !read.equals(used) && !read.row().has("id")) {
        read.row().error("event", "there is a second " + kind.word(), "keep the one that is right");
      }
    }
  }

  private static @Nullable Long quietly(CsvRead read, CsvTimes times) {
    try {
      return times.instant(read.time());
    } catch (Refused refused) {
      return null; // its own row has already said so
    }
  }
}
