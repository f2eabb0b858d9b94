package org.fadeline.sim;

/**
 * Two rules of thumb to hold the engine against: the first 20 minutes without a bite, and the first
 * half hour at half the best half hour. Both give the bait minute of the fade, or NaN.
 */
final class SimpleRules {
  private static final int FEWEST = 5;

  private SimpleRules() {}

  /** The last bite before the first gap of this many minutes, once five bites have come. */
  static double firstGap(SimulatedLine line, double minutes) {
    double[] bites = line.bites();
    for (int i = FEWEST - 1; i < bites.length; i++) {
      double next = i + 1 < bites.length ? bites[i + 1] : line.minutes();
      if (next - bites[i] >= minutes) {
        return bites[i];
      }
    }
    return Double.NaN;
  }

  /** Start of the first window whose count is at most half the best window so far. */
  static double halfOfBest(SimulatedLine line, int minutes) {
    double[] bites = line.bites();
    int best = 0;
    for (int end = minutes; end <= line.minutes(); end++) {
      int count = 0;
      for (double bite : bites) {
        count += bite >= end - minutes && bite < end ? 1 : 0;
      }
      best = Math.max(best, count);
      if (best >= FEWEST && 2 * count <= best) {
        return end - minutes;
      }
    }
    return Double.NaN;
  }
}
