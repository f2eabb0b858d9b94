package org.fadeline.sim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.Learned;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;

/**
 * How many of water A's tiring lines can be found at a given share of false flags: by the engine,
 * by an observer told the true curve, with a rate of change learned from earlier sessions, and with
 * signs beyond bites. Each line has three even ones beside it, of as many bites in the same bait
 * time. Seeded and not timed.
 */
final class FoundAtEqualFalseFlags {
  private static final long SEED = 20_260_301;
  private static final int EVEN = 3;
  private static final int EARLIER = 20;

  private final List<WaterAShallow.Stay> stays = new ArrayList<>();
  private final List<List<SimulatedLine>> even = new ArrayList<>();

  private FoundAtEqualFalseFlags(int matches, WaterAShallow.Fed fed) {
    for (int i = 0; i < matches; i++) {
      WaterAShallow.Stay stay = WaterAShallow.firstStay(i + 1, fed);
      stays.add(stay);
      List<SimulatedLine> beside = new ArrayList<>();
      for (int k = 0; k < EVEN; k++) {
        beside.add(
            SimulatedLine.uniform(
                new SplittableRandom(SEED + 3L * i + k),
                stay.line().bites().length,
                stay.line().minutes()));
      }
      even.add(beside);
    }
  }

  /** A figure for each tiring line and each even one: the higher, the likelier a fade. */
  private static final class Scores {
    private final double[] tiring;
    private final double[] constant;

    Scores(double[] tiring, double[] constant) {
      this.tiring = tiring;
      this.constant = constant;
    }

    /** Share of tiring lines above the level that this share of even ones reaches. */
    String atFalse(double share) {
      double[] sorted = constant.clone();
      Arrays.sort(sorted);
      double level = sorted[sorted.length - 1 - (int) (share * sorted.length)];
      return String.format(
          Locale.ROOT,
          "%s above %.2f",
          FadeScore.share(
              (int) Arrays.stream(tiring).filter(v -> v > level).count(), tiring.length),
          level);
    }

    String atLevel(double level) {
      return FadeScore.share(
              (int) Arrays.stream(tiring).filter(v -> v >= level).count(), tiring.length)
          + " | "
          + FadeScore.share(
              (int) Arrays.stream(constant).filter(v -> v >= level).count(), constant.length);
    }

    Scores plus(Scores other) {
      return new Scores(sum(logits(tiring), other.tiring), sum(logits(constant), other.constant));
    }

    private static double[] logits(double[] p) {
      return Arrays.stream(p).map(v -> Math.log((v + 1e-6) / (1 - v + 1e-6))).toArray();
    }

    private static double[] sum(double[] a, double[] b) {
      double[] result = new double[a.length];
      Arrays.setAll(result, i -> a[i] + b[i]);
      return result;
    }
  }

  private interface Measure {
    double of(SimulatedLine line, int match, int which);
  }

  private Scores scores(Measure measure) {
    double[] tiring = new double[stays.size()];
    double[] constant = new double[EVEN * stays.size()];
    for (int i = 0; i < tiring.length; i++) {
      tiring[i] = measure.of(stays.get(i).line(), i, -1);
      for (int k = 0; k < EVEN; k++) {
        constant[EVEN * i + k] = measure.of(even.get(i).get(k), i, k);
      }
    }
    return new Scores(tiring, constant);
  }

  private Scores engine(FadeOptions options) {
    return scores(
        (line, match, which) ->
            FadePosterior.atEnd(line.record(), options).get(0).verdict().probability());
  }

  /** Log likelihood ratio of the true curve against an even rate, given how many bites came. */
  private Scores oracle() {
    return scores(
        (line, match, which) -> {
          double[] rates = stays.get(match).perHour();
          double mean = Arrays.stream(rates).average().orElseThrow();
          double sum = 0;
          for (double bite : line.bites()) {
            sum += Math.log(rates[Math.min(rates.length - 1, (int) bite)] / mean);
          }
          return sum;
        });
  }

