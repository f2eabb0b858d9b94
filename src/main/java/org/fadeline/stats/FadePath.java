package org.fadeline.stats;

/**
 * One drawn history of a line up to its last change, boiled down to what the rate after that change
 * must be for a fade: it faded before the spell if that rate is at most {@code before}; else, at
 * the first moment whose level is at or above the rate. Levels ascend with moments.
 *
 * @param change bin with which the last segment starts
 * @param before highest rate at which it had faded before the spell
 * @param moments bins of the spell at which it may have faded
 * @param levels highest rate at which it had faded by then
 * @param between events expected from each moment to the change, 0 where the moment is later
 */
@SuppressWarnings("ArrayRecordComponent") // Internal to the package and never compared or shared.
record FadePath(int change, double before, int[] moments, double[] levels, double[] between) {
  /** Highest rate at which the line had faded by a moment before bin {@code end}, in any spell. */
  double levelBefore(int end) {
    for (int i = moments.length - 1; i >= 0; i--) {
      if (moments[i] < end) {
        return levels[i];
      }
    }
    return before;
  }
}
