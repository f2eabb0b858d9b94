package org.fadeline.model;

import java.util.List;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;

/** One thing that happened, at an instant to the millisecond. */
public sealed interface SessionEvent {
  /** Returns what every event carries. */
  Stamp stamp();

  /** Returns the kind of event. */
  EventKind kind();

  /** Returns this event with another stamp: another time, line or note. */
  SessionEvent withStamp(Stamp stamp);

  /**
   * Returns this event with its times changed: its own instant, and whatever else of it has one.
   *
   * @param time from epoch milliseconds to epoch milliseconds
   */
  default SessionEvent retimed(LongUnaryOperator time) {
    return withStamp(stamp().withAt(time.applyAsLong(at())));
  }

  /** Returns the id, unique in the session. */
  default String id() {
    return stamp().id();
  }

  /** Returns the instant, epoch milliseconds. */
  default long at() {
    return stamp().at();
  }

  /** Returns the id of the line it happened on, or null. */
  default @Nullable String lineId() {
    return stamp().lineId();
  }

  /** Returns the angler's words, or null. */
  default @Nullable String note() {
    return stamp().note();
  }

  /** Returns this event with other fish; as it is where its kind carries none. */
  default SessionEvent withFish(Fish fish) {
    return switch (kind()) {
      case LANDED -> new Landed(stamp(), fish);
      case FOUL -> new Foul(stamp(), fish);
      case COUNT -> new Count(stamp(), fish);
      case NEIGHBOUR -> new Neighbour(stamp(), ((Neighbour) this).peg(), fish);
      default -> this;
    };
  }

  /** Returns the fish of this event, or null for kinds that carry none. */
  default @Nullable Fish fishOrNull() {
    return null;
  }

  /** Returns why a line was left, the rig came out or the match stopped, or null. */
  default @Nullable String reasonOrNull() {
    return switch (kind()) {
      case MOVE -> ((Move) this).reason();
      case OFF -> ((Off) this).reason();
      case STOPPED -> ((Stopped) this).reason();
      default -> null;
    };
  }

