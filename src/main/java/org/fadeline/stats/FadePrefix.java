package org.fadeline.stats;

/**
 * What a decline afresh in a spell needs of one drawn history before it.
 *
 * @param before highest rate at the spell's start at which the line had faded before the spell
 * @param going highest mean over a window that ends before the spell, 0 if there is none
 * @param total integral of the rate up to the spell's start, rate times minutes
 * @param tails part before the spell of the windows that end with the spell's bins
 */
@SuppressWarnings("ArrayRecordComponent") // Internal to the package and never compared or shared.
record FadePrefix(double before, double going, double total, double[] tails) {
  /** No history: the spell is the record's first. */
  static FadePrefix none(int bins) {
    return new FadePrefix(0, 0, 0, new double[bins + 1]);
  }
}
