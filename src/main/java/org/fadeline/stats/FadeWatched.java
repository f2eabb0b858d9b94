package org.fadeline.stats;

import java.util.Arrays;
import java.util.List;

/** What was seen minute by minute in one spell. */
final class FadeWatched {
  private final double[] minutes;
  private final double[] probabilities;
  private final List<FadeCrossing> crossings;

  FadeWatched(double[] minutes, double[] probabilities, int count, List<FadeCrossing> crossings) {
    this.minutes = Arrays.copyOf(minutes, count);
    this.probabilities = Arrays.copyOf(probabilities, count);
    this.crossings = List.copyOf(crossings);
  }

  double[] minutes() {
    return minutes.clone();
  }

  double[] probabilities() {
    return probabilities.clone();
  }

  List<FadeCrossing> crossings() {
    return crossings;
  }
}
