package org.fadeline.analysis.compare;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.model.Document;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
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

/** A match of a few spells with fish at even times. */
final class SmallMatch {
  private static final LocalDate DATE = LocalDate.of(2026, 6, 6);
  private static final ZoneId ZONE = ZoneId.of("Europe/London");

  private final Map<String, Line> lines = new LinkedHashMap<>();
  private final List<SessionEvent> events = new ArrayList<>();
  private final Match match;

  private SmallMatch(Match match) {
    this.match = match;
  }

  static SmallMatch from(String allIn, String allOut) {
    return new SmallMatch(new Match(millis(allIn), millis(allOut), MatchRules.UNSTATED));
  }

  static long millis(String clock) {
    return LocalTime.parse(clock).atDate(DATE).atZone(ZONE).toInstant().toEpochMilli();
  }

  SmallMatch line(String name) {
    lines.computeIfAbsent(name, n -> Line.named(n, n));
    return this;
  }

  SmallMatch line(Line line) {
    lines.put(line.id(), line);
    return this;
  }

  private Stamp stamp(long at, String line) {
    line(line);
    return new Stamp("e" + events.size(), at, line, null);
  }

  /** A spell with so many fish, each at the end of an equal part of it. */
  SmallMatch fish(String line, String from, String to, int count, double grams) {
    long start = millis(from);
    long end = millis(to);
    events.add(new SessionEvent.Cast(stamp(start, line)));
    for (int i = 1; i <= count; i++) {
      long at = start + (end - start) * i / count;
      events.add(new SessionEvent.Landed(stamp(at, line), new Fish(1, null, grams, false)));
    }
    events.add(new SessionEvent.Move(stamp(end, line), null));
    return this;
  }

  SmallMatch fed(String at, String line, Feed feed) {
    events.add(new SessionEvent.Fed(stamp(millis(at), line), feed));
    return this;
  }

  Session session() {
    return new Session(
        Document.of("small", 0),
        new Occasion("Small", DATE, ZONE, Venue.UNKNOWN, Peg.UNKNOWN, List.of()),
        match,
        List.copyOf(lines.values()),
        events,
        Outcome.UNKNOWN);
  }
}
