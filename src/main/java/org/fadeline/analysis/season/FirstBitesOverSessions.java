package org.fadeline.analysis.season;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBites;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.analysis.season.Season.Curve;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.stats.FollowUp;
import org.fadeline.stats.KaplanMeier;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;

/** Time to first bite over sessions, by kind of line, bait and water. */
final class FirstBitesOverSessions {
  private static final long SEED = 20_260_103L;
  private static final int MOST_RESAMPLES = 400;

  /** Rows drawn over all resamples of one group at most: keeps a long season quick. */
  private static final int MOST_ROWS_DRAWN = 400_000;

  private static final int LEAST_RESAMPLES = 40;

  /** Sessions from which random groups of them stand for draws. */
  private static final int MANY = 200;

  private static final int RANDOM_GROUPS = 20;

  /** 97.5% point of Student's t on 19 degrees of freedom. */
  private static final double T_19 = 2.093024054408263;

  private final SeasonColumns.Held held;

  FirstBitesOverSessions(SeasonColumns.Held held) {
    this.held = held;
  }

  List<FirstBiteGroup> groups() {
    // Each group stands alone: on a long season both cores share them.
    return Arrays.stream(By.values()).flatMap(this::groups).toList().parallelStream()
        .map(Supplier::get)
        .toList();
  }

  private Stream<Supplier<FirstBiteGroup>> groups(By by) {
    SeasonColumns columns = held.columns();
    String[] names =
        switch (by) {
          case LINE -> columns.groups;
          case BAIT -> columns.baits;
          case WATER -> columns.waters;
        };
    int[] group = new int[columns.entry.length];
    for (int row = 0; row < group.length; row++) {
      group[row] =
          !held.holdsRow(row)
              ? -1
              : switch (by) {
                case LINE -> columns.rowGroup[row];
                case BAIT -> columns.rowBait[row];
                case WATER -> columns.water[columns.rowSession[row]];
              };
    }
    FirstBiteRows[] rows = FirstBiteRows.of(held, group, names.length);
    List<LogRank> tests = LogRankOfGroups.against(held, group, names.length);
    return IntStream.range(0, names.length)
        .filter(g -> !rows[g].sessions().isEmpty())
        .mapToObj(
            g ->
                () ->
                    new FirstBiteGroup(
                        by,
                        names[g],
                        rows[g].sessions(),
                        rows[g].tally(),
                        curve(rows[g]),
                        tests.get(g)));
  }

  private @Nullable Curve curve(FirstBiteRows rows) {
    FollowUp followUp = rows.followUp();
    Double from = rows.firstEntryWith(FirstBites.LEAST_AT_RISK);
    if (from == null) {
      return null;
    }
    KaplanMeier curve = KaplanMeier.of(followUp, from);
    double[] limits = medianLimits(rows, from);
    return new Curve(
        from,
        curve.medianTime(),
        limit(limits, 0),
        limit(limits, 1),
        ReviewSettings.LEVEL,
        new Steps(curve.steps()));
  }

  /** The steps of a curve, each made when asked for: a long season has tens of thousands. */
  private static final class Steps extends AbstractList<FirstBite.Step> {
    private final List<KaplanMeier.Step> steps;

    Steps(List<KaplanMeier.Step> steps) {
      this.steps = steps;
    }

    @Override
    public FirstBite.Step get(int index) {
      KaplanMeier.Step s = steps.get(index);
      return new FirstBite.Step(s.time(), s.atRisk(), s.events(), s.survival(), null, null);
    }

    @Override
    public int size() {
      return steps.size();
    }
  }

  private static @Nullable Double limit(double[] limits, int which) {
    return limits.length == 0 || Double.isInfinite(limits[which]) ? null : (Double) limits[which];
  }

  /** Returns the 2.5% and 97.5% points of the median over sessions drawn, or nothing if few. */
  private double[] medianLimits(FirstBiteRows rows, double from) {
    int n = rows.sessions().size();
    if (n < Season.FEWEST_FOR_LIMITS) {
      return new double[0];
    }
    if (n > MANY) {
      return medianLimitsOfGroups(rows, from);
    }
    int resamples =
        Math.max(LEAST_RESAMPLES, Math.min(MOST_RESAMPLES, MOST_ROWS_DRAWN / (rows.count() + 1)));
    SplittableRandom random = new SplittableRandom(SEED);
    double[] medians = new double[resamples];
    for (int r = 0; r < resamples; r++) {
      int[] times = new int[held.of.length];
      for (int i = 0; i < n; i++) {
        times[rows.sessions().get(random.nextInt(n))]++;
      }
      Double median = KaplanMeier.of(rows.drawn(times), from).medianTime();
      // Not come down to one half: later than any time seen.
      medians[r] = median == null ? Double.POSITIVE_INFINITY : median;
    }
    Arrays.sort(medians);
    double tail = (1 - ReviewSettings.LEVEL) / 2;
    return new double[] {
      medians[(int) Math.floor(tail * (resamples - 1))],
      medians[(int) Math.ceil((1 - tail) * (resamples - 1))]
    };
  }

  /**
   * Returns limits from the scatter of the medians of random groups of sessions (Wolter 2007,
   * Introduction to Variance Estimation, chapter 2): one pass over the rows however many there are.
   * Nothing where a group's curve does not come down to one half.
   */
  private double[] medianLimitsOfGroups(FirstBiteRows rows, double from) {
    List<Integer> shuffled = new ArrayList<>(rows.sessions());
    Collections.shuffle(shuffled, new Random(SEED));
    int[] part = new int[held.of.length];
    for (int i = 0; i < shuffled.size(); i++) {
      part[shuffled.get(i)] = i % RANDOM_GROUPS;
    }
    double sum = 0;
    double squares = 0;
    for (FollowUp one : rows.split(part, RANDOM_GROUPS)) {
      Double median = KaplanMeier.of(one, from).medianTime();
      if (median == null) {
        return new double[0];
      }
      sum += median;
      squares += median * median;
    }
    double mean = sum / RANDOM_GROUPS;
    double variance = Math.max(0, (squares - sum * mean) / (RANDOM_GROUPS - 1));
    double half = T_19 * Math.sqrt(variance / RANDOM_GROUPS);
    return new double[] {Math.max(0, mean - half), mean + half};
  }
}
