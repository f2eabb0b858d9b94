package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Course.Rolling;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Course.Untold;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Effort.Unassigned;
import org.fadeline.model.Match;

/** Rolling catch rate: fish of the window (t − W, t] over the hours fished inside it. */
final class RollingRates {
  private static final long STEP_MILLIS = 60_000;

  private final Match match;
  private final long window;

  RollingRates(Match match, ReviewSettings settings) {
    this.match = match;
    this.window = Math.round(settings.windowMinutes() * STEP_MILLIS);
  }

  /**
   * Returns one point a minute.
   *
   * @param unassigned all stretches of the match that belong to no line
   * @param bunching the bunching known at each instant, from what had been seen by then
   */
  Rolling of(LineEffort line, List<Unassigned> unassigned, BunchingInTime bunching) {
    List<TimeSpan> fished = line.fishedSpans();
    long first = match.allIn() + STEP_MILLIS;
    List<Untold> untold = new ArrayList<>();
    for (Unassigned gap : unassigned) {
      if (gap.before().equals(line.line().id())) {
        List<TimeSpan> seemed = new ArrayList<>(fished);
        seemed.add(gap.span());
        long minutes = Math.max(0, Math.floorDiv(gap.span().from() - first, STEP_MILLIS) + 1);
        long from = first + minutes * STEP_MILLIS;
        untold.add(
            new Untold(
                gap.span(),
                gap.after(),
                points(line, seemed, from, gap.span().to() - 1, bunching)));
      }
    }
    return new Rolling(
        line.line().id(), points(line, fished, first, match.allOut(), bunching), untold);
  }

  /** Returns the point of one minute, from effort that ends there. */
  RollingPoint at(long at, LineEffort line, double bunching) {
    return points(line, line.fishedSpans(), at, at, instant -> bunching).get(0);
  }

  /** Returns a point a minute from the first instant to the last, both included. */
  private List<RollingPoint> points(
      LineEffort line, List<TimeSpan> fished, long first, long last, BunchingInTime bunching) {
    List<FishMark> fish = line.fish().stream().filter(f -> !f.opening()).toList();
    List<RollingPoint> points = new ArrayList<>();
    for (long at = first; at <= last; at += STEP_MILLIS) {
      long from = at - window;
      List<FishMark> landed = SortedLists.between(fish, FishMark::at, from + 1, at);
      Caught caught = Caught.of(line.bitesAt(from + 1, at), landed);
      double hours = SpanMath.overlapMillis(fished, from, at) / TimeSpan.MILLIS_PER_HOUR;
      points.add(point(at, hours, caught, landed, bunching.at(at)));
    }
    return points;
  }

  private static RollingPoint point(
      long at, double hours, Caught caught, List<FishMark> fish, double bunching) {
    double minutes = hours * 60;
    if (minutes < ReviewSettings.LEAST_RATED_MINUTES) {
      return new RollingPoint(at, minutes, caught, null, null, null);
    }
    Rate pure = Rates.perHour(fish.size(), hours);
    return new RollingPoint(
        at,
        minutes,
        caught,
        pure,
        bunching > 1 ? Rates.perHour(fish.size() / bunching, hours / bunching) : pure,
        Rates.gramsPerHour(fish, hours));
  }

  /** How much the bites of a line bunch, as known at an instant. */
  interface BunchingInTime {
    /** Returns the factor, 1 or more, from what had been seen by then. */
    double at(long instant);
  }
}
