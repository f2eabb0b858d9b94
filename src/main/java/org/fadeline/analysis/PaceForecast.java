package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Course.Finish;
import org.fadeline.analysis.Course.Pace;
import org.fadeline.analysis.Course.Tiring;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Effort.Unassigned;
import org.fadeline.model.Match;
import org.fadeline.stats.CompoundSum;
import org.fadeline.stats.PredictiveCountMixture;
import org.jspecify.annotations.Nullable;

/**
 * The finish as it could be told at each minute, staying on the line being fished: the catch so far
 * and a negative binomial predictive for the time left, mixed over how long the present rate has
 * run; and beside it the same where the line may be declining as it is fished.
 */
final class PaceForecast {
  private static final long STEP_MILLIS = 60_000;
  private static final double COVERAGE = 0.9999;
  private static final int LEAST_WEIGHTS = 3;

  /** No finish is told beyond this many fish to come: no angler lands them in a day. */
  private static final double MOST_TO_COME = 5_000;

  private final Effort effort;
  private final Match match;
  private final ReviewSettings settings;
  private final List<FishMark> fish = new ArrayList<>();
  private final @Nullable PaceRuns earlier;
  private final Map<String, PaceRun> runs = new HashMap<>();
  private @Nullable Unassigned seemed;
  private @Nullable PaceRun seemedRun;

  PaceForecast(Effort effort, ReviewSettings settings) {
    this(effort, settings, effort.session().match(), null);
  }

  /**
   * @param match the frame to forecast for; the effort may end before its all out
   * @param earlier runs as they stood at earlier minutes, where only one more minute is asked for,
   *     or null
   */
  PaceForecast(Effort effort, ReviewSettings settings, Match match, @Nullable PaceRuns earlier) {
    this.earlier = earlier;
    this.effort = effort;
    this.match = match;
    this.settings = settings;
    for (LineEffort line : effort.lines()) {
      fish.addAll(line.fish());
    }
    fish.sort(Comparator.comparingLong(FishMark::at));
  }

  /**
   * Returns how the rate of a line seemed to have run while nothing told yet that the line had been
   * left.
   */
  private PaceRun seemed(LineEffort line, Unassigned gap) {
    if (seemedRun == null || !gap.equals(seemed)) {
      List<TimeSpan> fished = new ArrayList<>(line.fishedSpans());
      fished.add(gap.span());
      seemed = gap;
      seemedRun = run(line, fished);
    }
    return seemedRun;
  }

  private PaceRun run(LineEffort line, List<TimeSpan> fished) {
    double hazard = settings.changeHazard();
    return earlier == null
        ? new PaceRun(match, line, fished, hazard, null)
        : earlier.of(match, line, fished, hazard);
  }

  /**
   * Returns one entry for each minute of the match at which a line is being fished and a finish can
   * be told.
   */
  List<Pace> everyMinute() {
    List<Pace> all = new ArrayList<>();
    int next = 0;
    int count = 0;
    Weights weights = new Weights();
    for (long at = match.allIn() + STEP_MILLIS; at < match.allOut(); at += STEP_MILLIS) {
      for (; next < fish.size() && fish.get(next).at() <= at; next++) {
        count++;
        weights.add(fish.get(next).grams());
      }
      LineEffort line = seemedFishedAt(at);
      Pace pace = line == null ? null : pace(at, line, count, weights);
      if (pace != null) {
        all.add(pace);
      }
    }
    return all;
  }

  /** Returns the finish as it could be told at an instant, or null where none can. */
  @Nullable Pace at(long at) {
    Weights weights = new Weights();
    int count = 0;
    for (FishMark mark : fish) {
      if (mark.at() <= at) {
        count++;
        weights.add(mark.grams());
      }
    }
    LineEffort line = seemedFishedAt(at);
    return line == null ? null : pace(at, line, count, weights);
  }

  private @Nullable Unassigned untoldAt(long at) {
    for (Unassigned gap : effort.unassigned()) {
      if (gap.span().from() < at && at < gap.span().to()) {
        return gap;
      }
    }
    return null;
  }

  /** Returns the line that was fished at an instant as far as could be told then, or null. */
  private @Nullable LineEffort seemedFishedAt(long at) {
    Unassigned gap = untoldAt(at);
    if (gap != null) {
      return effort.line(gap.before()).orElse(null);
    }
    for (LineEffort line : effort.lines()) {
      for (Spell spell : line.spells()) {
        if (spell.span().from() < at && at <= spell.span().to()) {
          return line;
        }
      }
    }
    return null;
  }

  private @Nullable Pace pace(long at, LineEffort line, int count, Weights weights) {
    double left = (match.allOut() - at) / TimeSpan.MILLIS_PER_HOUR;
    Unassigned gap = untoldAt(at);
    PaceRun run =
        gap == null
            ? runs.computeIfAbsent(line.line().id(), id -> run(line, line.fishedSpans()))
            : seemed(line, gap);
    PredictiveCountMixture steady = run.steady(at, left);
    if (steady.mean() > MOST_TO_COME) {
      return null;
    }
    double[] more = steady.probabilities(COVERAGE);
    PaceRun.Tiring tiring = run.tiring(at, visitFrom(line, at), left);
    double[] lessening = tiring.more().probabilities(COVERAGE);
    return new Pace(
        at,
        count,
        finish(count, more),
        weights.sum,
        weights.finish(more),
        new Tiring(tiring.chance(), finish(count, lessening), weights.finish(lessening)));
  }

  private static long visitFrom(LineEffort line, long at) {
    long from = at;
    for (Spell spell : line.spells()) {
      if (spell.span().from() < at) {
        from = spell.span().from();
      }
    }
    return from;
  }

  private static Finish finish(int count, double[] probabilities) {
    double tail = (1 - ReviewSettings.FADE_LEVEL) / 2;
    return new Finish(
        count + quantile(probabilities, tail),
        count + quantile(probabilities, 0.5),
        count + quantile(probabilities, 1 - tail),
        ReviewSettings.FADE_LEVEL);
  }

  private static int quantile(double[] probabilities, double p) {
    double sum = 0;
    for (int k = 0; k < probabilities.length; k++) {
      sum += probabilities[k];
      if (sum >= p) {
        return k;
      }
    }
    return probabilities.length - 1;
  }

  /** Weights of the fish so far. */
  private static final class Weights {
    private int count;
    private boolean complete = true;
    private double sum;
    private double squares;

    void add(@Nullable Double grams) {
      if (grams == null) {
        complete = false;
      } else {
        count++;
        sum += grams;
        squares += grams * grams;
      }
    }

    @Nullable Finish finish(double[] probabilities) {
      if (!complete || count < LEAST_WEIGHTS) {
        return null;
      }
      double mean = sum / count;
      double variance = Math.max(0, (squares - sum * mean) / (count - 1));
      CompoundSum more = new CompoundSum(probabilities, mean, variance);
      double tail = (1 - ReviewSettings.FADE_LEVEL) / 2;
      return new Finish(
          sum + more.quantile(tail),
          sum + more.quantile(0.5),
          sum + more.quantile(1 - tail),
          ReviewSettings.FADE_LEVEL);
    }
  }
}
