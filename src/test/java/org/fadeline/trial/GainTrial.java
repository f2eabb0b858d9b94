package org.fadeline.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.StayOrGo.Gain;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoMatch.Played;
import org.fadeline.demo.DemoPlan;
import org.fadeline.demo.DemoWater;
import org.fadeline.demo.DemoWaters;
import org.jspecify.annotations.Nullable;

/** What the review says of moving against what moving would have given in the simulated match. */
final class GainTrial {
  private GainTrial() {}

  /**
   * One other line looked at after one stay past plain.
   *
   * @param gain what the review claims, or null where it claims nothing
   * @param hours the time there was to gain in
   * @param caught what staying gave
   * @param truth expected fish of the other line in those hours
   */
  record Row(
      StayOrGo.@Nullable Gain gain, double hours, int caught, double truth, String evidence) {
    boolean better() {
      return truth > caught;
    }
  }

  /** The expected fish of a line in a stretch, given its start and end. */
  interface Truth {
    double fish(String line, double from, double to, List<Spell> spells);
  }

  static List<Row> onRates(RandomPlans.Course course, int from, int matches) {
    List<Row> rows = new ArrayList<>();
    for (int i = from; i < from + matches; i++) {
      long seed = 7_000L + i;
      Played played =
          RateMatch.play(RandomPlans.rates(course, seed), RandomPlans.stays(seed), seed);
      collect(played, (l, f, t, spells) -> Counterfactual.onRates(played, l, f, t), rows);
    }
    return rows;
  }

  static List<Row> onWater(DemoWater water, DemoPlan usual, int from, int matches) {
    List<Row> rows = new ArrayList<>();
    for (int i = from; i < from + matches; i++) {
      DemoPlan plan = RandomPlans.on(water, usual, 300L + i);
      Played played = DemoMatch.play(water, plan, 9_000L + i);
      Truth truth =
          (l, f, t, spells) -> Counterfactual.onWater(water, played.session(), spells, l, f, t);
      collect(played, truth, rows);
    }
    return rows;
  }

  private static void collect(Played played, Truth truth, List<Row> rows) {
    ReviewSettings settings = ReviewSettings.DEFAULT;
    Review review = Reviewer.review(played.session(), settings);
    List<Spell> spells = review.stays().stream().map(StayOrGo::spell).toList();
    for (StayOrGo stay : review.stays()) {
      PastPlain past = stay.past();
      if (past == null) {
        continue;
      }
      List<String> seen = new ArrayList<>();
      for (OtherLine other : stay.others()) {
        if (seen.contains(other.lineId())) {
          continue;
        }
        seen.add(other.lineId());
        double cost = other.nextFished() ? 0 : settings.moveCostMinutes();
        double hours = (past.minutes() - cost) / 60;
        if (hours <= 0) {
          continue;
        }
        double from = past.plainAt() + cost * 60_000;
        double left = stay.spell().span().to();
        double fish = truth.fish(other.lineId(), from, left, spells);
        rows.add(
            new Row(
                other.gain(),
                hours,
                past.caught().landed(),
                fish,
                evidence(review, other.lineId(), from, left)));
      }
    }
  }

  /** Spells of the line for looking into: fish, hours, middle relative to the stretch's middle. */
  private static String evidence(Review review, String line, double from, double left) {
    StringBuilder text = new StringBuilder();
    double middle = (from + left) / 2;
    for (StayOrGo stay : review.stays()) {
      Spell spell = stay.spell();
      if (spell.lineId().equals(line)) {
        double at = (spell.span().from() + spell.span().to()) / 2.0;
        text.append(
            String.format(
                Locale.ROOT,
                "%d:%.4f:%.4f ",
                spell.caught().landed(),
                spell.fishedHours(),
                (at - middle) / 3_600_000));
      }
    }
    return text.toString().trim();
  }

  /** What became of a set of claims. */
  record Score(
      int stretches,
      int gains,
      int covered,
      int claims,
      int right,
      int against,
      int rightAgainst,
      double width) {
    static Score of(List<Row> rows) {
      int gains = 0;
      int covered = 0;
      int claims = 0;
      int right = 0;
      int against = 0;
      int rightAgainst = 0;
      double width = 0;
      for (Row row : rows) {
        Gain gain = row.gain();
        if (gain == null) {
          continue;
        }
        gains++;
        double truth = row.truth() - row.caught();
        width += gain.high() - gain.low();
        if (gain.low() <= truth && truth <= gain.high()) {
          covered++;
        }
        // Where staying gave nothing, any fish beats it: no claim to be right about.
        if (row.caught() == 0) {
          continue;
        }
        if (gain.probabilityBetter() >= 0.8) {
          claims++;
          right += row.better() ? 1 : 0;
        } else if (gain.probabilityBetter() <= 0.2) {
          against++;
          rightAgainst += row.better() ? 0 : 1;
        }
      }
      return new Score(
          rows.size(), gains, covered, claims, right, against, rightAgainst, width / gains);
    }

    String row(String name) {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %d | %.1f%% | %.1f | %d | %.1f%% | %d | %.1f%% |",
          name,
          stretches,
          gains,
          100.0 * covered / gains,
          width,
          claims,
          100.0 * right / claims,
          against,
          100.0 * rightAgainst / against);
    }
  }

  /**
   * Prints the table; arguments: matches of each kind, then the kinds wanted (all by default), and
   * "rows" to print every row.
   */
  public static void main(String[] args) {
    int matches = args.length > 0 ? Integer.parseInt(args[0]) : 200;
    List<String> wanted = List.of(args).subList(Math.min(1, args.length), args.length);
    boolean each = wanted.contains("rows");
    boolean all = wanted.stream().allMatch("rows"::equals);
    System.out.println(
        "| matches | stretches | with a gain | cover of 90% | width, fish | Pr ≥ 0.8 | right |"
            + " Pr ≤ 0.2 | right |");
    for (RandomPlans.Course course : RandomPlans.Course.values()) {
      String name = course.name().toLowerCase(Locale.ROOT);
      if (all || wanted.contains(name)) {
        print(name, onRates(course, 0, matches), each);
      }
    }
    if (all || wanted.contains("A")) {
      print("water A", onWater(DemoWaters.waterA(), DemoWaters.planA(), 0, matches), each);
    }
    if (all || wanted.contains("B")) {
      print("water B", onWater(DemoWaters.waterB(), DemoWaters.planB(), 0, matches), each);
    }
    if (all || wanted.contains("C")) {
      print("water C", onWater(DemoWaters.waterC(), DemoWaters.planC(), 0, matches), each);
    }
  }

  private static void print(String name, List<Row> rows, boolean each) {
    System.out.println(Score.of(rows).row(name));
    if (each) {
      for (Row row : rows) {
        System.out.printf(
            Locale.ROOT,
            "ROW,%s,%.4f,%d,%.4f,%s,%s%n",
            name,
            row.hours(),
            row.caught(),
            row.truth(),
            row.gain() == null
                ? ""
                : String.format(Locale.ROOT, "%.3f", row.gain().probabilityBetter()),
            row.evidence());
      }
    }
  }
}
