package org.fadeline.analysis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import org.fadeline.model.Fish;
import org.jspecify.annotations.Nullable;

/** What fish have weighed, by species and line: what a fish without a weight is counted at. */
final class FishWeights {
  /** A sort of fish speaks for itself from this many with a weight on. */
  private static final int FEWEST = 3;

  /** Spread of the weights of one sort, as a share of their mean, before two of them are known. */
  private static final double USUAL_SPREAD = 0.5;

  /** Fish that {@link #USUAL_SPREAD} counts as beside those at hand. */
  private static final double COUNTS_AS = 2;

  private final Map<Sort, Sum> sums = new HashMap<>();

  /**
   * Fish of one species on one line; either may be unknown, and then stands for all of them.
   *
   * @param species or null
   * @param line id of the line, or null
   */
  record Sort(@Nullable String species, @Nullable String line) {
    private static final Sort ALL = new Sort(null, null);
  }

  /**
   * What one fish of a sort is counted at.
   *
   * @param grams mean, above 0
   * @param variance of one fish about it, grams squared
   * @param fish how many it was taken from, at least 1
   * @param estimated share of their weight that is estimated, in [0, 1]
   */
  record Usual(double grams, double variance, int fish, double estimated) {}

  private static final class Sum {
    private int fish;
    private int entries;
    private double grams;
    private double squares;
    private double estimated;

    void add(int count, double weight, boolean weighed) {
      fish += count;
      entries++;
      grams += weight;
      squares += weight * weight / count;
      estimated += weighed ? 0 : weight;
    }

    /**
     * The variance of single fish from entries of one or several; each tells the mean of its own.
     */
    Usual usual() {
      double mean = grams / fish;
      double between = Math.max(0, squares - grams * mean);
      double beforehand = USUAL_SPREAD * USUAL_SPREAD * mean * mean;
      double variance = (COUNTS_AS * beforehand + between) / (COUNTS_AS + entries - 1);
      return new Usual(mean, variance, fish, estimated / grams);
    }
  }

  /** Takes in fish with a weight. */
  void add(Sort sort, Fish with) {
    Double grams = with.grams();
    if (grams == null || !(grams > 0) || with.count() < 1) {
      return;
    }
    Sort[] sorts = {
      sort, new Sort(sort.species, null), new Sort(null, sort.line), Sort.ALL,
    };
    for (Sort each : new LinkedHashSet<>(Arrays.asList(sorts))) {
      sums.computeIfAbsent(each, s -> new Sum()).add(with.count(), grams, with.weighed());
    }
  }

  /**
   * Returns what a fish of a sort is counted at: what its species weighed on its line, else its
   * species anywhere, else any fish of its line, each from three fish on; else any fish; null while
   * no fish has a weight.
   */
  @Nullable Usual usual(Sort sort) {
    Sort[] sorts = {sort, new Sort(sort.species, null), new Sort(null, sort.line)};
    for (Sort each : sorts) {
      Sum sum = sums.get(each);
      if (sum != null && sum.fish >= FEWEST) {
        return sum.usual();
      }
    }
    Sum any = sums.get(Sort.ALL);
    return any == null ? null : any.usual();
  }
}
