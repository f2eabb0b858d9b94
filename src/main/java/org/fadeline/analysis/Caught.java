package org.fadeline.analysis;

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
