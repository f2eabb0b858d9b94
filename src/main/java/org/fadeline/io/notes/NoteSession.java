package org.fadeline.io.notes;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.Refused;
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
 * @param silent how many notes gave no event
 * @param report every problem with its place
 */
public record NoteSession(
    Session session, Map<String, Double> confidence, int silent, ImportReport report) {
  private static final LocalTime USUAL_START = LocalTime.of(10, 0);
  private static final long SHORTEST_MATCH = 60_000;

  /** Copies the map. */
  public NoteSession {
    confidence = Map.copyOf(confidence);
  }

  /** Returns whether a file name ends as notes do: captions or plain text. */
  public static boolean isNotes(Path file) {
    return CaptionReader.isCaptions(file)
        || FileText.nameOf(file).toLowerCase(java.util.Locale.ROOT).endsWith(".txt");
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
          ? made(name, frame, own, List.of(), 0, problems.report())
          : ofShorthand(name, text, frame, own);
    }
    Captions captions = CaptionReader.read(file);
    LocalTime start = frame.allIn();
    long startsAt;
    try {
      startsAt =
          ClockTimes.resolve(
              LocalDateTime.of(frame.date(), start == null ? USUAL_START : start), frame.zone());
    } catch (Refused refused) {
      return made(
          name,
          frame,
          own,
          List.of(),
          0,
          ImportReport.of(Problem.ofFile(name, refused.what(), refused.whatToDo())));
    }
    List<ProposedEvent> events = new ArrayList<>();
    int silent = 0;
    for (SpokenNotes.Proposals of :
        SpokenNotes.propose(captions.cues(), startsAt, frame.vocabulary())) {
      silent += of.events().isEmpty() ? 1 : 0;
      events.addAll(of.events());
    }
    return made(name, frame, own, events, silent, captions.report());
  }

  /** Reads shorthand; {@code name} is how messages call it. */
  public static NoteSession ofShorthand(
      String name, String text, Shorthand.Frame frame, List<Line> own) {
    Shorthand.Read read = Shorthand.read(name, text, frame);
    return made(name, frame, own, read.events(), 0, read.report());
  }

  private static NoteSession made(
      String name,
      Shorthand.Frame frame,
      List<Line> own,
      List<ProposedEvent> proposed,
      int silent,
      ImportReport report) {
    Map<String, Double> confidence = new LinkedHashMap<>();
    Set<Line> lines = new LinkedHashSet<>(own);
    for (ProposedEvent one : proposed) {
      confidence.put(one.event().id(), one.confidence());
      addLine(one.event().lineId(), frame.vocabulary(), lines);
      addLine(one.towards(), frame.vocabulary(), lines);
    }
    List<SessionEvent> events = proposed.stream().map(ProposedEvent::event).toList();
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
            Document.of(UUID.randomUUID().toString(), 0),
            occasion,
            match(events, frame),
            List.copyOf(lines),
            events,
            Outcome.UNKNOWN);
    return new NoteSession(session, confidence, silent, report);
  }

  private static void addLine(@Nullable String id, Vocabulary vocabulary, Set<Line> lines) {
    if (id != null) {
      vocabulary.line(id).ifPresent(lines::add);
    }
  }

  private static Match match(List<SessionEvent> events, Shorthand.Frame frame) {
    return matchOf(
        events, frame.date().atTime(USUAL_START).atZone(frame.zone()).toInstant().toEpochMilli());
  }

  /**
   * Returns the frame that events tell: their calls, else the first and the last of them.
   *
   * @param otherwise all in where there are no events, epoch milliseconds
   */
  public static Match matchOf(List<SessionEvent> events, long otherwise) {
    long allIn = events.stream().mapToLong(SessionEvent::at).min().orElse(otherwise);
    long allOut = events.stream().mapToLong(SessionEvent::at).max().orElse(otherwise);
    for (SessionEvent event : events) {
      allIn = event.kind() == EventKind.ALL_IN ? event.at() : allIn;
      allOut = event.kind() == EventKind.ALL_OUT ? event.at() : allOut;
    }
    return new Match(allIn, Math.max(allOut, allIn + SHORTEST_MATCH), MatchRules.UNSTATED);
  }
}
