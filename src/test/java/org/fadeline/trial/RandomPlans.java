package org.fadeline.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.fadeline.demo.DemoPlan;
import org.fadeline.demo.DemoPlan.Stay;
import org.fadeline.demo.DemoWater;

/** Decisions and rates drawn at random, seeded. */
final class RandomPlans {
  private RandomPlans() {}

  /** How the other line goes over the match. */
  enum Course {
    /** One rate throughout. */
    CONSTANT,
    /** Two to four rates, each step a factor between ⅓ and 3. */
    STEPS,
    /** The log rate wanders by a standard deviation of 0.5 over an hour. */
    WANDERING
  }

  /**
   * The line "a" fishes well and falls by a step to a fifth or less of it, or half; "b" and "c" go
   * on by the course.
   */
  static Map<String, double[]> rates(Course course, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, double[]> rates = new HashMap<>();
    double high = 20 * Math.exp(0.4 * random.nextGaussian());
    double low = high * (random.nextBoolean() ? 0.15 : 0.4);
    int step = random.nextInt(55, 130);
    double[] a = new double[300];
    for (int minute = 0; minute < 300; minute++) {
      a[minute] = minute < step ? high : low;
    }
    rates.put("a", a);
    rates.put("b", other(course, random));
    rates.put("c", other(course, random));
    return rates;
  }

  static double[] other(Course course, SplittableRandom random) {
    double[] rates = new double[300];
    double rate = 11 * Math.exp(0.7 * random.nextGaussian());
    double sd = course == Course.WANDERING ? 0.5 / Math.sqrt(60) : 0;
    double change = course == Course.STEPS ? 0.5 / 60 : 0;
    for (int minute = 0; minute < 300; minute++) {
      rate *= Math.exp(sd * random.nextGaussian());
      if (random.nextDouble() < change) {
        rate *= Math.exp((2 * random.nextDouble() - 1) * Math.log(3));
      }
      rates[minute] = rate;
    }
    return rates;
  }

  /** A look at b and c, a long stay on a, then b and c again, maybe a once more. */
  static List<Stay> stays(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    boolean first = random.nextBoolean();
    String one = first ? "b" : "c";
    String two = first ? "c" : "b";
    double at = 0;
    List<Stay> stays = new ArrayList<>();
    stays.add(new Stay(one, 0, null));
    at += random.nextInt(12, 30);
    stays.add(new Stay(two, at, null));
    at += random.nextInt(12, 30);
    stays.add(new Stay("a", at, null));
    at += random.nextInt(90, 150);
    boolean swap = random.nextBoolean();
    stays.add(new Stay(swap ? one : two, at, null));
    at += random.nextInt(20, 50);
    stays.add(new Stay(swap ? two : one, at, null));
    return stays;
  }

  /** Another order and other lengths of stay on an invented water, fed as usual. */
  static DemoPlan on(DemoWater water, DemoPlan usual, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> lines =
        usual.stays().stream()
            .map(Stay::line)
            .distinct()
            .filter(l -> water.line(l) != null)
            .toList();
    List<Stay> stays = new ArrayList<>();
    double at = 0;
    String last = "";
    while (at < 285) {
      String line = lines.get(random.nextInt(lines.size()));
      // The edges are for the last hours (common practice).
      boolean edge = "edge".equals(water.line(line).line().kind());
      if (line.equals(last) || (edge && at < 170)) {
        continue;
      }
      stays.add(new Stay(line, at, null));
      last = line;
      at += random.nextInt(10) < 4 ? random.nextInt(60, 110) : random.nextInt(15, 45);
    }
    return new DemoPlan(stays, usual.feeds());
  }
}
