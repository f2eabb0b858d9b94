package org.fadeline.stats;

import java.util.Arrays;

/**
 * Follow-up with delayed entry, also called left truncation (Andersen, Borgan, Gill &amp; Keiding
 * 1993, Statistical Models Based on Counting Processes, section III.3), times in one unit,
 * whichever it is: rows (entry, exit, event), each at risk at time t when entry &lt; t ≤ exit. A
 * row of event 1 has its event at its exit; one of event 0 was censored there. One subject may have
 * several rows; what lies between them is not at risk. Rows whose entry equals their exit carry no
 * information and are dropped. Immutable.
 */
public final class FollowUp {
  private final double[] entries;
  private final double[] events;
  private final double[] censorings;

  private FollowUp(double[] entries, double[] events, double[] censorings) {
    this.entries = entries;
    this.events = events;
    this.censorings = censorings;
  }

  /**
   * Takes rows in any order; the arrays are copied.
   *
   * @param entry time each row comes under observation, finite
   * @param exit time each row leaves it, finite, at least its entry
   * @param event whether the row's event came at its exit
   * @throws IllegalArgumentException if the lengths differ, a time is not finite, or an exit comes
   *     before its entry
   */
  public static FollowUp of(double[] entry, double[] exit, boolean[] event) {
    Guard.sameLength(entry.length, exit.length, "entry and exit");
    Guard.sameLength(entry.length, event.length, "entry and event");
    int rows = 0;
    int happened = 0;
    for (int i = 0; i < entry.length; i++) {
      if (checkRow(entry[i], exit[i], i)) {
        rows++;
        happened += event[i] ? 1 : 0;
      }
    }
    double[] entries = new double[rows];
    double[] events = new double[happened];
    double[] censorings = new double[rows - happened];
    int row = 0;
    int atEvent = 0;
    int atCensoring = 0;
    for (int i = 0; i < entry.length; i++) {
      if (entry[i] < exit[i]) {
        // Adding 0 turns −0 into 0, which sorting would otherwise tell apart.
        entries[row++] = entry[i] + 0.0;
        if (event[i]) {
          events[atEvent++] = exit[i] + 0.0;
        } else {
          censorings[atCensoring++] = exit[i] + 0.0;
        }
      }
    }
    Arrays.sort(entries);
    Arrays.sort(events);
    Arrays.sort(censorings);
    return new FollowUp(entries, events, censorings);
  }

  /**
   * Takes rows whose times are sorted already; the arrays are taken over, not copied. Which entry
   * belongs to which exit plays no part in a risk set.
   *
   * @param entries times rows come under observation, rising
   * @param events exits that are events, rising, each after its entry
   * @param censorings the other exits, rising, each after its entry
   * @throws IllegalArgumentException if the lengths do not add up or times are not rising numbers
   */
  public static FollowUp ofSorted(double[] entries, double[] events, double[] censorings) {
    Guard.sameLength(entries.length, events.length + censorings.length, "entries and exits");
    checkRising(entries);
    checkRising(events);
    checkRising(censorings);
    return new FollowUp(entries, events, censorings);
  }

  private static void checkRising(double[] times) {
    double before = -Double.MAX_VALUE;
    for (double time : times) {
      if (!(time >= before && time <= Double.MAX_VALUE)) {
        throw new IllegalArgumentException("times must be rising numbers, got " + time);
      }
      before = time;
    }
  }

  /**
   * Rows all entered at time 0.
   *
   * @param exit time each row leaves observation, finite, at least 0
   * @param event whether the row's event came at its exit
   * @throws IllegalArgumentException if the lengths differ or a time is negative or not finite
   */
  public static FollowUp fromZero(double[] exit, boolean[] event) {
    return of(new double[exit.length], exit, event);
  }

  /** Whether the row carries time at risk. */
  private static boolean checkRow(double entry, double exit, int row) {
    if (entry <= exit && Math.abs(entry) <= Double.MAX_VALUE && exit <= Double.MAX_VALUE) {
      return entry < exit;
    }
    throw new IllegalArgumentException(
        "row "
            + row
            + ": entry and exit must be finite with the entry at most the exit, got "
            + entry
            + " and "
            + exit);
  }

  /** Rows that carry time at risk. */
  public int rows() {
    return entries.length;
  }

  /** Rows that end in an event. */
  public int events() {
    return events.length;
  }

  /** Rows at risk at time t: entry &lt; t ≤ exit. */
  public int atRisk(double t) {
    return countBelow(entries, t) - countBelow(events, t) - countBelow(censorings, t);
  }

  /** The latest exit; −∞ without rows. */
  double lastExit() {
    double lastEvent = events.length == 0 ? Double.NEGATIVE_INFINITY : events[events.length - 1];
    return censorings.length == 0
        ? lastEvent
        : Math.max(lastEvent, censorings[censorings.length - 1]);
  }

  private static int countBelow(double[] sorted, double t) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < t) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Walks the risk set forward through time; times asked for must not go back. */
  static final class Cursor {
    private final FollowUp rows;
    private int entry;
    private int event;
    private int censoring;
    private int atRisk;
    private int happened;

    Cursor(FollowUp rows) {
      this.rows = rows;
    }

    /** The next event time after the one moved to; +∞ when there is none. */
    double nextEvent() {
      return event < rows.events.length ? rows.events[event] : Double.POSITIVE_INFINITY;
    }

    void moveTo(double t) {
      double[] entries = rows.entries;
      while (entry < entries.length && entries[entry] < t) {
        entry++;
      }
      double[] censorings = rows.censorings;
      while (censoring < censorings.length && censorings[censoring] < t) {
        censoring++;
      }
      double[] events = rows.events;
      while (event < events.length && events[event] < t) {
        event++;
      }
      atRisk = entry - censoring - event;
      int before = event;
      while (event < events.length && events[event] == t) {
        event++;
      }
      happened = event - before;
    }

    /** Rows at risk at the time moved to. */
    int atRisk() {
      return atRisk;
    }

    /** Events at the time moved to. */
    int events() {
      return happened;
    }
  }
}
