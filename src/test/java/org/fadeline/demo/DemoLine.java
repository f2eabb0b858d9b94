package org.fadeline.demo;

import org.fadeline.model.Feed;
import org.fadeline.model.Line;
import org.jspecify.annotations.Nullable;

/**
 * A line of an invented water.
 *
 * @param line where it lies and what it is fished with
 * @param bites its bites per hour
 * @param catches what becomes of a bite
 * @param casts how it is fished
 */
public record DemoLine(Line line, BiteRate bites, Catches catches, Casts casts) {
  /** Returns the line's id. */
  public String id() {
    return line.id();
  }

  /**
   * What becomes of a bite.
   *
   * @param missed share of bites missed
   * @param lost share of hooked fish lost
   * @param foul share of hooked fish foul-hooked and landed
   * @param handSeconds from hooking to the next cast where the fish is landed; 0.6 of it where lost
   * @param fish the fish
   */
  public record Catches(
      double missed, double lost, double foul, double handSeconds, FishSize fish) {}

  /**
   * Fish of a line; weights are lognormal.
   *
   * @param species what they are
   * @param meanG mean weight, grams
   * @param sdG standard deviation, grams
   */
  public record FishSize(String species, double meanG, double sdG) {
    /** Returns the weight in grams that a standard normal draw stands for. */
    public double grams(double normal) {
      double variance = Math.log1p((sdG / meanG) * (sdG / meanG));
      return Math.exp(Math.log(meanG) - variance / 2 + Math.sqrt(variance) * normal);
    }
  }

  /**
   * How a line is fished.
   *
   * @param fromSeconds shortest time between casts without a bite
   * @param toSeconds longest
   * @param feed fed with each cast, or null
   */
  public record Casts(double fromSeconds, double toSeconds, @Nullable Feed feed) {}
}
