package org.fadeline.stats;

import java.util.Arrays;

/**
 * The forward half of Fearnhead's exact recursions (Statistics and Computing 2006, 16:203–213) for
 * Poisson counts with gamma rates, filled in as far as asked: what is known of the first bins is
 * never worked out again when more bins come in.
 *
 * <p>For an end e, {@link #row} holds Pr(the segment that ends at e began at s), given the data
 * before e and a change at e; {@link #last} the same for the segment still running at e. Weights
 * are formed as logarithms and scaled by the largest of each row, so nothing under- or overflows.
 * Not safe for use by several threads while it is being filled.
 */
final class ChangePointRecursion {
  /** Weights below e^−45 of a row's largest add nothing that a double could hold. */
  private static final double NEGLIGIBLE = -45;

  /** Rows are kept up to this many bins (64 MB); beyond, they are worked out again on demand. */
  private static final int MOST_ROWS_KEPT = 4096;

  private static final int LARGEST_TABLE = 4_000_000;

  private final ChangePointBins bins;
  private final ChangePointPrior prior;
  private final int n;
  private final double[] cumulativeCounts;
  private final double[] cumulativeExposures;
  private final double[] stay;
  private final double[] logHazards;
  private final double[] logForward;
  private final double[] base;
  private final double[][] rows;
  private final int[] cumulativeEvents;
  private final double[] logGammas;
  private final double[] logLengths;
  private final double segmentConstant;
  private int filled;

  /**
   * @param hazards probability of a change at boundary i between bins i − 1 and i, counted from 0,
   *     at index i; index 0 is not read
   */
  ChangePointRecursion(ChangePointBins bins, ChangePointPrior prior, double[] hazards) {
    this(bins, prior, hazards, bins.size() <= MOST_ROWS_KEPT);
  }

  /**
   * The same, with a say in whether rows are kept: a few rows are cheaper worked out again than all
   * of them kept.
   */
  ChangePointRecursion(
      ChangePointBins bins, ChangePointPrior prior, double[] hazards, boolean keepRows) {
    this.bins = bins;
    this.prior = prior;
    n = bins.size();
    cumulativeCounts = new double[n + 1];
    cumulativeExposures = new double[n + 1];
    for (int i = 1; i <= n; i++) {
      cumulativeCounts[i] = bins.countBetween(0, i);
      cumulativeExposures[i] = bins.exposureBetween(0, i);
    }
    stay = new double[n + 1];
    logHazards = new double[n + 1];
    for (int i = 1; i < n; i++) {
      stay[i] = stay[i - 1] + Math.log1p(-ChangePointPrior.hazard(hazards[i]));
      logHazards[i] = Math.log(hazards[i]);
    }
    logForward = new double[n + 1];
    base = new double[n + 1];
    rows = new double[keepRows ? n + 1 : 0][];
    segmentConstant =
        prior.shape() * Math.log(prior.rate()) - ChangePointGamma.logGamma(prior.shape());
    cumulativeEvents = wholeEvents();
    logGammas = cumulativeEvents.length == 0 ? new double[0] : gammaTable();
    logLengths = lengthTable();
    setForward(0, 0);
  }

  /**
   * This recursion over more bins with one hazard throughout, filled in as far as this one.
   *
   * @throws IllegalArgumentException if the bins do not begin with those of this one
   */
  ChangePointRecursion with(ChangePointBins more) {
    boolean same = more.size() >= n && more.divisor() == bins.divisor();
    for (int i = 0; i < n && same; i++) {
      same = more.count(i) == bins.count(i) && more.exposure(i) == bins.exposure(i);
    }
    if (!same) {
      throw new IllegalArgumentException("the bins do not begin with those already taken in");
    }
    ChangePointRecursion longer =
        new ChangePointRecursion(more, prior, constantHazards(more.size(), prior.hazard()));
    if (rows.length > 0 || longer.rows.length == 0) {
      for (int e = 1; e <= filled; e++) {
        longer.setForward(e, logForward[e]);
      }
      if (longer.rows.length > 0) {
        System.arraycopy(rows, 0, longer.rows, 0, filled + 1);
      }
      longer.filled = filled;
    }
    return longer;
  }

