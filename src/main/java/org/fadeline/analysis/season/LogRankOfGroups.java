package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.stats.LogRank;

/**
 * Each group's first bites against those of all the other groups, stratified by session, all groups
 * in one pass (the sums are those of {@link LogRank#stratified}).
 */
final class LogRankOfGroups {
  private final SeasonColumns columns;
  private final int[] group;
  private final double[] observed;
  private final double[] expected;
  private final double[] observedOther;
  private final double[] expectedOther;
  private final double[] variance;

  /** Rows at risk and bites at one moment, by group. */
  private final int[] atRisk;

  private final int[] bites;

  private LogRankOfGroups(SeasonColumns columns, int[] group, int groups) {
    this.columns = columns;
    this.group = group;
    observed = new double[groups];
    expected = new double[groups];
    observedOther = new double[groups];
    expectedOther = new double[groups];
    variance = new double[groups];
    atRisk = new int[groups];
    bites = new int[groups];
  }

  /**
   * Tests each group.
   *
   * @param group of each row, −1 for none
   * @param groups how many there are
   */
  static List<LogRank> against(SeasonColumns.Held held, int[] group, int groups) {
    LogRankOfGroups sums = new LogRankOfGroups(held.columns(), group, groups);
    for (int session : held.of) {
      sums.addSession(session);
    }
    List<LogRank> tests = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      tests.add(
          LogRank.ofSums(
              sums.observed[g],
              sums.expected[g],
              sums.observedOther[g],
              sums.expectedOther[g],
              sums.variance[g]));
    }
    return tests;
  }

  private void addSession(int session) {
    int from = columns.firstRow[columns.firstLine[session]];
    int to = columns.firstRow[columns.firstLine[session + 1]];
    boolean[] present = new boolean[atRisk.length];
    for (int row = from; row < to; row++) {
      if (group[row] >= 0) {
        present[group[row]] = true;
      }
    }
    for (int row = from; row < to; row++) {
      if (isBite(row) && isFirstAt(columns.exit[row], from, row)) {
        addMoment(columns.exit[row], from, to, present);
      }
    }
  }

  private boolean isBite(int row) {
    return group[row] >= 0 && columns.bite[row] && columns.entry[row] < columns.exit[row];
  }

  private boolean isFirstAt(double time, int from, int row) {
    boolean first = true;
    for (int before = from; before < row; before++) {
      first &= !(isBite(before) && columns.exit[before] == time);
    }
    return first;
  }

  private void addMoment(double time, int from, int to, boolean[] present) {
    Arrays.fill(atRisk, 0);
    Arrays.fill(bites, 0);
    double n = 0;
    double d = 0;
    for (int row = from; row < to; row++) {
      if (group[row] >= 0 && columns.entry[row] < time && time <= columns.exit[row]) {
        n++;
        atRisk[group[row]]++;
        if (columns.bite[row] && columns.exit[row] == time) {
          d++;
          bites[group[row]]++;
        }
      }
    }
    for (int g = 0; g < present.length; g++) {
      if (present[g]) {
        double own = atRisk[g] / n;
        observed[g] += bites[g];
        expected[g] += d * own;
        observedOther[g] += d - bites[g];
        expectedOther[g] += d * (1 - own);
        if (n > 1) {
          variance[g] += d * own * ((n - atRisk[g]) / n) * (n - d) / (n - 1);
        }
      }
    }
  }
}
