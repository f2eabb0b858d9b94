package org.fadeline.analysis;

import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** Tells the fish of a clicker count from those already logged one by one since the last count. */
final class UnloggedFish {
  private int fish;
  private double grams;

  /** Takes in an event of the log, in order. */
  void see(SessionEvent event) {
    Fish landed = event.fishOrNull();
    if (event.kind() == EventKind.LANDED && landed != null) {
      fish += landed.count();
      grams += landed.grams() == null ? 0 : landed.grams();
    }
  }

  /** Returns a landing of the count's other fish, or null where all of them are logged. */
  @Nullable SessionEvent of(SessionEvent.Count count) {
    int more = count.fish().count() - fish;
    Double weight = count.fish().grams();
    Double moreGrams = weight == null ? null : Math.max(0, weight - grams);
    fish = 0;
    grams = 0;
    return more <= 0
        ? null
        : new SessionEvent.Landed(
            count.stamp(),
            new Fish(more, count.fish().species(), moreGrams, count.fish().weighed()));
  }
}
