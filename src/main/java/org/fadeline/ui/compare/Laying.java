package org.fadeline.ui.compare;

import java.util.List;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * How the user wants two sessions laid on each other.
 *
 * @param mode what is laid on what
 * @param minutes how much later the second is laid by hand, in [−{@value #MOST_MINUTES}, {@value
 *     #MOST_MINUTES}]
 * @param firstEvent id of the first session's event, or null while none is chosen
 * @param secondEvent id of the second session's event, or null while none is chosen
 */
record Laying(
    Alignment.Mode mode,
    double minutes,
    @Nullable String firstEvent,
    @Nullable String secondEvent) {
  /** A day. */
  static final double MOST_MINUTES = 1440;

  /** All in on all in. */
  static final Laying USUAL = new Laying(Alignment.Mode.ALL_IN, 0, null, null);

  /** The modes in the order they are offered. */
  static final List<Alignment.Mode> MODES =
      List.of(
          Alignment.Mode.ALL_IN,
          Alignment.Mode.CLOCK,
          Alignment.Mode.FIRST_FED,
          Alignment.Mode.EVENT,
          Alignment.Mode.BY_HAND);

  /** Brings the shift into its range. */
  Laying {
    minutes = Math.max(-MOST_MINUTES, Math.min(MOST_MINUTES, minutes));
  }

  /** Returns the few words of a mode. */
  static String words(Alignment.Mode mode) {
    return switch (mode) {
      case ALL_IN -> "since all in";
      case CLOCK -> "by the clock";
      case FIRST_FED -> "from the first feed";
      case EVENT -> "from an event";
      case BY_HAND -> "by hand";
    };
  }

  Laying withMode(Alignment.Mode newMode) {
    return new Laying(newMode, minutes, firstEvent, secondEvent);
  }

  /** Lays by hand. */
  Laying byHand(double newMinutes) {
    return new Laying(Alignment.Mode.BY_HAND, newMinutes, firstEvent, secondEvent);
  }

  /** Lays one event on another; null leaves that side's as it is. */
  Laying onEvents(@Nullable String first, @Nullable String second) {
    return new Laying(
        Alignment.Mode.EVENT,
        minutes,
        first == null ? firstEvent : first,
        second == null ? secondEvent : second);
  }

  /**
   * Returns the alignment of two sessions. Where an event is not chosen yet, or no longer there,
   * the first that happened in that session stands for it; without any event it is all in.
   */
  Alignment of(Session first, Session second) {
    return switch (mode) {
      case ALL_IN -> Alignment.byAllIn(first, second);
      case CLOCK -> Alignment.byClock(first, second);
      case FIRST_FED -> Alignment.byFirstFed(first, second);
      case BY_HAND -> Alignment.byHand(first, second, minutes);
      case EVENT -> onEvent(first, second);
    };
  }

  private Alignment onEvent(Session first, Session second) {
    String one = chosen(first, firstEvent);
    String other = chosen(second, secondEvent);
    return one == null || other == null
        ? Alignment.byAllIn(first, second)
        : Alignment.byEvents(first, one, second, other);
  }

  /** Returns the id of the event that counts in a session, or null where it has none. */
  static @Nullable String chosen(Session session, @Nullable String id) {
    if (session.events().isEmpty()) {
      return null;
    }
    return session.events().stream().anyMatch(e -> e.id().equals(id))
        ? id
        : session.events().get(0).id();
  }
}
