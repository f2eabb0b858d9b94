package org.fadeline.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.UnloggedFish;
import org.fadeline.replay.ReplayFrame.LineState;
import org.fadeline.replay.ReplayFrame.Phase;
import org.fadeline.replay.ReplayFrame.Totals;
import org.jspecify.annotations.Nullable;

/**
 * A session prepared for asking frames at many instants: one pass over the events, then a binary
 * search for each frame.
 */
public final class ReplayTrack {
  private final Session session;
  private final long[] at;
  private final Phase[] phaseAfter;
  private final @Nullable String[] fishingAfter;
  private final Tally match = new Tally();
  private final Tally lost = new Tally();
  private long firstEstimate = Long.MAX_VALUE;
  private final Map<String, LineTrack> lines = new LinkedHashMap<>();
  private final Map<String, Times> feeds = new LinkedHashMap<>();

  private ReplayTrack(Session session) {
    this.session = session;
    int n = session.events().size();
    at = new long[n];
    phaseAfter = new Phase[n];
    fishingAfter = new @Nullable String[n];
    for (Line line : session.lines()) {
      lines.put(line.id(), new LineTrack(feeds.computeIfAbsent(line.spot(), s -> new Times())));
    }
    new Pass().run();
    feeds.values().forEach(Times::seal);
  }

  /** Prepares a session. */
  public static ReplayTrack of(Session session) {
    return new ReplayTrack(session);
  }

  /** Returns how many events lie at or before an instant (epoch milliseconds). */
  public int eventsSeen(long instant) {
    return upTo(at, at.length, instant);
  }

  /** Returns the frame at an instant (epoch milliseconds, any value). */
  public ReplayFrame frameAt(long instant) {
    int seen = eventsSeen(instant);
    List<LineState> states = new ArrayList<>(lines.size());
    for (Map.Entry<String, LineTrack> entry : lines.entrySet()) {
      states.add(entry.getValue().stateAt(entry.getKey(), instant));
    }
    Totals totals =
        new Totals(
            match.fishAt(instant),
            match.gramsAt(instant),
            match.gramsAt(instant) > 0 && instant < firstEstimate,
            lost.fishAt(instant));
    return new ReplayFrame(
        instant, seen, phaseAt(instant, seen), fishingAt(instant, seen), totals, states);
  }

  private Phase phaseAt(long instant, int seen) {
    if (instant < session.match().allIn()) {
      return Phase.BEFORE;
    }
    if (instant >= session.match().allOut()) {
      return Phase.AFTER;
    }
    return seen == 0 ? Phase.FISHING : phaseAfter[seen - 1];
  }

  private @Nullable String fishingAt(long instant, int seen) {
    boolean fishing = phaseAt(instant, seen) == Phase.FISHING;
    return fishing && seen > 0 ? fishingAfter[seen - 1] : null;
  }

