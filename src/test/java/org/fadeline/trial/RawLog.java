package org.fadeline.trial;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.stats.FadeMoment;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;
import org.fadeline.stats.FadeRecord;
import org.jspecify.annotations.Nullable;

/**
 * A line's first stay read without any of the rules for real records: everything logged counts as a
 * bite at the time written down, on the plain clock, from the line's first event to the first event
 * of another line.
 */
final class RawLog {
  /** What counts as a bite. */
  enum Takes {
    /** Whatever is logged as one. */
    ALL,
    /** Landed and lost alone, the rule of a record that is not full. */
    HOOK_UPS
  }

  private final Takes takes;
  private final List<Double> minutes = new ArrayList<>();
  private final @Nullable FadePosterior posterior;
  private final long start;
  private int fish;
  private double hours;

  RawLog(Session session, String line, Takes takes) {
    this.takes = takes;
    long from = -1;
    long to = session.match().allOut();
    for (SessionEvent event : session.events()) {
      String id = event.lineId();
      if (id == null || event.kind().group() == EventKind.Group.FEED) {
        continue;
      }
      boolean count = event instanceof SessionEvent.Count;
      if (line.equals(id)) {
        if (from < 0) {
          from = count ? session.match().allIn() : event.at();
        }
        add(event, from);
      } else if (from >= 0) {
        to = event.at();
        break;
      }
    }
    start = from;
    hours = (to - from) / 3_600_000.0;
    double end = hours * 60;
    double[] times = minutes.stream().mapToDouble(m -> Math.min(m, end)).sorted().toArray();
    List<FadePosterior> found =
        from < 0 || end < 1
            ? List.of()
            : FadePosterior.review(
                FadeRecord.ofTimes(times, new double[] {end}), FadeOptions.DEFAULT);
    posterior = found.isEmpty() ? null : found.get(0);
  }

  private void add(SessionEvent event, long from) {
    double at = (event.at() - from) / 60_000.0;
    boolean landed = event.kind() == EventKind.LANDED || event instanceof SessionEvent.Count;
    int count = landed && event.fishOrNull() != null ? event.fishOrNull().count() : 1;
    if (landed) {
      fish += count;
    }
    boolean missed = takes == Takes.ALL && event.kind() == EventKind.BITE;
    boolean bite = landed || event.kind() == EventKind.LOST || missed;
    for (int i = 0; bite && i < count; i++) {
      minutes.add(at);
    }
  }

  double fishPerHour() {
    return fish / hours;
  }

  double probability() {
    return posterior == null ? 0 : posterior.probability();
  }

  /** Whether the interval of the moment holds an instant. */
  boolean holds(long instant) {
    FadeMoment moment = posterior == null ? null : posterior.moment();
    double minute = (instant - start) / 60_000.0;
    return moment != null && moment.low() <= minute && minute <= moment.high() + 1;
  }
}