  static double[] constantHazards(int bins, double hazard) {
    double[] hazards = new double[bins + 1];
    Arrays.fill(hazards, hazard);
    return hazards;
  }

  ChangePointBins bins() {
    return bins;
  }

  ChangePointPrior prior() {
    return prior;
  }

  /** Posterior shape of the rate of a segment over bins [from, to). */
  double shape(int from, int to) {
    return prior.shape() + cumulativeCounts[to] - cumulativeCounts[from];
  }

  /** Posterior rate parameter of the rate of a segment over bins [from, to). */
  double rate(int from, int to) {
    return prior.rate() + cumulativeExposures[to] - cumulativeExposures[from];
  }

  /** log Γ of {@link #shape}. */
  double logGammaOfShape(int from, int to) {
    return logGammas.length > 0
        ? logGammas[cumulativeEvents[to] - cumulativeEvents[from]]
        : ChangePointGamma.logGamma(shape(from, to));
  }

  /** Fills the recursion up to a change at {@code end}. */
  void fill(int end) {
    double[] scratch = new double[0];
    for (int e = filled + 1; e <= end; e++) {
      int starts = Math.max(0, e - prior.minimumLength() + 1);
      if (scratch.length < starts) {
        scratch = new double[n + 1];
      }
      double top = weights(scratch, e, starts, cumulativeCounts[e], cumulativeExposures[e], true);
      if (top == Double.NEGATIVE_INFINITY) {
        setForward(e, top);
        if (rows.length > 0) {
          rows[e] = new double[starts];
        }
        continue;
      }
      double sum = exponentiate(scratch, starts, top);
      setForward(e, top + Math.log(sum) + logHazards[e] + stay[e - 1]);
      if (rows.length > 0) {
        rows[e] = normalised(scratch, starts, sum);
      }
    }
    filled = Math.max(filled, end);
  }

  /**
   * Pr(previous change at s | change at {@code end}), s = 0 … length − 1, s = 0 standing for the
   * start of the record; {@link #fill} first. Shared: do not change.
   */
  double[] row(int end) {
    if (rows.length > 0) {
      return rows[end];
    }
    int starts = Math.max(0, end - prior.minimumLength() + 1);
    double[] row = new double[starts];
    double top = weights(row, end, starts, cumulativeCounts[end], cumulativeExposures[end], true);
    return top == Double.NEGATIVE_INFINITY
        ? new double[starts]
        : normalised(row, starts, exponentiate(row, starts, top));
  }

  /**
   * Puts Pr(last change at s | bins before {@code end}) into {@code out} for s = 0 … end − 1.
   *
   * @return log evidence of those bins, without the constant of {@link #logConstant}
   */
  double last(double[] out, int end) {
    return last(out, end, cumulativeCounts[end], cumulativeExposures[end], true);
  }

  /** The same where bin {@code end} − 1 is cut short, with this count and exposure in its place. */
  double lastCutShort(double[] out, int end, double count, double exposure) {
    return last(
        out,
        end,
        cumulativeCounts[end - 1] + count,
        cumulativeExposures[end - 1] + exposure,
        false);
  }

  private double last(double[] out, int end, double count, double exposure, boolean whole) {
    if (end == 0) {
      return 0;
    }
    fill(end - 1);
    double top = weights(out, end, end, count, exposure, whole);
    int minimum = prior.minimumLength();
    for (int s = Math.max(0, end - minimum + 1); s < end; s++) {
      out[s] += stay[Math.min(s + minimum - 1, Math.max(0, n - 1))] - stay[end - 1];
      top = Math.max(top, out[s]);
    }
    double sum = exponentiate(out, end, top);
    double scale = 1 / sum;
    for (int s = 0; s < end; s++) {
      out[s] *= scale;
    }
    return top + Math.log(sum) + stay[end - 1];
  }

  /** Σ (y log e − log y!) over bins [0, end): the part of the log evidence no segment changes. */
  double logConstant(int end) {
    double sum = 0;
    for (int i = 0; i < end; i++) {
      sum += logBinConstant(i);
    }
    return sum;
  }

