package org.fadeline.stats;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Maximum-likelihood fit of an exponentially declining Poisson rate λ₀·e^(−cx) to counts in bins,
 * with a likelihood-ratio test of c = 0 against c &gt; 0 and a profile-likelihood interval of c
 * (the starting rate maximised out; McCullagh and Nelder 1989, Generalized Linear Models, ch. 6–7).
 *
 * @param startingRate λ₀, events per hour at minute 0, in [0, ∞)
 * @param decay c per minute, from −2 to 2; negative where the rate rises
 * @param decayLimits profile-likelihood limits of c at 95%, the ends of the range where the
 *     likelihood sets no limit
 * @param likelihoodRatio twice the log likelihood ratio of the fit over a constant rate, 0 or more
 * @param pDecline one-sided p of a constant rate against a declining one, in [0, 1]
 */
public record DeclineFit(
    double startingRate,
    double decay,
    Interval decayLimits,
    double likelihoodRatio,
    double pDecline) {
  private static final double LEVEL = 0.95;
  private static final double LARGEST = 2;
  private static final int HALVINGS = 100;

  /**
   * Fits the bins of all visits together, each bin at its time since its own visit began.
   *
   * @param bins counts and exposures in hours
   * @param minutes middle of each bin, minutes since its visit began, each finite and in [0, ∞)
   * @throws IllegalArgumentException if lengths differ, a value is out of range, or there is no
   *     event or no exposure at all
   */
  public static DeclineFit of(ChangePointBins bins, double[] minutes) {
    Guard.sameLength(bins.size(), minutes.length, "bins and minutes");
    for (int i = 0; i < minutes.length; i++) {
      Guard.notNegative(minutes[i], "middle of bin " + (i + 1));
    }
    Guard.positive(bins.countBetween(0, bins.size()), "number of events");
    Profile profile = new Profile(bins, minutes);
    double decay = profile.best();
    double top = profile.logLikelihood(decay);
    double ratio = Math.max(0, 2 * (top - profile.logLikelihood(0)));
    ChiSquaredDistribution chi = ChiSquaredDistribution.of(1);
    double half = chi.survivalProbability(ratio) / 2;
    double drop = chi.inverseCumulativeProbability(LEVEL) / 2;
    return new DeclineFit(
        profile.events / Math.exp(profile.logExposure(decay)),
        decay,
        new Interval(
            profile.limit(decay, -LARGEST, top - drop),
            profile.limit(decay, LARGEST, top - drop),
            LEVEL),
        ratio,
        decay > 0 ? half : 1 - half);
  }

  private static final class Profile {
    private final ChangePointBins bins;
    private final double[] minutes;
    private final double events;
    private final double eventMinutes;

    Profile(ChangePointBins bins, double[] minutes) {
      this.bins = bins;
      this.minutes = minutes;
      events = bins.countBetween(0, bins.size());
      double sum = 0;
      for (int i = 0; i < minutes.length; i++) {
        sum += bins.count(i) * minutes[i];
      }
      eventMinutes = sum;
    }

    /** log of the exposure weighted by e^(−cx), scaled by its largest term. */
    double logExposure(double c) {
      double top = Double.NEGATIVE_INFINITY;
      for (double minute : minutes) {
        top = Math.max(top, -c * minute);
      }
      double sum = 0;
      for (int i = 0; i < minutes.length; i++) {
        sum += bins.exposure(i) * Math.exp(-c * minutes[i] - top);
      }
      return top + Math.log(sum);
    }

    double logLikelihood(double c) {
      return -events * logExposure(c) - c * eventMinutes;
    }

    /** Derivative in c, which only falls: the exposure's tilted mean minute less the events'. */
    double slope(double c) {
      double log = logExposure(c);
      double sum = 0;
      for (int i = 0; i < minutes.length; i++) {
        sum += minutes[i] * bins.exposure(i) * Math.exp(-c * minutes[i] - log);
      }
      return events * sum - eventMinutes;
    }

    double best() {
      double low = -LARGEST;
      double high = LARGEST;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        if (slope(middle) > 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }

    /** Where the profile falls to {@code level} between its top and {@code end}, else the end. */
    double limit(double best, double end, double level) {
      if (logLikelihood(end) >= level) {
        return end;
      }
      double inside = best;
      double outside = end;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (inside + outside) / 2;
        if (logLikelihood(middle) >= level) {
          inside = middle;
        } else {
          outside = middle;
        }
      }
      return (inside + outside) / 2;
    }
  }
}
