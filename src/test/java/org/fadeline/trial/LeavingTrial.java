package org.fadeline.trial;

import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import org.fadeline.stats.Bunching;
import org.fadeline.stats.ChangePointBins;
import org.fadeline.stats.DeclineFit;
import org.fadeline.stats.MarginalValue;

/**
 * How often the limits of a leaving time hold the true one, and how often one is given where a line
 * does not fall at all. Lines by their starting rate, half-life and number of visits; each visit
 * lasts 20 to 60 bait minutes, drawn evenly.
 *
 * <p>{@code LeavingTrial 2000} prints the table of docs/methods.md.
 */
public final class LeavingTrial {
  private static final double MOVING = 12;
  private static final double LEVEL = 0.05;

  /** Bait minutes of the longest visit. */
  private static final int LONGEST = 60;

  private LeavingTrial() {}

  /**
   * A kind of line.
   *
   * @param perHour bites a bait hour at the start of a visit
   * @param halfLife bait minutes in which it halves; infinite where it does not fall
   * @param visits to it
   * @param bunched whether each ten minutes have a rate of their own, gamma with shape 2
   */
  public record Kind(double perHour, double halfLife, int visits, boolean bunched) {
    double decay() {
      return Math.log(2) / halfLife;
    }
  }

  /**
   * What came of many lines.
   *
   * @param lines how many had a bite at all
   * @param given for how many of them a leaving time was given
   * @param held where given, how often its limits held the true one
   * @param heldAlways how often the limits of the decline held the true one, given or not
   * @param medianMinutes middle of the times given
   */
  public record Outcome(int lines, int given, int held, int heldAlways, double medianMinutes) {}

  /** Runs a kind of line. */
  public static Outcome run(Kind kind, int lines, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int fitted = 0;
    int held = 0;
    int heldAlways = 0;
    double[] given = new double[lines];
    int g = 0;
    double truth = leaveAfter(kind.decay());
    for (int i = 0; i < lines; i++) {
      Made made = made(kind, random);
      if (made.bins().countBetween(0, made.bins().size()) == 0) {
        continue;
      }
      fitted++;
      DeclineFit plain = DeclineFit.of(made.bins(), middles());
      DeclineFit wide = DeclineFit.of(made.bins().dividedBy(made.bunching()), middles());
      double low = wide.decayLimits().low();
      double high = wide.decayLimits().high();
      boolean holds = low <= kind.decay() && kind.decay() <= high;
      heldAlways += holds ? 1 : 0;
      if (plain.decay() > 0 && plain.pDecline() < LEVEL && wide.pDecline() < LEVEL) {
        given[g++] = leaveAfter(plain.decay());
        boolean upper = low <= 0 || truth <= leaveAfter(low);
        held += upper && truth >= leaveAfter(high) ? 1 : 0;
      }
    }
    double[] sorted = Arrays.copyOf(given, g);
    Arrays.sort(sorted);
    return new Outcome(fitted, g, held, heldAlways, g == 0 ? Double.NaN : sorted[g / 2]);
  }

  private static double leaveAfter(double decay) {
    return decay > 0
        ? MarginalValue.exponential(1, decay, MOVING).leaveAfter()
        : Double.POSITIVE_INFINITY;
  }

  private record Made(ChangePointBins bins, double bunching) {}

  private static double[] middles() {
    double[] middles = new double[LONGEST];
    Arrays.setAll(middles, m -> m + 0.5);
    return middles;
  }

  private static Made made(Kind kind, SplittableRandom random) {
    double[] counts = new double[LONGEST];
    double[] hours = new double[LONGEST];
    Bunching bunching = new Bunching();
    for (int visit = 0; visit < kind.visits(); visit++) {
      bunching.rest();
      int length = 20 + random.nextInt(LONGEST - 19);
      double block = 0;
      double factor = 1;
      for (int m = 0; m < length; m++) {
        if (m % Bunching.BLOCK == 0) {
          factor = kind.bunched() ? (exponential(random) + exponential(random)) / 2 : 1;
          block = 0;
        }
        double mean = kind.perHour() / 60 * factor * Math.exp(-kind.decay() * (m + 0.5));
        int count = poisson(mean, random);
        counts[m] += count;
        hours[m] += 1.0 / 60;
        block += count;
        if (m % Bunching.BLOCK == Bunching.BLOCK - 1) {
          bunching.add(block);
        }
      }
    }
    return new Made(ChangePointBins.of(counts, hours), bunching.factor());
  }

  private static double exponential(SplittableRandom random) {
    return -Math.log(1 - random.nextDouble());
  }

  private static int poisson(double mean, SplittableRandom random) {
    double limit = Math.exp(-mean);
    double product = random.nextDouble();
    int count = 0;
    while (product > limit) {
      product *= random.nextDouble();
      count++;
    }
    return count;
  }

  /** Prints the table. */
  public static void main(String[] arguments) {
    int lines = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
    double never = Double.POSITIVE_INFINITY;
    Kind[] kinds = {
      new Kind(14, 40, 3, false),
      new Kind(14, 40, 4, false),
      new Kind(14, 40, 6, false),
      new Kind(25, 40, 3, false),
      new Kind(25, 25, 4, false),
      new Kind(60, 40, 4, false),
      new Kind(25, 90, 4, false),
      new Kind(25, 40, 4, true),
      new Kind(14, never, 4, false),
      new Kind(25, never, 4, false),
      new Kind(25, never, 4, true)
    };
    System.out.println(
        "| bites an hour at first | halves in | visits | true time | given | middle of those given"
            + " | limits hold it, where given | limits of the decline hold it, always |");
    System.out.println("|---|---|---|---|---|---|---|---|");
    for (Kind kind : kinds) {
      Outcome outcome = run(kind, lines, 20_261_130L);
      boolean falls = kind.halfLife() < never;
      System.out.printf(
          Locale.ROOT,
          "| %.0f%s | %s | %d | %s | %s | %s | %s | %s |%n",
          kind.perHour(),
          kind.bunched() ? ", bunched" : "",
          falls ? Math.round(kind.halfLife()) + " min" : "never",
          kind.visits(),
          falls ? Math.round(leaveAfter(kind.decay())) + " min" : "none",
          share(outcome.given(), outcome.lines()),
          outcome.given() == 0 ? "–" : Math.round(outcome.medianMinutes()) + " min",
          falls ? share(outcome.held(), outcome.given()) : "–",
          share(outcome.heldAlways(), outcome.lines()));
    }
  }

  private static String share(int of, int all) {
    if (all == 0) {
      return "–";
    }
    return String.format(Locale.ROOT, "%.1f%%", 100.0 * of / all);
  }
}
