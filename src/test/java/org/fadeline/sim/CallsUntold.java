package org.fadeline.sim;

import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import org.fadeline.stats.FadeOptions;

/** What part of the delay of a call is the price of learning the rates; seeded. */
final class CallsUntold {
  private static final long SEED = 20_260_301;

  private CallsUntold() {}

  /** Prints the rows of the methods document; argument: lines of each kind, 1000 by default. */
  public static void main(String[] arguments) {
    int lines = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
    double hazard = FadeOptions.DEFAULT.hazard();
    double[] minutes = new double[SimulatedLine.MINUTES];
    Arrays.setAll(minutes, i -> i + 1);
    for (double[] pair : new double[][] {{20, 2}, {12, 3}, {8, 4}}) {
      CallScore told = new CallScore();
      CallScore untold = new CallScore();
      KnowingObserver knowing = new KnowingObserver(pair[0], pair[1], hazard);
      RatesUntold learning = new RatesUntold(hazard);
      for (int i = 0; i < lines; i++) {
        SimulatedLine line = SimulatedLine.step(new SplittableRandom(SEED + i), pair[0], pair[1]);
        told.add(minutes, knowing.watch(line), line.truth());
        untold.add(minutes, learning.watch(line), line.truth());
      }
      String name = String.format(Locale.ROOT, "| %.0f→%.0f | ", pair[0], pair[1]);
      for (double level : new double[] {0.8, 0.5}) {
        System.out.println(name + "told both rates | " + told.delayAtLevel(level));
        System.out.println(
            name + "told neither | " + untold.delayAtAlarms(told.earlyAtLevel(level)));
      }
    }
  }
}