  /** Returns how many of the first {@code count} sorted times lie at or before the instant. */
  private static int upTo(long[] times, int count, long instant) {
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (times[middle] <= instant) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The one pass over the events. */
  private final class Pass {
    private @Nullable String fishing;
    private boolean stopped;
    private final UnloggedFish unlogged = new UnloggedFish(session.match().rules());

    void run() {
      List<SessionEvent> events = session.events();
      for (int i = 0; i < events.size(); i++) {
        SessionEvent event = events.get(i);
        at[i] = event.at();
        take(event);
        fishingAfter[i] = fishing;
        phaseAfter[i] = stopped ? Phase.STOPPED : Phase.FISHING;
      }
    }

    private void take(SessionEvent event) {
      unlogged.see(event);
      if (event.kind().group() == EventKind.Group.WATER) {
        stopped = false;
        fishing =
            Objects.requireNonNullElse(event.lineId(), Objects.requireNonNullElse(fishing, ""));
        if (fishing.isEmpty()) {
          fishing = null;
        }
      }
      LineTrack line = lines.get(Objects.requireNonNullElse(lineOf(event), ""));
      switch (event.kind()) {
        case MOVE, OFF -> fishing = null;
        case STOPPED -> {
          fishing = null;
          stopped = true;
        }
        case RESUMED -> stopped = false;
        case FED -> feed(line, (SessionEvent.Fed) event);
        case LANDED -> land(line, event.at(), event.fishOrNull());
        case COUNT -> {
          Fish more = unlogged.of((SessionEvent.Count) event);
          land(line, event.at(), more);
          if (line != null && more != null) {
            line.bites.add(event.at(), more.count(), 0);
          }
        }
        case FOUL -> {
          if (session.match().rules().foulHookedCounts()) {
            land(line, event.at(), event.fishOrNull());
          }
        }
        case LOST -> lost.add(event.at(), 1, 0);
        default -> {}
      }
      if (line != null) {
        line.bite(event);
      }
    }

    private @Nullable String lineOf(SessionEvent event) {
      return event.lineId() == null ? fishing : event.lineId();
    }

    private void land(@Nullable LineTrack line, long time, @Nullable Fish fish) {
      if (fish == null) {
        return;
      }
      double grams = fish.grams() == null ? 0 : fish.grams();
      match.add(time, fish.count(), grams);
      if (fish.grams() != null && !fish.weighed()) {
        firstEstimate = Math.min(firstEstimate, time);
      }
      if (line != null) {
        line.caught.add(time, fish.count(), grams);
      }
    }

    private void feed(@Nullable LineTrack line, SessionEvent.Fed fed) {
      if (line == null) {
        return;
      }
      line.fed.add(fed.at());
      Feed.Pattern pattern = fed.feed().pattern();
      if (pattern != null && pattern.until() != null) {
        long step = Math.max(1000, Math.round(pattern.everySeconds() * 1000));
        long end = Math.min(pattern.until(), session.match().allOut());
        for (long t = fed.at() + step; t <= end; t += step) {
          line.fed.add(t);
        }
      }
    }
  }

  /** Growing sorted instants. */
  private static final class Times {
    private long[] values = new long[8];
    private int count;

    void add(long time) {
      if (count == values.length) {
        values = Arrays.copyOf(values, 2 * count);
      }
      values[count++] = time;
    }

    /** Sorts: a feeding pattern writes ahead of later single feeds. */
    void seal() {
      Arrays.sort(values, 0, count);
    }

    @Nullable Long lastAt(long instant) {
      int seen = upTo(values, count, instant);
      return seen == 0 ? null : values[seen - 1];
    }
  }

  /** Running totals over time. */
  private static final class Tally {
    private final Times times = new Times();
    private int[] fish = new int[8];
    private double[] grams = new double[8];

    void add(long time, int moreFish, double moreGrams) {
      int n = times.count;
      times.add(time);
      if (n == fish.length) {
        fish = Arrays.copyOf(fish, 2 * n);
        grams = Arrays.copyOf(grams, 2 * n);
      }
      fish[n] = (n == 0 ? 0 : fish[n - 1]) + moreFish;
      grams[n] = (n == 0 ? 0 : grams[n - 1]) + moreGrams;
    }

    int fishAt(long instant) {
      int seen = upTo(times.values, times.count, instant);
      return seen == 0 ? 0 : fish[seen - 1];
    }

    double gramsAt(long instant) {
      int seen = upTo(times.values, times.count, instant);
      return seen == 0 ? 0 : grams[seen - 1];
    }
  }

  /** One line's running totals. */
  private static final class LineTrack {
    private final Tally caught = new Tally();
    private final Tally bites = new Tally();
    private final Times fed;
    private boolean hookOpen;
    private @Nullable Long lastMissed;

    LineTrack(Times fed) {
      this.fed = fed;
    }

    /** Counts bites as they become known: what follows a bite or a hook-up adds none. */
    void bite(SessionEvent event) {
      switch (event.kind()) {
        case CAST -> hookOpen = false;
        case BITE -> {
          bites.add(event.at(), 1, 0);
          lastMissed = event.at();
        }
        case HOOKED -> {
          if (lastMissed == null
              || event.at() - lastMissed > SessionEvent.Bite.SAME_AS_HOOKED_MILLIS) {
            bites.add(event.at(), 1, 0);
          }
          lastMissed = null;
          hookOpen = true;
        }
        case LANDED, LOST, FOUL -> {
          Fish fish = event.fishOrNull();
          int more = (fish == null ? 1 : fish.count()) - (hookOpen ? 1 : 0);
          if (more > 0) {
            bites.add(event.at(), more, 0);
          }
          hookOpen = false;
          lastMissed = null;
        }
        default -> {}
      }
    }

    LineState stateAt(String id, long instant) {
      return new LineState(
          id,
          caught.fishAt(instant),
          caught.gramsAt(instant),
          bites.fishAt(instant),
          fed.lastAt(instant),
          bites.times.lastAt(instant));
    }
  }
}
