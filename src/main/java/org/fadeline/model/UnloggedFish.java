package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * Tells the fish of a clicker count from those logged one by one since the count before it, so that
 * none counts twice.
 */
public final class UnloggedFish {
  private final boolean foulCounts;
  private int fish;
  private double grams;

  /** Begins with an empty log; the rules say whether foul-hooked fish are counted too. */
  public UnloggedFish(MatchRules rules) {
    this.foulCounts = rules.foulHookedCounts();
  }

  /** Takes in an event of the log, in order. */
  public void see(SessionEvent event) {
    Fish landed = event.fishOrNull();
    boolean counts =
        event.kind() == EventKind.LANDED || (event.kind() == EventKind.FOUL && foulCounts);
    if (counts && landed != null) {
      fish += landed.count();
      grams += landed.grams() == null ? 0 : landed.grams();
    }
  }

  /** Returns the fish that a count tells of beyond those logged, or null where all of them are. */
  public @Nullable Fish of(SessionEvent.Count count) {
    Fish told = count.fish();
    int more = told.count() - fish;
    Double moreGrams = told.grams() == null ? null : (Double) Math.max(0, told.grams() - grams);
    fish = 0;
    grams = 0;
    return more <= 0 ? null : new Fish(more, told.species(), moreGrams, told.weighed());
  }
}
