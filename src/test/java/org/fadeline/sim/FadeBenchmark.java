package org.fadeline.sim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.fadeline.stats.FadeMoment;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;

/**
 * Finds fades in simulated lines whose truth is known and prints the tables of the methods
 * document. Seeded and not timed: the same arguments print the same figures.
 */
public final class FadeBenchmark {
  private static final long SEED = 20_260_301;

  private FadeBenchmark() {}

  static Map<String, Function<SplittableRandom, SimulatedLine>> singleSpells() {
    Map<String, Function<SplittableRandom, SimulatedLine>> all = new LinkedHashMap<>();
    all.put("20→2", r -> SimulatedLine.step(r, 20, 2));
    all.put("12→3", r -> SimulatedLine.step(r, 12, 3));
    all.put("8→4", r -> SimulatedLine.step(r, 8, 4));
    all.put("no fade, 10/h", r -> SimulatedLine.constant(r, 10));
    all.put("no fade, bunched, 12/h", r -> SimulatedLine.bunched(r, 12));
    all.put("rising 4→14", r -> SimulatedLine.rising(r, 4, 14));
    all.put("gradual, 20/h halving in 40 min", r -> SimulatedLine.decline(r, 20, 40));
    all.put("gradual, 12/h halving in 60 min", r -> SimulatedLine.decline(r, 12, 60));
    return all;
  }

  static FadeScore score(
      Function<SplittableRandom, SimulatedLine> scenario, int lines, FadeOptions options) {
    return score(scenario, lines, options, true);
  }

  static FadeScore score(
      Function<SplittableRandom, SimulatedLine> scenario,
      int lines,
      FadeOptions options,
      boolean watching) {
    FadeScore score = new FadeScore();
    for (int i = 0; i < lines; i++) {
      SimulatedLine line = scenario.apply(new SplittableRandom(SEED + i));
      FadePosterior fade =
          watching
              ? FadePosterior.review(line.record(), options).get(0)
              : FadePosterior.atEnd(line.record(), options).get(0);
      score.add(fade, line.truth());
    }
    return score;
  }

  /**
   * Prints everything. Arguments: simulated lines of each kind, 1000 by default; part of a name to
   * run only some; "end" to leave out watching minute by minute.
   */
  public static void main(String[] arguments) {
    int lines = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
    String only = arguments.length > 1 ? arguments[1] : "";
    boolean watching = arguments.length < 3 || !arguments[2].equals("end");
    FadeOptions options = FadeOptions.DEFAULT;
    say(
        "| lines | n | flagged at 0.5 | at 0.8 | error, median / mean, min | 90% interval covers |"
            + " its width, min | called at 0.8 while watching |");
    say("|---|---|---|---|---|---|---|---|");
    Map<String, FadeScore> scores = new LinkedHashMap<>();
    singleSpells()
        .forEach(
            (name, scenario) -> {
              if (name.contains(only)) {
                FadeScore score = score(scenario, lines, options, watching);
                scores.put(name, score);
                say(score.row(name));
              }
            });
    say("");
    if (watching) {
      calls(scores, lines);
    }
    if (only.isEmpty() || only.equals("place")) {
      places(lines, options);
    }
    if (only.isEmpty() || only.equals("rest")) {
      rests(lines, options);
    }
    if (only.isEmpty() || only.equals("A")) {
      for (WaterAShallow.Fed fed : WaterAShallow.Fed.values()) {
        waterA(300, fed, options);
      }
    }
    if (only.isEmpty() || only.equals("rules")) {
      rules(lines);
    }
  }

