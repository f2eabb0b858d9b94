package org.fadeline.ui;

/**
 * Times in a histogram of fixed size, so that measuring takes no memory as it goes on. Its steps
 * are one in a hundred apart, so a quantile is right to half of that.
 */
final class SoakTimes {
  private static final double STEP = Math.log(1.01);

  /** Up to a hundred seconds; anything longer counts as that. */
  private static final int STEPS = (int) Math.ceil(Math.log(1e11) / STEP) + 1;

  private final int[] counts = new int[STEPS];
  private int all;

  /** Takes a time in nanoseconds. */
  void add(long nanos) {
    int step = (int) Math.round(Math.log(Math.max(1, nanos)) / STEP);
    counts[Math.min(STEPS - 1, step)]++;
    all++;
  }

  int count() {
    return all;
  }

  /** Returns the time, nanoseconds, that a share in [0, 1) of all times lies below; NaN if none. */
  double at(double share) {
    long wanted = Math.min(all - 1L, (long) (share * all));
    long seen = 0;
    for (int step = 0; step < STEPS; step++) {
      seen += counts[step];
      if (seen > wanted && all > 0) {
        return Math.exp(step * STEP);
      }
    }
    return Double.NaN;
  }
}
