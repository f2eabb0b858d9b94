package org.fadeline.stats;

/**
 * How far counts bunch beyond what independent events would do, from differences of successive
 * blocks, so that a rate that changes slowly does not count as bunching (von Neumann's successive
 * differences, here of Poisson counts; shrunk towards 1 by ten pairs' worth of prior).
 *
 * <p>φ = max(1, (10 + Σ (a − b)²/(a + b)) / (10 + pairs)) over successive 10-bin counts a, b with a
 * + b &gt; 0. Blocks start afresh with each spell, so no pair reaches across a rest, and only whole
 * blocks count.
 */
public final class Bunching {
  /** Bins of a block. */
  public static final int BLOCK = 10;

  private static final double PRIOR_PAIRS = 10;

  private final double before;
  private double sum;
  private int pairs;
  private double previous = Double.NaN;

  /** Bunching of nothing yet: 1. */
  public Bunching() {
    this(1);
  }

  /**
   * Bunching of nothing yet, where other records of such lines are known; the ten pairs of prior
   * then have their factor in the place of 1.
   *
   * @param before the factor expected, finite and at least 1
   * @throws IllegalArgumentException if it is out of range
   */
  public Bunching(double before) {
    Guard.positive(before, "bunching expected");
    if (before < 1) {
      throw new IllegalArgumentException("a bunching factor is at least 1, got " + before);
    }
    this.before = before;
  }

  /**
   * Bunching factor of the whole blocks in bins [from, to) of one spell.
   *
   * @param counts events in each bin
   * @param from first bin, counted from 0
   * @param to bin after the last
   */
  public static double factor(double[] counts, int from, int to) {
    Bunching bunching = new Bunching();
    for (int i = from; i + BLOCK <= to; i += BLOCK) {
      double block = 0;
      for (int j = i; j < i + BLOCK; j++) {
        block += counts[j];
      }
      bunching.add(block);
    }
    return bunching.factor();
  }

  /** Starts a new spell: the next block is not compared with the one before. */
  public void rest() {
    previous = Double.NaN;
  }

  /**
   * Takes in the next whole block of the spell.
   *
   * @param count events in it, finite and in [0, ∞)
   * @throws IllegalArgumentException if the count is out of range
   */
  public void add(double count) {
    Guard.notNegative(count, "count of a block");
    if (previous + count > 0) {
      double difference = count - previous;
      sum += difference * difference / (count + previous);
      pairs++;
    }
    previous = count;
  }

  /** Σ (a − b)²/(a + b) so far, in [0, ∞): with {@link #pairs()}, what records add up by. */
  public double departure() {
    return sum;
  }

  /** How many pairs of blocks so far. */
  public int pairs() {
    return pairs;
  }

  /**
   * The factor of several records together.
   *
   * @param departure their {@link #departure()}s added up, in [0, ∞)
   * @param pairs their {@link #pairs()} added up, at least 0
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double factor(double departure, int pairs) {
    Guard.notNegative(departure, "departure");
    Guard.notNegative(pairs, "pairs");
    return factor(departure, pairs, 1);
  }

  private static double factor(double departure, int pairs, double before) {
    return Math.max(1, (PRIOR_PAIRS * before + departure) / (PRIOR_PAIRS + pairs));
  }

  /** The factor so far, in [1, ∞). */
  public double factor() {
    return factor(sum, pairs, before);
  }
}
