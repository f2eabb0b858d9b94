package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * Fish of one event.
 *
 * @param count how many, in [0, 100000]; at least 1 for a fish landed
 * @param species or null
 * @param grams their total weight, in [0, 1e6], or null where not given
 * @param weighed whether the weight comes from scales; otherwise it is an estimate
 */
public record Fish(int count, @Nullable String species, @Nullable Double grams, boolean weighed) {
  /** One fish of unknown species and weight. */
  public static final Fish ONE = new Fish(1, null, null, false);

  /** Checks the ranges. */
  public Fish {
    if (count < 0 || count > 100_000) {
      throw new IllegalArgumentException("count must be 0 to 100000: " + count);
    }
    Checks.optionalBetween("weight", grams, 0, 1e6);
  }
}
