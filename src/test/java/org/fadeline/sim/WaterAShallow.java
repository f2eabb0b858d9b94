package org.fadeline.sim;

import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Session;

/** The shallow line's first spell of simulated matches on the invented water A. */
final class WaterAShallow {
  private static final double MILLIS_PER_MINUTE = 60_000.0;

  private WaterAShallow() {}

  /** Bites of the first spell on the shallow line in bait minutes, as the engine sees them. */
  static SimulatedLine firstSpell(long seed) {
    Session session = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), seed);
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

  private static double baitMinutes(Spell spell, long at) {
    double millis = 0;
    for (TimeSpan span : spell.baitSpans()) {
      millis += Math.max(0, Math.min(span.to(), at) - span.from());
    }
    return millis / MILLIS_PER_MINUTE;
  }
}
