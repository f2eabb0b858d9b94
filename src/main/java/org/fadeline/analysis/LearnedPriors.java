package org.fadeline.analysis;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.fadeline.model.Line;
import org.fadeline.stats.GammaPosterior;
import org.jspecify.annotations.Nullable;

/**
 * What other sessions teach the review of one: used only where the angler chose so, and then said.
 * The session reviewed is not among them.
 *
 * @param sessions how many sessions it was learned from, at least 1
 * @param changeHazard changes of rate per bait hour, in (0, 10]
 * @param kinds what is known of each kind of line, by {@link #kindOf}
 * @param sigmaDay standard deviation of the log of a rate between days by themselves, or null with
 *     too few sessions
 * @param estimates how far estimates ran off in matches before those reviewed, or null where none
 *     was weighed
 */
public record LearnedPriors(
    int sessions,
    double changeHazard,
    Map<String, Kind> kinds,
    @Nullable Double sigmaDay,
    @Nullable EstimateError estimates) {
  /** Copies the map. */
  public LearnedPriors {
    if (sessions < 1) {
      throw new IllegalArgumentException("nothing was learned from " + sessions + " sessions");
    }
    kinds = Collections.unmodifiableMap(new TreeMap<>(kinds));
  }

  /**
   * One kind of line in the other sessions.
   *
   * @param sessions sessions in which it was fished
   * @param bunching factor of its bites, 1 or more: where one record's own factor starts from
   * @param given fish and time in all of them
   * @param pool fish per fished hour to be expected of another session, gamma of shape at most 4;
   *     null with fewer than three sessions or without a fish
   */
  public record Kind(int sessions, double bunching, Given given, @Nullable GammaPosterior pool) {}

  /**
   * Fish over time.
   *
   * @param fish fish landed
   * @param fishedHours hours fished
   */
  public record Given(int fish, double fishedHours) {}

  /** Returns these priors with how far estimates ran off. */
  public LearnedPriors withEstimates(@Nullable EstimateError newEstimates) {
    return new LearnedPriors(sessions, changeHazard, kinds, sigmaDay, newEstimates);
  }

  /** Returns what lines of several sessions are put together by: the kind, else the name. */
  public static String kindOf(@Nullable String kind, String name) {
    return (kind == null ? name : kind).strip().toLowerCase(Locale.ROOT);
  }

  /** Returns a sentence that says what a review rests on beside its own record. */
  public String inWords() {
    List<String> pooled =
        kinds.entrySet().stream()
            .filter(kind -> kind.getValue().pool() != null)
            .map(Map.Entry::getKey)
            .toList();
    return String.format(
        Locale.UK,
        "Rests on what %d other %s taught, beside its own record: rates change %.2f times a bait"
            + " hour (%.2f unless learned), and how bites of each kind of line bunch%s.",
        sessions,
        sessions == 1 ? "match" : "matches",
        changeHazard,
        ReviewSettings.DEFAULT.changeHazard(),
        pooled.isEmpty()
            ? "; too few matches to say what a line pays"
            : ", and what these pay where this match does not say: " + String.join(", ", pooled));
  }

  /** Returns what is known of lines like the given one, or null. */
  public @Nullable Kind of(Line line) {
    return kinds.get(kindOf(line.kind(), line.name()));
  }
}
