package org.fadeline.io.notes;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.Refused;
import org.fadeline.io.SessionReader;
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
import org.jspecify.annotations.Nullable;

/**
 * Notes read into proposed events, on the lines they speak of.
 *
 * @param session the proposals as a session, to be looked through; its lines are the given ones and
 *     those the notes add
 * @param confidence how sure each reading is, in (0, 1), by the event's id
 * @param said the words that each event was read from, by its id
 * @param silent how many notes gave no event
 * @param report every problem with its place
 */
public record NoteSession(
    Session session,
    Map<String, Double> confidence,
    Map<String, String> said,
    int silent,
    ImportReport report) {
  private static final LocalTime USUAL_START = LocalTime.of(10, 0);
  private static final long SHORTEST_MATCH = 60_000;

  /** Copies the maps. */
  public NoteSession {
    confidence = Map.copyOf(confidence);
    said = Map.copyOf(said);
  }

  /** Returns whether a file name ends as notes do: captions or plain text. */
  public static boolean isNotes(Path file) {
    return CaptionReader.isCaptions(file)
        || FileText.nameOf(file).toLowerCase(Locale.ROOT).endsWith(".txt");
  }

  /**
   * Reads a file: captions, or shorthand where its name ends otherwise.
   *
   * @param frame its all in is when a recording starts, 10:00 where it has none
   * @param own the lines there are
   */
  public static NoteSession read(Path file, Shorthand.Frame frame, List<Line> own) {
    String name = FileText.nameOf(file);
    if (!CaptionReader.isCaptions(file)) {
      ImportReport.Collector problems = new ImportReport.Collector();
      String text = FileText.read(file, problems);
      return text == null
          ? made(name, "", frame, own, Notes.none(problems.report()))
          : ofShorthand(name, text, frame, own);
    }
    Captions captions = CaptionReader.read(file);
    long start;
    try {
      LocalTime allIn = frame.allIn();
      start =
          ClockTimes.resolve(
              LocalDateTime.of(frame.date(), allIn == null ? USUAL_START : allIn), frame.zone());
    } catch (Refused refused) {
      Problem problem = Problem.ofFile(name, refused.what(), refused.whatToDo());
      return made(name, "", frame, own, Notes.none(ImportReport.of(problem)));
    }
    List<ProposedEvent> events = new ArrayList<>();
    List<String> said = new ArrayList<>();
    int silent = 0;
    for (SpokenNotes.Proposals of :
        SpokenNotes.propose(captions.cues(), start, frame.vocabulary())) {
      silent += of.events().isEmpty() ? 1 : 0;
      events.addAll(of.events());
      of.events().forEach(one -> said.add(of.cue().text()));
    }
    long end = start;
    for (Cue cue : captions.cues()) {
      end = Math.max(end, start + Math.max(cue.fromMillis(), cue.toMillis()));
    }
    Notes notes = new Notes(events, said, silent, captions.report(), new Span(start, end));
    return made(name, captions.cues().toString(), frame, own, notes);
  }

  /** Reads shorthand; {@code name} is how messages call it. */
  public static NoteSession ofShorthand(
      String name, String text, Shorthand.Frame frame, List<Line> own) {
    Shorthand.Read read = Shorthand.read(name, text, frame);
    return made(
        name, text, frame, own, new Notes(read.events(), read.written(), 0, read.report(), null));
  }

  /** What a recording covers, epoch milliseconds. */
  private record Span(long from, long to) {}

  /** What was read of notes; the span is null where they are not of a recording. */
  private record Notes(
      List<ProposedEvent> events,
      List<String> said,
      int silent,
      ImportReport report,
      @Nullable Span span) {
    static Notes none(ImportReport report) {
      return new Notes(List.of(), List.of(), 0, report, null);
    }
  }

  private static NoteSession made(
      String name, String text, Shorthand.Frame frame, List<Line> own, Notes notes) {
    Map<String, Double> confidence = new LinkedHashMap<>();
    Map<String, String> said = new LinkedHashMap<>();
    for (int i = 0; i < notes.events().size(); i++) {
      said.put(notes.events().get(i).event().id(), notes.said().get(i));
    }
    Set<Line> lines = new LinkedHashSet<>(own);
    for (ProposedEvent one : notes.events()) {
      confidence.put(one.event().id(), one.confidence());
      addLine(one.event().lineId(), frame.vocabulary(), lines);
      addLine(one.towards(), frame.vocabulary(), lines);
    }
    List<SessionEvent> events = notes.events().stream().map(ProposedEvent::event).toList();
    Occasion occasion =
        new Occasion(
            "Notes from " + name,
            frame.date(),
            frame.zone(),
            Venue.UNKNOWN,
            Peg.UNKNOWN,
            List.of());
    Session session =
        new Session(
            // The same notes give the same document.
            Document.of(SessionReader.idFrom(name + "\n" + text), 0),
            occasion,
            match(events, frame, notes.span()),
            List.copyOf(lines),
            events,
            Outcome.UNKNOWN);
    return new NoteSession(session, confidence, said, notes.silent(), notes.report());
  }

  private static void addLine(@Nullable String id, Vocabulary vocabulary, Set<Line> lines) {
    if (id != null) {
      vocabulary.line(id).ifPresent(lines::add);
    }
  }

  private static Match match(
      List<SessionEvent> events, Shorthand.Frame frame, @Nullable Span span) {
    if (span != null) {
      return matchOf(events, span.from(), span.to());
    }
    long otherwise =
        frame.date().atTime(USUAL_START).atZone(frame.zone()).toInstant().toEpochMilli();
    return matchOf(events, otherwise);
  }

  /**
   * Returns the frame that events tell: their calls, else the first and the last of them.
   *
   * @param otherwise all in where there are no events, epoch milliseconds
   */
  public static Match matchOf(List<SessionEvent> events, long otherwise) {
    return matchOf(
        events,
        events.stream().mapToLong(SessionEvent::at).min().orElse(otherwise),
        events.stream().mapToLong(SessionEvent::at).max().orElse(otherwise));
  }

  private static Match matchOf(List<SessionEvent> events, long from, long to) {
    long allIn = from;
    long allOut = to;
    for (SessionEvent event : events) {
      allIn = event.kind() == EventKind.ALL_IN ? event.at() : allIn;
      allOut = event.kind() == EventKind.ALL_OUT ? event.at() : allOut;
    }
    return new Match(allIn, Math.max(allOut, allIn + SHORTEST_MATCH), MatchRules.UNSTATED);
  }
}
