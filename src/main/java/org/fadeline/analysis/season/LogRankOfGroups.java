package org.fadeline.analysis.season;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.fadeline.stats.LogRank;

/**
 * Each group's first bites against those of all the other groups, stratified by session (the sums
 * are those of {@link LogRank#stratified}). What a session adds does not depend on which other
 * sessions are held, so it is worked out once; only a filter by lines changes it.
 */
final class LogRankOfGroups {
  /** Observed, expected, both of the others, variance. */
  private static final int SUMS = 5;

  private final SeasonColumns columns;
  private final int[] group;
  private final int groups;

  /** First entry of each session, and one more; then the groups it holds and what it adds. */
  private final int[] firstEntry;

  private int[] entryGroup = new int[16];
  private double[] entrySums = new double[16 * SUMS];

  /**
   * Works out what each session adds.
   *
   * @param group of each row, −1 for none
   * @param groups how many there are
   */
  LogRankOfGroups(SeasonColumns columns, int[] group, int groups) {
    this.columns = columns;
    this.group = group;
    this.groups = groups;
    int sessions = columns.sessions.size();
    firstEntry = new int[sessions + 1];
    Stratum stratum = new Stratum();
    for (int session = 0; session < sessions; session++) {
      stratum.take(session, group);
      int entry = firstEntry[session];
      while (entryGroup.length < entry + stratum.groups) {
        entryGroup = Arrays.copyOf(entryGroup, 2 * entryGroup.length);
        entrySums = Arrays.copyOf(entrySums, 2 * entrySums.length);
      }
      System.arraycopy(stratum.group, 0, entryGroup, entry, stratum.groups);
      System.arraycopy(stratum.sums, 0, entrySums, entry * SUMS, stratum.groups * SUMS);
      firstEntry[session + 1] = entry + stratum.groups;
    }
  }

  /** Tests each group over the sessions and lines held. */
  List<LogRank> over(SeasonColumns.Held held) {
    double[] totals = new double[groups * SUMS];
    if (held.everyLine) {
      for (int session : held.of) {
        for (int entry = firstEntry[session]; entry < firstEntry[session + 1]; entry++) {
          add(totals, entryGroup[entry], entrySums, entry);
        }
      }
    } else {
      int[] ofHeld = new int[group.length];
      for (int row = 0; row < ofHeld.length; row++) {
        ofHeld[row] = held.holdsRow(row) ? group[row] : -1;
      }
      Stratum stratum = new Stratum();
      for (int session : held.of) {
        stratum.take(session, ofHeld);
        for (int g = 0; g < stratum.groups; g++) {
          add(totals, stratum.group[g], stratum.sums, g);
        }
      }
    }
    return IntStream.range(0, groups * SUMS)
        .filter(i -> i % SUMS == 0)
        .mapToObj(
            i ->
                LogRank.ofSums(
                    totals[i], totals[i + 1], totals[i + 2], totals[i + 3], totals[i + 4]))
        .toList();
  }

  private static void add(double[] totals, int to, double[] sums, int entry) {
    for (int i = 0; i < SUMS; i++) {
      totals[to * SUMS + i] += sums[entry * SUMS + i];
    }
  }

  /** One session: the rows of it that carry time at risk, and what each of its groups adds. */
  private final class Stratum {
    private int[] group = new int[16];
    private double[] sums = new double[16 * SUMS];
    private int groups;
    private double[] entry = new double[16];
    private double[] exit = new double[16];
    private boolean[] bite = new boolean[16];

    /** Place among the session's groups of each row. */
    private int[] of = new int[16];

    private int rows;

    void take(int session, int[] groupOf) {
      groups = 0;
      rows = 0;
      int from = columns.firstRow[columns.firstLine[session]];
      int to = columns.firstRow[columns.firstLine[session + 1]];
      makeRoom(to - from);
      for (int row = from; row < to; row++) {
        if (groupOf[row] >= 0 && columns.entry[row] < columns.exit[row]) {
          entry[rows] = columns.entry[row];
          exit[rows] = columns.exit[row];
          bite[rows] = columns.bite[row];
          of[rows++] = place(groupOf[row]);
        }
      }
      Arrays.fill(sums, 0, groups * SUMS, 0);
      for (int row = 0; row < rows; row++) {
        if (bite[row]) {
          if (groups == 1) {
            // All bites are of the one group, as expected: nothing is left to chance.
            sums[0]++;
            sums[1]++;
          } else if (isFirstAt(row)) {
            addMoment(exit[row]);
          }
        }
      }
    }

    private void makeRoom(int most) {
      if (most > entry.length) {
        group = new int[most];
        sums = new double[most * SUMS];
        entry = new double[most];
        exit = new double[most];
        bite = new boolean[most];
        of = new int[most];
      }
    }

    private int place(int wanted) {
      int place = 0;
      while (place < groups && group[place] != wanted) {
        place++;
      }
      if (place == groups) {
        group[groups++] = wanted;
      }
      return place;
    }

    private boolean isFirstAt(int row) {
      for (int before = 0; before < row; before++) {
        if (bite[before] && exit[before] == exit[row]) {
          return false;
        }
      }
      return true;
    }

    private void addMoment(double time) {
      double[] atRisk = new double[groups];
      double[] bites = new double[groups];
      double n = 0;
      double d = 0;
      for (int row = 0; row < rows; row++) {
        if (entry[row] < time && time <= exit[row]) {
          n++;
          atRisk[of[row]]++;
          if (bite[row] && exit[row] == time) {
            d++;
            bites[of[row]]++;
          }
        }
      }
      for (int g = 0; g < groups; g++) {
        double own = atRisk[g] / n;
        int at = g * SUMS;
        sums[at] += bites[g];
        sums[at + 1] += d * own;
        sums[at + 2] += d - bites[g];
        sums[at + 3] += d * (1 - own);
        if (n > 1) {
          sums[at + 4] += d * own * ((n - atRisk[g]) / n) * (n - d) / (n - 1);
        }
      }
    }
  }
}
