package org.fadeline.analysis.merge;

import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * What two records tell differently.
 *
 * @param kind in what they differ
 * @param mine the first record's event, or null where only the second has one
 * @param theirs the second record's event, on the first one's clock
 */
public record Clash(Kind kind, @Nullable SessionEvent mine, SessionEvent theirs) {
  /** In what two records differ. */
  public enum Kind {
    /** The same fish with two weights. */
    WEIGHT("two weights"),
    /** Landed in one record, lost or foul-hooked in the other. */
    FATE("landed or not"),
    /** One fish told at two times, or two fish. */
    TWICE("one fish or two"),
    /** Anything else told of the same event. */
    DETAIL("told differently"),
    /** A clicker count over fish that the first record holds one by one. */
    COUNT("a count over single fish"),
    /** A start or finish call at another time. */
    CALL("another time of the call");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Returns it in plain words. */
    public String words() {
      return words;
    }
  }

  /** What is kept where two records clash. */
  public enum Choice {
    /** The first record's; what the second says goes into its note. */
    MINE,
    /** The second record's; what the first says goes into its note. */
    THEIRS,
    /** Both, as two events. */
    BOTH
  }
}
