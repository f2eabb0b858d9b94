package org.fadeline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * Exact posterior of a piecewise constant Poisson rate with an unknown number of changes: product
 * partition recursions of Fearnhead 2006 (Statistics and Computing 16:203–213), O(n²) in the number
 * of bins, no Markov chain.
 *
 * <p>Bins count from 0. Boundary i, in [1, n − 1], lies between bins i − 1 and i; a change at it
 * means that a segment starts with bin i. Instances are safe for use by many threads.
 */
public final class ChangePointPosterior {
  private final ChangePointRecursion recursion;
  private final int n;
  private final double logEvidence;
  private final double[] lastStart;
  private final double[] changeProbabilities;
  private final double[] meanRates;

  private ChangePointPosterior(ChangePointRecursion recursion) {
    this.recursion = recursion;
    n = recursion.bins().size();
    lastStart = new double[n];
    logEvidence = recursion.last(lastStart, n) + recursion.logConstant(n);
    changeProbabilities = new double[n];
    meanRates = new double[n];
    smooth();
  }

  /**
   * Posterior with the prior's hazard at every boundary.
   *
   * @param bins counts and exposures, any number of bins, none included
   * @param prior of segments and their rates
   */
  public static ChangePointPosterior of(ChangePointBins bins, ChangePointPrior prior) {
    return of(bins, prior, ChangePointRecursion.constantHazards(bins.size(), prior.hazard()));
  }

  /**
   * Posterior with a hazard of its own at each boundary, as after a pause.
   *
   * @param bins counts and exposures
   * @param prior of segments and their rates; its hazard is not used
   * @param hazards probability of a change at boundary i at index i, each in [0, 1); index 0 is not
   *     read
   * @throws IllegalArgumentException if a hazard is out of range or there are fewer than bins
   */
  public static ChangePointPosterior of(
      ChangePointBins bins, ChangePointPrior prior, double[] hazards) {
    if (hazards.length < bins.size()) {
      throw new IllegalArgumentException(
          "one hazard for each bin is needed: "
              + bins.size()
              + " bins, "
              + hazards.length
              + " hazards");
    }
    return new ChangePointPosterior(new ChangePointRecursion(bins, prior, hazards));
  }

  /** Log of the probability of all counts, changes and rates summed out. */
  public double logEvidence() {
    return logEvidence;
  }

  /**
   * Probability of a change at boundary {@code i}.
   *
   * @param i in [1, n − 1]
   * @throws IndexOutOfBoundsException outside that range
   */
  public double changeProbability(int i) {
    checkBoundary(i);
    return changeProbabilities[i];
  }

  /** Probability of a change at each boundary, by boundary; index 0 holds 0. */
  public double[] changeProbabilities() {
    return changeProbabilities.clone();
  }

  /** Posterior mean of the number of changes. */
  public double expectedChanges() {
    return Arrays.stream(changeProbabilities).sum();
  }

  /**
   * Probability that the last segment starts with bin s, by s; s = 0 means no change at all. Empty
   * without bins.
   */
  public double[] lastStartProbabilities() {
    return lastStart.clone();
  }

  /** Posterior mean rate in each bin, events per unit of exposure. */
  public double[] meanRates() {
    return meanRates.clone();
  }

  /**
   * Probability of 0, 1, … changes.
   *
   * @param most largest number of changes told apart, 0 or more; the last entry of the result, at
   *     index {@code most} + 1, is the probability of more
   */
  public double[] changeCountProbabilities(int most) {
    double[] result = new double[most + 2];
    double[][] before = new double[n][];
    double told = 0;
    for (int e = 0; e < n; e++) {
      before[e] = countsBefore(e, most, before);
      for (int k = 0; k <= most; k++) {
        double p = lastStart[e] * before[e][k];
        result[k] += p;
        told += p;
      }
    }
    if (n == 0) {
      result[0] = 1;
      told = 1;
    }
    result[most + 1] = Math.max(0, 1 - told);
    return result;
  }

  /** The likeliest segmentation, with the posterior mean rate of each of its segments. */
  public List<ChangePointSegment> likeliestSegments() {
    double[] best = new double[n + 1];
    int[] previous = new int[n + 1];
    for (int e = 1; e <= n; e++) {
      best[e] = Double.NEGATIVE_INFINITY;
      for (int s = 0; s < e; s++) {
        double length = e < n ? recursion.logEndedLength(s, e) : recursion.logUnendedLength(s, e);
        double value = best[s] + length + recursion.logSegment(s, e);
        if (value > best[e]) {
          best[e] = value;
          previous[e] = s;
        }
      }
    }
    List<ChangePointSegment> segments = new ArrayList<>();
    for (int e = n; e > 0; e = previous[e]) {
      segments.add(0, new ChangePointSegment(previous[e], e, meanRate(previous[e], e)));
    }
    return segments;
  }

