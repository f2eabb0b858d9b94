package org.fadeline.analysis.compare;

import java.util.List;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Rates;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.compare.ComparisonSetup.DayToDay;
import org.fadeline.stats.Interval;
import org.fadeline.stats.LogNormalRate;
import org.fadeline.stats.RateRatio;
import org.jspecify.annotations.Nullable;

/**
 * One rate of two sessions and their ratio.
 *
 * @param first the first session's
 * @param second the second session's
 * @param ratio first over second, or null where one of them has no exposure, no weights, or the
 *     record cannot carry it
 */
public record RatePair(Side first, Side second, @Nullable Ratio ratio) {
  /**
   * One session's rate.
   *
   * @param amount what came: fish, bites or grams; those of a spell's opening fish left out
   * @param hours exposure: fished hours, or bait hours for bites
   * @param rate per hour with limits, or null without exposure, or for grams without a weight
   */
  public record Side(double amount, double hours, @Nullable Rate rate) {}

  /**
   * First rate over second.
   *
   * @param value estimate; null where both counts are 0 or only the second is (no upper end)
   * @param fishing limits from the fish alone, as if all days were alike; high is +∞ where the
   *     second count is 0
   * @param days the wider limits that allow for days differing by themselves
   * @param p two-sided p-value of equal rates, allowing for days; null unless the spread between
   *     days was learned and both counts are above 0
   */
  public record Ratio(@Nullable Double value, Interval fishing, Interval days, @Nullable Double p) {
    /**
     * Returns the limits to show as the wider ones. With very few fish the normal limits of {@code
     * days} can lie inside the exact ones; allowing for more cannot make a comparison surer, so
     * each end is then the exact one.
     */
    public Interval widest() {
      return new Interval(
          Math.min(fishing.low(), days.low()),
          Math.max(fishing.high(), days.high()),
          fishing.level());
    }
  }

  /** Holds counts against each other: exact limits conditional on the total. */
  static RatePair ofCounts(
      double count1, double hours1, double count2, double hours2, DayToDay days) {
    Side first = new Side(count1, hours1, Rates.perHour(count1, hours1));
    Side second = new Side(count2, hours2, Rates.perHour(count2, hours2));
    if (!(hours1 > 0 && hours2 > 0)) {
      return new RatePair(first, second, null);
    }
    RateRatio exact = RateRatio.of(count1, hours1, count2, hours2, ReviewSettings.LEVEL);
    return new RatePair(first, second, ratio(exact, 1, days));
  }

  /**
   * Holds weights against each other. A sum of weights y with sum of squares v behaves as v/y times
   * a Poisson count of y²/v (the matching of moments in Fay &amp; Feuer 1997); the ratio of two
   * such counts is exact, and put back on the scale of weights. With equal weights throughout the
   * limits are those of the counts.
   */
  static RatePair ofWeights(
      List<FishMark> fish1, double hours1, List<FishMark> fish2, double hours2, DayToDay days) {
    Sums one = Sums.of(fish1);
    Sums other = Sums.of(fish2);
    Side first = new Side(one.sum, hours1, Rates.gramsPerHour(fish1, hours1));
    Side second = new Side(other.sum, hours2, Rates.gramsPerHour(fish2, hours2));
    if (first.rate() == null || second.rate() == null) {
      return new RatePair(first, second, null);
    }
    RateRatio counts =
        RateRatio.of(one.count(), hours1, other.count(), hours2, ReviewSettings.LEVEL);
    return new RatePair(first, second, ratio(counts, one.unit() / other.unit(), days));
  }

  private static Ratio ratio(RateRatio counts, double scale, DayToDay days) {
    Double value = counts.ratio();
    boolean finite = value != null && Double.isFinite(value);
    Double p = null;
    if (days.learned() && value != null && counts.count1() > 0 && counts.count2() > 0) {
      double variance = 1 / counts.count1() + 1 / counts.count2() + 2 * days.sigma() * days.sigma();
      double above =
          new LogNormalRate(Math.log(value * scale), Math.sqrt(variance)).probabilityAbove(1);
      p = Math.min(1, 2 * Math.min(above, 1 - above));
    }
    return new Ratio(
        finite && value != null ? (Double) (value * scale) : null,
        counts.limits().scaledBy(scale),
        counts.widened(days.sigma()).scaledBy(scale),
        p);
  }

  /** Sum and sum of squares of weights. */
  private record Sums(double sum, double squares) {
    static Sums of(List<FishMark> fish) {
      double sum = 0;
      double squares = 0;
      for (FishMark mark : fish) {
        Double grams = mark.grams();
        if (grams != null) {
          sum += grams;
          squares += grams * grams;
        }
      }
      return new Sums(sum, squares);
    }

    double count() {
      return sum * sum / squares;
    }

    double unit() {
      return squares / sum;
    }
  }
}
