package org.fadeline.sim;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoPlan;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;

/** The shallow line's first spell of simulated matches on the invented water A. */
final class WaterAShallow {
  private static final double MILLIS_PER_MINUTE = 60_000.0;

  private WaterAShallow() {}

  /** How the bait that follows a main feed, a few pellets every 40 s, acts on the bites. */
  enum Fed {
    /** Not at all: the water's table of main feeds alone, whose effect lasts for hours. */
    MAIN_FEEDS,
    /** Each as much as a main feed, so that the bites never want for feed. */
    THROUGHOUT
  }

  /** A stay with the truth behind it. */
  static final class Stay {
    private final SimulatedLine line;
    private final double[] perHour;

    private Stay(SimulatedLine line, double[] perHour) {
      this.line = line;
      this.perHour = perHour;
    }

    /** Its bites in bait minutes. */
    SimulatedLine line() {
      return line;
    }

    /** True rate in each bait minute, the last one part. */
    double[] perHour() {
      return perHour.clone();
    }
  }

  /** Bites of the first spell on the shallow line in bait minutes, as the engine sees them. */
  static SimulatedLine firstSpell(long seed, Fed fed) {
    return firstStay(seed, fed).line();
  }

  /** The usual plan, fed as given. */
  static DemoPlan plan(Fed fed) {
    DemoPlan plan = DemoWaters.planA();
    return fed == Fed.MAIN_FEEDS
        ? new DemoPlan(plan.stays(), plan.feeds().stream().map(WaterAShallow::once).toList())
        : plan;
  }

  /** The first spell on the shallow line with its true rates. */
  static Stay firstStay(long seed, Fed fed) {
    DemoMatch.Played played = DemoMatch.play(DemoWaters.waterA(), plan(fed), seed);
    Session session = played.session();
    Effort.LineEffort line =
        Effort.of(session).lines().stream()
            .filter(l -> l.line().name().toLowerCase(Locale.ROOT).contains("shallow"))
            .findFirst()
            .orElseThrow();
    Spell spell = line.spells().get(0);
    double[] bites =
        line.bites().stream()
            .filter(b -> b.spell() == 0 && !b.opening())
            .mapToDouble(b -> baitMinutes(spell, b.at()))
            .sorted()
            .toArray();
    double minutes = spell.baitHours() * 60;
    List<Double> truth = Objects.requireNonNull(played.bitesPerHour().get(line.line().id()));
    double[] perHour = new double[(int) Math.ceil(minutes)];
    for (int i = 0; i < perHour.length; i++) {
      long at = onTheClock(spell, Math.min(minutes, i + 0.5));
      perHour[i] = truth.get((int) ((at - session.match().allIn()) / MILLIS_PER_MINUTE));
    }
    return new Stay(SimulatedLine.of(bites, new double[] {minutes}, Double.NaN), perHour);
  }

  private static long onTheClock(Spell spell, double baitMinute) {
    double left = baitMinute * MILLIS_PER_MINUTE;
    for (TimeSpan span : spell.baitSpans()) {
      if (left <= span.millis()) {
        return span.from() + (long) left;
      }
      left -= span.millis();
    }
    return spell.span().to() - 1;
  }

  private static DemoPlan.MainFeed once(DemoPlan.MainFeed main) {
    Feed feed = main.feed();
    Feed single = new Feed(feed.bait(), feed.amount(), feed.method(), null);
    return new DemoPlan.MainFeed(main.line(), main.minute(), single, main.way(), null);
  }

  private static double baitMinutes(Spell spell, long at) {
    double millis = 0;
    for (TimeSpan span : spell.baitSpans()) {
      millis += Math.max(0, Math.min(span.to(), at) - span.from());
    }
    return millis / MILLIS_PER_MINUTE;
  }
}