  /**
   * Probability that boundary {@code i} is a change and the rate after it is at most {@code ratio}
   * times the rate before it. O(n²) for one boundary.
   *
   * @param i in [1, n − 1]
   * @param ratio in [0, ∞)
   * @throws IndexOutOfBoundsException outside that range
   */
  public double dropProbability(int i, double ratio) {
    checkBoundary(i);
    Guard.notNegative(ratio, "ratio");
    double sum = dropInto(i, n, lastStart[i], ratio);
    for (int e = i + 1; e < n; e++) {
      double[] row = recursion.row(e);
      if (i < row.length && changeProbabilities[e] > 0) {
        sum += dropInto(i, e, changeProbabilities[e] * row[i], ratio);
      }
    }
    return sum;
  }

  /**
   * Probability that boundary {@code i} is the last change and the rate after it is at most {@code
   * ratio} times the rate before it.
   *
   * @param i in [1, n − 1]
   * @param ratio in [0, ∞)
   * @throws IndexOutOfBoundsException outside that range
   */
  public double lastDropProbability(int i, double ratio) {
    checkBoundary(i);
    return dropInto(i, n, lastStart[i], Guard.notNegative(ratio, "ratio"));
  }

  /**
   * Independent exact draws of the whole rate curve.
   *
   * @param count how many, 0 or more
   * @param seed the same seed gives the same draws
   */
  public List<ChangePointDraw> draws(int count, long seed) {
    ChangePointRandom random = new ChangePointRandom(seed);
    ChangePointSampler sampler = new ChangePointSampler(recursion);
    List<ChangePointDraw> draws = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      draws.add(sampler.draw(random, lastStart));
    }
    return draws;
  }

  // Changes up to and including the one at e, given that there is one at e (none at the start).
  private double[] countsBefore(int e, int most, double[][] before) {
    double[] counts = new double[most + 1];
    if (e == 0) {
      counts[0] = 1;
      return counts;
    }
    double[] row = recursion.row(e);
    for (int s = 0; s < row.length; s++) {
      if (row[s] > 0) {
        for (int k = 1; k <= most; k++) {
          counts[k] += row[s] * before[s][k - 1];
        }
      }
    }
    return counts;
  }

  private double dropInto(int i, int end, double segmentProbability, double ratio) {
    if (segmentProbability == 0) {
      return 0;
    }
    double[] row = recursion.row(i);
    double after = recursion.shape(i, end);
    double sum = 0;
    for (int s = 0; s < row.length; s++) {
      if (row[s] > 0) {
        double x = ratio * recursion.rate(i, end);
        sum +=
            row[s]
                * RegularizedBeta.value(
                    x / (x + recursion.rate(s, i)), after, recursion.shape(s, i));
      }
    }
    return segmentProbability * sum;
  }

  private double meanRate(int from, int to) {
    return recursion.shape(from, to) / recursion.rate(from, to);
  }

  // Backward: Pr(segment [s, e)) = Pr(change at e) · Pr(began at s | ends at e). Mean rates are
  // gathered as differences at the two ends of each segment.
  private void smooth() {
    double[] steps = new double[n + 1];
    for (int e = n; e > 0; e--) {
      double weight = e == n ? 1 : changeProbabilities[e];
      if (weight < Double.MIN_NORMAL) {
        continue;
      }
      double[] row = e == n ? lastStart : recursion.row(e);
      double ended = 0;
      for (int s = 0; s < row.length; s++) {
        double p = weight * row[s];
        if (p > 0) {
          changeProbabilities[s] += p;
          double part = p * meanRate(s, e);
          steps[s] += part;
          ended += part;
        }
      }
      steps[e] -= ended;
    }
    if (n > 0) {
      changeProbabilities[0] = 0;
    }
    double sum = 0;
    for (int i = 0; i < n; i++) {
      changeProbabilities[i] = Math.min(1, changeProbabilities[i]);
      sum += steps[i];
      meanRates[i] = Math.max(0, sum);
    }
  }

  private void checkBoundary(int i) {
    if (i < 1 || i > n - 1) {
      throw new IndexOutOfBoundsException(
          "boundary " + i + " of " + n + " bins: boundaries go from 1 to " + (n - 1));
    }
  }
}
