package org.fadeline.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;

/** Sessions far larger than any match, for benchmarks and limits. */
public final class LargeSessions {
  private static final int STAY = 500;

  private LargeSessions() {}

  /**
   * Returns a valid session of water A with the given number of events, spread evenly over its five
   * hours: stays of some 500 events on each line in turn, casts followed by bites, fish or feed.
   *
   * @param count how many events, at least 2 (all in and all out)
   * @param seed the same seed gives the same session
   */
  public static Session of(int count, long seed) {
    if (count < 2) {
      throw new IllegalArgumentException("a session has at least all in and all out");
    }
    Session frame = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), seed);
    Random random = new Random(seed);
    long allIn = frame.match().allIn();
    double step = frame.match().lengthMillis() / (double) (count - 1);
    List<SessionEvent> events = new ArrayList<>(count);
    events.add(new SessionEvent.AllIn(new Stamp("e1", allIn, null, null)));
    boolean hooked = false;
    boolean out = true;
    for (int i = 1; i < count - 1; i++) {
      String line = frame.lines().get(i / STAY % frame.lines().size()).id();
      Stamp stamp = new Stamp("e" + (i + 1), allIn + Math.round(i * step), line, null);
      double draw = random.nextDouble();
      if (hooked) {
        events.add(
            draw < 0.15
                ? new SessionEvent.Lost(stamp, null)
                : new SessionEvent.Landed(
                    stamp, new Fish(1, "carp", 50.0 * Math.round(10 + 60 * draw), false)));
        hooked = false;
        out = true;
      } else if (i % STAY == STAY - 1) {
        events.add(new SessionEvent.Move(stamp, "plan"));
        out = true;
      } else if (out) {
        events.add(new SessionEvent.Cast(stamp));
        out = false;
      } else if (draw < 0.3 && i % STAY < STAY - 2) {
        events.add(new SessionEvent.Hooked(stamp));
        hooked = true;
      } else if (draw < 0.5) {
        events.add(new SessionEvent.Bite(stamp));
        out = true;
      } else if (draw < 0.7) {
        events.add(
            new SessionEvent.Fed(
                stamp,
                new Feed("6 mm pellets", new Feed.Amount(7, Feed.Unit.PIECES), "catapult", null)));
      } else {
        events.add(new SessionEvent.Cast(stamp));
      }
    }
    events.add(new SessionEvent.AllOut(new Stamp("e" + count, frame.match().allOut(), null, null)));
    return frame.withEvents(events);
  }
}
