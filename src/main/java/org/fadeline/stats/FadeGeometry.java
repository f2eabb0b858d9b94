package org.fadeline.stats;

/** Where windows of an hour begin along a record, and from which bin on a fade may be placed. */
final class FadeGeometry {
  private static final double TINY = 1e-9;

  final FadeRecord record;
  final double share;

  /** First bin with minutes enough before it for a going rate; the size of the record if none. */
  final int firstGoing;

  /** First such bin with enough events before it too; the size of the record if none. */
  final int firstMoment;

  /** First bin with a whole window before it; the size of the record plus 1 if none. */
  final int firstWindow;

  private final int[] windowBin;
  private final double[] windowPart;

  FadeGeometry(FadeRecord record, FadeOptions options) {
    this.record = record;
    share = options.share();
    int n = record.size();
    windowBin = new int[n + 1];
    windowPart = new double[n + 1];
    int going = n;
    int first = n;
    double events = 0;
    int whole = n + 1;
    for (int i = 0, j = 0; i <= n; i++) {
      double start = record.edge(i) - FadeOptions.GOING_RATE_MINUTES;
      if (start > -TINY) {
        whole = Math.min(whole, i);
        while (record.edge(j + 1) <= start + TINY) {
          j++;
        }
        windowBin[i] = j;
        double part = (start - record.edge(j)) / (record.edge(j + 1) - record.edge(j));
        windowPart[i] = part < TINY ? 0 : part;
      }
      if (record.edge(i) >= FadeOptions.FEWEST_MINUTES - TINY) {
        going = Math.min(going, i);
        first = events >= FadeOptions.FEWEST_EVENTS ? Math.min(first, i) : first;
      }
      events += i < n ? record.count(i) : 0;
    }
    firstGoing = going;
    firstMoment = first;
    firstWindow = whole;
  }

  /**
   * Mean rate over the window that ends where {@code bin} starts, from the integral of the rate at
   * bin starts: over the hour before, or all of the record where there is less.
   */
  double meanBefore(double[] integral, int bin) {
    return bin < firstWindow
        ? integral[bin] / record.edge(bin)
        : (integral[bin] - windowStart(integral, bin)) / FadeOptions.GOING_RATE_MINUTES;
  }

  /** Value, one window before bin {@code bin}, of an integral known at bin starts. */
  double windowStart(double[] integral, int bin) {
    int j = windowBin[bin];
    double part = windowPart[bin];
    return part == 0 ? integral[j] : integral[j] + part * (integral[j + 1] - integral[j]);
  }

  /** The bin in which the window that ends where {@code bin} starts begins. */
  int windowBin(int bin) {
    return windowBin[bin];
  }

  double windowPart(int bin) {
    return windowPart[bin];
  }

  double edge(int bin) {
    return record.edge(bin);
  }
}
