package org.fadeline.analysis;

import java.util.List;
import org.fadeline.model.Line;
import org.jspecify.annotations.Nullable;

/**
 * What one line gave.
 *
 * @param line the line
 * @param spells its spells, in order; empty where it was not fished
 * @param caught all it gave
 * @param rates its rates, each null where it was not fished
 * @param firstBite time to first bite after feeding
 * @param fades one entry for each spell of at least 20 bait minutes
 * @param leaving how long a stay on it pays; null where it was never fished with a bait in, or not
 *     looked for
 */
public record LineReview(
    Line line,
    List<Spell> spells,
    Caught caught,
    Rates rates,
    FirstBite firstBite,
    List<Fade> fades,
    @Nullable LeavingRule leaving) {
  /** Copies the lists. */
  public LineReview {
    spells = List.copyOf(spells);
    fades = List.copyOf(fades);
  }

  /** Returns fished time in hours. */
  public double fishedHours() {
    return spells.stream().mapToDouble(Spell::fishedHours).sum();
  }

  /** Returns bait time in hours. */
  public double baitHours() {
    return spells.stream().mapToDouble(Spell::baitHours).sum();
  }

  /**
   * Rates of a line.
   *
   * @param fish landed per fished hour, exact Poisson limits, or null
   * @param bite bites per bait hour, exact Poisson limits, or null
   * @param weight grams per fished hour, Fay–Feuer limits, or null
   * @param withUnassigned the other end of their range: as if all unassigned time next to its
   *     spells was fished on it; null where there is none
   */
  public record Rates(
      @Nullable Rate fish,
      @Nullable Rate bite,
      @Nullable Rate weight,
      @Nullable WithUnassigned withUnassigned) {
    /** Not fished. */
    public static final Rates NOT_FISHED = new Rates(null, null, null, null);
  }

  /**
   * Rates of a line with the unassigned time next to its spells added to its exposure, and what
   * came in spells without exposure of their own counted.
   *
   * @param fish landed per hour
   * @param bite bites per hour
   * @param weight grams per hour, or null where no fish came or one has no weight
   */
  public record WithUnassigned(@Nullable Rate fish, @Nullable Rate bite, @Nullable Rate weight) {}
}
