package org.fadeline.io;

import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fadeline.io.Problem.Severity;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * What must hold between the parts of a session: lines that events name, spots, order, the frame.
 *
 * <p>In a file that carries its own fitting hash these are warnings, not errors: what the program
 * once saved, it opens again.
 */
final class SessionRules {
  private static final int MANY_LINES = 1000;
  private static final int MANY_AT_ONCE = 100;
  private static final long FAR_OUTSIDE = Duration.ofHours(24).toMillis();

  private final Session session;
  private final List<SessionEvent> inFile;
  private final ProblemPlaces places;
  private final Severity grave;
  private final ImportReport.Collector problems;
  private final Map<String, Line> lineById = new HashMap<>();
  private final Set<String> bad = new HashSet<>();

  private SessionRules(
      Session session,
      List<SessionEvent> inFile,
      ProblemPlaces places,
      boolean own,
      ImportReport.Collector problems) {
    this.session = session;
    this.inFile = inFile;
    this.places = places;
    this.grave = own ? Severity.WARNING : Severity.ERROR;
    this.problems = problems;
    session.lines().forEach(line -> lineById.put(line.id(), line));
  }

  /** Makes problems at the places where parts of the session stand in its file. */
  interface ProblemPlaces {
    /** Returns a problem of an event. */
    Problem atEvent(
        SessionEvent event, String field, Severity severity, String what, String whatToDo);

    /** Returns a problem of a line. */
    Problem atLine(Line line, String field, Severity severity, String what, String whatToDo);

    /** Returns a problem of the whole. */
    Problem atRoot(String field, Severity severity, String what, String whatToDo);
  }

  /**
   * Checks a session.
   *
   * @param inFile its events in the order of the file
   * @param own whether the file carries its own fitting hash
   * @return the ids of events that cannot be used
   */
  static Set<String> check(
      Session session,
      List<SessionEvent> inFile,
      ProblemPlaces places,
      boolean own,
      ImportReport.Collector problems) {
    SessionRules rules = new SessionRules(session, inFile, places, own, problems);
    rules.checkLines();
    rules.checkOrder();
    rules.checkEvents();
    return rules.bad;
  }

  private void checkLines() {
    int count = session.lines().size();
    if (count == 0) {
      problems.add(
          places.atRoot(
              "lines",
              Severity.WARNING,
              "there are no lines, so nothing can be said of any",
              "add the lines that were fished"));
    } else if (count > MANY_LINES) {
      problems.add(
          places.atRoot(
              "lines",
              grave,
              "there are " + count + " lines; a match has a handful",
              "check that the line names are right"));
    }
    for (Line line : session.lines()) {
      Line owner = lineById.get(line.spot());
      if (owner != null && !owner.spot().equals(owner.id())) {
        problems.add(
            places.atLine(
                line,
                "spot",
                grave,
                "the spot is that of line "
                    + Shown.value(owner.id())
                    + ", which lies on another spot itself",
                "give all lines over the same feed one and the same spot"));
      }
    }
  }

  private void checkOrder() {
    int unsorted = 0;
    SessionEvent first = null;
    int atOnce = 1;
    for (int i = 1; i < inFile.size(); i++) {
      if (inFile.get(i).at() < inFile.get(i - 1).at()) {
        unsorted++;
        first = first == null ? inFile.get(i) : first;
      }
    }
    if (first != null) {
      problems.add(
          places.atEvent(
              first,
              "at",
              Severity.WARNING,
              unsorted == 1
                  ? "this event is earlier than the one before it"
                  : unsorted + " events are earlier than the one before them, this one first",
              "nothing need be done; they are put in order of time"));
    }
    List<SessionEvent> sorted = session.events();
    for (int i = 1; i < sorted.size(); i++) {
      atOnce = sorted.get(i).at() == sorted.get(i - 1).at() ? atOnce + 1 : 1;
      if (atOnce == MANY_AT_ONCE + 1) {
        problems.add(
            places.atEvent(
                sorted.get(i),
                "at",
                Severity.WARNING,
                "more than " + MANY_AT_ONCE + " events share this instant",
                "check the times; order in the file decides between them"));
      }
    }
  }

  private void checkEvents() {
    boolean fishing = false;
    for (SessionEvent event : session.events()) {
      String line = event.lineId();
      boolean water = event.kind().group() == EventKind.Group.WATER;
      if (line != null && !lineById.containsKey(line)) {
        addAt(
            event,
            "line",
            "there is no line " + Shown.value(line),
            "add the line, or correct the name");
      }
      if (water && line == null && !fishing) {
        addAt(
            event,
            "line",
            "this " + event.kind().word() + " names no line and none is being fished",
            "write the line it happened on");
      }
      if (event instanceof SessionEvent.Fed fed && endsBeforeItStarts(fed)) {
        addAt(event, "until", "the feeding ends before it starts", "correct the time");
      }
      fishing = water ? fishing || line != null : fishing && event.kind() != EventKind.MOVE;
      checkFrame(event, water);
    }
  }

  private static boolean endsBeforeItStarts(SessionEvent.Fed fed) {
    Feed.Pattern pattern = fed.feed().pattern();
    Long until = pattern == null ? null : pattern.until();
    return until != null && until < fed.at();
  }

  private void addAt(SessionEvent event, String field, String what, String whatToDo) {
    problems.add(places.atEvent(event, field, grave, what, whatToDo));
    if (grave == Severity.ERROR) {
      bad.add(event.id());
    }
  }

  private void checkFrame(SessionEvent event, boolean water) {
    long allIn = session.match().allIn();
    long allOut = session.match().allOut();
    boolean far = event.at() < allIn - FAR_OUTSIDE || event.at() > allOut + FAR_OUTSIDE;
    if (far) {
      addAt(
          event,
          "at",
          "this is more than a day outside the match",
          "check the date of the event and of the match");
    } else if (water && (event.at() < allIn || event.at() > allOut)) {
      problems.add(
          places.atEvent(
              event,
              "at",
              Severity.WARNING,
              event.at() < allIn
                  ? "this " + event.kind().word() + " comes before all in"
                  : "this " + event.kind().word() + " comes after all out",
              "check the time; outside the match it counts for nothing unless the rules say so"));
    }
  }
}
