package org.fadeline.sim;

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

  /** Bites of the first spell on the shallow line in bait minutes, as the engine sees them. */
  static SimulatedLine firstSpell(long seed, Fed fed) {
    DemoPlan plan = DemoWaters.planA();
    if (fed == Fed.MAIN_FEEDS) {
      plan = new DemoPlan(plan.stays(), plan.feeds().stream().map(WaterAShallow::once).toList());
    }
    Session session = DemoMatch.generate(DemoWaters.waterA(), plan, seed);
    Effort.LineEffort line =
        Effort.of(session).lines().stream()
            .filter(l -> l.line().name().toLowerCase(java.util.Locale.ROOT).contains("shallow"))
            .findFirst()
            .orElseThrow();
    Spell spell = line.spells().get(0);
    double[] bites =
        line.bites().stream()
            .filter(b -> b.spell() == 0 && !b.opening())
            .mapToDouble(b -> baitMinutes(spell, b.at()))
            .sorted()
            .toArray();
    return SimulatedLine.of(bites, new double[] {spell.baitHours() * 60}, Double.NaN);
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
