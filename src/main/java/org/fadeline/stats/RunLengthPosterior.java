package org.fadeline.stats;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Online posterior of the length of the current run of one rate, as it stands after each bin (Adams
 * and MacKay 2007, arXiv:0710.3742), for Poisson counts with gamma rates.
 *
 * <p>The run length after bin t is the number of bins in the segment that holds bin t, before it is
 * decided whether it ends there. Adams and MacKay decide first: their run length 0 has the hazard's
 * mass and the others are multiplied by 1 − h. Instances are safe for use by many threads.
 */
public final class RunLengthPosterior {
  private final ChangePointRecursion recursion;
  private final double[][] starts;
  private final double[] logEvidence;

  private RunLengthPosterior(ChangePointRecursion recursion, @Nullable RunLengthPosterior before) {
    this.recursion = recursion;
    int n = recursion.bins().size();
    starts = new double[n + 1][];
    logEvidence = new double[n + 1];
    int known = before == null ? 0 : before.size();
    if (before != null) {
      System.arraycopy(before.starts, 0, starts, 0, known + 1);
      System.arraycopy(before.logEvidence, 0, logEvidence, 0, known + 1);
    }
    starts[0] = new double[0];
    double constant = recursion.logConstant(known);
    for (int t = known + 1; t <= n; t++) {
      constant += recursion.logBinConstant(t - 1);
      starts[t] = new double[t];
      logEvidence[t] = recursion.last(starts[t], t) + constant;
    }
  }

  /**
   * Filters all bins.
   *
   * @param bins counts and exposures
   * @param prior of segments and their rates
   */
  public static RunLengthPosterior of(ChangePointBins bins, ChangePointPrior prior) {
    return new RunLengthPosterior(
        new ChangePointRecursion(
            bins, prior, ChangePointRecursion.constantHazards(bins.size(), prior.hazard())),
        null);
  }

  /**
   * Filters more bins: what is known of the first ones is kept.
   *
   * @param bins the bins of this posterior and those after them
   * @throws IllegalArgumentException if they do not begin with the bins of this posterior
   */
  public RunLengthPosterior with(ChangePointBins bins) {
    return new RunLengthPosterior(recursion.with(bins), this);
  }

  /** Number of bins. */
  public int size() {
    return starts.length - 1;
  }

  /**
   * Log probability of the count of bin t given all before it.
   *
   * @param t in [1, size]
   * @throws IndexOutOfBoundsException outside that range
   */
  public double logPredictive(int t) {
    return logEvidence[t] - logEvidence[t - 1];
  }

  /**
   * Log evidence of the first t bins: the sum of the first t log predictives.
   *
   * @param t in [0, size]
   * @throws IndexOutOfBoundsException outside that range
   */
  public double logEvidence(int t) {
    return logEvidence[t];
  }

  /**
   * Probability of each run length after bin t; index d is run length d, index 0 holds 0.
   *
   * @param t in [0, size]
   * @throws IndexOutOfBoundsException outside that range
   */
  public double[] runLengthProbabilities(int t) {
    double[] result = new double[t + 1];
    for (int s = 0; s < t; s++) {
      result[t - s] = starts[t][s];
    }
    return result;
  }

  /**
   * Probability that the run holding bin t began with one of the bins {@code from} … {@code to}.
   *
   * @param t in [1, size]
   * @param from first bin, counted from 1
   * @param to last bin, counted from 1
   */
  public double startedBetween(int t, int from, int to) {
    double sum = 0;
    for (int s = Math.max(1, from); s <= Math.min(t, to); s++) {
      sum += starts[t][s - 1];
    }
    return sum;
  }

  /**
   * What the current run's rate may be after bin t: a mixture of gamma distributions, one for each
   * run length, the longest first.
   *
   * @param t in [0, size]; 0 gives the prior alone
   * @throws IndexOutOfBoundsException outside that range
   */
  public List<RunLengthRate> rates(int t) {
    List<RunLengthRate> rates = new ArrayList<>(Math.max(1, t));
    if (t == 0) {
      ChangePointPrior prior = recursion.prior();
      rates.add(new RunLengthRate(0, 1, prior.shape(), prior.rate()));
    }
    for (int s = 0; s < t; s++) {
      rates.add(
          new RunLengthRate(t - s, starts[t][s], recursion.shape(s, t), recursion.rate(s, t)));
    }
    return rates;
  }
}
