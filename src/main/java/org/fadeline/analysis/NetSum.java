package org.fadeline.analysis;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fadeline.analysis.FishWeights.Sort;
import org.fadeline.analysis.FishWeights.Usual;
import org.fadeline.analysis.NetScale.Logged;
import org.fadeline.analysis.NetState.Likely;
import org.fadeline.stats.Interval;
import org.fadeline.stats.LogNormalRate;
import org.jspecify.annotations.Nullable;

/** What is known of the fish in one net, and what they may weigh together. */
final class NetSum {
  /**
   * Scatter of single estimates about their steady factor, as a share. An allowance: there is no
   * published source for it.
   */
  static final double SCATTER = 0.08;

  private int fish;
  private double weighed;
  private double estimated;
  private double squares;
  private final Map<Sort, Integer> without = new LinkedHashMap<>();

  void add(int count, double grams, boolean onScales) {
    fish += count;
    if (onScales) {
      weighed += grams;
    } else {
      estimated += grams;
      squares += count == 0 ? 0 : grams * grams / count;
    }
  }

  /** Adds fish without a weight, or with a negative count takes them back. */
  void addWithout(Sort sort, int count) {
    fish += count;
    without.merge(sort, count, Integer::sum);
  }

  Logged logged() {
    int unweighed = without.values().stream().mapToInt(Integer::intValue).sum();
    return new Logged(fish, unweighed, weighed + estimated);
  }

  /**
   * The weight in parts.
   *
   * @param exact read off scales, grams
   * @param estimated grams by estimate, those counted for fish without a weight among them
   * @param variance of the estimated part about its steady factor, grams squared
   * @param counted grams counted for fish without a weight
   */
  record Parts(double exact, double estimated, double variance, double counted) {
    /** Returns the weight where estimates run off as given; null where there is none. */
    @Nullable Likely likely(LogNormalRate factor, @Nullable Double limit) {
      double times = Math.exp(factor.logMean());
      double spread = Math.expm1(factor.logSd() * factor.logSd());
      double square = times * times;
      return of(
          exact + times * estimated,
          square * (variance + estimated * estimated * spread),
          counted,
          limit);
    }

    /**
     * Returns the weight at a moment of a net whose whole came to so much on the scales: they fix
     * the sum, and what is left open is how it falls to this part and to the rest.
     */
    @Nullable Likely likely(Parts whole, double scales, @Nullable Double limit) {
      double rest = scales - whole.exact;
      boolean apart = whole.estimated > 0 && rest > 0;
      double times = apart ? rest / whole.estimated : scales / (whole.exact + whole.estimated);
      double middle = apart ? exact + times * estimated : times * (exact + estimated);
      double share = whole.variance > 0 ? Math.min(1, variance / whole.variance) : 1;
      return of(middle, times * times * variance * (1 - share), counted, limit);
    }

    private static @Nullable Likely of(
        double middle, double variance, double counted, @Nullable Double limit) {
      double level = ReviewSettings.FADE_LEVEL;
      if (!(middle > 0)) {
        return null;
      }
      double sd = Math.sqrt(Math.log1p(variance / (middle * middle)));
      if (!(sd > 0)) {
        Double over = limit == null ? null : (Double) (middle > limit ? 1.0 : 0.0);
        return new Likely(middle, middle, middle, level, counted, over);
      }
      // A sum of many fish with a common factor near 1: log-normal by its first two moments.
      LogNormalRate weight = new LogNormalRate(Math.log(middle), sd);
      Interval range = weight.interval(level);
      Double over = limit == null ? null : (Double) weight.probabilityAbove(limit);
      return new Likely(range.low(), middle, range.high(), level, counted, over);
    }
  }

  /** Returns the weight in parts, or null where there are fish of which nothing is known. */
  @Nullable Parts parts(FishWeights weights) {
    double exact = weighed;
    double byEye = estimated;
    double variance = SCATTER * SCATTER * squares;
    double counted = 0;
    for (Map.Entry<Sort, Integer> each : without.entrySet()) {
      int count = each.getValue();
      if (count == 0) {
        continue;
      }
      Usual usual = weights.usual(each.getKey());
      if (usual == null) {
        return null;
      }
      double grams = count * usual.grams();
      counted += grams;
      byEye += grams * usual.estimated();
      exact += grams * (1 - usual.estimated());
      // Each fish about the mean, and the mean about what a few fish show of it.
      variance += usual.variance() * count * (1 + (double) count / usual.fish());
    }
    return new Parts(exact, byEye, variance, counted);
  }
}
