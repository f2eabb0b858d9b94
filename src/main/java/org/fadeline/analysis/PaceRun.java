package org.fadeline.analysis;

import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.Match;
import org.fadeline.stats.ChangePointBins;
import org.fadeline.stats.ChangePointPrior;
import org.fadeline.stats.DeclineForecast;
import org.fadeline.stats.PredictiveCountMixture;
import org.fadeline.stats.RunLengthPosterior;
import org.fadeline.stats.RunLengthRate;
import org.jspecify.annotations.Nullable;

/**
 * How the fish of one line have come over its fished minutes, and what more it can be expected to
 * give. Asked in order of time, for the decline is followed along the visit.
 */
final class PaceRun {
  private static final double MEAN_PER_HOUR = 6;
  private static final double NEGLIGIBLE = 1e-3;
  private static final double PRIOR_CHANCE = 0.5;

  private final Match match;
  private final List<TimeSpan> fished;
  private final double[] counts;
  private final @Nullable RunLengthPosterior posterior;
  private @Nullable Visit visit;

  /**
   * A line's run.
   *
   * @param match its all in and all out
   * @param line whose fish they are
   * @param fished the time its minutes are counted in, disjoint and sorted
   * @param hazard changes of rate an hour expected beforehand
   * @param before a run of the same line and hazard earlier in the match, not to be asked any more,
   *     or null
   */
  PaceRun(
      Match match,
      LineEffort line,
      List<TimeSpan> fished,
      double hazard,
      @Nullable PaceRun before) {
    this.match = match;
    this.fished = fished;
    counts = new double[(int) fishedMinutes(match.allOut())];
    for (FishMark mark : line.fish()) {
      int bin = (int) fishedMinutes(mark.at());
      if (!mark.opening() && bin < counts.length) {
        counts[bin]++;
      }
    }
    ChangePointBins bins = ChangePointBins.of(counts, 1 / 60.0);
    PaceRun earlier = before != null && before.isStartOf(counts) ? before : null;
    RunLengthPosterior known = earlier == null ? null : earlier.posterior;
    posterior =
        counts.length == 0
            ? null
            : known != null
                ? known.with(bins)
                : RunLengthPosterior.of(
                    bins, new ChangePointPrior(1, 1 / MEAN_PER_HOUR, -Math.expm1(-hazard / 60), 1));
    visit = earlier == null ? null : earlier.visit;
  }

  private boolean isStartOf(double[] longer) {
    int known = counts.length;
    return known <= longer.length && Arrays.equals(counts, 0, known, longer, 0, known);
  }

  private double fishedMinutes(long until) {
    return SpanMath.overlapMillis(fished, match.allIn(), until) / TimeSpan.MILLIS_PER_MINUTE;
  }

  private int wholeMinutes(long until) {
    return (int) Math.min(counts.length, fishedMinutes(until));
  }

  /** What the line gives from an instant on if its present rate lasts. */
  PredictiveCountMixture steady(long at, double hours) {
    return PredictiveCountMixture.of(rates(wholeMinutes(at)), hours);
  }

  private List<RunLengthRate> rates(int bins) {
    if (posterior == null) {
      return List.of(new RunLengthRate(0, 1, 1, 1 / MEAN_PER_HOUR));
    }
    List<RunLengthRate> rates = posterior.rates(bins);
    List<RunLengthRate> kept = rates.stream().filter(r -> r.weight() >= NEGLIGIBLE).toList();
    return kept.isEmpty() ? rates : kept;
  }

  /** A predictive count and how likely it is that the line declines. */
  record Tiring(double chance, PredictiveCountMixture more) {}

  /**
   * What the line gives from an instant on if either its present rate lasts or it declines as over
   * this visit so far, each as likely beforehand and weighed by how well it tells the visit's fish.
   *
   * @param at an instant, no earlier than that asked for before
   * @param from when the visit began
   * @param hours to come
   */
  Tiring tiring(long at, long from, double hours) {
    Visit now = visit;
    double start = fishedMinutes(from);
    if (now == null || now.from != from || now.start != start) {
      now = new Visit(from, start);
      visit = now;
    }
    int bins = wholeMinutes(at);
    now.take(counts, bins);
    double steady =
        posterior == null || bins <= now.first
            ? 0
            : posterior.logEvidence(bins) - posterior.logEvidence(now.first);
    double chance =
        PRIOR_CHANCE
            / (PRIOR_CHANCE + (1 - PRIOR_CHANCE) * Math.exp(steady - now.decline.logEvidence()));
    double minute = Math.max(0, fishedMinutes(at) - now.start);
    return new Tiring(
        chance,
        now.decline.predictive(minute, hours * 60).mixedWith(steady(at, hours), 1 - chance));
  }

  /** One visit to the line, followed minute by minute. */
  private static final class Visit {
    private final long from;
    private final double start;
    private final int first;
    private final DeclineForecast decline = new DeclineForecast(MEAN_PER_HOUR);
    private int taken;

    Visit(long from, double start) {
      this.from = from;
      this.start = start;
      first = (int) Math.ceil(start);
      taken = first;
    }

    void take(double[] counts, int bins) {
      for (; taken < bins; taken++) {
        decline.add(counts[taken], 1 / 60.0, taken + 0.5 - start);
      }
    }
  }
}
