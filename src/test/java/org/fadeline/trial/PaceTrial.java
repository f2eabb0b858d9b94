package org.fadeline.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.Course.Finish;
import org.fadeline.analysis.Course.Pace;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoMatch.Played;
import org.fadeline.demo.DemoPlan;
import org.fadeline.demo.DemoPlan.Stay;
import org.fadeline.demo.DemoWater;
import org.fadeline.demo.DemoWaters;
import org.fadeline.sim.FadeScore;
import org.jspecify.annotations.Nullable;

/** The finish as told on the way against the finish of a match in which the angler stayed. */
final class PaceTrial {
  private PaceTrial() {}

  /** Tallies at one number of minutes before all out: at a lasting rate, and where it may tire. */
  record Tally(Held steady, Held tiring) {
    void add(Pace pace, int fish, double grams) {
      steady.add(pace.fish(), pace.weight(), fish, grams);
      tiring.add(pace.tiring().fish(), pace.tiring().weight(), fish, grams);
    }
  }

  /** How often intervals of the finish held it. */
  static final class Held {
    int told;
    int fishHeld;
    int fishAbove;
    int fishBelow;
    int weightHeld;
    int weights;
    double width;

    void add(Finish finish, @Nullable Finish weight, int fish, double grams) {
      told++;
      fishHeld += finish.low() <= fish && fish <= finish.high() ? 1 : 0;
      fishAbove += fish > finish.high() ? 1 : 0;
      fishBelow += fish < finish.low() ? 1 : 0;
      width += finish.high() - finish.low();
      if (weight != null) {
        weights++;
        weightHeld += weight.low() <= grams && grams <= weight.high() ? 1 : 0;
      }
    }

    void plus(Held other) {
      told += other.told;
      fishHeld += other.fishHeld;
      fishAbove += other.fishAbove;
      fishBelow += other.fishBelow;
      weightHeld += other.weightHeld;
      weights += other.weights;
      width += other.width;
    }

    String row(String name) {
      return String.format(
          Locale.ROOT,
          "| %s | %s | %.0f%% / %.0f%% | %.0f | %s |",
          name,
          FadeScore.share(fishHeld, told),
          100.0 * fishBelow / told,
          100.0 * fishAbove / told,
          width / told,
          FadeScore.share(weightHeld, weights));
    }
  }

  /** Minutes before all out at which the finish is looked at. */
  static final int[] BEFORE = {180, 120, 60, 30};

  static Tally[] onRates(RandomPlans.Course course, int from, int matches) {
    Tally[] tallies = tallies();
    for (int i = from; i < from + matches; i++) {
      long seed = 70_000L + i;
      double[] a = RandomPlans.other(course, new SplittableRandom(seed));
      Played played = RateMatch.play(Map.of("a", a), List.of(new Stay("a", 0, null)), seed);
      add(played, tallies);
    }
    return tallies;
  }

  /** Stays on the line of a random plan that is fished at each of the minutes looked at. */
  static Tally[] onWater(DemoWater water, DemoPlan usual, int from, int matches) {
    Tally[] tallies = tallies();
    for (int i = from; i < from + matches; i++) {
      DemoPlan plan = RandomPlans.on(water, usual, 500L + i);
      for (int k = 0; k < BEFORE.length; k++) {
        int minute = DemoMatch.MINUTES - BEFORE[k];
        List<Stay> stays = new ArrayList<>(plan.stays());
        stays.removeIf(s -> s.minute() > minute - 5);
        Played played =
            DemoMatch.play(water, new DemoPlan(stays, plan.feeds()), 11_000L + i * 7L + k);
        addAt(Reviewer.review(played.session(), ReviewSettings.DEFAULT), BEFORE[k], tallies[k]);
      }
    }
    return tallies;
  }

  private static Tally[] tallies() {
    Tally[] tallies = new Tally[BEFORE.length];
    Arrays.setAll(tallies, i -> new Tally(new Held(), new Held()));
    return tallies;
  }

  private static void add(Played played, Tally[] tallies) {
    Review review = Reviewer.review(played.session(), ReviewSettings.DEFAULT);
    for (int k = 0; k < BEFORE.length; k++) {
      addAt(review, BEFORE[k], tallies[k]);
    }
  }

  private static void addAt(Review review, int before, Tally tally) {
    Caught total =
        review.lines().stream().map(LineReview::caught).reduce(Caught.NOTHING, Caught::plus);
    long at = review.session().match().allOut() - before * 60_000L;
    for (Pace pace : review.course().pace()) {
      if (pace.at() == at) {
        tally.add(pace, total.landed(), total.weightG());
      }
    }
  }

  /** Prints the table; argument: matches of each kind. */
  public static void main(String[] args) {
    int matches = args.length > 0 ? Integer.parseInt(args[0]) : 200;
    System.out.println(
        "| line, min left | told | fish in the 90% interval | fewer / more | its width, fish |"
            + " weight in it |");
    System.out.println("|---|---|---|---|---|---|");
    for (RandomPlans.Course course : RandomPlans.Course.values()) {
      print(course.name().toLowerCase(Locale.ROOT), onRates(course, 0, matches));
    }
    print("water A", onWater(DemoWaters.waterA(), DemoWaters.planA(), 0, matches));
    print("water B", onWater(DemoWaters.waterB(), DemoWaters.planB(), 0, matches));
    print("water C", onWater(DemoWaters.waterC(), DemoWaters.planC(), 0, matches));
  }

  private static void print(String name, Tally[] tallies) {
    for (int k = 0; k < BEFORE.length; k++) {
      String row = name + ", " + BEFORE[k];
      System.out.println(tallies[k].steady().row(row + " | steady"));
      System.out.println(tallies[k].tiring().row(row + " | if tiring"));
    }
  }
}