  /**
   * A put-in of a pole rig, or a cast.
   *
   * @param stamp what every event carries
   */
  record Cast(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.CAST;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Cast(newStamp);
    }
  }

  /**
   * A take that showed; nothing was hooked.
   *
   * @param stamp what every event carries
   */
  record Bite(Stamp stamp) implements SessionEvent {
    /** A bite at most this long before a hook-up on the same line is the same bite. */
    public static final long SAME_AS_HOOKED_MILLIS = 10_000;

    @Override
    public EventKind kind() {
      return EventKind.BITE;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Bite(newStamp);
    }
  }

  /**
   * A fish hooked.
   *
   * @param stamp what every event carries
   */
  record Hooked(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.HOOKED;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Hooked(newStamp);
    }
  }

  /**
   * Fish landed; a count above 1 is that many fish sharing a total weight.
   *
   * @param stamp what every event carries
   * @param fish the fish
   */
  record Landed(Stamp stamp, Fish fish) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.LANDED;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Landed(newStamp, fish);
    }

    @Override
    public Fish fishOrNull() {
      return fish;
    }
  }

  /**
   * A hooked fish that came off.
   *
   * @param stamp what every event carries
   * @param species what it was thought to be, or null
   */
  record Lost(Stamp stamp, @Nullable String species) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.LOST;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Lost(newStamp, species);
    }
  }

  /**
   * A foul-hooked fish, landed; the match's rule decides whether it counts.
   *
   * @param stamp what every event carries
   * @param fish the fish
   */
  record Foul(Stamp stamp, Fish fish) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.FOUL;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Foul(newStamp, fish);
    }

    @Override
    public Fish fishOrNull() {
      return fish;
    }
  }

  /**
   * The angler left the line.
   *
   * @param stamp what every event carries
   * @param reason one of {@link #USUAL_REASONS} or own words, or null
   */
  record Move(Stamp stamp, @Nullable String reason) implements SessionEvent {
    /** Why anglers leave a line, in the words that notes and pads use. */
    public static final List<String> USUAL_REASONS =
        List.of("dead", "resting", "plan", "weather", "neighbour");

    @Override
    public EventKind kind() {
      return EventKind.MOVE;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Move(newStamp, reason);
    }
  }

  /**
   * The rig came out on purpose: a break, a tangle, re-rigging, cupping.
   *
   * @param stamp what every event carries
   * @param reason why, or null
   */
  record Off(Stamp stamp, @Nullable String reason) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.OFF;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Off(newStamp, reason);
    }
  }

  /**
   * The match was suspended.
   *
   * @param stamp what every event carries
   * @param reason why, or null
   */
  record Stopped(Stamp stamp, @Nullable String reason) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.STOPPED;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Stopped(newStamp, reason);
    }
  }

  /**
   * The match went on.
   *
   * @param stamp what every event carries
   */
  record Resumed(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.RESUMED;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Resumed(newStamp);
    }
  }

  /**
   * Bait introduced on a line.
   *
   * @param stamp what every event carries
   * @param feed what, how much and how
   */
  record Fed(Stamp stamp, Feed feed) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.FED;
    }

    @Override
    public SessionEvent retimed(LongUnaryOperator time) {
      return new Fed(stamp.withAt(time.applyAsLong(at())), feed.retimed(time));
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Fed(newStamp, feed);
    }
  }

  /**
   * A clicker count.
   *
   * @param stamp what every event carries
   * @param fish fish and weight since the last count
   */
  record Count(Stamp stamp, Fish fish) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.COUNT;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Count(newStamp, fish);
    }

    @Override
    public Fish fishOrNull() {
      return fish;
    }
  }

  /**
   * A change of rig, depth or hookbait of a line.
   *
   * @param stamp what every event carries
   * @param hookbait the new hookbait, or null; the rest stands in the note
   */
  record Change(Stamp stamp, @Nullable String hookbait) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.CHANGE;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Change(newStamp, hookbait);
    }
  }

  /**
   * A change of keepnet.
   *
   * @param stamp what every event carries
   * @param net number of the net now in use, from 1, or null
   */
  record Net(Stamp stamp, @Nullable Integer net) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.NET;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Net(newStamp, net);
    }
  }

  /**
   * Movement short of a bite.
   *
   * @param stamp what every event carries
   */
  record Indication(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.INDICATION;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Indication(newStamp);
    }
  }

  /**
   * Fish showing: fizzing, swirls.
   *
   * @param stamp what every event carries
   */
  record Sign(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.SIGN;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Sign(newStamp);
    }
  }

  /**
   * Another peg's catch.
   *
   * @param stamp what every event carries
   * @param peg its number, or null
   * @param fish what was seen caught
   */
  record Neighbour(Stamp stamp, @Nullable String peg, Fish fish) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.NEIGHBOUR;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Neighbour(newStamp, peg, fish);
    }

    @Override
    public Fish fishOrNull() {
      return fish;
    }
  }

  /**
   * A remark on the weather, in the note.
   *
   * @param stamp what every event carries
   */
  record Weather(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.WEATHER;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Weather(newStamp);
    }
  }

  /**
   * Any other remark.
   *
   * @param stamp what every event carries
   */
  record Note(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.NOTE;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new Note(newStamp);
    }
  }

  /**
   * The start call, where it was logged as an event.
   *
   * @param stamp what every event carries
   */
  record AllIn(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.ALL_IN;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new AllIn(newStamp);
    }
  }

  /**
   * The finish call, where it was logged as an event.
   *
   * @param stamp what every event carries
   */
  record AllOut(Stamp stamp) implements SessionEvent {
    @Override
    public EventKind kind() {
      return EventKind.ALL_OUT;
    }

    @Override
    public SessionEvent withStamp(Stamp newStamp) {
      return new AllOut(newStamp);
    }
  }
}
