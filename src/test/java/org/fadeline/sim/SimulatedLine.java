package org.fadeline.sim;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.fadeline.stats.FadeRecord;

/** Bites on one line, drawn from a true rate that is known for every bait minute. */
final class SimulatedLine {
  /** Bait minutes of a simulated match fished on one line. */
  static final int MINUTES = 300;

  private final double[] bites;
  private final double[] spellEnds;
  private final double truth;

  private SimulatedLine(double[] bites, double[] spellEnds, double truth) {
    this.bites = bites;
    this.spellEnds = spellEnds;
    this.truth = truth;
  }

  /** A line whose bites are given. */
  static SimulatedLine of(double[] bites, double[] spellEnds, double truth) {
    return new SimulatedLine(bites.clone(), spellEnds.clone(), truth);
  }

  FadeRecord record() {
    return FadeRecord.ofTimes(bites, spellEnds);
  }

  double[] bites() {
    return bites.clone();
  }

  double minutes() {
    return spellEnds[spellEnds.length - 1];
  }

  /** Bait minute of the true fade; NaN where the line did not fade or has no single moment. */
  double truth() {
    return truth;
  }

  /** One spell of 300 min at one rate an hour, then another from a uniform minute in 90–210. */
  static SimulatedLine step(SplittableRandom random, double before, double after) {
    int change = 90 + random.nextInt(121);
    double[] rates = new double[MINUTES];
    Arrays.fill(rates, 0, change, before);
    Arrays.fill(rates, change, MINUTES, after);
    return new SimulatedLine(
        draw(random, rates),
        new double[] {MINUTES},
        after <= before / 2 && after < before ? change : Double.NaN);
  }

  static SimulatedLine constant(SplittableRandom random, double perHour) {
    double[] rates = new double[MINUTES];
    Arrays.fill(rates, perHour);
    return new SimulatedLine(draw(random, rates), new double[] {MINUTES}, Double.NaN);
  }

  /** No fade, but fish come in shoals: each ten minutes has its own rate, gamma of shape 2. */
  static SimulatedLine bunched(SplittableRandom random, double perHour) {
    double[] rates = new double[MINUTES];
    for (int i = 0; i < MINUTES; i += 10) {
      double gamma = -Math.log((1 - random.nextDouble()) * (1 - random.nextDouble())) / 2;
      Arrays.fill(rates, i, i + 10, perHour * gamma);
    }
    return new SimulatedLine(draw(random, rates), new double[] {MINUTES}, Double.NaN);
  }

  /** One spell of 120 min that declines throughout; true moment where it has halved. */
  static SimulatedLine decline(SplittableRandom random, double perHour, double halfLife) {
    double[] rates = new double[120];
    Arrays.setAll(rates, i -> perHour * Math.pow(0.5, (i + 0.5) / halfLife));
    double truth = Double.NaN;
    double sum = 0;
    double hour = 0;
    for (int i = 0; i < rates.length && Double.isNaN(truth); i++) {
      double going = i < 60 ? (i == 0 ? 0 : sum / i) : hour;
      if (i >= 20 && rates[i] <= going / 2) {
        truth = i;
      }
      sum += rates[i];
      hour = i < 60 ? sum / 60 : hour;
    }
    return new SimulatedLine(draw(random, rates), new double[] {120}, truth);
  }

  /** Three spells of an hour with rests between, at given rates for the halves of each. */
  static SimulatedLine rested(SplittableRandom random, double... halfHours) {
    double[] rates = new double[halfHours.length * 30];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = halfHours[i / 30];
    }
    double[] ends = new double[halfHours.length / 2];
    Arrays.setAll(ends, i -> 60.0 * (i + 1));
    return new SimulatedLine(draw(random, rates), ends, Double.NaN);
  }

  /** A line that gets better throughout. */
  static SimulatedLine rising(SplittableRandom random, double from, double to) {
    double[] rates = new double[MINUTES];
    Arrays.setAll(rates, i -> from + (to - from) * i / MINUTES);
    return new SimulatedLine(draw(random, rates), new double[] {MINUTES}, Double.NaN);
  }

  /** As many bites as given, uniform over one spell of the given bait minutes. */
  static SimulatedLine uniform(SplittableRandom random, int bites, double minutes) {
    double[] times = random.doubles(bites).map(u -> u * minutes).sorted().toArray();
    return new SimulatedLine(times, new double[] {minutes}, Double.NaN);
  }

  private static double[] draw(SplittableRandom random, double[] perHour) {
    double[] times = new double[64];
    int n = 0;
    double need = -Math.log(1 - random.nextDouble());
    double passed = 0;
    for (int i = 0; i < perHour.length; i++) {
      double step = perHour[i] / 60;
      while (passed + step >= need && step > 0) {
        if (n == times.length) {
          times = Arrays.copyOf(times, 2 * n);
        }
        times[n++] = Math.min(Math.nextDown(i + 1.0), i + (need - passed) / step);
        need -= Math.log(1 - random.nextDouble());
      }
      passed += step;
    }
    return Arrays.copyOf(times, n);
  }
}
