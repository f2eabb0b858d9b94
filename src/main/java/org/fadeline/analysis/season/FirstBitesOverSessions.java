package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBites;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.analysis.season.Season.Curve;
import org.fadeline.analysis.season.Season.FeedTally;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.SessionSummary.FirstBiteRow;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
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

  private final List<SessionSummary> sessions;
  private final SeasonFilter filter;

  FirstBitesOverSessions(List<SessionSummary> sessions, SeasonFilter filter) {
    this.sessions = sessions;
    this.filter = filter;
  }

  List<FirstBiteGroup> groups() {
    // Each group stands alone: on a long season both cores share them.
    return Arrays.stream(By.values())
        .flatMap(
            by -> {
              Map<String, Map<Integer, List<FirstBiteRow>>> rows = rows(by);
              return rows.entrySet().stream()
                  .map(
                      own ->
                          (Supplier<FirstBiteGroup>)
                              () -> group(by, own.getKey(), own.getValue(), rows));
            })
        .toList()
        .parallelStream()
        .map(Supplier::get)
        .toList();
  }

  /** Returns name of the group to session to its rows. */
  private Map<String, Map<Integer, List<FirstBiteRow>>> rows(By by) {
    Map<String, Map<Integer, List<FirstBiteRow>>> rows = new TreeMap<>();
    Map<String, String> tidied = new HashMap<>();
    for (int s = 0; s < sessions.size(); s++) {
      for (LineSummary line : sessions.get(s).lines()) {
        if (!filter.holds(line)) {
          continue;
        }
        for (FirstBiteRow row : line.firstBites()) {
          String name =
              switch (by) {
                case LINE -> line.group();
                case BAIT -> row.bait();
                case WATER -> sessions.get(s).about().water();
              };
          if (name != null) {
            rows.computeIfAbsent(
                    tidied.computeIfAbsent(name, n -> n.strip().toLowerCase(Locale.ROOT)),
                    n -> new LinkedHashMap<>())
                .computeIfAbsent(s, i -> new ArrayList<>())
                .add(row);
          }
        }
      }
    }
    return rows;
  }

  private static FirstBiteGroup group(
      By by,
      String name,
      Map<Integer, List<FirstBiteRow>> own,
      Map<String, Map<Integer, List<FirstBiteRow>>> all) {
    List<FirstBiteRow> rows = own.values().stream().flatMap(List::stream).toList();
    FeedTally tally =
        new FeedTally(
            (int) rows.stream().filter(FirstBiteRow::opens).count(),
            (int) rows.stream().filter(FirstBiteRow::bite).count(),
            (int) rows.stream().filter(r -> r.opens() && r.entry() > 0).count());
    return new FirstBiteGroup(
        by,
        name,
        List.copyOf(own.keySet()),
        tally,
        curve(rows, List.copyOf(own.values())),
        againstOthers(name, own, all));
  }

  private static LogRank againstOthers(
      String name,
      Map<Integer, List<FirstBiteRow>> own,
      Map<String, Map<Integer, List<FirstBiteRow>>> all) {
    List<LogRank.Stratum> strata = new ArrayList<>();
    own.forEach(
        (session, rows) -> {
          List<FirstBiteRow> others = new ArrayList<>();
          all.forEach(
              (other, theirs) -> {
                if (!other.equals(name)) {
                  others.addAll(theirs.getOrDefault(session, List.of()));
                }
              });
          strata.add(new LogRank.Stratum(followUp(rows), followUp(others)));
        });
    return LogRank.stratified(strata);
  }

  private static FollowUp followUp(List<FirstBiteRow> rows) {
    double[] entry = new double[rows.size()];
    double[] exit = new double[rows.size()];
    boolean[] event = new boolean[rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      entry[i] = rows.get(i).entry();
      exit[i] = rows.get(i).exit();
      event[i] = rows.get(i).bite();
    }
    return FollowUp.of(entry, exit, event);
  }

  private static @Nullable Curve curve(
      List<FirstBiteRow> rows, List<List<FirstBiteRow>> bySession) {
    FollowUp followUp = followUp(rows);
    Double from = firstWithEnoughAtRisk(rows, followUp);
    if (from == null) {
      return null;
    }
    KaplanMeier curve = KaplanMeier.of(followUp).from(from);
    List<FirstBite.Step> steps =
        curve.steps().stream()
            .map(
                s -> new FirstBite.Step(s.time(), s.atRisk(), s.events(), s.survival(), null, null))
            .toList();
    double[] limits = medianLimits(bySession, from, rows.size());
    return new Curve(
        from,
        curve.median().time(),
        limit(limits, 0),
        limit(limits, 1),
        ReviewSettings.LEVEL,
        steps);
  }

  private static @Nullable Double limit(double[] limits, int which) {
    return limits.length == 0 || Double.isInfinite(limits[which]) ? null : (Double) limits[which];
  }

  /** Returns the earliest entry with at least five at risk just after it, or null. */
  private static @Nullable Double firstWithEnoughAtRisk(
      List<FirstBiteRow> rows, FollowUp followUp) {
    double[] entries = rows.stream().mapToDouble(FirstBiteRow::entry).sorted().distinct().toArray();
    for (double entry : entries) {
      if (followUp.atRisk(Math.nextUp(entry)) >= FirstBites.LEAST_AT_RISK) {
        return entry;
      }
    }
    return null;
  }

  /** Returns the 2.5% and 97.5% points of the median over sessions drawn, or nothing if few. */
  private static double[] medianLimits(
      List<List<FirstBiteRow>> bySession, double from, int rowCount) {
    int n = bySession.size();
    if (n < Season.FEWEST_FOR_LIMITS) {
      return new double[0];
    }
    if (n > MANY) {
      return medianLimitsOfGroups(bySession, from);
    }
    int resamples =
        Math.max(LEAST_RESAMPLES, Math.min(MOST_RESAMPLES, MOST_ROWS_DRAWN / (rowCount + 1)));
    SplittableRandom random = new SplittableRandom(SEED);
    double[] medians = new double[resamples];
    for (int r = 0; r < resamples; r++) {
      List<FirstBiteRow> drawn = new ArrayList<>(rowCount);
      for (int i = 0; i < n; i++) {
        drawn.addAll(bySession.get(random.nextInt(n)));
      }
      Double median = KaplanMeier.of(followUp(drawn)).from(from).median().time();
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
  private static double[] medianLimitsOfGroups(List<List<FirstBiteRow>> bySession, double from) {
    List<List<FirstBiteRow>> shuffled = new ArrayList<>(bySession);
    Collections.shuffle(shuffled, new Random(SEED));
    double sum = 0;
    double squares = 0;
    for (int k = 0; k < RANDOM_GROUPS; k++) {
      List<FirstBiteRow> rows = new ArrayList<>();
      for (int i = k; i < shuffled.size(); i += RANDOM_GROUPS) {
        rows.addAll(shuffled.get(i));
      }
      Double median = KaplanMeier.of(followUp(rows)).from(from).median().time();
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
