package org.fadeline.stats;

/**
 * When to leave a patch that pays less the longer one stays (marginal value theorem; Charnov 1976,
 * Theoretical Population Biology 9:129–136): at the time x* when the rate of gain g′(x) has come
 * down to the best overall rate g(x)/(x + T), T the time it costs to get to the next patch.
 *
 * @param leaveAfter x*, time to stay in a patch, in the units of the cost of moving, at least 0
 * @param rate overall rate of gain with that rule, g(x*)/(x* + T) = g′(x*)
 */
public record MarginalValue(double leaveAfter, double rate) {

  /**
   * For gain G·(1 − e^(−cx)): c·x* = −1 − cT − W₋₁(−e^(−1−cT)). A rate λ₀·e^(−cx) is a gain with G
   * = λ₀/c.
   *
   * @param gain G, all that a patch holds, in (0, ∞)
   * @param decay c, per unit of time, in (0, ∞)
   * @param moving T, cost of moving in time, in [0, ∞)
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static MarginalValue exponential(double gain, double decay, double moving) {
    Guard.positive(gain, "gain");
    Guard.positive(decay, "decay");
    Guard.notNegative(moving, "moving");
    double u = LambertW.excess(decay * moving);
    return new MarginalValue(u / decay, gain * decay * Math.exp(-u));
  }

  /**
   * For gain G·x/(x + k): x* = √(kT).
   *
   * @param gain G, all that a patch holds, in (0, ∞)
   * @param half k, time by which half of it is gained, in (0, ∞)
   * @param moving T, cost of moving in time, in [0, ∞)
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static MarginalValue saturating(double gain, double half, double moving) {
    Guard.positive(gain, "gain");
    Guard.positive(half, "half");
    Guard.notNegative(moving, "moving");
    double roots = Math.sqrt(half) + Math.sqrt(moving);
    return new MarginalValue(Math.sqrt(half) * Math.sqrt(moving), gain / roots / roots);
  }
}
