package org.fadeline.io.notes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.EventJson;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem.Severity;
import org.fadeline.io.Refused;
import org.fadeline.io.Shown;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.io.notes.ShorthandFault.Part;
import org.fadeline.model.EventKind;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/**
 * Reads the shorthand: one event a line, a time and then words in any order, such as {@code 10:42
 * short fed 10 pellets} and {@code 10:51 short landed carp 8lb 4oz}.
 *
 * <p>Empty lines and lines that start with {@code #} are passed over. A clock time more than six
 * hours before all in is after midnight. Words that mean nothing here become the event's note.
 */
public final class Shorthand {
  private static final Pattern LINE =
      Pattern.compile(
          "(?<time>\\d{4}-\\d{2}-\\d{2}[Tt ]\\d[^\\s]*|\\d{1,2}[:.]\\S*)\\s+(?<rest>.*)");
  private static final Pattern ONLY_TIME = Pattern.compile("\\d{1,2}[:.]\\d{2}\\S*");
  private static final int LONGEST_LINE = 2000;
  private static final double SURE = 0.97;

  /** Words that an event is told with, so that they are no note. */
  private static final Set<String> NO_NOTE =
      Set.of(
          "all",
          "in",
          "out",
          "on",
          "to",
          "onto",
          "the",
          "a",
          "of",
          "at",
          "with",
          "for",
          "from",
          "dead",
          "resting",
          "plan",
          "weather",
          "neighbour",
          "each",
          "every",
          "by",
          "hand",
          "catapult",
          "weighed",
          "and",
          "off",
          "then",
          "fish",
          "clock");

  private final Frame frame;
  private final ImportReport.Collector problems = new ImportReport.Collector();
  private final List<ProposedEvent> events = new ArrayList<>();
  private @Nullable LocalTime allIn;

  private Shorthand(Frame frame) {
    this.frame = frame;
    this.allIn = frame.allIn();
  }

  /**
   * What shorthand does not say itself.
   *
   * @param date date of all in
   * @param zone time zone
   * @param allIn clock time of all in, or null: then that of the line that says so, or the first
   * @param weight what plain numbers after a fish mean
   * @param vocabulary the lines' names
   */
  public record Frame(
      LocalDate date,
      ZoneId zone,
      @Nullable LocalTime allIn,
      Units.Weight weight,
      Vocabulary vocabulary) {}

  /**
   * What was read.
   *
   * @param events in the order written
   * @param written the line of each event, as it stands without outer white space
   * @param report lines that could not be used, and words that were not understood
   */
  public record Read(List<ProposedEvent> events, List<String> written, ImportReport report) {
    /** Copies the lists. */
    public Read {
      events = List.copyOf(events);
      written = List.copyOf(written);
    }
  }

