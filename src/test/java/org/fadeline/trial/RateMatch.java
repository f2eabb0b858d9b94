package org.fadeline.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoMatch.Played;
import org.fadeline.demo.DemoPlan.Stay;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/**
 * Plays a match of five hours on lines whose bites per bait hour are given minute by minute and do
 * not depend on the fishing: constant, in steps, or wandering.
 */
final class RateMatch {
  static final double MISSED = 0.3;
  static final double LOST = 0.12;
  static final int HAND_SECONDS = 75;
  static final int LOST_SECONDS = 45;
  static final int MISS_SECONDS = 15;

  /** Kind of the lines, for settings that go by it. */
  static final String KIND = "made";

  private static final int TURN_SECONDS = 20;
  private static final int RECAST_SECONDS = 60;

  private final Map<String, double[]> perHour;
  private final List<Stay> stays;
  private final Random random;
  private final long allIn;
  private final List<SessionEvent> events = new ArrayList<>();
  private final Map<String, Double> grams = new HashMap<>();
  private @Nullable String current;
  private int nextStay;
  private boolean baitIn;
  private int recastAt;
  private int busyUntil;

  private RateMatch(Map<String, double[]> perHour, List<Stay> stays, long seed, long allIn) {
    this.perHour = perHour;
    this.stays = stays;
    this.random = new Random(new SplittableRandom(seed).nextLong());
    this.allIn = allIn;
  }

  /**
   * Plays a match.
   *
   * @param perHour bites per bait hour of each line at minutes 0 to 299
   * @param stays in order, the first at minute 0
   * @param seed the same seed gives the same match
   */
  static Played play(Map<String, double[]> perHour, List<Stay> stays, long seed) {
    Session frame = FRAME;
    RateMatch match = new RateMatch(perHour, stays, seed, frame.match().allIn());
    match.fish();
    Session session =
        new Session(
            frame.document(),
            frame.occasion(),
            frame.match(),
            perHour.keySet().stream().sorted().map(RateMatch::line).toList(),
            match.events,
            frame.outcome());
    Map<String, List<Double>> truth = new HashMap<>();
    perHour.forEach((id, rates) -> truth.put(id, Arrays.stream(rates).boxed().toList()));
    return new Played(session, truth, match.grams);
  }

  private static final Session FRAME =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 1);

  /** Fish landed per fished hour of a line with so many bites per bait hour. */
  static double landedPerFishedHour(double bites) {
    return Counterfactual.landed(bites, MISSED, LOST, HAND_SECONDS, LOST_SECONDS);
  }

  private void fish() {
    int end = DemoMatch.MINUTES * 60;
    add(new SessionEvent.AllIn(stamp(0, null)));
    for (int second = 0; second < end; second++) {
      if (second < busyUntil) {
        continue;
      }
      if (nextStay < stays.size() && second >= stays.get(nextStay).minute() * 60) {
        if (current != null) {
          add(new SessionEvent.Move(stamp(second, current), null));
        }
        current = stays.get(nextStay++).line();
        baitIn = false;
        busyUntil = second + (nextStay == 1 ? 0 : TURN_SECONDS);
        continue;
      }
      String line = current;
      if (line != null) {
        fish(line, second, end);
      }
    }
    add(new SessionEvent.AllOut(stamp(end, null)));
  }

  private void fish(String line, int second, int end) {
    if (!baitIn || second >= recastAt) {
      add(new SessionEvent.Cast(stamp(second, line)));
      baitIn = true;
      recastAt = second + RECAST_SECONDS;
    }
    double[] rates = perHour.get(line);
    if (rates == null || random.nextDouble() >= -Math.expm1(-rates[second / 60] / 3600)) {
      return;
    }
    baitIn = false;
    if (random.nextDouble() < MISSED) {
      add(new SessionEvent.Bite(stamp(second, line)));
      busyUntil = second + MISS_SECONDS;
      return;
    }
    boolean lost = random.nextDouble() < LOST;
    int hand = lost ? LOST_SECONDS : HAND_SECONDS;
    busyUntil = second + hand;
    int done = second + hand * 3 / 4;
    add(new SessionEvent.Hooked(stamp(second, line)));
    if (done <= end && lost) {
      add(new SessionEvent.Lost(stamp(done, line), null));
    } else if (done <= end) {
      double weight = Math.rint(1200 * Math.exp(0.4 * random.nextGaussian()));
      Stamp stamp = stamp(done, line);
      grams.put(stamp.id(), weight);
      add(new SessionEvent.Landed(stamp, new Fish(1, "carp", weight, false)));
    }
  }

  private void add(SessionEvent event) {
    events.add(event);
  }

  private Stamp stamp(int second, @Nullable String line) {
    return new Stamp("e" + (events.size() + 1), allIn + second * 1000L, line, null);
  }

  private static Line line(String id) {
    return new Line(id, id + " line", KIND, id, Line.Place.UNKNOWN, Line.Rig.UNKNOWN);
  }
}
