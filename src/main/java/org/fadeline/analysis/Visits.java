package org.fadeline.analysis;

import java.util.Arrays;
import org.fadeline.stats.ChangePointBins;
import org.fadeline.stats.DeclineFit;

/**
 * Bites of one line by minutes since each visit to it began, all visits together: what a decline
 * over a visit is fitted to.
 */
final class Visits {
  private final int count;
  private final ChangePointBins bins;
  private final double[] minutes;

  /**
   * Takes bins.
   *
   * @param count how many visits with a bait in there were
   * @param bins bites, and bait hours of all visits that lasted so long
   * @param minutes middle of each bin, bait minutes since the visit began
   */
  Visits(int count, ChangePointBins bins, double[] minutes) {
    this.count = count;
    this.bins = bins;
    this.minutes = minutes;
  }

  /** Returns how many visits with a bait in there were. */
  int count() {
    return count;
  }

  /** Returns how many bites there were. */
  int bites() {
    return (int) Math.round(bins.countBetween(0, bins.size()));
  }

  /** Fits a decline to counts and exposures divided by a bunching factor, 1 or more. */
  DeclineFit fit(double bunching) {
    return DeclineFit.of(bins.dividedBy(bunching), minutes);
  }

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
