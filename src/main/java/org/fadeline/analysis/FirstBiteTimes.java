package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.FirstBite.End;
import org.fadeline.analysis.FirstBite.Leaving;
import org.fadeline.analysis.FirstBite.LeavingStep;
import org.fadeline.analysis.FirstBite.Median;
import org.fadeline.analysis.FirstBite.Step;
import org.fadeline.analysis.FirstBite.Stretch;
import org.fadeline.analysis.FirstBite.Times;
import org.fadeline.stats.AalenJohansen;
import org.fadeline.stats.Interval;
import org.fadeline.stats.KaplanMeier;
import org.jspecify.annotations.Nullable;

/** From stretches at risk to what is told of them, the same on either clock. */
final class FirstBiteTimes {
  private static final int BITTEN = 1;
  private static final int LEFT = 2;

  private FirstBiteTimes() {}

  /** Returns curve, median and shares of stretches given episode by episode, each in order. */
  static Times of(List<Stretch> rows) {
    Leaving leaving = leaving(untilLeft(rows));
    Double from = firstWithEnoughAtRisk(rows);
    if (from == null) {
      return new Times(null, null, List.of(), leaving, rows);
    }
    KaplanMeier curve = KaplanMeier.of(FirstBites.followUp(rows)).from(from);
    List<Step> steps = new ArrayList<>();
    for (KaplanMeier.Step step : curve.steps()) {
      Interval limits = step.limits();
      steps.add(
          new Step(
              step.time(),
              step.atRisk(),
              step.events(),
              step.survival(),
              limits == null ? null : limits.low(),
              limits == null ? null : limits.high()));
    }
    KaplanMeier.Median median = curve.median();
    Median shown =
        median.time() == null
            ? null
            : new Median(median.time(), median.low(), median.high(), median.level());
    return new Times(from, shown, steps, leaving, rows);
  }

  /** Returns the stretches up to the first leaving of each episode: what comes later is not it. */
  private static List<Stretch> untilLeft(List<Stretch> rows) {
    Set<Long> left = new HashSet<>();
    List<Stretch> kept = new ArrayList<>();
    for (Stretch row : rows) {
      if (!left.contains(row.episodeAt())) {
        kept.add(row);
      }
      if (row.end() == End.LEFT) {
        left.add(row.episodeAt());
      }
    }
    return kept;
  }

  private static Leaving leaving(List<Stretch> rows) {
    Double from = firstWithEnoughAtRisk(rows);
    if (from == null) {
      return Leaving.NONE;
    }
    AalenJohansen fit =
        AalenJohansen.of(
            rows.stream().mapToDouble(Stretch::entry).toArray(),
            rows.stream().mapToDouble(Stretch::exit).toArray(),
            rows.stream().mapToInt(FirstBiteTimes::cause).toArray(),
            LEFT,
            ReviewSettings.LEVEL,
            from);
    List<AalenJohansen.Step> bitten = fit.steps(BITTEN);
    List<AalenJohansen.Step> left = fit.steps(LEFT);
    List<LeavingStep> steps = new ArrayList<>();
    for (int i = 0; i < bitten.size(); i++) {
      AalenJohansen.Step step = bitten.get(i);
      Interval limits = step.limits();
      steps.add(
          new LeavingStep(
              step.time(),
              step.atRisk(),
              step.events(),
              left.get(i).events(),
              step.incidence(),
              limits == null ? null : limits.low(),
              limits == null ? null : limits.high(),
              left.get(i).incidence()));
    }
    return new Leaving(from, steps);
  }

  private static int cause(Stretch row) {
    return switch (row.end()) {
      case BITE -> BITTEN;
      case LEFT -> LEFT;
      case CUT_OFF -> 0;
    };
  }

  /** Returns the earliest entry from which at least five stretches are at risk, or null. */
  private static @Nullable Double firstWithEnoughAtRisk(List<Stretch> rows) {
    List<Double> entries = rows.stream().map(Stretch::entry).sorted().distinct().toList();
    for (double t : entries) {
      if (rows.stream().filter(r -> r.entry() <= t && t < r.exit()).count()
          >= FirstBites.LEAST_AT_RISK) {
        return t;
      }
    }
    return null;
  }
}
