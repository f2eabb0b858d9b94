package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * Sessions as they may have been where the clock was told only to the minute or coarser: each time
 * drawn uniformly from its interval, the order of the record kept.
 */
final class Imputation {
  /** How many draws are put together. */
  static final int COUNT = 20;

  /** Precision, in seconds, from which times are taken as intervals. */
  static final double COARSE_SECONDS = 60;

  private Imputation() {}

  /** Returns the imputed sessions; none where the clock is finer. */
  static List<Session> of(Session session, double precisionSeconds, long seed) {
    if (precisionSeconds < COARSE_SECONDS) {
      return List.of();
    }
    long half = Math.round(precisionSeconds * 500);
    List<Session> sessions = new ArrayList<>(COUNT);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < COUNT; i++) {
      sessions.add(draw(session, half, random));
    }
    return sessions;
  }

  private static Session draw(Session session, long half, SplittableRandom random) {
    List<SessionEvent> events = session.events();
    long[] times = new long[events.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = events.get(i).at() + random.nextLong(-half, half + 1);
    }
    // Intervals of one width are in the order of their middles: sorted draws keep the order.
    Arrays.sort(times);
    long allIn = session.match().allIn();
    long allOut = session.match().allOut();
    List<SessionEvent> moved = new ArrayList<>(times.length);
    for (int i = 0; i < times.length; i++) {
      SessionEvent event = events.get(i);
      boolean inMatch = event.at() >= allIn && event.at() <= allOut;
      boolean frame = event.kind().group() == EventKind.Group.FRAME;
      long at = inMatch ? Math.max(allIn, Math.min(times[i], allOut)) : times[i];
      moved.add(frame ? event : event.withStamp(event.stamp().withAt(at)));
    }
    return session.withEvents(moved);
  }
}
