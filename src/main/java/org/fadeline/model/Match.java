package org.fadeline.model;

/**
 * The frame of a match.
 *
 * @param allIn start call, epoch milliseconds
 * @param allOut finish call, epoch milliseconds, after all in
 * @param rules what the figures need to know of the rules
 */
public record Match(long allIn, long allOut, MatchRules rules) {
  /** Checks that the match ends after it starts. */
  public Match {
    Checks.instant(allIn);
    Checks.instant(allOut);
    if (allOut <= allIn) {
      throw new IllegalArgumentException("all out must come after all in");
    }
  }

  /** Returns the length from all in to all out in milliseconds. */
  public long lengthMillis() {
    return allOut - allIn;
  }

  /** Returns this frame with another finish. */
  public Match withAllOut(long newAllOut) {
    return new Match(allIn, newAllOut, rules);
  }

  /** Returns this frame with another set of rules. */
  public Match withRules(MatchRules newRules) {
    return new Match(allIn, allOut, newRules);
  }
}
