package org.fadeline.figure;

import java.util.List;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;

/** What a line had given, in words, weight before fish. */
final class LaneFigures {
  private LaneFigures() {}

  /** Returns texts from the longest to the shortest; the frame is null in hindsight. */
  static List<String> of(LaneRecord lane, FigureText words, @Nullable ReplayFrame frame) {
    if (frame == null) {
      Caught caught = lane.review.caught();
      LineReview.Rates rates = lane.review.rates();
      return texts(
          new Got(
              caught.landed(),
              caught.weightG(),
              lane.review.fishedHours() * 60,
              perHour(rates.weight()),
              perHour(rates.fish()),
              lane.feeds.events.isEmpty()),
          words);
    }
    double minutes = lane.sight(Knowledge.asKnownAt(frame.at())).fishedMinutes(frame.at());
    ReplayFrame.LineState state = frame.line(lane.id()).orElse(null);
    int fish = state == null ? 0 : state.fish();
    double grams = state == null ? 0 : state.weightG();
    boolean rated = minutes >= ReviewSettings.LEAST_RATED_MINUTES;
    return texts(
        new Got(
            fish,
            grams,
            minutes,
            rated ? grams * 60 / minutes : null,
            rated ? fish * 60 / minutes : null,
            state == null || state.lastFed() == null),
        words);
  }

  private record Got(
      int fish,
      double grams,
      double minutes,
      @Nullable Double gramsPerHour,
      @Nullable Double fishPerHour,
      boolean unfed) {}

  private static @Nullable Double perHour(@Nullable Rate rate) {
    return rate == null ? null : rate.perHour();
  }

  private static List<String> texts(Got got, FigureText words) {
    if (got.minutes <= 0 && got.fish == 0) {
      return List.of(got.unfed ? "not fished" : "fed, not fished", "not fished");
    }
    String effort = " in " + FigureText.minutes(got.minutes) + " fished";
    if (got.fish == 0) {
      return List.of("no fish" + effort, "no fish");
    }
    String fish = FigureText.fish(got.fish);
    String total = got.grams > 0 ? words.weight(got.grams) + ", " + fish : fish;
    if (got.fishPerHour == null) {
      return List.of(total + effort, total, fish);
    }
    String fishRate = FigureText.perHour(got.fishPerHour);
    if (got.grams <= 0 || got.gramsPerHour == null) {
      return List.of(fishRate + "  ·  " + total + effort, fishRate + "  ·  " + total, fishRate);
    }
    String rates =
        words.weightPerHour(got.gramsPerHour) + ", " + FigureText.number(got.fishPerHour) + " fish";
    return List.of(
        rates + "  ·  " + total + effort,
        rates + "  ·  " + total,
        rates,
        words.weightPerHour(got.gramsPerHour));
  }
}