  /** The part of the log evidence that bin {@code i} adds whatever its segment. */
  double logBinConstant(int i) {
    return ChangePointGamma.logPoissonConstant(bins.count(i), bins.exposure(i));
  }

  /** log weight of a segment over bins [from, to) without its length, for {@code to} not last. */
  double logSegment(int from, int to) {
    return segmentConstant + logGammaOfShape(from, to) - shape(from, to) * Math.log(rate(from, to));
  }

  /** log of the length's probability for a segment that ends with a change. */
  double logEndedLength(int from, int to) {
    return to - from < prior.minimumLength()
        ? Double.NEGATIVE_INFINITY
        : logHazards[to] + stay[to - 1] - stay[from + prior.minimumLength() - 1];
  }

  /** log of the length's probability for the segment still running at the end of the record. */
  double logUnendedLength(int from, int to) {
    return to - from < prior.minimumLength()
        ? 0
        : stay[to - 1] - stay[from + prior.minimumLength() - 1];
  }

  private void setForward(int e, double value) {
    logForward[e] = value;
    if (e < n) {
      int first = Math.min(e + prior.minimumLength() - 1, Math.max(0, n - 1));
      base[e] = logForward[e] - stay[first] + segmentConstant;
    }
  }

  private double weights(
      double[] out, int end, int starts, double count, double exposure, boolean whole) {
    double shape = prior.shape();
    double reach = shape + count;
    double top = Double.NEGATIVE_INFINITY;
    boolean tabled = whole && logGammas.length > 0;
    if (tabled && end < logLengths.length) {
      int events = cumulativeEvents[end];
      for (int s = 0; s < starts; s++) {
        double w =
            base[s]
                + logGammas[events - cumulativeEvents[s]]
                - (reach - cumulativeCounts[s]) * logLengths[end - s];
        out[s] = w;
        top = Math.max(top, w);
      }
      return top;
    }
    for (int s = 0; s < starts; s++) {
      double a = reach - cumulativeCounts[s];
      double gamma =
          tabled
              ? logGammas[cumulativeEvents[end] - cumulativeEvents[s]]
              : ChangePointGamma.logGamma(a);
      double length =
          whole && end < logLengths.length
              ? logLengths[end - s]
              : Math.log(prior.rate() + exposure - cumulativeExposures[s]);
      double w = base[s] + gamma - a * length;
      out[s] = w;
      top = Math.max(top, w);
    }
    return top;
  }

  private static double exponentiate(double[] values, int length, double top) {
    double sum = 0;
    for (int s = 0; s < length; s++) {
      double x = values[s] - top;
      double w = x > NEGLIGIBLE ? Math.exp(x) : 0;
      values[s] = w;
      sum += w;
    }
    return sum;
  }

  private static double[] normalised(double[] values, int length, double sum) {
    double[] row = new double[length];
    double scale = 1 / sum;
    for (int s = 0; s < length; s++) {
      row[s] = values[s] * scale;
    }
    return row;
  }

  private int[] wholeEvents() {
    int[] events = new int[n + 1];
    for (int i = 0; i < n; i++) {
      double raw = bins.count(i) * bins.divisor();
      double whole = Math.rint(raw);
      if (Math.abs(raw - whole) > 1e-9 * Math.max(1, whole)
          || events[i] + whole > Math.min(LARGEST_TABLE, 4096 + (double) n * n / 2)) {
        return new int[0];
      }
      events[i + 1] = events[i] + (int) whole;
    }
    return events;
  }

  private double[] gammaTable() {
    double[] table = new double[cumulativeEvents[n] + 1];
    for (int k = 0; k < table.length; k++) {
      table[k] = ChangePointGamma.logGamma(prior.shape() + k / bins.divisor());
    }
    return table;
  }

  /** log(rate + d bins of exposure) where all bins before the last have one exposure. */
  private double[] lengthTable() {
    int equal = 0;
    while (equal < n && bins.exposure(equal) == bins.exposure(0)) {
      equal++;
    }
    if (equal < n - 1) {
      return new double[0];
    }
    double[] table = new double[equal + 1];
    for (int d = 0; d <= equal; d++) {
      table[d] = Math.log(prior.rate() + d * (n == 0 ? 0 : bins.exposure(0)));
    }
    return table;
  }
}
