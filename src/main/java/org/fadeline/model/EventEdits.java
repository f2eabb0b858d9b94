package org.fadeline.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Changes of events, as functions from a session to a session. */
public final class EventEdits {
  private EventEdits() {}

  private static UnaryOperator<Session> each(
      Set<String> ids, Function<SessionEvent, @Nullable SessionEvent> change) {
    return session -> {
      List<SessionEvent> events = new ArrayList<>(session.events().size());
      for (SessionEvent event : session.events()) {
        SessionEvent after = ids.contains(event.id()) ? change.apply(event) : event;
        if (after != null) {
          events.add(after);
        }
      }
      return session.withEvents(events);
    };
  }

  /** Moves events in time by some milliseconds, the end of a feeding pattern with its feed. */
  public static UnaryOperator<Session> shift(Set<String> ids, long millis) {
    return each(ids, e -> e.retimed(at -> at + millis));
  }

  /**
   * Stretches events so that those at one pair of instants come to lie at another.
   *
   * @param from instant that becomes {@code toFrom}
   * @param until later instant that becomes {@code toUntil}
   */
  public static UnaryOperator<Session> stretch(
      Set<String> ids, long from, long until, long toFrom, long toUntil) {
    double factor = until == from ? 1 : (toUntil - toFrom) / (double) (until - from);
    return each(ids, e -> e.retimed(at -> toFrom + Math.round((at - from) * factor)));
  }

  /** Puts events on another line, or on none. */
  public static UnaryOperator<Session> line(Set<String> ids, @Nullable String lineId) {
    return each(ids, e -> e.withStamp(e.stamp().withLine(lineId)));
  }

  /** Makes events of another kind; fish, feed and reasons are kept where the kind has them. */
  public static UnaryOperator<Session> kind(Set<String> ids, EventKind kind) {
    return each(ids, e -> as(e, kind));
  }

  /** Takes events out. */
  public static UnaryOperator<Session> remove(Set<String> ids) {
    return each(ids, e -> null);
  }

  /** Sets the weight of a fish landed, in grams, or none. */
  public static UnaryOperator<Session> weight(String id, @Nullable Double grams) {
    return each(
        Set.of(id),
        e -> {
          Fish fish = e.fishOrNull();
          return fish == null
              ? e
              : e.withFish(new Fish(fish.count(), fish.species(), grams, fish.weighed()));
        });
  }

  /** Sets the angler's words on an event; blank words are none. */
  public static UnaryOperator<Session> note(String id, String note) {
    String words = note.isBlank() ? null : note.strip();
    return each(
        Set.of(id),
        e -> {
          Stamp s = e.stamp();
          return e.withStamp(new Stamp(s.id(), s.at(), s.lineId(), words));
        });
  }

  /** Sets why a line was left, the rig came out or the match stopped; blank words are none. */
  public static UnaryOperator<Session> reason(String id, String reason) {
    String words = reason.isBlank() ? null : reason.strip();
    return each(
        Set.of(id),
        e ->
            switch (e.kind()) {
              case MOVE -> new SessionEvent.Move(e.stamp(), words);
              case OFF -> new SessionEvent.Off(e.stamp(), words);
              case STOPPED -> new SessionEvent.Stopped(e.stamp(), words);
              default -> e;
            });
  }

  /** Returns an event as one of another kind. */
  static SessionEvent as(SessionEvent event, EventKind kind) {
    if (event.kind() == kind) {
      return event;
    }
    Stamp stamp = event.stamp();
    Fish fish = Objects.requireNonNullElse(event.fishOrNull(), Fish.ONE);
    Fish caught =
        fish.count() >= 1 ? fish : new Fish(1, fish.species(), fish.grams(), fish.weighed());
    Feed feed = event instanceof SessionEvent.Fed fed ? fed.feed() : Feed.UNKNOWN;
    String reason = event.reasonOrNull();
    return switch (kind) {
      case CAST -> new SessionEvent.Cast(stamp);
      case BITE -> new SessionEvent.Bite(stamp);
      case HOOKED -> new SessionEvent.Hooked(stamp);
      case LANDED -> new SessionEvent.Landed(stamp, caught);
      case LOST -> new SessionEvent.Lost(stamp, fish.species());
      case FOUL -> new SessionEvent.Foul(stamp, caught);
      case MOVE -> new SessionEvent.Move(stamp, reason);
      case OFF -> new SessionEvent.Off(stamp, reason);
      case STOPPED -> new SessionEvent.Stopped(stamp, reason);
      case RESUMED -> new SessionEvent.Resumed(stamp);
      case FED -> new SessionEvent.Fed(stamp, feed);
      case COUNT -> new SessionEvent.Count(stamp, fish);
      case CHANGE -> new SessionEvent.Change(stamp, null);
      case NET -> new SessionEvent.Net(stamp, null);
      case INDICATION -> new SessionEvent.Indication(stamp);
      case SIGN -> new SessionEvent.Sign(stamp);
      case NEIGHBOUR -> new SessionEvent.Neighbour(stamp, null, fish);
      case WEATHER -> new SessionEvent.Weather(stamp);
      case NOTE -> new SessionEvent.Note(stamp);
      case ALL_IN -> new SessionEvent.AllIn(stamp);
      case ALL_OUT -> new SessionEvent.AllOut(stamp);
    };
  }
}
