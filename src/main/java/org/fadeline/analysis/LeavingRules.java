package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.LeavingRule.Decline;
import org.fadeline.analysis.LeavingRule.LeaveAfter;
import org.fadeline.analysis.LeavingRule.Limits;
import org.fadeline.analysis.LeavingRule.Tested;
import org.fadeline.analysis.LeavingRule.Withheld;
import org.fadeline.analysis.ReviewSettings.Measure;
import org.fadeline.stats.DeclineFit;
import org.fadeline.stats.MarginalValue;
import org.jspecify.annotations.Nullable;

/** Works out how long a stay on each line pays, or why that cannot be told. */
final class LeavingRules {
  private final ReviewSettings settings;
  private final Grade grade;
  private final Fades fades;
  private final SentenceText words;

  LeavingRules(ReviewSettings settings, Grade grade, Fades fades, SentenceText words) {
    this.settings = settings;
    this.grade = grade;
    this.fades = fades;
    this.words = words;
  }

  /** Returns the rule of a line, or null where it was never fished with a bait in. */
  @Nullable LeavingRule of(LineEffort line) {
    List<FadeTrack> tracks = fades.tracks(line);
    Visits visits = tracks.get(0).visits();
    if (visits.count() == 0) {
      return null;
    }
    int bites = visits.bites();
    Withheld before = withheldBeforehand(visits, bites);
    if (before != null) {
      return rule(line, visits, bites, null, before);
    }
    Decline decline = decline(tracks, fades.bunchingBefore(line.line()));
    boolean falls =
        decline.decay() > 0
            && decline.limits().p() < LeavingRule.LEVEL_OF_TEST
            && decline.wide().p() < LeavingRule.LEVEL_OF_TEST;
    return rule(line, visits, bites, decline, falls ? null : Withheld.NO_DECLINE);
  }

  private @Nullable Withheld withheldBeforehand(Visits visits, int bites) {
    if (grade == Grade.FISH_ONLY) {
      return Withheld.ENDS_UNKNOWN;
    }
    if (visits.count() < LeavingRule.LEAST_VISITS) {
      return Withheld.FEW_VISITS;
    }
    if (bites == 0) {
      return Withheld.NO_BITES;
    }
    return settings.moveCostMinutes() > 0 ? null : Withheld.NO_COST;
  }

  /**
   * Fits the decline; where times were told coarsely, to every draw of them, of which the means and
   * the widest limits are taken.
   */
  private static Decline decline(List<FadeTrack> tracks, double bunchingBefore) {
    List<Decline> fits = new ArrayList<>();
    for (FadeTrack track : tracks.size() > 1 ? tracks.subList(1, tracks.size()) : tracks) {
      Visits visits = track.visits();
      if (visits.bites() > 0) {
        double bunching = track.bunching(bunchingBefore);
        DeclineFit plain = visits.fit(1);
        DeclineFit wide = visits.fit(bunching);
        fits.add(
            new Decline(
                plain.startingRate(), plain.decay(), tested(plain), tested(wide), bunching));
      }
    }
    return new Decline(
        mean(fits, Decline::startingRate),
        mean(fits, Decline::decay),
        widest(fits.stream().map(Decline::limits).toList()),
        widest(fits.stream().map(Decline::wide).toList()),
        mean(fits, Decline::bunching));
  }

  private static Tested tested(DeclineFit fit) {
    return new Tested(fit.decayLimits().low(), fit.decayLimits().high(), fit.pDecline());
  }

  private static double mean(List<Decline> fits, ToDoubleFunction<Decline> value) {
    return fits.stream().mapToDouble(value).average().orElseThrow();
  }

  private static Tested widest(List<Tested> all) {
    return new Tested(
        all.stream().mapToDouble(Tested::low).min().orElseThrow(),
        all.stream().mapToDouble(Tested::high).max().orElseThrow(),
        all.stream().mapToDouble(Tested::p).max().orElseThrow());
  }

  private LeavingRule rule(
      LineEffort line,
      Visits visits,
      int bites,
      @Nullable Decline decline,
      @Nullable Withheld withheld) {
    double moving = settings.moveCostMinutes();
    LeaveAfter leave = null;
    if (decline != null && withheld == null) {
      leave =
          new LeaveAfter(
              leaveAfter(decline.decay(), moving),
              limits(decline.limits(), moving),
              limits(decline.wide(), moving),
              ReviewSettings.LEVEL);
    }
    String text =
        leave == null || decline == null
            ? "No leaving time can be given for "
                + words.line(line.line().id())
                + ": "
                + why(withheld, visits, decline)
            : given(line, visits, decline, leave);
    return new LeavingRule(visits.count(), bites, moving, decline, leave, withheld, text);
  }

  /** What a patch holds plays no part in when to leave it. */
  private static double leaveAfter(double decay, double moving) {
    return MarginalValue.exponential(1, decay, moving).leaveAfter();
  }

  private static Limits limits(Tested decay, double moving) {
    return new Limits(
        leaveAfter(decay.high(), moving), decay.low() > 0 ? leaveAfter(decay.low(), moving) : null);
  }

  private String given(LineEffort line, Visits visits, Decline decline, LeaveAfter leave) {
    Double high = leave.wide().high();
    return String.format(
        Locale.ROOT,
        "%s starts at %s %s an hour with a bait in and halves about every %s (%d visits%s). Where a"
            + " move costs %s: leave after about %.0f min with a bait in (%.0f%s), if the line moved"
            + " to starts as well as this one did.",
        SentenceText.sentence(words.line(line.line().id())),
        SentenceText.rate(decline.startingRate()),
        counted(),
        SentenceText.minutes(Math.log(2) / decline.decay()),
        visits.count(),
        bunching(decline),
        SentenceText.minutes(settings.moveCostMinutes()),
        leave.minutes(),
        leave.wide().low(),
        high == null ? " or more" : String.format(Locale.ROOT, "–%.0f", high));
  }

  private static String bunching(Decline decline) {
    return decline.bunching() >= 1.05
        ? String.format(Locale.ROOT, ", allowing for bunching ×%.1f", decline.bunching())
        : "";
  }

  private String why(@Nullable Withheld withheld, Visits visits, @Nullable Decline decline) {
    return switch (withheld == null ? Withheld.NO_DECLINE : withheld) {
      case FEW_VISITS ->
          String.format(
              Locale.ROOT,
              "that takes %d visits, and there %s.",
              LeavingRule.LEAST_VISITS,
              visits.count() == 1 ? "was one" : "were " + visits.count());
      case NO_BITES -> "no " + counted() + " came.";
      case ENDS_UNKNOWN -> "a record of fish alone does not say when a stay began and ended.";
      case NO_COST -> "moves are set to cost no time, and then no stay is too short.";
      case NO_DECLINE ->
          "over "
              + visits.count()
              + " visits the record does not show that "
              + counted()
              + " fall off while it is fished"
              + (decline == null ? "" : p(decline))
              + ".";
    };
  }

  private static String p(Decline decline) {
    return String.format(Locale.ROOT, " (p = %.2f%s)", decline.wide().p(), bunching(decline));
  }

  private String counted() {
    Measure counted = grade == Grade.COUNTS ? Measure.FISH : settings.measure().carriedBy(grade);
    return counted.word();
  }
}
