package org.fadeline.demo;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.fadeline.demo.DemoPlan.MainFeed;
import org.fadeline.demo.DemoPlan.Stay;
import org.fadeline.demo.DemoPlan.Way;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Outcome;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/** Fishes a plan second by second and keeps the log. */
final class DemoAngler {
  private static final int END = DemoMatch.MINUTES * 60;
  private static final int MISS_SECONDS = 15;
  private static final int TURN_SECONDS = 20;
  private static final int POT_SECONDS = 12;

  private final DemoPlan plan;
  private final Random random;
  private final long allIn;
  private final List<DemoSwim> swims;
  private final DemoNets nets;
  private final List<SessionEvent> events = new ArrayList<>();
  private final Map<String, Double> trueGrams = new HashMap<>();
  private final List<MainFeed> feedsLeft;
  private int stamps;
  private int nextStay;
  private @Nullable DemoSwim current;
  private boolean baitIn;
  private int busyUntil;
  private int recastAt;

  DemoAngler(DemoWater water, DemoPlan plan, long seed, long allIn) {
    this.plan = plan;
    // Random's first draws are much alike for small seeds in a row; this spreads the seeds.
    this.random = new Random(new SplittableRandom(seed).nextLong());
    this.allIn = allIn;
    this.swims = water.lines().stream().map(DemoSwim::new).toList();
    this.feedsLeft = new ArrayList<>(plan.feeds());
    this.nets = new DemoNets(water, random);
  }

  List<SessionEvent> events() {
    return List.copyOf(events);
  }

  Map<String, Double> trueGrams() {
    return Map.copyOf(trueGrams);
  }

  Map<String, List<Double>> bitesPerHour() {
    Map<String, List<Double>> rates = new HashMap<>();
    swims.forEach(swim -> rates.put(swim.line().id(), swim.byMinute()));
    return rates;
  }

  List<Outcome.NetWeight> weighIn() {
    return nets.weighIn();
  }

  Outcome.Result result() {
    return nets.result();
  }

  void fish() {
    events.add(new SessionEvent.AllIn(stamp(0, null, null)));
    for (int second = 0; second < END; second++) {
      for (DemoSwim swim : swims) {
        swim.pass(second, swim == current);
      }
      if (second >= busyUntil) {
        act(second);
      }
    }
    events.add(new SessionEvent.AllOut(stamp(END, null, null)));
  }

  private void act(int second) {
    if (nextStay < plan.stays().size() && second >= plan.stays().get(nextStay).minute() * 60) {
      turnTo(plan.stays().get(nextStay++), second);
      return;
    }
    DemoSwim swim = current;
    if (swim == null) {
      return;
    }
    List<MainFeed> gap = take(second, feed -> stopsFishing(feed, swim));
    if (!gap.isEmpty()) {
      String reason = gap.get(0).way() == Way.GAP ? "cupping" : "feeding the feeder line";
      events.add(new SessionEvent.Off(stamp(second, swim.line().id(), null), reason));
      baitIn = false;
      busyUntil = give(gap, second) + TURN_SECONDS;
      return;
    }
    give(take(second, feed -> feed.way() == Way.LOOSE), second);
    List<MainFeed> withCast = take(second, feed -> feed.way() == Way.WITH_CAST);
    if (!baitIn || second >= recastAt || !withCast.isEmpty()) {
      cast(swim, second, withCast);
    }
    if (random.nextDouble() < -Math.expm1(-swim.bitesPerHour(second / 60.0) / 3600)) {
      bite(swim, second);
    }
  }

  private void turnTo(Stay stay, int second) {
    DemoSwim left = current;
    if (left != null) {
      events.add(new SessionEvent.Move(stamp(second, left.line().id(), null), stay.reason()));
    }
    DemoSwim swim = swim(stay.line());
    current = swim;
    baitIn = false;
    // What is due within the minute goes in while the rigs change hands.
    int ready = give(take(second, feed -> feed.way() == Way.LOOSE), second);
    ready = give(take(second + 60, feed -> stopsFishing(feed, swim)), ready);
    busyUntil = ready + (left == null ? 5 : TURN_SECONDS);
  }

  private static boolean stopsFishing(MainFeed feed, DemoSwim fished) {
    return feed.way() == Way.GAP
        || (feed.way() == Way.WITH_CAST && !feed.line().equals(fished.line().id()));
  }

