package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.season.Season.FeedTally;
import org.fadeline.stats.FollowUp;
import org.jspecify.annotations.Nullable;

/**
 * The stretches at risk of a first bite of one kind of line, bait or water, in order of time, each
 * with the place of its session among those held.
 */
final class FirstBiteRows {
  private final Times entries = new Times();
  private final Times bites = new Times();
  private final Times censorings = new Times();
  private final List<Integer> sessions = new ArrayList<>();
  private int count;
  private int feeds;
  private int bitten;
  private int late;

  /** Moments in rising order. */
  private static final class Times {
    private double[] time = new double[16];
    private int[] session = new int[16];
    private int size;

    void add(double newTime, int newSession) {
      if (size == time.length) {
        time = Arrays.copyOf(time, 2 * size);
        session = Arrays.copyOf(session, 2 * size);
      }
      time[size] = newTime;
      session[size++] = newSession;
    }

    /** Returns each moment as often as its session is drawn. */
    double[] drawn(int[] times) {
      int n = 0;
      for (int i = 0; i < size; i++) {
        n += times[session[i]];
      }
      double[] drawn = new double[n];
      int to = 0;
      for (int i = 0; i < size; i++) {
        for (int again = times[session[i]]; again > 0; again--) {
          drawn[to++] = time[i];
        }
      }
      return drawn;
    }

    /** Returns the moments of each part of the sessions. */
    double[][] split(int[] part, int parts) {
      int[] sizes = new int[parts];
      for (int i = 0; i < size; i++) {
        sizes[part[session[i]]]++;
      }
      double[][] split = new double[parts][];
      for (int p = 0; p < parts; p++) {
        split[p] = new double[sizes[p]];
        sizes[p] = 0;
      }
      for (int i = 0; i < size; i++) {
        int p = part[session[i]];
        split[p][sizes[p]++] = time[i];
      }
      return split;
    }

    double[] all() {
      return Arrays.copyOf(time, size);
    }
  }

  /**
   * Returns the rows of each group.
   *
   * @param group of each row, −1 for none
   * @param groups how many there are
   */
  static FirstBiteRows[] of(SeasonColumns.Held held, int[] group, int groups) {
    SeasonColumns columns = held.columns();
    FirstBiteRows[] all = new FirstBiteRows[groups];
    for (int g = 0; g < groups; g++) {
      all[g] = new FirstBiteRows();
    }
    for (int row = 0; row < group.length; row++) {
      if (group[row] >= 0) {
        all[group[row]].count(columns, row, held.place[columns.rowSession[row]]);
      }
    }
    for (int row : columns.byEntry) {
      if (group[row] >= 0 && columns.entry[row] < columns.exit[row]) {
        all[group[row]].entries.add(columns.entry[row], held.place[columns.rowSession[row]]);
      }
    }
    for (int row : columns.byExit) {
      if (group[row] >= 0 && columns.entry[row] < columns.exit[row]) {
        FirstBiteRows own = all[group[row]];
        Times ends = columns.bite[row] ? own.bites : own.censorings;
        ends.add(columns.exit[row], held.place[columns.rowSession[row]]);
      }
    }
    return all;
  }

  private void count(SeasonColumns columns, int row, int session) {
    if (sessions.isEmpty() || sessions.get(sessions.size() - 1) != session) {
      sessions.add(session);
    }
    count++;
    feeds += columns.opens[row] ? 1 : 0;
    bitten += columns.bite[row] ? 1 : 0;
    late += columns.opens[row] && columns.entry[row] > 0 ? 1 : 0;
  }

  /** Returns how many rows there are. */
  int count() {
    return count;
  }

  /** Returns the places of their sessions, by date. */
  List<Integer> sessions() {
    return sessions;
  }

  FeedTally tally() {
    return new FeedTally(feeds, bitten, late);
  }

  FollowUp followUp() {
    return FollowUp.ofSorted(entries.all(), bites.all(), censorings.all());
  }

  /** Returns the rows of sessions drawn, each as often as it was drawn. */
  FollowUp drawn(int[] times) {
    return FollowUp.ofSorted(entries.drawn(times), bites.drawn(times), censorings.drawn(times));
  }

  /** Returns the rows by the part their session is in. */
  List<FollowUp> split(int[] part, int parts) {
    double[][] in = entries.split(part, parts);
    double[][] bitten = bites.split(part, parts);
    double[][] ended = censorings.split(part, parts);
    List<FollowUp> split = new ArrayList<>();
    for (int p = 0; p < parts; p++) {
      split.add(FollowUp.ofSorted(in[p], bitten[p], ended[p]));
    }
    return split;
  }

  /** Returns the earliest entry with at least so many at risk just after it, or null. */
  @Nullable Double firstEntryWith(int least) {
    int bite = 0;
    int censoring = 0;
    for (int i = 0; i < entries.size; i++) {
      double after = entries.time[i];
      if (i + 1 < entries.size && entries.time[i + 1] == after) {
        continue;
      }
      while (bite < bites.size && bites.time[bite] <= after) {
        bite++;
      }
      while (censoring < censorings.size && censorings.time[censoring] <= after) {
        censoring++;
      }
      if (i + 1 - bite - censoring >= least) {
        return after;
      }
    }
    return null;
  }
}