  /** What an observer who knows both rates and the hazard would need on the same lines, beside. */
  private static void calls(Map<String, FadeScore> scores, int lines) {
    say("| lines | who | level | called before the change | ever called | delay, min |");
    say("|---|---|---|---|---|---|");
    double[][] rates = {{20, 2}, {12, 3}, {8, 4}};
    for (double[] pair : rates) {
      String name = String.format(Locale.ROOT, "%.0f→%.0f", pair[0], pair[1]);
      FadeScore score = scores.get(name);
      if (score == null) {
        continue;
      }
      CallScore knowing = new CallScore();
      KnowingObserver observer =
          new KnowingObserver(pair[0], pair[1], FadeOptions.DEFAULT.hazard());
      double[] minutes = new double[SimulatedLine.MINUTES];
      Arrays.setAll(minutes, i -> i + 1);
      for (int i = 0; i < lines; i++) {
        SimulatedLine line = SimulatedLine.step(new SplittableRandom(SEED + i), pair[0], pair[1]);
        knowing.add(minutes, observer.watch(line), line.truth());
      }
      say("| " + name + " | knowing observer | " + knowing.delayAtLevel(0.8));
      say("| " + name + " | knowing observer | " + knowing.delayAtLevel(0.5));
      say("| " + name + " | engine | " + score.calls().delayAtLevel(0.8));
      say("| " + name + " | engine | " + score.calls().delayAtLevel(0.5));
      for (double level : new double[] {0.8, 0.5}) {
        double alarms = knowing.earlyAtLevel(level);
        say(
            "| "
                + name
                + " | engine, as many early calls | "
                + score.calls().delayAtAlarms(alarms));
      }
      say(name + ", plain at less true moment where flagged: " + score.plainDelay());
    }
  }

  /** How close the moment can be placed at all: the engine beside an observer told the rates. */
  static void places(int lines, FadeOptions options) {
    say(
        "| lines | who | lines placed | median error, min | at most 8 min | of 50 lines, at most 8 |");
    say("|---|---|---|---|---|---|");
    for (double[] pair : new double[][] {{20, 2}, {12, 3}, {8, 4}}) {
      KnowingObserver observer =
          new KnowingObserver(pair[0], pair[1], FadeOptions.DEFAULT.hazard());
      List<Double> engine = new ArrayList<>();
      List<Double> knowing = new ArrayList<>();
      List<Double> same = new ArrayList<>();
      for (int i = 0; i < lines; i++) {
        SimulatedLine line = SimulatedLine.step(new SplittableRandom(SEED + i), pair[0], pair[1]);
        double known = Math.abs(observer.place(line, 90, 210) - line.truth());
        knowing.add(known);
        FadePosterior.Verdict verdict =
            FadePosterior.atEnd(line.record(), options).get(0).verdict();
        FadeMoment moment = verdict.moment();
        if (verdict.probability() >= 0.5 && moment != null) {
          engine.add(Math.abs(moment.median() - line.truth()));
          same.add(known);
        }
      }
      String name = String.format(Locale.ROOT, "| %.0f→%.0f | ", pair[0], pair[1]);
      say(name + "engine, where flagged | " + placed(engine));
      say(name + "knowing observer, the same lines | " + placed(same));
      say(name + "knowing observer, all lines | " + placed(knowing));
    }
  }

  /**
   * Median with its exact distribution-free 95% limits (order statistics, as in Conover 1999,
   * Practical Nonparametric Statistics, section 3.2), share within 8 min, and how often the median
   * of 50 such lines would come out at 8 min or less.
   */
  private static String placed(List<Double> errors) {
    Collections.sort(errors);
    int n = errors.size();
    BinomialDistribution half = BinomialDistribution.of(n, 0.5);
    int low = Math.max(0, half.inverseCumulativeProbability(0.025) - 1);
    int high = Math.min(n - 1, half.inverseCumulativeProbability(0.975));
    int within = (int) errors.stream().filter(e -> e <= 8).count();
    double ofFifty = BinomialDistribution.of(50, within / (double) n).survivalProbability(25);
    return String.format(
        Locale.ROOT,
        "%d | %.1f (%.1f–%.1f) | %s | %.0f%% |",
        n,
        errors.get(n / 2),
        errors.get(low),
        errors.get(high),
        FadeScore.share(within, n),
        100 * ofFifty);
  }

