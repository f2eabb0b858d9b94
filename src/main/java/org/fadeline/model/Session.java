package org.fadeline.model;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One recorded match or practice session.
 *
 * @param document identity and version of the record
 * @param occasion where and when: title, date, zone, venue, peg, weather
 * @param match the frame: all in, all out and the rules that matter to the figures
 * @param lines the lines that could be fished, in the order they are shown
 * @param events what happened, ordered by instant; at one instant the list's order decides
 * @param outcome weigh-in, result and footage
 */
public record Session(
    Document document,
    Occasion occasion,
    Match match,
    List<Line> lines,
    List<SessionEvent> events,
    Outcome outcome) {

  /** Copies the lists; sorts the events by instant, keeping the given order within an instant. */
  public Session {
    lines = List.copyOf(lines);
    events = inOrder(events);
  }

  private static List<SessionEvent> inOrder(List<SessionEvent> events) {
    for (int i = 1; i < events.size(); i++) {
      if (events.get(i).at() < events.get(i - 1).at()) {
        // A stable sort: events of one instant stay in file order.
        return events.stream().sorted(Comparator.comparingLong(SessionEvent::at)).toList();
      }
    }
    return List.copyOf(events);
  }

  /** Returns the line with the given id, or empty. */
  public Optional<Line> line(String id) {
    for (Line line : lines) {
      if (line.id().equals(id)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /** Returns the instant (epoch milliseconds) as a clock time in the session's zone. */
  public ZonedDateTime clock(long at) {
    return Instant.ofEpochMilli(at).atZone(occasion.zone());
  }

  /** Returns this session with other events. */
  public Session withEvents(List<SessionEvent> newEvents) {
    return new Session(document, occasion, match, lines, newEvents, outcome);
  }

  /** Returns this session with other lines. */
  public Session withLines(List<Line> newLines) {
    return new Session(document, occasion, match, newLines, events, outcome);
  }

  /** Returns this session with another match frame. */
  public Session withMatch(Match newMatch) {
    return new Session(document, occasion, newMatch, lines, events, outcome);
  }

  /** Returns this session with another occasion. */
  public Session withOccasion(Occasion newOccasion) {
    return new Session(document, newOccasion, match, lines, events, outcome);
  }

  /** Returns this session with another outcome. */
  public Session withOutcome(Outcome newOutcome) {
    return new Session(document, occasion, match, lines, events, newOutcome);
  }

  /** Returns this session with another document identity. */
  public Session withDocument(Document newDocument) {
    return new Session(newDocument, occasion, match, lines, events, outcome);
  }
}
