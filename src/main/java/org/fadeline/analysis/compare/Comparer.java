package org.fadeline.analysis.compare;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.FirstBites;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.compare.Comparison.Lines;
import org.fadeline.analysis.compare.Comparison.PairRates;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.model.Line;
import org.fadeline.model.Units;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;

/** Sets two sessions side by side: a pure function of their reviews and the setup. */
public final class Comparer {
  private final Review first;
  private final Review second;
  private final ComparisonSetup setup;
  private final Effort firstEffort;
  private final Effort secondEffort;
  private final boolean bites;

  private Comparer(Review first, Review second, ComparisonSetup setup) {
    this.first = first;
    this.second = second;
    this.setup = setup;
    this.firstEffort = Effort.of(first.session(), first.settings().handling());
    this.secondEffort = Effort.of(second.session(), second.settings().handling());
    this.bites = first.summary().grade() == Grade.FULL && second.summary().grade() == Grade.FULL;
  }

  /**
   * Compares two sessions.
   *
   * @param first review of the first session
   * @param second review of the second session
   * @param setup alignment, pairing, and the spread between days
   * @param units of the weights in the words; no number depends on them
   */
  public static Comparison compare(
      Review first, Review second, ComparisonSetup setup, Units units) {
    Comparer comparer = new Comparer(first, second, setup);
    Lines lines = comparer.lines();
    return new Comparison(
        first,
        second,
        setup,
        lines,
        RunningCatch.of(comparer.firstEffort, comparer.secondEffort, setup.alignment()),
        new WhatDiffered(first, second, lines, units).tell());
  }

  private Lines lines() {
    List<PairedLines> pairs = new ArrayList<>();
    List<LogRank.Stratum> strata = new ArrayList<>();
    for (LinePair pair : setup.pairing().pairs()) {
      Side one = side(first, pair.first());
      Side other = side(second, pair.second());
      LogRank.Stratum stratum =
          new LogRank.Stratum(
              FirstBites.followUp(one.line().firstBite().rows()),
              FirstBites.followUp(other.line().firstBite().rows()));
      strata.add(stratum);
      pairs.add(
          new PairedLines(
              pair,
              rates(
                  List.of(effort(firstEffort, pair.first())),
                  List.of(effort(secondEffort, pair.second()))),
              LogRank.of(stratum.first(), stratum.second()),
              one,
              other));
    }
    return new Lines(
        pairs,
        setup.pairing().onlyFirst().stream().map(l -> side(first, l)).toList(),
        setup.pairing().onlySecond().stream().map(l -> side(second, l)).toList(),
        rates(firstEffort.lines(), secondEffort.lines()),
        LogRank.stratified(strata),
        bites
            ? null
            : "Bites are compared only where both records hold casts throughout: one without"
                + " casts misses bites that came to nothing and the time without a bait in.");
  }

  private static LineEffort effort(Effort effort, Line line) {
    return effort.line(line.id()).orElseThrow();
  }

  private static Side side(Review review, Line line) {
    LineReview found = review.line(line.id()).orElseThrow();
    List<StayOrGo> stays =
        review.stays().stream().filter(s -> s.spell().lineId().equals(line.id())).toList();
    List<Spell> all = review.spells();
    int moves = 0;
    for (int i = 0; i + 1 < all.size(); i++) {
      if (all.get(i).lineId().equals(line.id()) && !all.get(i + 1).lineId().equals(line.id())) {
        moves++;
      }
    }
    return new Side(found, FeedPut.on(review.session(), line.id()), moves, stays);
  }

  private PairRates rates(List<LineEffort> one, List<LineEffort> other) {
    List<FishMark> fish1 = fish(one);
    List<FishMark> fish2 = fish(other);
    double hours1 = fishedHours(one);
    double hours2 = fishedHours(other);
    return new PairRates(
        RatePair.ofCounts(fish1.size(), hours1, fish2.size(), hours2, setup.days()),
        RatePair.ofWeights(fish1, hours1, fish2, hours2, setup.days()),
        biteRates(one, other));
  }

  private @Nullable RatePair biteRates(List<LineEffort> one, List<LineEffort> other) {
    return bites
        ? RatePair.ofCounts(
            bites(one), baitHours(one), bites(other), baitHours(other), setup.days())
        : null;
  }

  private static List<FishMark> fish(List<LineEffort> lines) {
    return lines.stream().flatMap(l -> l.fish().stream()).filter(f -> !f.opening()).toList();
  }

  private static double bites(List<LineEffort> lines) {
    return lines.stream().flatMap(l -> l.bites().stream()).filter(b -> !b.opening()).count();
  }

  private static double fishedHours(List<LineEffort> lines) {
    return lines.stream().flatMap(l -> l.spells().stream()).mapToDouble(Spell::fishedHours).sum();
  }

  private static double baitHours(List<LineEffort> lines) {
    return lines.stream().flatMap(l -> l.spells().stream()).mapToDouble(Spell::baitHours).sum();
  }
}
