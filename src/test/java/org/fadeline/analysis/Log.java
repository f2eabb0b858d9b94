package org.fadeline.analysis;

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
import org.jspecify.annotations.Nullable;

/** A small match written down by hand: one entry a call. */
final class Log {
  private static final LocalDate DATE = LocalDate.of(2026, 6, 6);
  private static final ZoneId ZONE = ZoneId.of("Europe/London");

  private final Map<String, Line> lines = new LinkedHashMap<>();
  private final List<SessionEvent> events = new ArrayList<>();
  private final long allIn;
  private final long allOut;
  private MatchRules rules = MatchRules.UNSTATED;

  private Log(String allIn, String allOut) {
    this.allIn = millis(allIn);
    this.allOut = millis(allOut);
  }

  static Log from(String allIn, String allOut) {
    return new Log(allIn, allOut);
  }

  static long millis(String clock) {
    return LocalTime.parse(clock).atDate(DATE).atZone(ZONE).toInstant().toEpochMilli();
  }

  Log rules(MatchRules newRules) {
    rules = newRules;
    return this;
  }

  /** Puts a line on another line's spot. */
  Log spot(String name, String spot) {
    lines.put(name, new Line(name, name, null, spot, Line.Place.UNKNOWN, Line.Rig.UNKNOWN));
    return this;
  }

  private Stamp stamp(String clock, @Nullable String line) {
    if (line != null) {
      lines.computeIfAbsent(line, name -> Line.named(name, name));
    }
    return new Stamp("e" + events.size(), millis(clock), line, null);
  }

  Log cast(String clock, String line) {
    return add(new SessionEvent.Cast(stamp(clock, line)));
  }

  Log bite(String clock, String line) {
    return add(new SessionEvent.Bite(stamp(clock, line)));
  }

  Log hooked(String clock, String line) {
    return add(new SessionEvent.Hooked(stamp(clock, line)));
  }

  Log landed(String clock, @Nullable String line, double grams) {
    return landed(clock, line, 1, grams);
  }

  Log landed(String clock, @Nullable String line, int count, double grams) {
    return add(new SessionEvent.Landed(stamp(clock, line), new Fish(count, null, grams, false)));
  }

  Log lost(String clock, String line) {
    return add(new SessionEvent.Lost(stamp(clock, line), null));
  }

  Log foul(String clock, String line, double grams) {
    return add(new SessionEvent.Foul(stamp(clock, line), new Fish(1, null, grams, false)));
  }

  Log move(String clock, String line) {
    return add(new SessionEvent.Move(stamp(clock, line), null));
  }

  Log off(String clock, String line) {
    return add(new SessionEvent.Off(stamp(clock, line), null));
  }

  Log stopped(String clock) {
    return add(new SessionEvent.Stopped(stamp(clock, null), null));
  }

  Log count(String clock, String line, int fish, double grams) {
    return add(new SessionEvent.Count(stamp(clock, line), new Fish(fish, null, grams, false)));
  }

  Log fed(String clock, String line) {
    return add(new SessionEvent.Fed(stamp(clock, line), Feed.UNKNOWN));
  }

  Log fed(String clock, String line, double every, String until) {
    Feed feed = new Feed(null, null, null, new Feed.Pattern(every, millis(until)));
    return add(new SessionEvent.Fed(stamp(clock, line), feed));
  }

  Log add(SessionEvent event) {
    events.add(event);
    return this;
  }

  Session session() {
    return new Session(
        Document.of("test", 0),
        new Occasion("Test", DATE, ZONE, Venue.UNKNOWN, Peg.UNKNOWN, List.of()),
        new Match(allIn, allOut, rules),
        List.copyOf(lines.values()),
        events,
        Outcome.UNKNOWN);
  }

  Effort effort() {
    return Effort.of(session());
  }
}
