package org.fadeline.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.demo.DemoMatch.Played;
import org.fadeline.model.Session;

/**
 * What each rule for real records does by itself: the matches of {@link RecordTrial} without it.
 */
final class RulesTrial {
  private RulesTrial() {}

  /** Ways of keeping a record, each with the rules that bear on it. */
  static Map<Kept, List<RuleOff>> pairs() {
    Map<Kept, List<RuleOff>> all = new LinkedHashMap<>();
    all.put(Kept.FULL, List.of(RuleOff.NONE, RuleOff.HANDLING));
    all.put(Kept.NO_CASTS, List.of(RuleOff.NONE, RuleOff.HOOK_UPS, RuleOff.OPENING));
    all.put(Kept.MOVES_AND_FISH, List.of(RuleOff.NONE, RuleOff.OPENING));
    all.put(Kept.FISH_ONLY, List.of(RuleOff.NONE, RuleOff.OPENING, RuleOff.UNASSIGNED));
    all.put(Kept.CLICKER_15, List.of(RuleOff.NONE, RuleOff.COUNTS));
    all.put(Kept.ROUNDED_5, List.of(RuleOff.NONE, RuleOff.CLOCK));
    all.put(Kept.FISH_ROUNDED_5, List.of(RuleOff.NONE, RuleOff.CLOCK));
    return all;
  }

  /** Tallies of one way of keeping a record without one of the rules. */
  static final class Tally {
    int matches;
    int half;
    int eight;
    int found;
    int sure;
    int held;
    double rateError;
    int rates;

    void addConstant(RecordTrial.Reviewed reviewed, double truth) {
      matches++;
      half += reviewed.probability() >= 0.5 ? 1 : 0;
      eight += reviewed.probability() >= 0.8 ? 1 : 0;
      if (!Double.isNaN(reviewed.rate())) {
        rates++;
        rateError += Math.abs(reviewed.rate() / truth - 1);
      }
    }

    void addFalling(RecordTrial.Reviewed reviewed, long tau) {
      if (reviewed.probability() >= 0.5) {
        found++;
        held += reviewed.holds(tau) ? 1 : 0;
      }
      sure += reviewed.probability() >= 0.8 ? 1 : 0;
    }

    String row(String name) {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %s / %s | %s / %s | %s | %s |",
          name,
          matches,
          share(half, matches),
          share(eight, matches),
          share(found, matches),
          share(sure, matches),
          found == 0 ? "–" : share(held, found) + " of " + found,
          rates == 0 ? "–" : String.format(Locale.ROOT, "%.0f%%", 100 * rateError / rates));
    }

    private static String share(int part, int of) {
      return String.format(Locale.ROOT, "%.1f%%", 100.0 * part / of);
    }
  }

  static Tally run(Kept kept, RuleOff off, int from, int matches) {
    Tally tally = new Tally();
    for (int i = from; i < from + matches; i++) {
      long seed = 40_000L + i;
      Played constant = RecordTrial.match(false, seed);
      tally.addConstant(
          reviewed(constant.session(), kept, off, seed),
          RecordTrial.Reviewed.fishPerHour(constant.session()));
      Session falling = RecordTrial.match(true, seed).session();
      tally.addFalling(
          reviewed(falling, kept, off, seed),
          falling.match().allIn() + RecordTrial.stepMinute(seed) * 60_000L);
    }
    return tally;
  }

  private static RecordTrial.Reviewed reviewed(Session full, Kept kept, RuleOff off, long seed) {
    return new RecordTrial.Reviewed(off.of(kept.of(full, seed)), ReviewSettings.DEFAULT);
  }

  /**
   * Prints the table; arguments: matches of each kind (a quarter where times are imputed); names of
   * the records to run, all by default.
   */
  public static void main(String[] args) {
    int matches = args.length > 0 ? Integer.parseInt(args[0]) : 60;
    System.out.println(
        "| record | without | matches | no fade: flagged | fade: flagged | interval holds it | rate"
            + " out |");
    pairs()
        .forEach(
            (kept, rules) -> {
              if (args.length > 1 && !List.of(args).contains(kept.name())) {
                return;
              }
              boolean coarse = kept == Kept.ROUNDED_5 || kept == Kept.FISH_ROUNDED_5;
              for (RuleOff off : rules) {
                System.out.println(
                    run(kept, off, 0, coarse ? matches / 4 : matches)
                        .row(kept.words() + " | " + off.words()));
              }
            });
  }
}
