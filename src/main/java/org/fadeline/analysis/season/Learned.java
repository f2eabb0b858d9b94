package org.fadeline.analysis.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fadeline.analysis.EstimateError;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.model.Session;
import org.fadeline.stats.GammaPosterior;
import org.fadeline.stats.Interval;
import org.jspecify.annotations.Nullable;

/**
 * What a season teaches the next review; used there only when chosen, and said so.
 *
 * @param hazard changes of rate per bait hour
 * @param groups what is known of each kind of line
 * @param days how much days differ by themselves, or null with too few sessions
 * @param sessions how many sessions there were to learn from
 */
public record Learned(
    HazardLearned hazard, List<GroupLearned> groups, @Nullable DaysLearned days, int sessions) {
  /** Rates of change, per bait hour, at which each record's evidence is kept. */
  public static final List<Double> HAZARDS =
      List.of(0.03125, 0.0625, 0.125, 0.25, 0.5, 1.0, 2.0, 4.0);

  /** Copies the list. */
  public Learned {
    groups = List.copyOf(groups);
  }

  /**
   * How often a line's rate changes: posterior under a Gamma(2, 8 h) prior.
   *
   * @param perHour posterior mean, per bait hour; 0.25 where nothing is learned
   * @param interval posterior interval at 90%
   * @param records lines of sessions it rests on
   */
  public record HazardLearned(double perHour, Interval interval, int records) {}

  /**
   * One kind of line.
   *
   * @param group the kind, or the name of a line without one
   * @param bunching factor by which counts are discounted for bunching, 1 or more
   * @param pool fish per fished hour to be expected of another session, as a gamma distribution of
   *     shape at most 4; null with fewer than three sessions or without a fish
   * @param sessions sessions in which it was fished
   * @param given fish and time in all of them
   */
  public record GroupLearned(
      String group,
      double bunching,
      @Nullable GammaPosterior pool,
      int sessions,
      LearnedPriors.Given given) {}

  /** Returns what is learned as a review takes it, or empty where there was nothing to learn. */
  public Optional<LearnedPriors> priors() {
    if (hazard.records() == 0) {
      return Optional.empty();
    }
    Map<String, LearnedPriors.Kind> kinds = new HashMap<>();
    for (GroupLearned group : groups) {
      kinds.put(
          group.group(),
          new LearnedPriors.Kind(group.sessions(), group.bunching(), group.given(), group.pool()));
    }
    return Optional.of(
        new LearnedPriors(
            sessions, hazard.perHour(), kinds, days == null ? null : days.sigma(), null));
  }

  /**
   * Returns what other sessions teach the review of some, or empty where there are none.
   *
   * @param reviewed the sessions reviewed; their own summaries are left out
   * @param all summaries with their fades
   */
  public static Optional<LearnedPriors> priors(List<Session> reviewed, List<SessionSummary> all) {
    Set<String> own = reviewed.stream().map(s -> s.document().id()).collect(Collectors.toSet());
    List<SessionSummary> others = all.stream().filter(s -> !own.contains(s.about().id())).toList();
    return Learner.learn(others).priors().map(p -> p.withEstimates(estimates(reviewed, others)));
  }

  /** What was weighed after the match reviewed could not be known in it. */
  private static @Nullable EstimateError estimates(
      List<Session> reviewed, List<SessionSummary> others) {
    LocalDate first =
        reviewed.stream()
            .map(s -> s.occasion().date())
            .min(Comparator.naturalOrder())
            .orElse(LocalDate.MAX);
    List<Double> factors = new ArrayList<>();
    for (SessionSummary other : others) {
      Double factor = other.result().weights().scalesFactor();
      boolean estimated = other.result().weights().from() == WeightFrom.ESTIMATED;
      if (factor != null
          && factor > 0
          && estimated
          && other.about().dated()
          && other.about().date().isBefore(first)) {
        factors.add(factor);
      }
    }
    return factors.isEmpty() ? null : EstimateError.learned(factors);
  }

  /**
   * How much the rate of one kind of line differs from day to day by itself.
   *
   * @param sigma standard deviation of its log, the usual 0.5 counted as five sessions beside
   * @param raw the same from the sessions alone
   * @param sessions sessions beyond the first of each kind of line that it rests on
   */
  public record DaysLearned(double sigma, double raw, int sessions) {}
}
