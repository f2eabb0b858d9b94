package org.fadeline.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;

/**
 * The rules for real records switched off one at a time, by writing into the log what the rule
 * holds back: a log so changed is read as if the rule were not there.
 */
enum RuleOff {
  /** All rules. */
  NONE("all rules"),
  /** Time with a fish in hand: fish come at once and the bait is back at once. */
  HANDLING("handling left in bait time"),
  /** Hook-ups alone: missed bites count, as if they were fish lost. */
  HOOK_UPS("missed bites counted"),
  /** A stay that opens with a fish: the fish counts, as if cast for just before. */
  OPENING("opening fish counted"),
  /** Time between two lines that nothing tells: it is the first line's, as if left just then. */
  UNASSIGNED("time between lines given to the first"),
  /** Times known to minutes: taken as exact, each seven seconds off the mark. */
  CLOCK("times taken as exact"),
  /** Counts of the time since the last: so many fish at that moment. */
  COUNTS("counts taken as fish of that moment");

  private final String words;

  RuleOff(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  Session of(Session log) {
    List<SessionEvent> events = log.events();
    return log.withEvents(
        switch (this) {
          case NONE -> events;
          case HANDLING -> atOnce(events);
          case HOOK_UPS -> events.stream().map(RuleOff::asLost).toList();
          case OPENING -> castFirst(events);
          case UNASSIGNED -> leftJustThen(events);
          case CLOCK -> events.stream().map(RuleOff::offTheMark).toList();
          case COUNTS -> events.stream().map(RuleOff::asFish).toList();
        });
  }

  private static List<SessionEvent> atOnce(List<SessionEvent> events) {
    List<SessionEvent> kept = new ArrayList<>();
    Map<String, Long> hooked = new HashMap<>();
    for (SessionEvent event : events) {
      String line = event.lineId();
      if (line != null && event instanceof SessionEvent.Hooked) {
        hooked.put(line, event.at());
      } else if (line != null && hooked.containsKey(line) && isOutcome(event.kind())) {
        long at = hooked.remove(line);
        kept.add(event.withStamp(event.stamp().withAt(at)));
        kept.add(new SessionEvent.Cast(new Stamp(event.id() + "c", at + 1, line, null)));
      } else {
        kept.add(event);
      }
    }
    return kept;
  }

  private static SessionEvent asLost(SessionEvent event) {
    return event instanceof SessionEvent.Bite ? new SessionEvent.Lost(event.stamp(), null) : event;
  }

  private static List<SessionEvent> castFirst(List<SessionEvent> events) {
    List<SessionEvent> kept = new ArrayList<>();
    String fishing = "";
    for (SessionEvent event : events) {
      String line = event.lineId();
      if (line != null && event.kind().group() == EventKind.Group.WATER) {
        // A cast after another line would end the stay there too, which is another rule.
        if (fishing.isEmpty() && event.kind() != EventKind.CAST) {
          kept.add(new SessionEvent.Cast(new Stamp(event.id() + "c", event.at() - 1, line, null)));
        }
        fishing = line;
      } else if (event.kind() == EventKind.MOVE) {
        fishing = "";
      }
      kept.add(event);
    }
    return kept;
  }

  private static List<SessionEvent> leftJustThen(List<SessionEvent> events) {
    List<SessionEvent> kept = new ArrayList<>();
    String fishing = "";
    for (SessionEvent event : events) {
      String line = event.lineId();
      if (line != null && event.kind().group() == EventKind.Group.WATER) {
        if (!line.equals(fishing) && !fishing.isEmpty()) {
          kept.add(
              new SessionEvent.Move(
                  new Stamp(event.id() + "m", event.at() - 1, fishing, null), null));
        }
        fishing = line;
      } else if (event.kind() == EventKind.MOVE) {
        fishing = "";
      }
      kept.add(event);
    }
    return kept;
  }

  private static SessionEvent offTheMark(SessionEvent event) {
    return event.kind() == EventKind.ALL_IN || event.kind() == EventKind.ALL_OUT
        ? event
        : event.withStamp(event.stamp().withAt(event.at() + 7_000));
  }

  private static SessionEvent asFish(SessionEvent event) {
    Fish fish = event.fishOrNull();
    return event instanceof SessionEvent.Count && fish != null && fish.count() > 0
        ? new SessionEvent.Landed(event.stamp(), fish)
        : event;
  }

  private static boolean isOutcome(EventKind kind) {
    return kind == EventKind.LANDED || kind == EventKind.LOST || kind == EventKind.FOUL;
  }
}
