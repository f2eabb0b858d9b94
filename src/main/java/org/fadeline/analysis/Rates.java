package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Effort.Unassigned;
import org.fadeline.stats.GammaPosterior;
import org.fadeline.stats.Interval;
import org.fadeline.stats.PoissonInterval;
import org.fadeline.stats.WeightedPoissonInterval;
import org.jspecify.annotations.Nullable;

/** Rates with their limits from counts and exposures. */
public final class Rates {
  private static final PoissonInterval POISSON = PoissonInterval.atLevel(ReviewSettings.LEVEL);

  private Rates() {}

  /** Returns events per hour with exact Poisson limits, or null without exposure. */
  public static @Nullable Rate perHour(double count, double hours) {
    if (!(hours > 0)) {
      return null;
    }
    return rate(count / hours, POISSON.ofRate(count, hours));
  }

  /** Returns the events per hour that a gamma distribution expects, with its central limits. */
  static Rate expected(GammaPosterior pool) {
    return rate(pool.mean(), pool.interval(ReviewSettings.LEVEL));
  }

  /**
   * Returns grams per hour with Fay–Feuer limits; null without exposure, where no fish came (no
   * largest weight is known then), or where a fish has no weight.
   */
  public static @Nullable Rate gramsPerHour(Collection<FishMark> fish, double hours) {
    if (!(hours > 0) || fish.isEmpty()) {
      return null;
    }
    double[] grams = new double[fish.size()];
    int i = 0;
    double sum = 0;
    for (FishMark mark : fish) {
      if (mark.grams() == null || !(mark.grams() > 0)) {
        return null;
      }
      grams[i++] = mark.grams();
      sum += mark.grams();
    }
    Optional<Interval> limits = WeightedPoissonInterval.of(grams, hours, ReviewSettings.LEVEL);
    return limits.isPresent() ? rate(sum / hours, limits.get()) : null;
  }

  private static Rate rate(double perHour, Interval limits) {
    return new Rate(perHour, limits.low(), limits.high(), limits.level());
  }

  /** Returns the rates of a whole line. */
  static LineReview.Rates ofLine(LineEffort line, List<Unassigned> unassigned) {
    double fished = line.spells().stream().mapToDouble(Spell::fishedHours).sum();
    double bait = line.spells().stream().mapToDouble(Spell::baitHours).sum();
    double beside =
        unassigned.stream()
            .filter(u -> u.before().equals(line.line().id()) || u.after().equals(line.line().id()))
            .mapToDouble(u -> u.span().hours())
            .sum();
    List<FishMark> fish = new ArrayList<>();
    List<FishMark> allFish = new ArrayList<>();
    int bites = 0;
    int allBites = 0;
    for (Spell spell : line.spells()) {
      List<FishMark> ofSpell = line.fishOf(List.of(spell));
      int bitesOfSpell = line.bitesOf(spell).size();
      allFish.addAll(ofSpell);
      allBites += bitesOfSpell;
      if (spell.fishedHours() > 0) {
        fish.addAll(ofSpell);
      }
      if (spell.baitHours() > 0) {
        bites += bitesOfSpell;
      }
    }
    return new LineReview.Rates(
        perHour(fish.size(), fished),
        perHour(bites, bait),
        gramsPerHour(fish, fished),
        beside > 0
            ? new LineReview.WithUnassigned(
                perHour(allFish.size(), fished + beside),
                perHour(allBites, bait + beside),
                gramsPerHour(allFish, fished + beside))
            : null);
  }

  /** Returns the rates of one spell. */
  static LineReview.Rates ofSpell(LineEffort line, Spell spell) {
    List<FishMark> fish = line.fishOf(List.of(spell));
    return new LineReview.Rates(
        perHour(fish.size(), spell.fishedHours()),
        perHour(line.bitesOf(spell).size(), spell.baitHours()),
        gramsPerHour(fish, spell.fishedHours()),
        null);
  }
}
