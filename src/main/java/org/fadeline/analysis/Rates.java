package org.fadeline.analysis;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fadeline.analysis.Effort.BiteMark;
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
    List<FishMark> fish = fish(line, spell -> spell.fishedHours() > 0);
    List<FishMark> allFish = fish(line, spell -> true);
    return new LineReview.Rates(
        perHour(fish.size(), fished),
        perHour(bites(line, spell -> spell.baitHours() > 0), bait),
        gramsPerHour(fish, fished),
        beside > 0
            ? new LineReview.WithUnassigned(
                perHour(allFish.size(), fished + beside),
                perHour(bites(line, spell -> true), bait + beside),
                gramsPerHour(allFish, fished + beside))
            : null);
  }

  /** Returns the rates of one spell. */
  static LineReview.Rates ofSpell(LineEffort line, Spell spell) {
    List<FishMark> fish = fish(line, spell::equals);
    return new LineReview.Rates(
        perHour(fish.size(), spell.fishedHours()),
        perHour(bites(line, spell::equals), spell.baitHours()),
        gramsPerHour(fish, spell.fishedHours()),
        null);
  }

  private static List<FishMark> fish(LineEffort line, Predicate<Spell> in) {
    return line.fish().stream()
        .filter(f -> !f.opening() && in.test(line.spells().get(f.spell())))
        .toList();
  }

  private static int bites(LineEffort line, Predicate<Spell> in) {
    return (int)
        line.bites().stream()
            .filter(b -> !b.opening() && in.test(line.spells().get(b.spell())))
            .count();
  }

  /** Returns what a line gave in (from, to]. */
  static Caught caught(LineEffort line, long from, long to) {
    int bites = 0;
    int lost = 0;
    int foul = 0;
    for (BiteMark bite : line.bites()) {
      if (bite.at() > from && bite.at() <= to) {
        bites++;
        lost += bite.became() == Effort.Became.LOST ? 1 : 0;
        foul += bite.became() == Effort.Became.FOUL ? 1 : 0;
      }
    }
    int landed = 0;
    double grams = 0;
    for (FishMark mark : line.fish()) {
      if (mark.at() > from && mark.at() <= to) {
        landed++;
        grams += mark.grams() == null ? 0 : mark.grams();
      }
    }
    return new Caught(bites, landed, lost, foul, grams);
  }
}
