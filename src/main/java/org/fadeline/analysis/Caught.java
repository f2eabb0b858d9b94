package org.fadeline.analysis;

import java.util.List;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.analysis.Effort.FishMark;

/**
 * What a stretch of fishing gave.
 *
 * @param bites bites, whatever became of them
 * @param landed fish landed that count
 * @param lost hooked fish that came off
 * @param foul foul-hooked fish landed
 * @param weightG weight of the fish that count, grams; 0 where no weight was given
 */
public record Caught(int bites, int landed, int lost, int foul, double weightG) {
  /** Nothing. */
  public static final Caught NOTHING = new Caught(0, 0, 0, 0, 0);

  /** Returns what some bites and fish come to. */
  static Caught of(List<BiteMark> bites, List<FishMark> fish) {
    int lost = 0;
    int foul = 0;
    for (BiteMark bite : bites) {
      lost += bite.became() == Effort.Became.LOST ? 1 : 0;
      foul += bite.became() == Effort.Became.FOUL ? 1 : 0;
    }
    double grams = 0;
    for (FishMark mark : fish) {
      grams += mark.grams() == null ? 0 : mark.grams();
    }
    return new Caught(bites.size(), fish.size(), lost, foul, grams);
  }

  /** Returns both together. */
  public Caught plus(Caught other) {
    return new Caught(
        bites + other.bites,
        landed + other.landed,
        lost + other.lost,
        foul + other.foul,
        weightG + other.weightG);
  }
}
