package org.fadeline.ui.season;

import java.util.Locale;
import org.fadeline.analysis.season.Learned;
import org.fadeline.analysis.season.StandingOut;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;

/** How the season screen says things. */
final class SeasonWords {
  static final String READING = "Still reading the folder.";

  private SeasonWords() {}

  /** Returns in what a session stands out, with what the rest lies between. */
  static String standsOut(StandingOut one, Units units) {
    return switch (one.measure()) {
          case WEIGHT -> Say.roughWeight(one.value(), units) + " an hour";
          case FISH -> Say.number(one.value()) + " fish an hour";
          case SCALES -> String.format(Locale.ROOT, "scales ×%.2f of logged", one.value());
        }
        + "; half of "
        + one.sessions()
        + " matches: "
        + switch (one.measure()) {
          case WEIGHT -> Say.roughWeights(one.low(), one.high(), units);
          case FISH -> Say.number(one.low()) + "–" + Say.number(one.high());
          case SCALES -> String.format(Locale.ROOT, "×%.2f–%.2f", one.low(), one.high());
        };
  }

  /** Returns what the sessions teach, with what it rests on. */
  static String learned(Learned learned) {
    Learned.DaysLearned days = learned.days();
    return String.format(
            Locale.ROOT,
            "A line's rate changes %.2f times a bait hour (%.2f–%.2f at 90%%), from %s of a line;"
                + " 0.25 is used otherwise. ",
            learned.hazard().perHour(),
            learned.hazard().interval().low(),
            learned.hazard().interval().high(),
            Say.count(learned.hazard().records(), "record"))
        + (days == null
            ? "How much days differ by themselves: too few matches to tell."
            : String.format(
                Locale.ROOT,
                "Days differ by themselves by %.2f of the log rate; 0.50 is used otherwise.",
                days.sigma()));
  }
}
