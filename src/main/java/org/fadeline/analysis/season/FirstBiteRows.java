package org.fadeline.analysis.season;

import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.season.Season.FeedTally;
import org.fadeline.stats.FollowUp;
import org.fadeline.stats.KaplanMeier;
import org.jspecify.annotations.Nullable;

/**
 * The stretches at risk of a first bite of one kind of line, bait or water, in order of time, each
 * with the place of its session among those held.
 */
final class FirstBiteRows {
  private final Times entries = new Times();
  private final Times bites = new Times();
  private final Times censorings = new Times();
  private int[] sessions = new int[16];
  private int sessionCount;
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

    double[] all() {
      return Arrays.copyOf(time, size);
    }
  }

  /**
   * Returns the rows held of each group.
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
    boolean[] holds = new boolean[group.length];
    for (int row = 0; row < group.length; row++) {
      holds[row] = group[row] >= 0 && held.holdsRow(row);
      if (holds[row]) {
        all[group[row]].count(columns, row, held.place[columns.rowSession[row]]);
        holds[row] = columns.entry[row] < columns.exit[row];
      }
    }
    for (int row : columns.byEntry) {
      if (holds[row]) {
        all[group[row]].entries.add(columns.entry[row], held.place[columns.rowSession[row]]);
      }
    }
    for (int row : columns.byExit) {
      if (holds[row]) {
        FirstBiteRows own = all[group[row]];
        Times ends = columns.bite[row] ? own.bites : own.censorings;
        ends.add(columns.exit[row], held.place[columns.rowSession[row]]);
      }
    }
    return all;
  }

  private void count(SeasonColumns columns, int row, int session) {
    if (sessionCount == 0 || sessions[sessionCount - 1] != session) {
      if (sessionCount == sessions.length) {
        sessions = Arrays.copyOf(sessions, 2 * sessionCount);
      }
      sessions[sessionCount++] = session;
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
    return SessionIndices.of(sessions, sessionCount);
  }

  /** Returns the same as numbers of the caller's own. */
  int[] sessionsHeld() {
    return Arrays.copyOf(sessions, sessionCount);
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

  /**
   * Returns the median of each part of the sessions given no bite before a moment, as {@link
   * KaplanMeier#medianTime} has it, all in one pass over the rows; NaN where a part's curve does
   * not come down to one half.
   *
   * @param part of each session, from 0
   * @param parts how many there are
   */
  double[] mediansOfParts(int[] part, int parts, double from) {
    Halving[] curves = new Halving[parts];
    Arrays.setAll(curves, p -> new Halving());
    int open = parts;
    int entry = 0;
    int censoring = 0;
    int next = 0;
    for (int bite = 0; bite < bites.size && open > 0; bite = next) {
      double time = bites.time[bite];
      for (; entry < entries.size && entries.time[entry] < time; entry++) {
        curves[part[entries.session[entry]]].atRisk++;
      }
      for (; censoring < censorings.size && censorings.time[censoring] < time; censoring++) {
        curves[part[censorings.session[censoring]]].atRisk--;
      }
      for (next = bite; next < bites.size && bites.time[next] == time; next++) {
        curves[part[bites.session[next]]].bitten++;
      }
      for (int same = bite; same < next; same++) {
        Halving curve = curves[part[bites.session[same]]];
        if (curve.bitten > 0 && curve.closesAt(time, time >= from)) {
          open--;
        }
      }
    }
    return Arrays.stream(curves).mapToDouble(curve -> curve.median).toArray();
  }

  /** A curve on its way down to one half. */
  private static final class Halving {
    private int atRisk;
    private int bitten;
    private double left = 1;
    private double median = Double.NaN;
    private boolean closed;

    /** Takes the bites of a moment in; returns whether the median is known since. */
    boolean closesAt(double time, boolean counts) {
      if (counts && !closed) {
        left *= (atRisk - (double) bitten) / atRisk;
      }
      atRisk -= bitten;
      bitten = 0;
      if (closed || left > 0.5 + KaplanMeier.HALF_TOLERANCE) {
        return false;
      }
      boolean below = left < 0.5 - KaplanMeier.HALF_TOLERANCE;
      if (Double.isNaN(median)) {
        median = time;
      } else if (below) {
        // It stood at one half since the last bite.
        median += (time - median) / 2;
      }
      closed = below;
      return below;
    }
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
