package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Learned.DaysLearned;
import org.fadeline.analysis.season.Learned.GroupLearned;
import org.fadeline.analysis.season.Learned.HazardLearned;
import org.fadeline.stats.Bunching;
import org.fadeline.stats.ChangePointBins;
import org.fadeline.stats.ChangePointMixture;
import org.fadeline.stats.ChangePointPrior;
import org.fadeline.stats.FadeRecord;
import org.fadeline.stats.GammaPosterior;
import org.fadeline.stats.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Learns from sessions: how often rates change (exact, from the evidence of every record at each
 * rate of change), how far bites bunch, what each kind of line pays, and how much days differ.
 */
final class Learner {
  private static final double PRIOR_SHAPE = 2;
  private static final double PRIOR_HOURS = 8;
  private static final int MINIMUM_SEGMENT = 10;
  private static final double MOST_SHAPE = 4;
  private static final int FEWEST_FOR_POOL = 3;
  private static final double USUAL_SIGMA = 0.5;
  private static final double USUAL_COUNTS_AS = 5;
  private static final int GRID = 600;

  private Learner() {}

  /**
   * Returns the log evidence of a line's record at each rate of change of {@link Learned#HAZARDS},
   * under the same steps as a fade's.
   */
  static List<Double> hazardEvidence(FadeRecord record, double bunching) {
    double[] counts = new double[record.size()];
    double[] hours = new double[record.size()];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = record.count(i);
      hours[i] = (record.edge(i + 1) - record.edge(i)) / 60;
    }
    ChangePointBins bins = ChangePointBins.of(counts, hours).dividedBy(bunching);
    List<Double> evidence = new ArrayList<>();
    for (double hazard : Learned.HAZARDS) {
      ChangePointPrior prior =
          new ChangePointPrior(1, 1, -Math.expm1(-hazard / 60), MINIMUM_SEGMENT);
      evidence.add(
          ChangePointMixture.of(bins, prior, ChangePointMixture.hourlyMeans()).logEvidence());
    }
    return evidence;
  }

  static Learned learn(List<SessionSummary> sessions) {
    return learn(new SeasonColumns(sessions).held(SeasonFilter.ALL));
  }

  static Learned learn(SeasonColumns.Held held) {
    String[] kinds = held.columns().groups;
    @Nullable Pool[] pools = new @Nullable Pool[kinds.length];
    LineColumns from = held.columns().lines;
    Evidence evidence = new Evidence();
    held.eachLine(
        (session, kind, line) -> {
          Pool pool = pools[kind] == null ? new Pool() : pools[kind];
          pools[kind] = pool;
          pool.departure += from.departure[line];
          pool.pairs += from.pairs[line];
          evidence.add(from.evidence, line);
          pool.add(session, from.fish[line], from.minutes[line] / 60);
        });
    List<GroupLearned> groups = new ArrayList<>();
    List<Pool> known = new ArrayList<>();
    for (int g = 0; g < kinds.length; g++) {
      Pool pool = pools[g];
      if (pool != null) {
        known.add(pool);
        groups.add(pool.learned(kinds[g]));
      }
    }
    return new Learned(hazard(evidence), groups, days(known), held.sessions.size());
  }

  /** Log evidence of all records at each rate of change. */
  private static final class Evidence {
    private final double[] sums = new double[Learned.HAZARDS.size()];
    private int records;

    /** Adds that of one line, unless its record carries none. */
    void add(double[] ofAll, int line) {
      int from = line * sums.length;
      if (!Double.isNaN(ofAll[from])) {
        records++;
        for (int i = 0; i < sums.length; i++) {
          sums[i] += ofAll[from + i];
        }
      }
    }
  }

  /** Integrates over log ρ; between the kept rates the log evidence is a parabola of log ρ. */
  private static HazardLearned hazard(Evidence evidence) {
    double low = Math.log(1e-3);
    double step = (Math.log(16) - low) / GRID;
    double[] logs = new double[GRID + 1];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= GRID; i++) {
      double logRate = low + i * step;
      // The density of log ρ: shape, not shape − 1.
      logs[i] =
          PRIOR_SHAPE * logRate - PRIOR_HOURS * Math.exp(logRate) + between(evidence.sums, logRate);
      most = Math.max(most, logs[i]);
    }
    double total = 0;
    double mean = 0;
    double[] weights = new double[GRID + 1];
    for (int i = 0; i <= GRID; i++) {
      weights[i] = Math.exp(logs[i] - most);
      total += weights[i];
      mean += weights[i] * Math.exp(low + i * step);
    }
    double tail = (1 - ReviewSettings.FADE_LEVEL) / 2;
    return new HazardLearned(
        mean / total,
        new Interval(
            quantile(weights, total, tail, low, step),
            quantile(weights, total, 1 - tail, low, step),
            ReviewSettings.FADE_LEVEL),
        evidence.records);
  }

  private static double quantile(
      double[] weights, double total, double p, double low, double step) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      if (sum + weights[i] >= p * total) {
        double share = weights[i] > 0 ? (p * total - sum) / weights[i] : 0;
        return Math.exp(low + (i - 0.5 + share) * step);
      }
      sum += weights[i];
    }
    return Math.exp(low + (weights.length - 1) * step);
  }

  /** Parabola through the three kept rates nearest; constant beyond the ends. */
  private static double between(double[] sums, double logRate) {
    double first = Math.log(Learned.HAZARDS.get(0));
    double apart = Math.log(2);
    double place = Math.max(0, Math.min(sums.length - 1, (logRate - first) / apart));
    int middle = (int) Math.max(1, Math.min(sums.length - 2, Math.round(place)));
    double t = place - middle;
    double slope = (sums[middle + 1] - sums[middle - 1]) / 2;
    double curve = sums[middle + 1] - 2 * sums[middle] + sums[middle - 1];
    return sums[middle] + t * slope + t * t * curve / 2;
  }

  /** Sessions of one kind of line. */
  private static final class Pool {
    /** Fish and fished hours of each session in which it was fished. */
    private double[] fish = new double[16];

    private double[] hours = new double[16];
    private int size;
    private int last = -1;
    private double departure;
    private int pairs;

    /** Adds a line; several lines of one session count as one. */
    void add(int session, int newFish, double newHours) {
      if (newHours > 0) {
        if (last != session) {
          if (size == fish.length) {
            fish = Arrays.copyOf(fish, 2 * size);
            hours = Arrays.copyOf(hours, 2 * size);
          }
          size++;
          last = session;
        }
        fish[size - 1] += newFish;
        hours[size - 1] += newHours;
      }
    }

    private double sum(double[] values) {
      double sum = 0;
      for (int i = 0; i < size; i++) {
        sum += values[i];
      }
      return sum;
    }

    double mean() {
      return sum(fish) / sum(hours);
    }

    /** Pearson's χ² of equal rates. */
    double chiSquare() {
      double mean = mean();
      double sum = 0;
      for (int i = 0; i < size; i++) {
        double expected = mean * hours[i];
        sum += (fish[i] - expected) * (fish[i] - expected) / expected;
      }
      return sum;
    }

    /** What χ² grows by, above its degrees of freedom, per unit of squared relative spread. */
    double leverage() {
      double sum = sum(hours);
      double squares = 0;
      for (int i = 0; i < size; i++) {
        squares += hours[i] * hours[i];
      }
      return mean() * (sum - squares / sum);
    }

    boolean tells() {
      return size >= 2 && mean() > 0;
    }

    GroupLearned learned(String name) {
      return new GroupLearned(name, Bunching.factor(departure, pairs), pool(), size, given());
    }

    private LearnedPriors.Given given() {
      return new LearnedPriors.Given(
          (int) Math.round(sum(fish)), Arrays.stream(hours, 0, size).sum());
    }

    private @Nullable GammaPosterior pool() {
      if (size < FEWEST_FOR_POOL || !(mean() > 0)) {
        return null;
      }
      double spread = (chiSquare() - (size - 1)) / leverage();
      double shape = spread > 1 / MOST_SHAPE ? 1 / spread : MOST_SHAPE;
      return new GammaPosterior(shape, shape / mean());
    }
  }

  /**
   * Squared relative spread of rates between sessions, by moments over all kinds of line: E[χ²] =
   * (n − 1) + spread · leverage. On the log scale σ² = log(1 + spread).
   */
  private static @Nullable DaysLearned days(Iterable<Pool> pools) {
    double excess = 0;
    double leverage = 0;
    int freedom = 0;
    for (Pool pool : pools) {
      if (pool.tells()) {
        excess += pool.chiSquare() - (pool.size - 1);
        leverage += pool.leverage();
        freedom += pool.size - 1;
      }
    }
    if (freedom < Season.FEWEST_FOR_LIMITS || !(leverage > 0)) {
      return null;
    }
    double square = Math.log1p(Math.max(0, excess / leverage));
    double shrunk =
        (USUAL_COUNTS_AS * USUAL_SIGMA * USUAL_SIGMA + freedom * square)
            / (USUAL_COUNTS_AS + freedom);
    return new DaysLearned(Math.sqrt(shrunk), Math.sqrt(square), freedom);
  }
}
