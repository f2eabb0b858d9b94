package org.fadeline.analysis;

import java.util.Locale;
import org.fadeline.analysis.Fade.Moment;
import org.fadeline.analysis.Fade.Strength;
import org.jspecify.annotations.Nullable;

/** The words of a fade: what was seen and how sure. */
final class FadeWords {
  private static final double WIDE_MINUTES = 60;

  private final SentenceText words;

  FadeWords(SentenceText words) {
    this.words = words;
  }

  String of(double probability, @Nullable Moment moment, Strength strength, double notComeBack) {
    if (moment == null || probability < ReviewSettings.NO_SIGN_BELOW) {
      return notComeBack >= ReviewSettings.PROBABLE_FROM
          ? "Had faded before and had not come back"
          : "No sign of fading";
    }
    if (probability < ReviewSettings.PROBABLE_FROM) {
      return "Cannot tell whether it faded";
    }
    String start = probability < ReviewSettings.MARKED_FROM ? "Probably faded" : "Faded";
    String bunching =
        strength.bunching() >= 1.05
            ? String.format(Locale.ROOT, ", allowing for bunching (×%.1f)", strength.bunching())
            : "";
    if (new TimeSpan(moment.low(), moment.high()).minutes() > WIDE_MINUTES) {
      return start
          + " some time between "
          + words.clock(moment.low())
          + " and "
          + words.clock(moment.high())
          + bunching;
    }
    String around =
        "around "
            + words.clock(moment.at())
            + " ("
            + words.clocks(moment.low(), moment.high())
            + ")"
            + bunching;
    return strength.shape() == Fade.Shape.GRADUAL
        ? start + " gradually, " + around
        : start + " " + around;
  }
}
