package org.fadeline.stats;

/**
 * An exponentially declining rate, one draw from a {@link DeclineModel}.
 *
 * @param startingRate events per hour at minute 0, 0 or more
 * @param decay per minute, above 0; the half-life is ln 2 / decay
 */
record DeclineDraw(double startingRate, double decay) {
  /** Rate at {@code minute}, events per hour. */
  double rateAt(double minute) {
    return startingRate * Math.exp(-decay * minute);
  }
}
