package org.fadeline.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/**
 * What is left of a full log when people keep it: pure functions from session to session.
 *
 * <p>From film nearly everything is logged; from memory or a clicker moves, fish in clumps and
 * totals; hardly ever casts, loose feed, missed bites or single weights (common practice).
 */
public final class AsPeopleLog {
  private static final Set<EventKind> FRAME = Set.of(EventKind.ALL_IN, EventKind.ALL_OUT);

  private AsPeopleLog() {}

  /** No put-ins or casts. */
  public static Session noCasts(Session session) {
    return keep(session, event -> event.kind() != EventKind.CAST);
  }

  /** No bites that were missed. */
  public static Session noMissedBites(Session session) {
    return keep(session, event -> event.kind() != EventKind.BITE);
  }

  /** Moves, and the fish landed, lost or foul-hooked; no feed, no rig coming out. */
  public static Session movesAndFish(Session session) {
    Set<EventKind> kept =
        Set.of(EventKind.MOVE, EventKind.LANDED, EventKind.LOST, EventKind.FOUL, EventKind.NET);
    return keep(session, event -> FRAME.contains(event.kind()) || kept.contains(event.kind()));
  }

  /** Fish landed alone, each with its line. */
  public static Session fishOnly(Session session) {
    return keep(session, event -> FRAME.contains(event.kind()) || event.kind() == EventKind.LANDED);
  }

  /**
   * Moves and clicker counts: fish and weight since the last count, read off at every move, every
   * so many minutes within a stay and at all out. A reading with nothing since the last is a count
   * of 0 fish.
   *
   * @param everyMinutes minutes between readings, above 0
   */
  public static Session clickerCounts(Session session, int everyMinutes) {
    if (everyMinutes <= 0) {
      throw new IllegalArgumentException("minutes between counts must be above 0");
    }
    List<SessionEvent> kept = new ArrayList<>();
    Clicker clicker = new Clicker();
    long step = everyMinutes * 60_000L;
    long next = session.match().allIn() + step;
    for (SessionEvent event : session.events()) {
      while (event.at() >= next && next < session.match().allOut()) {
        kept.add(clicker.read(next));
        next += step;
      }
      switch (event.kind()) {
        case ALL_IN -> kept.add(event);
        case CAST -> clicker.line = event.lineId();
        case LANDED -> clicker.add(event);
        case MOVE -> {
          kept.add(clicker.read(event.at()));
          kept.add(event);
        }
        case ALL_OUT -> {
          kept.add(clicker.read(event.at()));
          kept.add(event);
        }
        default -> {}
      }
    }
    return session.withEvents(kept);
  }

  /** Every time rounded to the nearest so many minutes, as read off a watch; the order stays. */
  public static Session roundedTo(Session session, int minutes) {
    long step = minutes * 60_000L;
    long allIn = session.match().allIn();
    return session.withEvents(
        session.events().stream()
            .map(
                event -> {
                  long rounded = allIn + step * Math.round((event.at() - allIn) / (double) step);
                  return event.withStamp(event.stamp().withAt(rounded));
                })
            .toList());
  }

  /** Each event but the start and finish calls forgotten with the given probability. */
  public static Session forgetting(Session session, double share, long seed) {
    Random random = new Random(seed);
    return keep(
        session,
        event -> {
          boolean forgotten = random.nextDouble() < share;
          return FRAME.contains(event.kind()) || !forgotten;
        });
  }

  /**
   * Missed bites forgotten when busy: the more fish were hooked in the ten minutes before, the
   * likelier, 1 − 0.8^n after n of them.
   */
  public static Session missesForgottenWhenBusy(Session session, long seed) {
    Random random = new Random(seed);
    List<SessionEvent> kept = new ArrayList<>();
    List<Long> hooked = new ArrayList<>();
    for (SessionEvent event : session.events()) {
      if (event.kind() == EventKind.HOOKED) {
        hooked.add(event.at());
      }
      if (event.kind() == EventKind.BITE) {
        long recent = hooked.stream().filter(at -> at > event.at() - 600_000L).count();
        if (random.nextDouble() < 1 - Math.pow(0.8, (double) recent)) {
          continue;
        }
      }
      kept.add(event);
    }
    return session.withEvents(kept);
  }

  private static Session keep(Session session, Predicate<SessionEvent> which) {
    return session.withEvents(session.events().stream().filter(which).toList());
  }

  private static final class Clicker {
    private @Nullable String line;
    private int fish;
    private double grams;
    private int read;

    void add(SessionEvent event) {
      Fish landed = event.fishOrNull();
      if (landed != null) {
        fish += landed.count();
        Double weight = landed.grams();
        grams += weight == null ? 0 : weight;
      }
    }

    SessionEvent read(long at) {
      SessionEvent count =
          new SessionEvent.Count(
              new Stamp("count" + ++read, at, line, null), new Fish(fish, null, grams, false));
      fish = 0;
      grams = 0;
      return count;
    }
  }
}
