package org.fadeline.sim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * When somebody who watches simulated lines minute by minute would call their fade: for every
 * level, the first minute at which the probability seen reaches it.
 */
final class CallScore {
  private static final int LEVELS = 200;

  private final List<double[]> firstAbove = new ArrayList<>();
  private final List<Double> truths = new ArrayList<>();

  /** Takes in what was seen on one line with a true moment. */
  void add(double[] minutes, double[] probabilities, double truth) {
    double[] first = new double[LEVELS];
    Arrays.fill(first, Double.NaN);
    int reached = 0;
    for (int i = 0; i < probabilities.length; i++) {
      while (reached < LEVELS && probabilities[i] >= level(reached)) {
        first[reached++] = minutes[i];
      }
    }
    firstAbove.add(first);
    truths.add(truth);
  }

  private static double level(int index) {
    return (index + 0.5) / LEVELS;
  }

  /** Delay at the lowest level that gives at most this share of lines called before the change. */
  String delayAtAlarms(double alarms) {
    int level = 0;
    while (level < LEVELS - 1 && early(level) > alarms * firstAbove.size()) {
      level++;
    }
    return delayAt(level);
  }

  /** Delay of the first call at a level. */
  String delayAtLevel(double level) {
    return delayAt(indexOf(level));
  }

  /** Share of lines called before the change at a level. */
  double earlyAtLevel(double level) {
    return early(indexOf(level)) / (double) firstAbove.size();
  }

  private static int indexOf(double level) {
    return (int) Math.round(level * LEVELS - 0.5);
  }

  private String delayAt(int level) {
    List<Double> delays = new ArrayList<>();
    int called = 0;
    for (int i = 0; i < firstAbove.size(); i++) {
      double at = firstAbove.get(i)[level];
      called += Double.isNaN(at) ? 0 : 1;
      if (at >= truths.get(i)) {
        delays.add(at - truths.get(i));
      }
    }
    return String.format(
        Locale.ROOT,
        "%.2f | %s | %s | %.0f / %.0f |",
        level(level),
        FadeScore.share(early(level), firstAbove.size()),
        FadeScore.share(called, firstAbove.size()),
        FadeScore.median(delays),
        FadeScore.mean(delays));
  }

  private int early(int level) {
    int early = 0;
    for (int i = 0; i < firstAbove.size(); i++) {
      early += firstAbove.get(i)[level] < truths.get(i) ? 1 : 0;
    }
    return early;
  }
}