  /** Reads shorthand; {@code name} is how messages call it. */
  public static Read read(String name, String text, Frame frame) {
    Shorthand shorthand = new Shorthand(frame);
    List<String> written = new ArrayList<>();
    String[] lines = text.replace("\uFEFF", "").split("\\R", -1);
    if (shorthand.allIn == null) {
      shorthand.findAllIn(lines);
    }
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i].strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        try {
          shorthand.line(name, i + 1, line, lines[i]);
          written.add(line);
        } catch (ShorthandFault fault) {
          shorthand.problems.add(fault.problem(name, i + 1, lines[i]));
        }
      }
    }
    return new Read(shorthand.events, written, shorthand.problems.report());
  }

  private void findAllIn(String[] lines) {
    LocalTime first = null;
    for (String line : lines) {
      Matcher matcher = LINE.matcher(line.length() > LONGEST_LINE ? "" : line.strip());
      LocalTime time = matcher.matches() ? clockOrNull(matcher.group("time")) : null;
      first = first == null ? time : first;
      if (time != null && matcher.group("rest").matches("(?i)all[- ]in")) {
        allIn = time;
        return;
      }
    }
    allIn = first;
  }

  private static @Nullable LocalTime clockOrNull(String time) {
    try {
      return ClockTimes.clock(clockText(time));
    } catch (Refused refused) {
      // Said when the line itself is read.
      return null;
    }
  }

  private void line(String name, int row, String line, String raw) throws ShorthandFault {
    if (line.length() > LONGEST_LINE) {
      throw fault(Part.EVENT, "", "the line is longer than a note", "write one event a line");
    }
    if (ONLY_TIME.matcher(line).matches()) {
      throw fault(Part.EVENT, "", "the line holds a time alone", "write what happened after it");
    }
    Matcher matcher = LINE.matcher(line);
    if (!matcher.matches()) {
      throw fault(
          Part.TIME,
          line,
          Shown.value(line) + " does not start with a time",
          "write it as 10:51 short landed carp 8lb 4oz");
    }
    long at;
    try {
      at = at(matcher.group("time"));
    } catch (Refused refused) {
      throw new ShorthandFault(Part.TIME, matcher.group("time"), refused);
    }
    String rest = matcher.group("rest");
    List<Piece> pieces = new ArrayList<>(NoteScanner.scan(frame.vocabulary(), rest, true));
    EventKind kind = kind(rest, pieces);
    String id = "s" + (events.size() + 1);
    if (kind == null) {
      List<ProposedEvent> read = new NoteReader(frame.vocabulary()).read(rest, at, "n");
      if (read.size() != 1) {
        throw fault(
            Part.EVENT,
            rest,
            Shown.value(rest) + (read.isEmpty() ? " names no event" : " tells several events"),
            "use one of " + EventJson.words());
      }
      ProposedEvent one = read.get(0);
      Stamp stamp = new Stamp(id, at, one.event().lineId(), rest);
      events.add(new ProposedEvent(one.event().withStamp(stamp), one.confidence(), one.towards()));
      return;
    }
    String left = add(rest, new Start(kind, id, at), pieces);
    boolean unplaced = events.get(events.size() - 1).event().lineId() == null;
    if (kind.group() == EventKind.Group.WATER && unplaced && !left.isEmpty()) {
      Refused unknown =
          new Refused(
              Shown.value(left) + " is no line known here; it is kept as a note",
              "write a line's name, or give the session a line of that name");
      problems.add(ShorthandFault.at(name, row, raw, Part.LINE, left, Severity.WARNING, unknown));
    }
  }

  private static ShorthandFault fault(Part part, String said, String what, String whatToDo) {
    return new ShorthandFault(part, said, new Refused(what, whatToDo));
  }

  private record Start(EventKind kind, String id, long at) {}

  /** Adds the event and returns the words that mean nothing to the reader. */
  private String add(String rest, Start start, List<Piece> pieces) throws ShorthandFault {
    EventKind kind = start.kind();
    String lineId = null;
    String towards = null;
    for (int i = 0; i < pieces.size(); i++) {
      if (!pieces.get(i).is(Kind.LINE)) {
        continue;
      }
      String id = pieces.get(i).name();
      if (id == null) {
        throw fault(
            Part.LINE,
            pieces.get(i).said(),
            Shown.value(pieces.get(i).said()) + " could be several lines",
            "write the line's whole name");
      }
      boolean to = i > 0 && (pieces.get(i - 1).isWord("to") || pieces.get(i - 1).isWord("onto"));
      if (kind == EventKind.MOVE && to) {
        towards = id;
      } else {
        lineId = id;
      }
    }
    if (kind == EventKind.LANDED || kind == EventKind.FOUL || kind == EventKind.COUNT) {
      plainWeight(pieces);
    }
    String words = Piece.shapes(pieces);
    String left = leftOver(kind, pieces);
    String note = kind.group() == EventKind.Group.AROUND && kind != EventKind.NET ? rest : left;
    if (kind == EventKind.NOTE) {
      note = rest.replaceFirst("(?i)\\bnote\\b[:,]?\\s*", "").strip();
    }
    Stamp stamp = new Stamp(start.id(), start.at(), lineId, note.isEmpty() ? null : note);
    events.add(new ProposedEvent(NoteFields.event(kind, stamp, pieces, words), SURE, towards));
    return left;
  }

  /** Returns the kind whose own word stands in the line, or null. */
  private static @Nullable EventKind kind(String rest, List<Piece> pieces) throws ShorthandFault {
    Map<EventKind, String> kinds = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      boolean frame = piece.isWord("all") && i + 1 < pieces.size();
      String word = frame ? "all-" + pieces.get(i + 1).said() : piece.said();
      if (piece.is(Kind.WORD)) {
        EventKind.ofWord(word).ifPresent(kind -> kinds.putIfAbsent(kind, piece.said()));
      }
    }
    if (kinds.containsKey(EventKind.NOTE)) {
      return EventKind.NOTE;
    }
    if (kinds.containsKey(EventKind.MOVE)) {
      // "short move weather", "short move neighbour": these words are the reason, not the event.
      kinds.keySet().removeAll(Set.of(EventKind.WEATHER, EventKind.NEIGHBOUR));
    }
    if (kinds.containsKey(EventKind.NEIGHBOUR)) {
      return EventKind.NEIGHBOUR;
    }
    if (kinds.size() > 1) {
      throw fault(
          Part.EVENT,
          List.copyOf(kinds.values()).get(1),
          Shown.value(rest) + " names several events",
          "write one event a line, with its own time");
    }
    return kinds.isEmpty() ? null : kinds.keySet().iterator().next();
  }

  /** Turns plain numbers at the end, or after the fish, into a weight: "carp 8 4", "carp 3.7". */
  private void plainWeight(List<Piece> pieces) throws ShorthandFault {
    if (pieces.stream().anyMatch(piece -> piece.is(Kind.WEIGHT))) {
      return;
    }
    for (int i = 0; i < pieces.size(); i++) {
      boolean afterFish = i > 0 && pieces.get(i - 1).is(Kind.SPECIES);
      boolean pair =
          i + 1 < pieces.size()
              && pieces.get(i).is(Kind.NUMBER)
              && pieces.get(i + 1).is(Kind.NUMBER);
      if (!pieces.get(i).is(Kind.NUMBER) || !(afterFish || pair)) {
        continue;
      }
      int end = pair ? i + 2 : i + 1;
      String text =
          pieces.subList(i, end).stream()
              .map(piece -> Piece.figure(piece.value()))
              .collect(Collectors.joining(" "));
      double grams;
      try {
        grams = WeightText.grams(text, frame.weight());
      } catch (IllegalArgumentException e) {
        throw fault(
            Part.WEIGHT,
            pieces.get(i).said(),
            Shown.value(text) + " is no plain weight",
            "write it as 8lb 4oz or 3.7 kg");
      }
      pieces.subList(i, end).clear();
      pieces.add(i, new Piece(Kind.WEIGHT, text, grams, null));
      return;
    }
  }

  /** Returns the words that mean nothing to the reader. */
  private static String leftOver(EventKind kind, List<Piece> pieces) {
    return pieces.stream()
        .filter(piece -> piece.is(Kind.WORD))
        .map(Piece::said)
        .filter(said -> !NO_NOTE.contains(said) && !said.equals(kind.word()))
        .collect(Collectors.joining(" "));
  }

  private static String clockText(String time) {
    return time.indexOf(':') < 0 ? time.replaceFirst("\\.", ":") : time;
  }

  private long at(String time) throws Refused {
    if (ClockTimes.looksLikeDateTime(time)) {
      return ClockTimes.instant(time, frame.zone());
    }
    LocalTime clock = ClockTimes.clock(clockText(time));
    LocalTime start = allIn;
    LocalDate day = start == null ? frame.date() : ClockTimes.dayOf(clock, frame.date(), start);
    return ClockTimes.resolve(LocalDateTime.of(day, clock), frame.zone());
  }
}
