package org.fadeline.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
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

/** A short match written by hand: two lines, a fish every few minutes. */
public final class HandMade {
  /** All in: 10:00 British summer time on 8 August 2026. */
  public static final long ALL_IN = Instant.parse("2026-08-08T09:00:00Z").toEpochMilli();

  /** All out, five hours later. */
  public static final long ALL_OUT = ALL_IN + 5 * 3_600_000L;

  private HandMade() {}

  /** Returns the instant some minutes after all in. */
  public static long minute(double minutes) {
    return ALL_IN + Math.round(minutes * 60_000);
  }

  /** Returns the match. */
  public static Session session() {
    List<SessionEvent> events = new ArrayList<>();
    events.add(new SessionEvent.Fed(stamp("f1", 0, "short"), Feed.UNKNOWN));
    events.add(new SessionEvent.Fed(stamp("f2", 5, "shallow"), Feed.UNKNOWN));
    events.add(new SessionEvent.Cast(stamp("c1", 1, "short")));
    fish(events, "s", "short", 8, 1100);
    fish(events, "t", "short", 15, 900);
    events.add(new SessionEvent.Bite(stamp("b1", 18, "short")));
    events.add(new SessionEvent.Move(stamp("m1", 25, "short"), "plan"));
    events.add(new SessionEvent.Cast(stamp("c2", 26, "shallow")));
    for (int i = 0; i < 12; i++) {
      fish(events, "w" + i, "shallow", 30 + 6 * i, 1400 + 50 * i);
    }
    events.add(new SessionEvent.Lost(stamp("l1", 108, "shallow"), null));
    events.add(new SessionEvent.Move(stamp("m2", 180, "shallow"), "dead"));
    events.add(new SessionEvent.Cast(stamp("c3", 181, "short")));
    fish(events, "z", "short", 190, 1200);
    fish(events, "y", "short", 240, 1300);
    return of(events);
  }

  /** Returns the match with other events. */
  public static Session of(List<SessionEvent> events) {
    return new Session(
        Document.of("hand-made", 0),
        new Occasion(
            "Invented Pool, peg 14",
            LocalDate.of(2026, 8, 8),
            ZoneId.of("Europe/London"),
            new Venue("Invented Pool", 52.0, -1.0),
            new Peg("14", 20.0, 0.4, List.of()),
            List.of()),
        new Match(ALL_IN, ALL_OUT, MatchRules.UNSTATED),
        List.of(line("shallow", "Shallow", 14.5, -8), line("short", "Short line", 5, 4)),
        events,
        Outcome.UNKNOWN);
  }

  private static Line line(String id, String name, double distance, double bearing) {
    return new Line(
        id, name, id, id, new Line.Place(distance, null, bearing, null), Line.Rig.UNKNOWN);
  }

  private static void fish(
      List<SessionEvent> events, String id, String line, double minute, double grams) {
    events.add(new SessionEvent.Cast(stamp(id + "c", minute - 1, line)));
    events.add(new SessionEvent.Hooked(stamp(id + "h", minute - 0.5, line)));
    events.add(new SessionEvent.Landed(stamp(id, minute, line), new Fish(1, "carp", grams, false)));
  }

  private static Stamp stamp(String id, double minute, String line) {
    return new Stamp(id, minute(minute), line, null);
  }
}
