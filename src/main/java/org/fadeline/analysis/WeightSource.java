package org.fadeline.analysis;

import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/** Tells from the events one after the other where the weights of a record come from. */
final class WeightSource {
  private boolean weighed;
  private boolean estimated;

  /** Takes in the next event. */
  void add(SessionEvent event) {
    Fish fish = event.fishOrNull();
    if (fish != null && event.kind() != EventKind.NEIGHBOUR && fish.grams() != null) {
      weighed |= fish.weighed();
      estimated |= !fish.weighed();
    }
  }

  /** Weighed where every weight taken in was, and there was one. */
  WeightFrom from() {
    return weighed && !estimated ? WeightFrom.WEIGHED : WeightFrom.ESTIMATED;
  }
}
