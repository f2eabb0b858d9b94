package org.fadeline.stats;

/** Which shape of fade a record favours, by the odds of their evidence (a Bayes factor of 3). */
public enum FadeShape {
  /** At a moment: steps favoured at least 3:1. */
  STEP,
  /** Bit by bit: a decline favoured at least 3:1. */
  GRADUAL,
  /** The record does not tell which. */
  UNCLEAR;

  private static final double LOG_THREE = Math.log(3);

  /** The shape for a log evidence of steps over decline. */
  static FadeShape of(double logStepOverDecline) {
    if (logStepOverDecline >= LOG_THREE) {
      return STEP;
    }
    return logStepOverDecline <= -LOG_THREE ? GRADUAL : UNCLEAR;
  }
}