  /** How a sign runs over a stay: its value at the start and, where the line tires, at the end. */
  private record Sign(String words, double atStart, double atEnd, boolean weight) {
    private static final double SPREAD = 0.4;

    /** Log likelihood ratio of the sign drawn for one bite, {@code along} the stay, 0 to 1. */
    double evidence(SplittableRandom random, double along, double changed) {
      double even = atStart;
      double tired = atStart + (atEnd - atStart) * along;
      double truth = even + (tired - even) * changed;
      if (weight) {
        double x = truth + SPREAD * random.nextGaussian();
        return ((x - even) * (x - even) - (x - tired) * (x - tired)) / (2 * SPREAD * SPREAD);
      }
      boolean shown = random.nextDouble() < truth;
      return shown ? Math.log(tired / even) : Math.log((1 - tired) / (1 - even));
    }
  }

  private static final List<Sign> SIGNS =
      List.of(
          new Sign("bites missed, 30% rising to 50%", 0.3, 0.5, false),
          new Sign("hook-ups lost or foul, 12% rising to 25%", 0.12, 0.25, false),
          new Sign("fish a third smaller by the end", 0, Math.log(2 / 3.0), true));

  /**
   * @param changed 1 where the sign really runs so on tiring lines, 0 where it never does
   */
  private Scores signs(List<Sign> signs, double changed) {
    return scores(
        (line, match, which) -> {
          SplittableRandom random = new SplittableRandom(SEED + 17L * match + 5L * which + 5);
          double sum = 0;
          for (double bite : line.bites()) {
            for (Sign sign : signs) {
              sum += sign.evidence(random, bite / line.minutes(), which < 0 ? changed : 0);
            }
          }
          return sum;
        });
  }

  private static double learned(int draw, WaterAShallow.Fed fed) {
    List<SessionSummary> earlier = new ArrayList<>();
    for (int i = 0; i < EARLIER; i++) {
      long seed = 100_000L + 1000L * draw + i;
      earlier.add(
          SessionSummaries.whole(
              Reviewer.review(
                  DemoMatch.generate(DemoWaters.waterA(), WaterAShallow.plan(fed), seed),
                  ReviewSettings.DEFAULT)));
    }
    return Learned.priors(List.of(), earlier).orElseThrow().changeHazard();
  }

  private static void row(String name, Scores scores) {
    System.out.println(
        "| " + name + " | " + scores.atFalse(0.03) + " | " + scores.atFalse(0.01) + " |");
  }

  /** Prints the tables; arguments: matches, 300 by default; seasons drawn, 4 by default. */
  public static void main(String[] arguments) {
    int matches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
    int seasons = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 4;
    WaterAShallow.Fed fed = WaterAShallow.Fed.MAIN_FEEDS;
    FoundAtEqualFalseFlags lines = new FoundAtEqualFalseFlags(matches, fed);
    row("told the true curve", lines.oracle());
    Scores engine = lines.engine(FadeOptions.DEFAULT);
    row("engine", engine);
    System.out.println("engine at 0.5: " + engine.atLevel(0.5));
    System.out.println("engine at 0.8: " + engine.atLevel(0.8));
    for (double changed : new double[] {1, 0}) {
      for (Sign sign : SIGNS) {
        row(sign.words() + ", truth " + changed, engine.plus(lines.signs(List.of(sign), changed)));
      }
      row("all three, truth " + changed, engine.plus(lines.signs(SIGNS, changed)));
    }
    if (seasons == 0) {
      return;
    }
    double total = 0;
    for (int draw = 0; draw < seasons; draw++) {
      double hazard = learned(draw, fed);
      System.out.printf(Locale.ROOT, "season %d teaches %.3f changes an hour%n", draw, hazard);
      total += hazard / seasons;
    }
    Scores taught = lines.engine(FadeOptions.DEFAULT.withHazard(total));
    System.out.printf(
        Locale.ROOT,
        "at their mean, %.3f: at 0.5 %s, at 0.8 %s%n",
        total,
        taught.atLevel(0.5),
        taught.atLevel(0.8));
    row("engine, rate of change learned", taught);
  }
}