  /** Takes the feeds that are due from the list. */
  private List<MainFeed> take(int second, Predicate<MainFeed> which) {
    List<MainFeed> due =
        feedsLeft.stream().filter(feed -> feed.minute() * 60 <= second).filter(which).toList();
    feedsLeft.removeAll(due);
    return due;
  }

  /** Feeds one after the other and returns the second at which the hands are free. */
  private int give(List<MainFeed> feeds, int second) {
    int at = second;
    for (MainFeed main : feeds) {
      if (main.way() != Way.LOOSE) {
        at += POT_SECONDS;
      }
      DemoSwim swim = swim(main.line());
      Feed feed = main.feed();
      Feed.Pattern pattern = feed.pattern();
      Double untilMinute = main.untilMinute();
      if (pattern == null) {
        swim.feed(at / 60.0);
      } else {
        swim.feedRepeatedly(at / 60.0, pattern.everySeconds(), untilMinute);
        Long until = untilMinute == null ? null : allIn + Math.round(untilMinute * 60_000);
        feed =
            new Feed(
                feed.bait(),
                feed.amount(),
                feed.method(),
                new Feed.Pattern(pattern.everySeconds(), until));
      }
      events.add(new SessionEvent.Fed(stamp(at, main.line(), null), feed));
    }
    return at;
  }

  private void cast(DemoSwim swim, int second, List<MainFeed> withCast) {
    DemoLine.Casts casts = swim.line().casts();
    events.add(new SessionEvent.Cast(stamp(second, swim.line().id(), null)));
    Feed each = casts.feed();
    if (each != null) {
      swim.feed(second / 60.0);
      events.add(new SessionEvent.Fed(stamp(second, swim.line().id(), null), each));
    }
    for (MainFeed feed : withCast) {
      swim.feed(second / 60.0);
      events.add(new SessionEvent.Fed(stamp(second, feed.line(), null), feed.feed()));
    }
    baitIn = true;
    double wait =
        casts.fromSeconds() + random.nextDouble() * (casts.toSeconds() - casts.fromSeconds());
    recastAt = second + (int) Math.round(wait);
  }

  private void bite(DemoSwim swim, int second) {
    DemoLine.Catches catches = swim.line().catches();
    String line = swim.line().id();
    baitIn = false;
    if (random.nextDouble() < catches.missed()) {
      events.add(new SessionEvent.Bite(stamp(second, line, null)));
      busyUntil = second + MISS_SECONDS;
      return;
    }
    double fate = random.nextDouble();
    boolean lost = fate < catches.lost();
    double hand = (lost ? 0.6 : 1) * catches.handSeconds();
    int done = second + Math.max(2, (int) Math.round(0.75 * hand));
    busyUntil = second + (int) Math.round(hand);
    if (done > END) {
      events.add(
          new SessionEvent.Hooked(stamp(second, line, "fish on at all out, does not count")));
      return;
    }
    events.add(new SessionEvent.Hooked(stamp(second, line, null)));
    if (lost) {
      events.add(new SessionEvent.Lost(stamp(done, line, null), null));
    } else {
      land(swim, done, fate < catches.lost() + catches.foul());
    }
  }

  private void land(DemoSwim swim, int second, boolean foul) {
    DemoLine.FishSize size = swim.line().catches().fish();
    double grams = size.grams(random.nextGaussian());
    double estimate = nets.estimate(grams);
    Stamp stamp = stamp(second, swim.line().id(), null);
    trueGrams.put(stamp.id(), grams);
    Fish fish = new Fish(1, size.species(), estimate, false);
    Integer fresh = nets.put(size.species(), grams, estimate);
    if (fresh != null) {
      events.add(new SessionEvent.Net(stamp(second, null, null), fresh));
    }
    events.add(foul ? new SessionEvent.Foul(stamp, fish) : new SessionEvent.Landed(stamp, fish));
  }

  private DemoSwim swim(String line) {
    return swims.stream()
        .filter(swim -> swim.line().id().equals(line))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the plan names no such line: " + line));
  }

  private Stamp stamp(int second, @Nullable String line, @Nullable String note) {
    return new Stamp("e" + ++stamps, allIn + second * 1000L, line, note);
  }
}
