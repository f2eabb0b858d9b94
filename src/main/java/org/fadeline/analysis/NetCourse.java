package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fadeline.analysis.NetSum.Parts;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** How the nets of a match filled, fish by fish. */
public final class NetCourse {
  /** No nets. */
  public static final NetCourse NONE = new NetCourse(List.of());

  private final List<NetState> steps;
  private final Map<Integer, List<NetState>> byNet = new TreeMap<>();

  /**
   * The nets at a moment.
   *
   * @param inUse the one that fish went into
   * @param all every net so far, by number, the one in use among them
   */
  public record Standing(NetState inUse, List<NetState> all) {}

  private NetCourse(List<NetState> steps) {
    this.steps = List.copyOf(steps);
    for (NetState step : steps) {
      byNet.computeIfAbsent(step.net(), n -> new ArrayList<>()).add(step);
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof NetCourse course && steps.equals(course.steps);
  }

  @Override
  public int hashCode() {
    return steps.hashCode();
  }

  /**
   * Returns the nets as they could be known at each moment: every step rests on the events up to
   * it, in their order, and on nothing of the weigh-in. A net left keeps what could be said of it
   * when its last fish went in.
   *
   * @param error how far estimates run off, as known before the match
   */
  public static NetCourse asKnownThen(Session session, EstimateError error) {
    return course(
        session,
        false,
        (run, most) -> {
          Parts parts = run.sum(run.net()).parts(run.weights());
          return parts == null ? null : parts.likely(error.factor(), most);
        });
  }

  /**
   * Returns the nets by what the scales said of each after the match, fish without a weight counted
   * at what such fish weighed in the whole match; or null where not every net with fish in the log
   * was weighed, or one without: then the log does not say which fish the scales speak of.
   */
  public static @Nullable NetCourse byScales(Session session) {
    NetRun whole = new NetRun();
    session.events().forEach(whole::take);
    for (NetScale net : NetScale.of(session)) {
      NetWeight weighed = net.weighed();
      if ((weighed != null && weighed.grams() > 0) != (net.logged().fish() > 0)) {
        return null;
      }
    }
    Map<Integer, Double> scales = new HashMap<>();
    Map<Integer, Parts> wholes = new HashMap<>();
    for (NetWeight net : session.outcome().weighIn()) {
      scales.put(net.net(), net.grams());
      Parts parts = whole.sum(net.net()).parts(whole.weights());
      if (parts == null || (net.grams() > 0 && !(parts.exact() + parts.estimated() > 0))) {
        return null;
      }
      wholes.put(net.net(), parts);
    }
    return scales.isEmpty() ? null : byScales(session, whole.weights(), wholes, scales);
  }

  private static NetCourse byScales(
      Session session,
      FishWeights weights,
      Map<Integer, Parts> wholes,
      Map<Integer, Double> scales) {
    return course(
        session,
        true,
        (run, most) -> {
          Parts parts = run.sum(run.net()).parts(weights);
          Parts whole = wholes.get(run.net());
          Double came = scales.get(run.net());
          return parts == null || whole == null || came == null
              ? null
              : parts.likely(whole, came, most);
        });
  }

  /** Says what the net in use may weigh. */
  private interface Weighing {
    NetState.@Nullable Likely of(NetRun run, @Nullable Double limitG);
  }

  private static NetCourse course(Session session, boolean hindsight, Weighing weighing) {
    NetLimit limit = session.match().rules().netLimit();
    Double most = limit == null ? null : (Double) limit.grams();
    NetRun run = new NetRun();
    List<NetState> steps = new ArrayList<>();
    for (SessionEvent event : session.events()) {
      if (run.take(event)) {
        steps.add(
            new NetState(
                run.net(),
                event.at(),
                run.sum(run.net()).logged(),
                weighing.of(run, most),
                limit,
                hindsight));
      }
    }
    return new NetCourse(steps);
  }

  /** Returns the nets at an instant (epoch milliseconds), or null before anything is in one. */
  public @Nullable Standing at(long instant) {
    NetState inUse = lastBy(steps, instant);
    if (inUse == null) {
      return null;
    }
    List<NetState> all = new ArrayList<>();
    for (List<NetState> ofNet : byNet.values()) {
      NetState last = lastBy(ofNet, instant);
      if (last != null) {
        all.add(last);
      }
    }
    return new Standing(inUse, List.copyOf(all));
  }

  private static @Nullable NetState lastBy(List<NetState> steps, long instant) {
    int low = 0;
    int high = steps.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (steps.get(middle).at() <= instant) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? null : steps.get(low - 1);
  }

  /** Returns how each net stood when it was first near its limit, in time order. */
  public List<NetState> near() {
    Map<Integer, NetState> first = new TreeMap<>();
    for (NetState step : steps) {
      if (step.near()) {
        first.putIfAbsent(step.net(), step);
      }
    }
    return first.values().stream().sorted(Comparator.comparingLong(NetState::at)).toList();
  }
}