  static void rests(int lines, FadeOptions options) {
    Map<String, double[]> rates = new LinkedHashMap<>();
    rates.put("rests, no fade, 12/h", new double[] {12, 12, 12, 12, 12, 12});
    rates.put("rests, each spell 15→4, recovered", new double[] {15, 4, 15, 4, 15, 4});
    rates.put("rests, first spell 15→3, not recovered", new double[] {15, 3, 3, 3, 3, 3});
    rates.put("rests, third spell 12→2", new double[] {12, 12, 12, 12, 12, 2});
    rates.forEach(
        (name, halves) -> {
          FadeScore[] scores = {new FadeScore(), new FadeScore(), new FadeScore()};
          int notBack = 0;
          for (int i = 0; i < lines; i++) {
            SimulatedLine line = SimulatedLine.rested(new SplittableRandom(SEED + i), halves);
            for (FadePosterior fade : FadePosterior.atEnd(line.record(), options)) {
              int s = fade.spell();
              boolean halved = halves[2 * s + 1] <= halves[2 * s] / 2;
              scores[s].add(fade, halved ? 60 * s + 30 : Double.NaN);
              notBack += s == 1 && fade.verdict().notComeBack() >= 0.5 ? 1 : 0;
            }
          }
          for (int s = 0; s < 3; s++) {
            say(scores[s].row(name + ": spell " + (s + 1)));
          }
          say(name + ": second spell \"had not come back\" " + FadeScore.share(notBack, lines));
        });
  }

  static void waterA(int matches, WaterAShallow.Fed fed, FadeOptions options) {
    FadeScore shallow = new FadeScore();
    FadeScore constant = new FadeScore();
    double minutes = 0;
    double bites = 0;
    for (int i = 0; i < matches; i++) {
      SimulatedLine line = WaterAShallow.firstSpell(i + 1, fed);
      minutes += line.minutes() / matches;
      bites += line.bites().length / (double) matches;
      shallow.add(FadePosterior.review(line.record(), options).get(0), Double.NaN);
      for (int k = 0; k < 3; k++) {
        SimulatedLine even =
            SimulatedLine.uniform(
                new SplittableRandom(SEED + 3L * i + k), line.bites().length, line.minutes());
        constant.add(FadePosterior.review(even.record(), options).get(0), Double.NaN);
      }
    }
    say(
        String.format(
            Locale.ROOT,
            "water A shallow, %s: %.1f bites in %.1f bait minutes",
            fed,
            bites,
            minutes));
    say(shallow.row("water A, shallow, first spell"));
    say(constant.row("constant, same bait time and bites"));
  }

  static void rules(int lines) {
    singleSpells()
        .forEach(
            (name, scenario) -> {
              int[] flagged = new int[2];
              List<Double> gap = new ArrayList<>();
              List<Double> window = new ArrayList<>();
              for (int i = 0; i < lines; i++) {
                SimulatedLine line = scenario.apply(new SplittableRandom(SEED + i));
                double a = SimpleRules.firstGap(line, 20);
                double b = SimpleRules.halfOfBest(line, 30);
                flagged[0] += Double.isNaN(a) ? 0 : 1;
                flagged[1] += Double.isNaN(b) ? 0 : 1;
                if (!Double.isNaN(a) && !Double.isNaN(line.truth())) {
                  gap.add(Math.abs(a - line.truth()));
                }
                if (!Double.isNaN(b) && !Double.isNaN(line.truth())) {
                  window.add(Math.abs(b - line.truth()));
                }
              }
              say(
                  String.format(
                      Locale.ROOT,
                      "| %s | %s | %s | %s | %s |",
                      name,
                      FadeScore.share(flagged[0], lines),
                      minutes(gap),
                      FadeScore.share(flagged[1], lines),
                      minutes(window)));
            });
  }

  private static String minutes(List<Double> errors) {
    return errors.isEmpty() ? "–" : String.format(Locale.ROOT, "%.1f", FadeScore.median(errors));
  }

  private static void say(String line) {
    System.out.println(line);
  }
}
