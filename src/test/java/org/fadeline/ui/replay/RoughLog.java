package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.ui.HandMade;
import org.jspecify.annotations.Nullable;

/**
 * A match of eighty minutes as somebody logs it who changes his ways: casts, hook-ups, moves and
 * weights now given and now forgotten, the clock told finely and then roughly, fish counted on a
 * clicker.
 */
public final class RoughLog {
  private static final long LENGTH = 80 * 60_000L;

  private final Random random;
  private final List<SessionEvent> events = new ArrayList<>();
  private long at;
  private String line = "short";
  private double castsTold;
  private double hooksTold;
  private double movesTold;
  private double weightsTold;
  private double bitesAnHour;
  private long clock = 1;
  private int ids;

  private RoughLog(long seed) {
    random = new Random(seed);
  }

  /** Returns the match of a seed. */
  public static Session of(long seed) {
    RoughLog log = new RoughLog(seed);
    Session plain = HandMade.session();
    long allIn = plain.match().allIn();
    Match match =
        new Match(
            allIn,
            allIn + LENGTH,
            new MatchRules(
                log.random.nextBoolean() ? 10 : 0,
                log.random.nextBoolean(),
                log.random.nextBoolean(),
                new MatchRules.NetLimit(9_000, 500, null),
                null));
    log.fish(match);
    log.events.sort(Comparator.comparingLong(SessionEvent::at));
    return new Session(
        plain.document(),
        plain.occasion(),
        match,
        plain.lines(),
        List.copyOf(log.events),
        plain.outcome());
  }

  private void fish(Match match) {
    at = match.allIn() - 400_000;
    changeWays();
    feed();
    at = match.allIn() - 60_000;
    cast();
    while (at < match.allOut() + 900_000) {
      pass(3600 / bitesAnHour);
      double what = random.nextDouble();
      if (what < 0.62) {
        bite();
      } else if (what < 0.72) {
        feed();
      } else if (what < 0.80) {
        move();
      } else if (what < 0.84) {
        add(new SessionEvent.Count(stamp(random.nextBoolean() ? line : null), fishOf(4)));
      } else if (what < 0.88) {
        add(new SessionEvent.Net(stamp(null), random.nextBoolean() ? null : 2));
      } else if (what < 0.92) {
        add(new SessionEvent.Neighbour(stamp(null), "15", fishOf(2)));
      } else if (what < 0.94) {
        add(new SessionEvent.Stopped(stamp(null), null));
        pass(300);
        add(new SessionEvent.Resumed(stamp(null)));
      } else {
        changeWays();
      }
    }
  }

  private void changeWays() {
    castsTold = random.nextInt(3) / 2.0;
    hooksTold = random.nextInt(3) / 2.0;
    movesTold = random.nextInt(3) / 2.0;
    weightsTold = random.nextInt(4) == 0 ? 0.6 : 1;
    bitesAnHour = 15 + random.nextInt(100);
    clock = List.of(1L, 1000L, 1000L, 60_000L, 300_000L).get(random.nextInt(5));
  }

  private void bite() {
    if (random.nextInt(4) > 0) {
      add(new SessionEvent.Bite(stamp(line)));
      if (random.nextBoolean()) {
        return;
      }
      pass(6);
    }
    if (random.nextDouble() < hooksTold) {
      add(new SessionEvent.Hooked(stamp(line)));
      pass(70);
    }
    int outcome = random.nextInt(10);
    if (outcome < 7) {
      add(new SessionEvent.Landed(stamp(line), fishOf(random.nextInt(8) == 0 ? 3 : 1)));
    } else if (outcome == 7) {
      add(new SessionEvent.Lost(stamp(line), null));
    } else if (outcome == 8) {
      add(new SessionEvent.Foul(stamp(line), fishOf(1)));
    }
    pass(60);
    cast();
  }

  private void cast() {
    if (random.nextDouble() < castsTold) {
      add(new SessionEvent.Cast(stamp(line)));
    }
  }

  private void move() {
    boolean off = random.nextInt(3) == 0;
    if (random.nextDouble() < movesTold) {
      add(
          off
              ? new SessionEvent.Off(stamp(line), null)
              : new SessionEvent.Move(stamp(random.nextBoolean() ? line : null), null));
    }
    if (!off || random.nextBoolean()) {
      line = line.equals("short") ? "shallow" : "short";
    }
    pass(240);
    cast();
  }

  private void feed() {
    add(new SessionEvent.Fed(stamp(random.nextBoolean() ? line : "shallow"), Feed.UNKNOWN));
  }

  private Fish fishOf(int count) {
    boolean told = random.nextDouble() < weightsTold;
    return new Fish(count, "carp", told ? count * (200 + random.nextInt(1500)) * 1.0 : null, false);
  }

  private Stamp stamp(@Nullable String onLine) {
    return new Stamp("e" + ids++, Math.floorDiv(at, clock) * clock, onLine, null);
  }

  private void add(SessionEvent event) {
    events.add(event);
  }

  /** Lets time pass, the given seconds on average. */
  private void pass(double seconds) {
    at += Math.round(-Math.log(1 - random.nextDouble()) * seconds * 1000) + 1;
  }
}
