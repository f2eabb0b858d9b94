package org.fadeline.ui.review;

import java.time.ZoneId;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.StayOrGo.Verdict;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** How the review screen says things. */
final class ReviewWords {
  private ReviewWords() {}

  /** Returns the few words over a finding. */
  static String of(Verdict verdict) {
    return switch (verdict) {
      case CANNOT_TELL -> "cannot tell";
      case LEFT_BEFORE_ANY_SIGN -> "left before any sign of fading";
      case LEFT_IN_TIME -> "left in time";
      case STAYED_PAST_PLAIN -> "stayed past plain";
      case STAYED_AND_CAME_GOOD -> "stayed, and it came good";
      case STAYED_TO_ALL_OUT -> "stayed to all out";
    };
  }

  /** Returns what a grade carries and what it withholds. */
  static String of(Grade grade) {
    return switch (grade) {
      case FULL ->
          "Casts are logged throughout, so bites are judged on the time a bait was in the water."
              + " Nothing is withheld.";
      case MOVES_AND_FISH ->
          "Moves and fish are logged, casts are not. Spells are known; the time a bait was in the"
              + " water and missed bites are not. Fades are judged on hook-ups, and what is"
              + " told of first bites after feeding is of the first hook-up logged.";
      case FISH_ONLY ->
          "Only fish are logged. Where one spell ended and the next began is not known exactly:"
              + " time between two lines belongs to neither, and fades there are withheld.";
      case COUNTS ->
          "Only clicker counts are logged: so many fish and so much weight since the last. Nothing"
              + " finer than the counts is told.";
    };
  }

  static String weightRate(@Nullable Rate rate, Units units) {
    return rate == null
        ? ""
        : Say.roughWeight(rate.perHour(), units)
            + " ("
            + Say.roughWeights(rate.low(), rate.high(), units)
            + ")";
  }

  static String rate(@Nullable Rate rate) {
    return rate == null ? "" : Say.number(rate.perHour()) + " (" + Say.limits(rate) + ")";
  }

  static @Nullable Double value(@Nullable Rate rate) {
    return rate == null ? null : rate.perHour();
  }

  /** Returns the clock precision in words, or an empty text for the second or finer. */
  static String precision(double seconds) {
    if (seconds >= 300) {
      return "Times are given to five minutes; intervals are widened for it.";
    }
    return seconds >= 60 ? "Times are given to the minute; intervals are widened for it." : "";
  }

  /** Returns one fade in figures: moment, interval, plain moment. */
  static String fade(Fade fade, ZoneId zone) {
    StringBuilder text = new StringBuilder(Say.capital(fade.verdict()));
    Long plain = fade.call().plainAt();
    if (plain != null) {
      text.append("; plain by ").append(Say.shortClock(plain, zone));
    }
    Double before = fade.strength().before();
    Double after = fade.strength().after();
    if (before != null && after != null && fade.probability() >= 0.5) {
      text.append("; ")
          .append(Say.number(before))
          .append(" bites an hour before, ")
          .append(Say.number(after))
          .append(" after");
    }
    if (fade.strength().bunching() > 1.05) {
      text.append("; allowing for bunching (×")
          .append(Say.number(fade.strength().bunching()))
          .append(")");
    }
    return text.append('.').toString();
  }

  /** Returns the rates of a line as a range, with the time that belongs to no line added. */
  static String range(LineReview line, Units units) {
    LineReview.WithUnassigned with = line.rates().withUnassigned();
    Rate weight = line.rates().weight();
    Rate fish = line.rates().fish();
    StringBuilder text = new StringBuilder(Say.capital(line.line().name())).append(": ");
    if (with != null && with.weight() != null && weight != null) {
      text.append(Say.roughWeight(with.weight().perHour(), units))
          .append(" to ")
          .append(Say.roughWeight(weight.perHour(), units))
          .append(" an hour, ");
    }
    text.append(with == null || with.fish() == null ? "?" : Say.number(with.fish().perHour()))
        .append(" to ")
        .append(fish == null ? "?" : Say.number(fish.perHour()));
    return text.append(" fish an hour, as that time beside it is taken as fished on it or not.")
        .toString();
  }
}
