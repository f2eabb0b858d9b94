package org.fadeline.analysis.season;

import java.util.AbstractList;
import java.util.Arrays;
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

  private final List<Sort> sorts;

  FirstBitesOverSessions(SeasonColumns columns) {
    sorts = Arrays.stream(By.values()).map(by -> new Sort(columns, by)).toList();
  }

  /** What first bites are put together by, laid out. */
  private static final class Sort {
    private final By by;

    /** Of its groups. */
    private final String[] names;

    /** Of each row, −1 for none. */
    private final int[] group;

    /** Each group against the others. */
    private final LogRankOfGroups tests;

    private Sort(SeasonColumns columns, By by) {
      this.by = by;
      names =
          switch (by) {
            case LINE -> columns.groups;
            case BAIT -> columns.baits;
            case WATER -> columns.waters;
          };
      group =
          switch (by) {
            case LINE -> columns.rowGroup;
            case BAIT -> columns.rowBait;
            case WATER ->
                Arrays.stream(columns.rowSession).map(session -> columns.water[session]).toArray();
          };
      tests = new LogRankOfGroups(columns, group, names.length);
    }
  }

  List<FirstBiteGroup> groups(SeasonColumns.Held held) {
    // Each group stands alone: on a long season both cores share them.
    List<Supplier<FirstBiteGroup>> groups =
        sorts.parallelStream().flatMap(sort -> groups(held, sort)).toList();
    return groups.parallelStream().map(Supplier::get).toList();
  }

  private static Stream<Supplier<FirstBiteGroup>> groups(SeasonColumns.Held held, Sort sort) {
    FirstBiteRows[] rows = FirstBiteRows.of(held, sort.group, sort.names.length);
    List<LogRank> tests = sort.tests.over(held);
    return IntStream.range(0, rows.length)
        .filter(g -> rows[g].count() > 0)
        .mapToObj(
            g ->
                () ->
                    new FirstBiteGroup(
                        sort.by,
                        sort.names[g],
                        rows[g].sessions(),
                        rows[g].tally(),
                        curve(rows[g], held),
                        tests.get(g)));
  }

  private static @Nullable Curve curve(FirstBiteRows rows, SeasonColumns.Held held) {
    FollowUp followUp = rows.followUp();
    Double from = rows.firstEntryWith(FirstBites.LEAST_AT_RISK);
    if (from == null) {
      return null;
    }
    KaplanMeier curve = KaplanMeier.of(followUp, from);
    double[] limits = medianLimits(rows, held.of.length, from);
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
  private static double[] medianLimits(FirstBiteRows rows, int heldSessions, double from) {
    int[] sessions = rows.sessionsHeld();
    int n = sessions.length;
    if (n < Season.FEWEST_FOR_LIMITS) {
      return new double[0];
    }
    if (n > MANY) {
      return medianLimitsOfGroups(rows, heldSessions, from);
    }
    int resamples =
        Math.max(LEAST_RESAMPLES, Math.min(MOST_RESAMPLES, MOST_ROWS_DRAWN / (rows.count() + 1)));
    SplittableRandom random = new SplittableRandom(SEED);
    double[] medians = new double[resamples];
    for (int r = 0; r < resamples; r++) {
      int[] times = new int[heldSessions];
      for (int i = 0; i < n; i++) {
        times[sessions[random.nextInt(n)]]++;
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
  private static double[] medianLimitsOfGroups(FirstBiteRows rows, int heldSessions, double from) {
    int[] shuffled = rows.sessionsHeld();
    Random random = new Random(SEED);
    int[] part = new int[heldSessions];
    for (int i = shuffled.length - 1; i >= 0; i--) {
      int chosen = random.nextInt(i + 1);
      part[shuffled[chosen]] = i % RANDOM_GROUPS;
      shuffled[chosen] = shuffled[i];
    }
    double sum = 0;
    double squares = 0;
    for (double median : rows.mediansOfParts(part, RANDOM_GROUPS, from)) {
      if (Double.isNaN(median)) {
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
