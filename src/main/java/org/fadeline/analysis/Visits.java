package org.fadeline.analysis;

import java.util.Arrays;
import org.fadeline.stats.ChangePointBins;

/**
 * Bites of one line by minutes since each visit to it began, all visits together: what a decline
 * over a visit is fitted to.
 *
 * @param count how many visits with a bait in there were
 * @param bins bites, and bait hours of all visits that lasted so long
 * @param minutes middle of each bin, bait minutes since the visit began
 */
record Visits(int count, ChangePointBins bins, double[] minutes) {
  /**
   * Puts visits together in one-minute bins; the last, part one of a visit stands by itself, for
   * its middle lies elsewhere.
   *
   * @param lengths bait minutes of each visit, above 0
   * @param bites bait minutes of each bite since its visit began, by visit
   */
  static Visits of(double[] lengths, double[][] bites) {
    int whole = 0;
    for (double length : lengths) {
      whole = Math.max(whole, (int) Math.floor(length));
    }
    int size = whole + lengths.length;
    double[] counts = new double[size];
    double[] hours = new double[size];
    double[] minutes = new double[size];
    Arrays.setAll(minutes, i -> i + 0.5);
    for (int visit = 0; visit < lengths.length; visit++) {
      int full = (int) Math.floor(lengths[visit]);
      for (int i = 0; i < full; i++) {
        hours[i] += 1.0 / 60;
      }
      double rest = lengths[visit] - full;
      int part = whole + visit;
      hours[part] = rest / 60;
      minutes[part] = full + rest / 2;
      for (double bite : bites[visit]) {
        // A bite at the very end of a visit of whole minutes belongs to its last one.
        int bin = bite < full ? (int) bite : rest > 0 ? part : full - 1;
        counts[bin]++;
      }
    }
    return new Visits(lengths.length, ChangePointBins.of(counts, hours), minutes);
  }
}
