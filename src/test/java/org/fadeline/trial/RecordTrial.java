package org.fadeline.trial;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.HandlingTimes;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch.Played;
import org.fadeline.demo.DemoPlan.Stay;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/** What a record kept as people keep it does to fades and rates, with and without the rules. */
final class RecordTrial {
  private static final int MOVED_AT = 150;

  private static final ReviewSettings WITH_HANDLING =
      ReviewSettings.DEFAULT.withHandling(
          new HandlingTimes(Map.of(RateMatch.KIND, (double) RateMatch.HAND_SECONDS)));

  private RecordTrial() {}

  /** Tallies of one way of keeping a record. */
  static final class Tally {
    int matches;
    int flagged;
    int sure;
    int rawFlagged;
    int rawSure;
    int hookUpsFlagged;
    int hookUpsSure;
    int handlingFlagged;
    int handlingSure;
    int intervals;
    int held;
    int rawIntervals;
    int rawHeld;
    int rates;
    double rateError;
    double rawRateError;

    String row(String name) {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %s | %s | %s | %s | %s | %s | %.0f%% | %.0f%% |",
          name,
          matches,
          flags(rawFlagged, rawSure),
          flags(hookUpsFlagged, hookUpsSure),
          flags(flagged, sure),
          flags(handlingFlagged, handlingSure),
          share(rawHeld, rawIntervals),
          share(held, intervals),
          100 * rawRateError / rates,
          100 * rateError / rates);
    }

    private String flags(int half, int eight) {
      return String.format(
          Locale.ROOT, "%.1f%% / %.1f%%", 100.0 * half / matches, 100.0 * eight / matches);
    }

    private static String share(int part, int of) {
      return of == 0 ? "–" : String.format(Locale.ROOT, "%.0f%% of %d", 100.0 * part / of, of);
    }
  }

  /** Two and a half hours on a line at one rate, or falling to a quarter, then another line. */
  static Played match(boolean step, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double rate = random.nextDouble(14, 34);
    int change = stepMinute(seed);
    double[] a = new double[300];
    for (int minute = 0; minute < 300; minute++) {
      a[minute] = step && minute >= change ? rate / 4 : rate;
    }
    double[] b = new double[300];
    Arrays.fill(b, random.nextDouble(10, 30));
    Map<String, double[]> rates = new HashMap<>();
    rates.put("a", a);
    rates.put("b", b);
    return RateMatch.play(
        rates, List.of(new Stay("a", 0, null), new Stay("b", MOVED_AT, null)), seed);
  }

  static int stepMinute(long seed) {
    return new SplittableRandom(seed + 77).nextInt(50, 110);
  }

  static Tally run(Kept kept, boolean step, int from, int matches) {
    Tally tally = new Tally();
    for (int i = from; i < from + matches; i++) {
      long seed = 40_000L + i;
      Played played = match(step, seed);
      Session log = kept.of(played.session(), seed);
      long tau = log.match().allIn() + stepMinute(seed) * 60_000L;
      double truth = Reviewed.fishPerHour(played.session());
      Reviewed reviewed = new Reviewed(log, ReviewSettings.DEFAULT);
      Reviewed handled = new Reviewed(log, WITH_HANDLING);
      RawLog raw = new RawLog(log, "a", RawLog.Takes.ALL);
      RawLog hookUps = new RawLog(log, "a", RawLog.Takes.HOOK_UPS);
      tally.hookUpsFlagged += hookUps.probability() >= 0.5 ? 1 : 0;
      tally.hookUpsSure += hookUps.probability() >= 0.8 ? 1 : 0;
      tally.handlingFlagged += handled.probability >= 0.5 ? 1 : 0;
      tally.handlingSure += handled.probability >= 0.8 ? 1 : 0;
      tally.matches++;
      tally.flagged += reviewed.probability >= 0.5 ? 1 : 0;
      tally.sure += reviewed.probability >= 0.8 ? 1 : 0;
      tally.rawFlagged += raw.probability() >= 0.5 ? 1 : 0;
      tally.rawSure += raw.probability() >= 0.8 ? 1 : 0;
      if (reviewed.probability >= 0.5) {
        tally.intervals++;
        tally.held += reviewed.holds(tau) ? 1 : 0;
      }
      if (raw.probability() >= 0.5) {
        tally.rawIntervals++;
        tally.rawHeld += raw.holds(tau) ? 1 : 0;
      }
      if (!Double.isNaN(reviewed.rate)) {
        tally.rates++;
        tally.rateError += Math.abs(reviewed.rate / truth - 1);
        tally.rawRateError += Math.abs(raw.fishPerHour() / truth - 1);
      }
    }
    return tally;
  }

  /** Line "a" as the review sees it. */
  static final class Reviewed {
    private double probability;
    private double rate = Double.NaN;
    private Fade.@Nullable Moment moment;

    Reviewed(Session log, ReviewSettings settings) {
      Review review = Reviewer.review(log, settings);
      for (LineReview line : review.lines()) {
        if (line.line().id().equals("a")) {
          if (line.rates().fish() != null) {
            rate = line.rates().fish().perHour();
          }
          for (Fade fade : line.fades()) {
            if (fade.probability() > probability) {
              probability = fade.probability();
              moment = fade.moment();
            }
          }
        }
      }
    }

    double probability() {
      return probability;
    }

    /** Fish per fished hour; NaN where there is none. */
    double rate() {
      return rate;
    }

    static double fishPerHour(Session full) {
      return new RawLog(full, "a", RawLog.Takes.ALL).fishPerHour();
    }

    boolean holds(long instant) {
      Fade.Moment found = moment;
      return found != null && found.low() <= instant && instant <= found.high() + 60_000;
    }
  }

  /** Prints both tables; argument: matches of each kind (a quarter where times are imputed). */
  public static void main(String[] args) {
    int matches = args.length > 0 ? Integer.parseInt(args[0]) : 200;
    for (boolean step : new boolean[] {false, true}) {
      System.out.println(step ? "falling to a quarter" : "constant");
      for (Kept kept : Kept.values()) {
        boolean coarse = kept.words().startsWith("times to") || kept == Kept.FISH_ROUNDED_5;
        System.out.println(run(kept, step, 0, coarse ? matches / 4 : matches).row(kept.words()));
      }
    }
  }
}
