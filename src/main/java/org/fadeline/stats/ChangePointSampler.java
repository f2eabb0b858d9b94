package org.fadeline.stats;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Draws segmentations backwards from a filled recursion. Not safe for use by several threads. */
final class ChangePointSampler {
  private final ChangePointRecursion recursion;
  private final double[][] cumulative;

  ChangePointSampler(ChangePointRecursion recursion) {
    this.recursion = recursion;
    cumulative = new double[recursion.bins().size() + 1][];
  }

  /** One draw of the whole record, whose last segment starts as {@code lastStart} says. */
  ChangePointDraw draw(ChangePointRandom random, double[] lastStart) {
    List<ChangePointSegment> segments = new ArrayList<>(4);
    int end = recursion.bins().size();
    if (end > 0 && cumulative[end] == null) {
      cumulative[end] = cumulate(lastStart);
    }
    while (end > 0) {
      int start = start(random, end);
      segments.add(new ChangePointSegment(start, end, rate(random, start, end)));
      end = start;
    }
    Collections.reverse(segments);
    return new ChangePointDraw(segments);
  }

  /** Start of the segment that ends with a change at {@code end}. */
  int start(ChangePointRandom random, int end) {
    double[] sums = cumulative[end];
    if (sums == null) {
      sums = cumulate(recursion.row(end));
      cumulative[end] = sums;
    }
    return find(sums, random.uniform() * sums[sums.length - 1]);
  }

  /** Rate of a segment over bins [start, end). */
  double rate(ChangePointRandom random, int start, int end) {
    return random.gamma(recursion.shape(start, end)) / recursion.rate(start, end);
  }

  private static double[] cumulate(double[] probabilities) {
    double[] sums = new double[probabilities.length];
    double sum = 0;
    for (int s = 0; s < sums.length; s++) {
      sum += probabilities[s];
      sums[s] = sum;
    }
    return sums;
  }

  /** First index whose sum is above {@code u}. */
  private static int find(double[] sums, double u) {
    int low = 0;
    int high = sums.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sums[middle] > u) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
