package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Course.Warning;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** Collects what is odd about a record; repeated oddities become one warning with a count. */
final class RecordWarnings {
  private final Tally noLine = new Tally();
  private final Tally beforeAllIn = new Tally();
  private final Tally castBeforeAllIn = new Tally();
  private final Tally otherLineLeft = new Tally();
  private final Tally afterAllOut = new Tally();
  private final Tally counts = new Tally();
  private final Tally unassigned = new Tally();
  private long unassignedMillis;

  void noLine(SessionEvent event) {
    noLine.add(event.at());
  }

  void beforeAllIn(SessionEvent event) {
    beforeAllIn.add(event.at());
  }

  void castBeforeAllIn(SessionEvent event) {
    castBeforeAllIn.add(event.at());
  }

  void otherLineLeft(SessionEvent event) {
    otherLineLeft.add(event.at());
  }

  void afterAllOut(SessionEvent event) {
    afterAllOut.add(event.at());
  }

  void countWithoutSpell(SessionEvent event) {
    counts.add(event.at());
  }

  /** Forgets the counts that had no spell: they make the spells of the record themselves. */
  void forgetCounts() {
    counts.clear();
  }

  void unassigned(TimeSpan span) {
    unassigned.add(span.from());
    unassignedMillis += span.millis();
  }

  List<Warning> list() {
    List<Warning> warnings = new ArrayList<>();
    noLine.warn(
        warnings,
        "One event on no known line, with no line being fished: left out of every figure. "
            + "Give it a line in the log.",
        "%d events on no known line, with no line being fished: left out of every figure. "
            + "Give them lines in the log.");
    beforeAllIn.warn(
        warnings,
        "One event in the water before all in: left out. Check the time of all in.",
        "%d events in the water before all in: left out. Check the time of all in.");
    castBeforeAllIn.warn(
        warnings,
        "A cast shortly before all in: its bait is taken to fish from all in on. Check the time of"
            + " all in.",
        "%d casts shortly before all in: the bait of the last is taken to fish from all in on."
            + " Check the time of all in.");
    otherLineLeft.warn(
        warnings,
        "A move or an off names a line that was not being fished: it is taken for the line that"
            + " was. Check its line.",
        "%d times a move or an off names a line that was not being fished: it is taken for the line"
            + " that was. Check their lines.");
    afterAllOut.warn(
        warnings,
        "One event in the water after all out that this match does not count: left out.",
        "%d events in the water after all out that this match does not count: left out.");
    counts.warn(
        warnings,
        "One clicker count on a line not fished before it: left out. Log a cast when going on a"
            + " line.",
        "%d clicker counts on lines not fished before them: left out. Log a cast when going on a"
            + " line.");
    long minutes = Math.round(unassignedMillis / TimeSpan.MILLIS_PER_MINUTE);
    unassigned.warn(
        warnings,
        "A change of line with no move logged: "
            + minutes
            + " min belong to neither line. Rates are also given with that time added.",
        "%d changes of line with no move logged: "
            + minutes
            + " min belong to no line. Rates are also given with that time added.");
    return warnings;
  }

  /** How often, and when first. */
  private static final class Tally {
    private int count;
    private @Nullable Long first;

    void clear() {
      count = 0;
      first = null;
    }

    void add(long at) {
      count++;
      if (first == null) {
        first = at;
      }
    }

    void warn(List<Warning> into, String one, String many) {
      if (count == 1) {
        into.add(new Warning(first, one));
      } else if (count > 1) {
        into.add(new Warning(first, many.replace("%d", Integer.toString(count))));
      }
    }
  }
}
