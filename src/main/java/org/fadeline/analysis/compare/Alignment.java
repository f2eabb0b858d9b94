package org.fadeline.analysis.compare;

import java.util.Locale;
import java.util.Optional;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * How two sessions are laid on one axis: the instant of each that lies at 0. Rates, first bites and
 * fades do not depend on it; the running curves do.
 *
 * @param mode what is laid on what
 * @param firstOrigin instant of the first session at 0 on the axis, epoch milliseconds
 * @param secondOrigin instant of the second session at 0 on the axis, epoch milliseconds
 * @param stated the mode in a sentence, for every screen and picture that rests on it
 */
public record Alignment(Mode mode, long firstOrigin, long secondOrigin, String stated) {
  /** What is laid on what. */
  public enum Mode {
    /** The same time of day. */
    CLOCK("clock"),
    /** All in on all in. */
    ALL_IN("all-in"),
    /** First feed on first feed. */
    FIRST_FED("first-fed"),
    /** One chosen event of each. */
    EVENT("event"),
    /** All in on all in, moved by hand. */
    BY_HAND("by-hand");

    private final String word;

    Mode(String word) {
      this.word = word;
    }

    /** Returns the word used in files and on the command line. */
    public String word() {
      return word;
    }
  }

  /** Lays the same time of day on itself; 0 is midnight of each session's date. */
  public static Alignment byClock(Session first, Session second) {
    return new Alignment(
        Mode.CLOCK, midnight(first), midnight(second), "Laid on each other by the clock.");
  }

  private static long midnight(Session session) {
    long allIn = session.match().allIn();
    // Counted back from all in, so that the clock of the match itself is met on a day of 23 or 25
    // hours.
    return allIn - session.clock(allIn).toLocalTime().toNanoOfDay() / 1_000_000;
  }

  /** Lays all in on all in. */
  public static Alignment byAllIn(Session first, Session second) {
    return new Alignment(
        Mode.ALL_IN,
        first.match().allIn(),
        second.match().allIn(),
        "Laid on each other by time since all in.");
  }

  /**
   * Lays the first feed of the match on the first feed; by all in, and said so, where one of them
   * logs no feed.
   */
  public static Alignment byFirstFed(Session first, Session second) {
    Optional<SessionEvent> one = firstFed(first);
    Optional<SessionEvent> other = firstFed(second);
    if (one.isEmpty() || other.isEmpty()) {
      String which =
          one.isEmpty() && other.isEmpty()
              ? "neither match logs a feed"
              : (one.isEmpty() ? "the first" : "the second") + " match logs no feed";
      return new Alignment(
          Mode.ALL_IN,
          first.match().allIn(),
          second.match().allIn(),
          "Laid on each other by time since all in: " + which + ".");
    }
    return new Alignment(
        Mode.FIRST_FED,
        one.get().at(),
        other.get().at(),
        "Laid on each other by time since the first feed.");
  }

  private static Optional<SessionEvent> firstFed(Session session) {
    return session.events().stream().filter(SessionEvent.Fed.class::isInstance).findFirst();
  }

  /**
   * Lays one event of the first session on one of the second.
   *
   * @param firstEvent id of an event of the first session
   * @param secondEvent id of an event of the second session
   * @throws IllegalArgumentException if a session has no such event
   */
  public static Alignment byEvents(
      Session first, String firstEvent, Session second, String secondEvent) {
    SessionEvent one = event(first, firstEvent);
    SessionEvent other = event(second, secondEvent);
    return new Alignment(
        Mode.EVENT,
        one.at(),
        other.at(),
        "Laid on each other by a chosen event: "
            + said(one)
            + " in the first match, "
            + said(other)
            + " in the second.");
  }

  /** Returns an event's kind as it is said: its word is joined by hyphens in files only. */
  public static String said(SessionEvent event) {
    return event.kind().word().replace('-', ' ');
  }

  private static SessionEvent event(Session session, String id) {
    return session.events().stream()
        .filter(e -> e.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no event " + id + " in the session"));
  }

  /**
   * Lays all in on all in and moves the second session.
   *
   * @param minutes how much later the second session is laid, in [−1440, 1440]
   * @throws IllegalArgumentException if minutes is out of range
   */
  public static Alignment byHand(Session first, Session second, double minutes) {
    if (!(Math.abs(minutes) <= 1440)) {
      throw new IllegalArgumentException("minutes must be -1440 to 1440: " + minutes);
    }
    return new Alignment(
        Mode.BY_HAND,
        first.match().allIn(),
        second.match().allIn() - Math.round(minutes * TimeSpan.MILLIS_PER_MINUTE),
        "Laid on each other by hand: the second match's all in " + shifted(minutes) + ".");
  }

  private static String shifted(double minutes) {
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(minutes)).replaceFirst("\\.0$", "");
    return size.equals("0")
        ? "on the first's"
        : size + " min " + (minutes > 0 ? "after" : "before") + " the first's";
  }

  /** Returns the place on the axis of an instant of the first session, minutes. */
  public double firstMinutes(long at) {
    return (at - firstOrigin) / TimeSpan.MILLIS_PER_MINUTE;
  }

  /** Returns the place on the axis of an instant of the second session, minutes. */
  public double secondMinutes(long at) {
    return (at - secondOrigin) / TimeSpan.MILLIS_PER_MINUTE;
  }

  /** Returns the instant of the first session at a place on the axis, epoch milliseconds. */
  public long firstInstant(double minutes) {
    return firstOrigin + Math.round(minutes * TimeSpan.MILLIS_PER_MINUTE);
  }

  /** Returns the instant of the second session at a place on the axis, epoch milliseconds. */
  public long secondInstant(double minutes) {
    return secondOrigin + Math.round(minutes * TimeSpan.MILLIS_PER_MINUTE);
  }
}
