package org.fadeline.log;

import java.util.HashSet;
import java.util.Set;
import org.fadeline.io.FreshIds;
import org.fadeline.model.Edit;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;

/**
 * What a press of a pad makes of the record: an event at the log clock's time, of which nothing
 * more is known yet.
 *
 * @param edit the step, named
 * @param eventId of the event added or counted up
 */
public record Press(Edit edit, String eventId) {
  /** A clicker pressed again within this time counts up the same entry, milliseconds. */
  static final long SAME_COUNT_MILLIS = 30_000;

  /**
   * Returns what a press makes.
   *
   * @param session as it stands
   * @param pad the pad pressed
   * @param at the log clock's time, epoch milliseconds
   */
  public static Press of(Session session, Pad pad, long at) {
    SessionEvent last = latest(session, at);
    if (pad.kind() == EventKind.COUNT
        && last instanceof SessionEvent.Count count
        && at - last.at() <= SAME_COUNT_MILLIS) {
      return counted(session, count);
    }
    ReplayFrame frame = ReplayFrame.at(session, at);
    String lineId = lineOf(session, pad, at);
    Stamp stamp = new Stamp(freshId(session), at, lineId, null);
    SessionEvent event = event(session, kind(pad, frame), stamp);
    return new Press(Edit.add(name(session, event), session, event), stamp.id());
  }

  private static Press counted(Session session, SessionEvent.Count count) {
    Fish fish = count.fish();
    Fish more = new Fish(fish.count() + 1, fish.species(), fish.grams(), fish.weighed());
    SessionEvent event = new SessionEvent.Count(count.stamp(), more);
    return new Press(Edit.replace("Count " + more.count() + " fish", session, event), count.id());
  }

  /** Returns the last event at or before an instant, or null. */
  private static @Nullable SessionEvent latest(Session session, long at) {
    SessionEvent latest = null;
    for (SessionEvent event : session.events()) {
      if (event.at() > at) {
        break;
      }
      latest = event;
    }
    return latest;
  }

  private static @Nullable String lineOf(Session session, Pad pad, long at) {
    if (pad.line() != Pad.AROUND) {
      return session.lines().get(pad.line()).id();
    }
    return switch (pad.kind()) {
      case OFF, CHANGE, COUNT -> lineInUse(session, at);
      default -> null;
    };
  }

  /**
   * Returns the line that the rig in hand belongs to: the last one fished that was not left, also
   * while the rig is out for a break or a new hooklength; null where there is none.
   *
   * @param at epoch milliseconds
   */
  private static @Nullable String lineInUse(Session session, long at) {
    String line = null;
    for (SessionEvent event : session.events()) {
      if (event.at() > at) {
        break;
      }
      String on = event.lineId();
      if (on != null && event.kind().group() == EventKind.Group.WATER) {
        line = on;
      } else if (event.kind() == EventKind.MOVE && (on == null || on.equals(line))) {
        line = null;
      }
    }
    return line;
  }

  private static EventKind kind(Pad pad, ReplayFrame frame) {
    boolean wayOn = pad.kind() == EventKind.STOPPED && frame.phase() == ReplayFrame.Phase.STOPPED;
    return wayOn ? EventKind.RESUMED : pad.kind();
  }

  private static SessionEvent event(Session session, EventKind kind, Stamp stamp) {
    return switch (kind) {
      case CAST -> new SessionEvent.Cast(stamp);
      case BITE -> new SessionEvent.Bite(stamp);
      case HOOKED -> new SessionEvent.Hooked(stamp);
      case LANDED -> new SessionEvent.Landed(stamp, Fish.ONE);
      case LOST -> new SessionEvent.Lost(stamp, null);
      case FOUL -> new SessionEvent.Foul(stamp, Fish.ONE);
      case MOVE -> new SessionEvent.Move(stamp, null);
      case OFF -> new SessionEvent.Off(stamp, null);
      case STOPPED -> new SessionEvent.Stopped(stamp, null);
      case RESUMED -> new SessionEvent.Resumed(stamp);
      case FED -> new SessionEvent.Fed(stamp, Feed.UNKNOWN);
      case COUNT -> new SessionEvent.Count(stamp, Fish.ONE);
      case CHANGE -> new SessionEvent.Change(stamp, null);
      case NET -> new SessionEvent.Net(stamp, nextNet(session, stamp.at()));
      case INDICATION -> new SessionEvent.Indication(stamp);
      case SIGN -> new SessionEvent.Sign(stamp);
      case NEIGHBOUR -> new SessionEvent.Neighbour(stamp, null, Fish.ONE);
      case WEATHER -> new SessionEvent.Weather(stamp);
      case NOTE -> new SessionEvent.Note(stamp);
      case ALL_IN -> new SessionEvent.AllIn(stamp);
      case ALL_OUT -> new SessionEvent.AllOut(stamp);
    };
  }

  /** The first net needs no event, so that the first change is to the second. */
  private static int nextNet(Session session, long at) {
    int net = 1;
    for (SessionEvent event : session.events()) {
      if (event.at() <= at && event instanceof SessionEvent.Net change) {
        Integer number = change.net();
        net = number == null ? net + 1 : number;
      }
    }
    return net + 1;
  }

  private static String name(Session session, SessionEvent event) {
    String lineId = event.lineId();
    String line = lineId == null ? "" : session.line(lineId).map(l -> " on " + l.name()).orElse("");
    return "Log " + event.kind().word() + line;
  }

  /** Returns an id that no event of the session has. */
  private static String freshId(Session session) {
    Set<String> taken = new HashSet<>();
    session.events().forEach(event -> taken.add(event.id()));
    return new FreshIds(taken, taken.size()).next();
  }
}
