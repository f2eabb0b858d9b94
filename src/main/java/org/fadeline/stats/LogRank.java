package org.fadeline.stats;

import java.util.List;
import org.apache.commons.numbers.gamma.Erfc;
import org.jspecify.annotations.Nullable;

/**
 * Log-rank test of two groups with delayed entry, plain or stratified (Mantel 1966, Cancer
 * Chemotherapy Reports 50:163–170; Peto &amp; Peto 1972, JRSS A 135:185–206): hypergeometric
 * variance, no continuity correction. Figures are those of the first group; the second group's
 * observed less expected is the same with the other sign.
 *
 * @param observed events of the first group
 * @param expected events of the first group expected if the groups did not differ
 * @param observedOther events of the second group
 * @param expectedOther events of the second group expected if the groups did not differ
 * @param variance variance of observed − expected, at least 0
 * @param chiSquare (observed − expected)²/variance; null where the variance is 0 (the groups were
 *     never at risk together with anything left to tell)
 * @param p upper tail of χ² with one degree of freedom, in [0, 1]; null with {@code chiSquare}
 */
public record LogRank(
    double observed,
    double expected,
    double observedOther,
    double expectedOther,
    double variance,
    @Nullable Double chiSquare,
    @Nullable Double p) {

  /**
   * Two groups to be compared among themselves only.
   *
   * @param first rows of the first group
   * @param second rows of the second group
   */
  public record Stratum(FollowUp first, FollowUp second) {}

  /** Tests two groups. */
  public static LogRank of(FollowUp first, FollowUp second) {
    return stratified(List.of(new Stratum(first, second)));
  }

  /**
   * Tests two groups within strata: observed, expected and variance are summed over the strata.
   *
   * @param strata any number, each with both groups (one may be without rows)
   */
  public static LogRank stratified(List<Stratum> strata) {
    double[] sums = new double[5];
    for (Stratum stratum : strata) {
      add(stratum, sums);
    }
    return ofSums(sums[0], sums[1], sums[2], sums[3], sums[4]);
  }

  /** Makes the test of sums over all strata, as the components of this record. */
  public static LogRank ofSums(
      double observed,
      double expected,
      double observedOther,
      double expectedOther,
      double variance) {
    Double chiSquare = null;
    Double p = null;
    if (variance > 0) {
      double difference = observed - expected;
      double square = difference * difference / variance;
      chiSquare = square;
      p = Erfc.value(Math.sqrt(square / 2));
    }
    return new LogRank(observed, expected, observedOther, expectedOther, variance, chiSquare, p);
  }

  private static void add(Stratum stratum, double[] sums) {
    FollowUp.Cursor first = new FollowUp.Cursor(stratum.first());
    FollowUp.Cursor second = new FollowUp.Cursor(stratum.second());
    while (true) {
      double t = Math.min(first.nextEvent(), second.nextEvent());
      if (t == Double.POSITIVE_INFINITY) {
        return;
      }
      first.moveTo(t);
      second.moveTo(t);
      double n1 = first.atRisk();
      double n2 = second.atRisk();
      double n = n1 + n2;
      double d = first.events() + (double) second.events();
      sums[0] += first.events();
      sums[1] += d * n1 / n;
      sums[2] += second.events();
      sums[3] += d * n2 / n;
      if (n > 1) {
        sums[4] += d * (n1 / n) * (n2 / n) * (n - d) / (n - 1);
      }
    }
  }
}
