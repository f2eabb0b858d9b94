package org.fadeline.analysis.compare;

import org.fadeline.analysis.LearnedPriors;
import org.fadeline.model.Session;

/**
 * What a comparison rests on besides the two reviews.
 *
 * @param alignment how the sessions are laid on one axis
 * @param pairing which line is held against which
 * @param days how much days differ by themselves
 */
public record ComparisonSetup(Alignment alignment, LinePairing pairing, DayToDay days) {
  /** Returns the usual setup: by time since all in, lines paired by themselves, days as usual. */
  public static ComparisonSetup usual(Session first, Session second) {
    return new ComparisonSetup(
        Alignment.byAllIn(first, second), LinePairing.automatic(first, second), DayToDay.USUAL);
  }

  /** Returns this setup with another alignment. */
  public ComparisonSetup withAlignment(Alignment newAlignment) {
    return new ComparisonSetup(newAlignment, pairing, days);
  }

  /** Returns this setup with another pairing. */
  public ComparisonSetup withPairing(LinePairing newPairing) {
    return new ComparisonSetup(alignment, newPairing, days);
  }

  /** Returns this setup with another spread between days. */
  public ComparisonSetup withDays(DayToDay newDays) {
    return new ComparisonSetup(alignment, pairing, newDays);
  }

  /**
   * How much the rate of one line differs from day to day by itself.
   *
   * @param sigma standard deviation of the log rate between days, in [0, 5]
   * @param learned whether it was learned from a season; only then is a p-value given
   */
  public record DayToDay(double sigma, boolean learned) {
    /** The default of the methods document, learned from nothing. */
    public static final DayToDay USUAL = new DayToDay(0.5, false);

    /** Returns what a season taught, or the usual spread where it was too small to tell. */
    public static DayToDay learned(LearnedPriors priors) {
      Double sigma = priors.sigmaDay();
      return sigma == null ? USUAL : new DayToDay(sigma, true);
    }

    /** Checks the range. */
    public DayToDay {
      if (!(sigma >= 0 && sigma <= 5)) {
        throw new IllegalArgumentException("sigma must be 0 to 5: " + sigma);
      }
    }
  }
}
