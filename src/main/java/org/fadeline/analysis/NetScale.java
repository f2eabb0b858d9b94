package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * One keepnet: what the log says went into it, what the scales said, and how that stands to the
 * limit. The factor between the two is told and applied to nothing.
 *
 * @param net its number, from 1
 * @param logged what the log put into it, foul-hooked fish included, for the scales include them
 * @param weighed what the scales said, or null where it was not weighed
 * @param limit the limit of the match, or null where there is none
 */
public record NetScale(
    int net, Logged logged, @Nullable NetWeight weighed, @Nullable NetLimit limit) {
  /**
   * What was logged into a net.
   *
   * @param fish how many
   * @param unweighed how many of them have no weight in the log
   * @param grams weight of the others together
   */
  public record Logged(int fish, int unweighed, double grams) {
    /** Nothing logged. */
    public static final Logged NOTHING = new Logged(0, 0, 0);

    private Logged plus(Logged other) {
      return new Logged(fish + other.fish, unweighed + other.unweighed, grams + other.grams);
    }
  }

  /** How a net stands to its limit. */
  public enum Standing {
    /** No limit, or nothing to compare with it. */
    NO_LIMIT,
    /** At or below the limit. */
    WITHIN,
    /** Over the limit by no more than is let pass. */
    WITHIN_TOLERANCE,
    /** Over by more than is let pass. */
    OVER
  }

  /**
   * Returns what the scales said over what was logged, or null where either is missing or some fish
   * were logged without a weight: then the two do not speak of the same fish.
   */
  public @Nullable Double factor() {
    return weighed == null ? null : factor(weighed.grams(), logged);
  }

  private static @Nullable Double factor(double scales, Logged logged) {
    return logged.grams <= 0 || logged.unweighed > 0 || scales <= 0 ? null : scales / logged.grams;
  }

  /** Returns the weight that counts against the limit: the scales', else the log's. */
  public double grams() {
    return weighed == null ? logged.grams : weighed.grams();
  }

  /** Returns how far over the limit it is, grams; 0 or less where it is not. */
  public double overG() {
    return limit == null ? 0 : grams() - limit.grams();
  }

  /** Returns how it stands to the limit. */
  public Standing standing() {
    if (limit == null || grams() <= 0) {
      return Standing.NO_LIMIT;
    }
    if (overG() <= 0) {
      return Standing.WITHIN;
    }
    return overG() <= limit.toleranceGrams() ? Standing.WITHIN_TOLERANCE : Standing.OVER;
  }

  /**
   * All nets together.
   *
   * @param logged what the log says
   * @param scalesG what the scales said, or null where not every net with fish in it was weighed
   * @param factor the one over the other, or null as for one net
   */
  public record Total(Logged logged, @Nullable Double scalesG, @Nullable Double factor) {}

  /** Returns the nets added up. */
  public static Total total(List<NetScale> nets) {
    Logged logged = Logged.NOTHING;
    double scales = 0;
    boolean all = !nets.isEmpty();
    for (NetScale net : nets) {
      logged = logged.plus(net.logged);
      NetWeight weighed = net.weighed;
      scales += weighed == null ? 0 : weighed.grams();
      all &= weighed != null || net.logged.fish == 0;
    }
    boolean known = all && nets.stream().anyMatch(n -> n.weighed != null);
    return new Total(logged, known ? scales : null, known ? factor(scales, logged) : null);
  }

  /**
   * Returns the nets of a session in the order of their numbers: those that fish were logged into
   * and those that were weighed. A clicker count stands for what it tells beyond the fish logged
   * one by one since the count before it.
   */
  public static List<NetScale> of(Session session) {
    NetRun run = new NetRun();
    session.events().forEach(run::take);
    SortedMap<Integer, Logged> logged = run.logged();
    for (NetWeight weighed : session.outcome().weighIn()) {
      logged.putIfAbsent(weighed.net(), Logged.NOTHING);
    }
    NetLimit limit = session.match().rules().netLimit();
    List<NetScale> nets = new ArrayList<>();
    logged.forEach((n, of) -> nets.add(new NetScale(n, of, weighed(session, n), limit)));
    return List.copyOf(nets);
  }

  private static @Nullable NetWeight weighed(Session session, int net) {
    for (NetWeight one : session.outcome().weighIn()) {
      if (one.net() == net) {
        return one;
      }
    }
    return null;
  }
}
