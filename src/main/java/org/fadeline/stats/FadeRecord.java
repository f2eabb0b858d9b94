package org.fadeline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Events along one line in bait minutes, its spells joined end to end: the record a fade is looked
 * for in (section 4 of the methods document). Bins are counted from 0; bin i of a record of times
 * holds bait minutes [i, i + 1).
 */
public final class FadeRecord {
  private static final double TINY = 1e-9;

  private final double[] edges;
  private final double[] counts;
  private final List<Spell> spells;
  private final boolean even;

  private FadeRecord(double[] edges, double[] counts, List<Spell> spells, boolean even) {
    this.edges = edges;
    this.counts = counts;
    this.spells = List.copyOf(spells);
    this.even = even;
  }

  /**
   * One spell of the record.
   *
   * @param startMinute bait minutes of the line before it
   * @param endMinute bait minutes of the line up to its end
   * @param from first bin that starts within the spell; a bin that straddles two spells belongs to
   *     the earlier
   * @param to bin after its last
   * @param lastCount events in its last bin, up to its end
   * @param lastMinutes bait minutes of that bin up to its end, in (0, width of the bin]
   */
  public record Spell(
      double startMinute,
      double endMinute,
      int from,
      int to,
      double lastCount,
      double lastMinutes) {}

  /**
   * A record of times, in one-minute bins.
   *
   * @param eventMinutes bait minute of each event along the line, ascending; one at the very end of
   *     a spell belongs to that spell
   * @param spellEnds bait minutes of the line at the end of each spell, 0 or more, ascending; a
   *     spell with no bait time repeats the number before. Without any bait time the record is
   *     empty
   * @throws IllegalArgumentException if times are out of order or outside the record
   */
  public static FadeRecord ofTimes(double[] eventMinutes, double[] spellEnds) {
    double total = ascendingEnds(spellEnds);
    int n = ceiling(total);
    double[] counts = new double[n];
    double before = 0;
    for (double time : n == 0 ? new double[0] : eventMinutes) {
      if (!(time >= before && time <= total + TINY)) {
        throw new IllegalArgumentException(
            "event times must ascend from 0 to " + total + " bait minutes, got " + time);
      }
      before = time;
      counts[Math.min(n - 1, (int) Math.floor(time + TINY))]++;
    }
    double[] edges = new double[n + 1];
    for (int i = 1; i <= n; i++) {
      edges[i] = Math.min(i, total);
    }
    List<Spell> spells = new ArrayList<>();
    double start = 0;
    int first = 0;
    for (double end : spellEnds) {
      int to = ceiling(end);
      while (first < eventMinutes.length && eventMinutes[first] + TINY < to - 1) {
        first++;
      }
      int after = first;
      while (after < eventMinutes.length && eventMinutes[after] <= end + TINY) {
        after++;
      }
      spells.add(new Spell(start, end, ceiling(start), to, after - first, end - (to - 1)));
      start = end;
    }
    return new FadeRecord(edges, counts, spells, true);
  }

  /**
   * A record of reports: counts over intervals of any length, with changes only between reports.
   *
   * @param edges bait minutes at which reports were made, from 0, strictly ascending; one more than
   *     counts
   * @param counts events in each interval, finite and in [0, ∞)
   * @param spellEnds number of reports up to the end of each spell, strictly ascending, the last
   *     being all of them
   * @throws IllegalArgumentException if a value is out of order or out of range
   */
  public static FadeRecord ofReports(double[] edges, double[] counts, int[] spellEnds) {
    Guard.sameLength(edges.length, counts.length + 1, "report times and counts plus 1");
    for (int i = 0; i < counts.length; i++) {
      Guard.notNegative(counts[i], "count of report " + (i + 1));
      if (!(edges[i + 1] > edges[i]) || !(edges[0] == 0)) {
        throw new IllegalArgumentException(
            "report times must start at 0 and ascend, got " + edges[i] + " then " + edges[i + 1]);
      }
    }
    List<Spell> spells = new ArrayList<>();
    int from = 0;
    for (int to : spellEnds) {
      if (to <= from || to > counts.length) {
        throw new IllegalArgumentException(
            "spells must end after ascending numbers of reports, got "
                + Arrays.toString(spellEnds));
      }
      spells.add(
          new Spell(edges[from], edges[to], from, to, counts[to - 1], edges[to] - edges[to - 1]));
      from = to;
    }
    return new FadeRecord(edges.clone(), counts.clone(), spells, false);
  }

  /** Number of bins, the last, part one included. */
  public int size() {
    return counts.length;
  }

  /** Events in bin {@code i}. */
  public double count(int i) {
    return counts[i];
  }

  /** Bait minute at which bin {@code i} starts; {@code i} = size gives the end of the record. */
  public double edge(int i) {
    return edges[i];
  }

  /** The spells, in order. */
  public List<Spell> spells() {
    return spells;
  }

  /** Whether bins are one minute each, but for the last. */
  public boolean even() {
    return even;
  }

  /** Counts and exposures in hours of all bins. */
  ChangePointBins bins() {
    double[] hours = new double[counts.length];
    for (int i = 0; i < hours.length; i++) {
      // Every whole bin the same number, so that the recursions can share their tables.
      hours[i] = even && i < hours.length - 1 ? 1.0 / 60 : (edges[i + 1] - edges[i]) / 60;
    }
    return ChangePointBins.of(counts, hours);
  }

  /** Probability of a change at each boundary, for this many changes per bait hour. */
  double[] hazards(double perHour) {
    int n = counts.length;
    double[] hazards = new double[n + 1];
    for (int i = 1; i < n; i++) {
      double minutes = even ? 1 : (edges[i + 1] - edges[i - 1]) / 2;
      hazards[i] = -Math.expm1(-perHour * minutes / 60);
    }
    return hazards;
  }

  private static double ascendingEnds(double[] spellEnds) {
    double before = 0;
    for (double end : spellEnds) {
      if (!(end >= before && end < Integer.MAX_VALUE)) {
        throw new IllegalArgumentException(
            "spells must end at ascending bait minutes from 0, got " + Arrays.toString(spellEnds));
      }
      before = end;
    }
    return before;
  }

  private static int ceiling(double minutes) {
    return (int) Math.ceil(minutes - TINY);
  }
}
