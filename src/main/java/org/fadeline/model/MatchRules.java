package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * The match's own rules, as far as figures rest on them. The organiser and the water decide.
 *
 * @param playingAtWhistleMinutes minutes after all out in which a fish already being played still
 *     counts, in [0, 60]; 0 where it does not count
 * @param foulHookedCounts whether landed foul-hooked fish count
 * @param liveFiguresAllowed whether the angler states that the match allows rates and verdicts
 *     during the match
 * @param netLimit limit for one keepnet, or null where there is none
 * @param organiserRules free text, or null
 */
public record MatchRules(
    double playingAtWhistleMinutes,
    boolean foulHookedCounts,
    boolean liveFiguresAllowed,
    @Nullable NetLimit netLimit,
    @Nullable String organiserRules) {
  /** Nothing stated: no extra minutes, foul-hooked fish not counted, no live figures. */
  public static final MatchRules UNSTATED = new MatchRules(0, false, false, null, null);

  /** Checks the ranges. */
  public MatchRules {
    Checks.between("playing at the whistle", playingAtWhistleMinutes, 0, 60);
  }

  /**
   * Limit of one keepnet.
   *
   * @param grams the limit, in (0, 1e6]
   * @param toleranceGrams how far over is let pass, in [0, 1e6]
   * @param exceeding what going over costs, in the organiser's words, or null
   */
  public record NetLimit(double grams, double toleranceGrams, @Nullable String exceeding) {
    /** Checks the ranges. */
    public NetLimit {
      Checks.between("net limit", grams, Double.MIN_VALUE, 1e6);
      Checks.between("net tolerance", toleranceGrams, 0, 1e6);
    }
  }

  /** Returns this set of rules with another number of extra minutes. */
  public MatchRules withPlayingAtWhistleMinutes(double newPlayingAtWhistleMinutes) {
    return new MatchRules(
        newPlayingAtWhistleMinutes, foulHookedCounts, liveFiguresAllowed, netLimit, organiserRules);
  }

  /** Returns this set of rules with another rule on foul-hooked fish. */
  public MatchRules withFoulHookedCounts(boolean newFoulHookedCounts) {
    return new MatchRules(
        playingAtWhistleMinutes, newFoulHookedCounts, liveFiguresAllowed, netLimit, organiserRules);
  }

  /** Returns this set of rules with another rule on figures during the match. */
  public MatchRules withLiveFiguresAllowed(boolean newLiveFiguresAllowed) {
    return new MatchRules(
        playingAtWhistleMinutes, foulHookedCounts, newLiveFiguresAllowed, netLimit, organiserRules);
  }

  /** Returns this set of rules with another net limit. */
  public MatchRules withNetLimit(@Nullable NetLimit newNetLimit) {
    return new MatchRules(
        playingAtWhistleMinutes, foulHookedCounts, liveFiguresAllowed, newNetLimit, organiserRules);
  }

  /** Returns this set of rules with another text. */
  public MatchRules withOrganiserRules(@Nullable String newOrganiserRules) {
    return new MatchRules(
        playingAtWhistleMinutes, foulHookedCounts, liveFiguresAllowed, netLimit, newOrganiserRules);
  }
}
