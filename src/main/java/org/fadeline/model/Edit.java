package org.fadeline.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One gesture on a session: a named step that can be applied, undone and written down.
 *
 * <p>An edit is what changed between two states of a session. It holds both sides of everything it
 * changes, so that its inverse needs nothing else, and it refuses a session it does not fit.
 *
 * @param name what the angler did, such as "Add bite"
 * @param events runs of events that were replaced, in order
 * @param lines all lines before and after, or null where they stay
 * @param match the frame before and after, or null where it stays
 * @param occasion where and when, before and after, or null where it stays
 * @param outcome before and after, or null where it stays
 */
public record Edit(
    String name,
    List<EventRun> events,
    @Nullable Swap<List<Line>> lines,
    @Nullable Swap<Match> match,
    @Nullable Swap<Occasion> occasion,
    @Nullable Swap<Outcome> outcome) {
  /** Copies the runs. */
  public Edit {
    events = List.copyOf(events);
  }

  /**
   * A value before and after.
   *
   * @param before the edit
   * @param after the edit
   * @param <T> kind of value
   */
  public record Swap<T>(T before, T after) {
    Swap<T> inverse() {
      return new Swap<>(after, before);
    }
  }

  /**
   * Neighbouring events that were taken out, and those put in their place.
   *
   * @param from position of the first removed event in the list before the edit
   * @param removed in order; may be empty
   * @param to position of the first added event in the list after the edit
   * @param added in order; may be empty
   */
  public record EventRun(int from, List<SessionEvent> removed, int to, List<SessionEvent> added) {
    /** Copies the lists. */
    public EventRun {
      removed = List.copyOf(removed);
      added = List.copyOf(added);
    }

    EventRun inverse() {
      return new EventRun(to, added, from, removed);
    }
  }

  /**
   * Returns the edit that leads from one state of a session to another. The document's identity and
   * sequence are no part of it.
   *
   * @param name what the angler did
   */
  public static Edit between(String name, Session before, Session after) {
    return new Edit(
        name,
        EventDiff.runs(before.events(), after.events()),
        swap(before.lines(), after.lines()),
        swap(before.match(), after.match()),
        swap(before.occasion(), after.occasion()),
        swap(before.outcome(), after.outcome()));
  }

  /** Returns the edit that adds one event, after those of its instant. */
  public static Edit add(String name, Session session, SessionEvent event) {
    List<SessionEvent> events = new ArrayList<>(session.events());
    events.add(event);
    return between(name, session, session.withEvents(events));
  }

  /**
   * Returns the edit that puts an event in the place of the one with the same id.
   *
   * @throws IllegalArgumentException if there is none with the id
   */
  public static Edit replace(String name, Session session, SessionEvent event) {
    List<SessionEvent> events = new ArrayList<>(session.events());
    boolean found = false;
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i).id().equals(event.id())) {
        events.set(i, event);
        found = true;
      }
    }
    if (!found) {
      throw new IllegalArgumentException("there is no event " + event.id());
    }
    return between(name, session, session.withEvents(events));
  }

  private static <T> @Nullable Swap<T> swap(T before, T after) {
    return before.equals(after) ? null : new Swap<>(before, after);
  }

  /** Returns whether nothing changes. */
  public boolean isEmpty() {
    return events.isEmpty()
        && lines == null
        && match == null
        && occasion == null
        && outcome == null;
  }

  /** Returns the edit that takes this one back. */
  public Edit inverse() {
    return new Edit(
        name,
        events.stream().map(EventRun::inverse).toList(),
        inverse(lines),
        inverse(match),
        inverse(occasion),
        inverse(outcome));
  }

  private static <T> @Nullable Swap<T> inverse(@Nullable Swap<T> swap) {
    return swap == null ? null : swap.inverse();
  }

  /**
   * Returns the session after this edit; its document stays as it is.
   *
   * @throws IllegalArgumentException if the session is not in the state that the edit starts from
   */
  public Session apply(Session session) {
    return new Session(
        session.document(),
        after(occasion, session.occasion()),
        after(match, session.match()),
        after(lines, session.lines()),
        eventsAfter(session.events()),
        after(outcome, session.outcome()));
  }

  private static <T> T after(@Nullable Swap<T> swap, T now) {
    if (swap == null) {
      return now;
    }
    if (!swap.before.equals(now)) {
      throw doesNotFit();
    }
    return swap.after;
  }

  private List<SessionEvent> eventsAfter(List<SessionEvent> now) {
    if (events.isEmpty()) {
      return now;
    }
    List<SessionEvent> after = new ArrayList<>(now.size());
    int done = 0;
    for (EventRun run : events) {
      int end = run.from + run.removed.size();
      if (run.from < done || end > now.size() || !now.subList(run.from, end).equals(run.removed)) {
        throw doesNotFit();
      }
      after.addAll(now.subList(done, run.from));
      if (after.size() != run.to) {
        throw doesNotFit();
      }
      after.addAll(run.added);
      done = end;
    }
    after.addAll(now.subList(done, now.size()));
    return Collections.unmodifiableList(after);
  }

  private static IllegalArgumentException doesNotFit() {
    return new IllegalArgumentException("the edit does not fit this state of the session");
  }

  /** Returns the name and what it holds in a few words. */
  @Override
  public String toString() {
    return "Edit[" + Objects.requireNonNullElse(name, "") + ", " + events.size() + " runs]";
  }
}
