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
 */
public record LineReview(
    Line line,
    List<Spell> spells,
    Caught caught,
    Rates rates,
    FirstBite firstBite,
    List<Fade> fades) {
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
   * @param fishWithUnassigned fish per hour if all unassigned time next to its spells was fished on
   *     it, or null where there is none
   */
  public record Rates(
      @Nullable Rate fish,
      @Nullable Rate bite,
      @Nullable Rate weight,
      @Nullable Rate fishWithUnassigned) {
    /** Not fished. */
    public static final Rates NOT_FISHED = new Rates(null, null, null, null);
  }
}
