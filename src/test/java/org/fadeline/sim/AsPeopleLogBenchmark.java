package org.fadeline.sim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.Spell;
import org.fadeline.demo.AsPeopleLog;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Session;

/**
 * What is left of fades and rates when the same simulated matches are logged as people log. Seeded
 * and not timed.
 */
public final class AsPeopleLogBenchmark {
  private AsPeopleLogBenchmark() {}

  static Map<String, BiFunction<Session, Long, Session>> habits() {
    Map<String, BiFunction<Session, Long, Session>> all = new LinkedHashMap<>();
    all.put("full record", (s, seed) -> s);
    all.put("no casts", (s, seed) -> AsPeopleLog.noCasts(s));
    all.put("no missed bites", (s, seed) -> AsPeopleLog.noMissedBites(s));
    all.put("moves and fish", (s, seed) -> AsPeopleLog.movesAndFish(s));
    all.put("fish only", (s, seed) -> AsPeopleLog.fishOnly(s));
    all.put("clicker, every 20 min", (s, seed) -> AsPeopleLog.clickerCounts(s, 20));
    all.put("to the minute", (s, seed) -> AsPeopleLog.roundedTo(s, 1));
    all.put("to five minutes", (s, seed) -> AsPeopleLog.roundedTo(s, 5));
    all.put("a tenth forgotten", (s, seed) -> AsPeopleLog.forgetting(s, 0.1, seed));
    all.put("misses forgotten when busy", AsPeopleLog::missesForgottenWhenBusy);
    return all;
  }

  /** Prints the table. Argument: number of matches, 60 by default. */
  public static void main(String[] arguments) {
    int matches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 60;
    System.out.println(
        "| logged as | spells judged | flagged at 0.5 | at 0.8 | shallow, first spell, at 0.5 |"
            + " fish/h against the full record |");
    System.out.println("|---|---|---|---|---|---|");
    List<Session> sessions = new ArrayList<>();
    List<Double> rates = new ArrayList<>();
    for (int i = 0; i < matches; i++) {
      sessions.add(DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), i + 1));
    }
    habits()
        .forEach(
            (name, habit) -> {
              int[] seen = new int[5];
              double fish = 0;
              double hours = 0;
              for (int i = 0; i < matches; i++) {
                Session session = habit.apply(sessions.get(i), (long) i);
                Review review = Reviewer.review(session, ReviewSettings.DEFAULT);
                for (LineReview line : review.lines()) {
                  for (Spell spell : line.spells()) {
                    fish += spell.caught().landed();
                    hours += spell.fishedHours();
                  }
                  boolean shallow = line.line().name().toLowerCase(Locale.ROOT).contains("shallow");
                  for (Fade fade : line.fades()) {
                    seen[0]++;
                    seen[1] += fade.probability() >= 0.5 ? 1 : 0;
                    seen[2] += fade.probability() >= 0.8 ? 1 : 0;
                    if (shallow && fade.spell() == 0) {
                      seen[3]++;
                      seen[4] += fade.probability() >= 0.5 ? 1 : 0;
                    }
                  }
                }
              }
              rates.add(fish / hours);
              System.out.println(
                  String.format(
                      Locale.ROOT,
                      "| %s | %d | %s | %s | %s | %.2f |",
                      name,
                      seen[0],
                      FadeScore.share(seen[1], seen[0]),
                      FadeScore.share(seen[2], seen[0]),
                      FadeScore.share(seen[4], seen[3]),
                      fish / hours / rates.get(0)));
            });
  }
}
