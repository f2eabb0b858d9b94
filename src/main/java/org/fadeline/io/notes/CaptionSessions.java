package org.fadeline.io.notes;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.Problem.Severity;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.Refused;
import org.fadeline.io.notes.SpokenNotes.Proposals;
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
import org.fadeline.model.Venue;

/**
 * Turns a caption file into a session of proposed events, each marked as such in its note with its
 * confidence.
 *
 * <p>Captions carry no clock. The recording is taken to start at 10:00 on the given date, which a
 * warning says; a note that says "all in" sets the start of the match.
 */
public final class CaptionSessions {
  private static final LocalTime USUAL_START = LocalTime.of(10, 0);
  private static final long SHORTEST_MATCH = 60_000;

  private CaptionSessions() {}

  /** Reads captions as a session; the options' date and zone place it. */
  public static ReadResult read(Path file, ReadOptions options) {
    Captions captions = CaptionReader.read(file);
    ImportReport.Collector problems = new ImportReport.Collector();
    captions.report().problems().forEach(problems::add);
    if (captions.report().hasErrors()) {
      return ReadResult.refused(captions.report());
    }
    String name = FileText.nameOf(file);
    LocalDate date = options.date() == null ? LocalDate.now(zone(options)) : options.date();
    ZoneId zone = zone(options);
    long start;
    try {
      start = ClockTimes.resolve(LocalDateTime.of(date, USUAL_START), zone);
    } catch (Refused refused) {
      problems.add(Problem.ofFile(name, refused.what(), refused.whatToDo()));
      return ReadResult.refused(problems.report());
    }
    problems.add(
        new Problem(
            name,
            1,
            1,
            null,
            Severity.WARNING,
            "captions carry no clock: the recording is taken to start at 10:00 on "
                + date
                + " in "
                + zone,
            "give the date and zone, and correct the clock in the session"));
    List<Proposals> proposals =
        SpokenNotes.propose(captions.cues(), start, Vocabulary.of(List.of()));
    List<SessionEvent> events = SpokenNotes.marked(proposals);
    if (events.isEmpty()) {
      problems.add(
          new Problem(
              name,
              1,
              1,
              null,
              Severity.WARNING,
              "no note in it tells an event",
              "check that these are spoken notes of a match"));
    }
    return new ReadResult(
        Optional.of(session(name, date, zone, start, captions.cues(), proposals)),
        problems.report(),
        Optional.empty());
  }

  private static ZoneId zone(ReadOptions options) {
    ZoneId zone = options.zone();
    return zone == null ? ZoneId.systemDefault() : zone;
  }

  private static Session session(
      String name,
      LocalDate date,
      ZoneId zone,
      long start,
      List<Cue> cues,
      List<Proposals> proposals) {
    Vocabulary vocabulary = Vocabulary.of(List.of());
    Set<String> ids = SpokenNotes.lineIds(proposals);
    List<Line> lines = ids.stream().flatMap(id -> vocabulary.line(id).stream()).toList();
    List<SessionEvent> events = SpokenNotes.marked(proposals);
    return new Session(
        Document.of(
            UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .toString(),
            0),
        new Occasion("Notes from " + name, date, zone, Venue.UNKNOWN, Peg.UNKNOWN, List.of()),
        match(start, cues, events),
        lines,
        events,
        Outcome.UNKNOWN);
  }

  private static Match match(long start, List<Cue> cues, List<SessionEvent> events) {
    long last = start;
    for (Cue cue : cues) {
      last = Math.max(last, start + Math.max(cue.fromMillis(), cue.toMillis()));
    }
    long allIn = start;
    long allOut = last;
    for (SessionEvent event : events) {
      allIn = event.kind() == EventKind.ALL_IN ? event.at() : allIn;
      allOut = event.kind() == EventKind.ALL_OUT ? event.at() : allOut;
    }
    return new Match(allIn, Math.max(allOut, allIn + SHORTEST_MATCH), MatchRules.UNSTATED);
  }
}
