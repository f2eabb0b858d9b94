package org.fadeline.stats;

import org.jspecify.annotations.Nullable;

/** Adds up where the curves of one shape faded. */
final class FadeTally {
  private final double @Nullable [] moments;
  private final FadeGeometry geometry;
  private final double endMinute;
  private double faded;
  private double notComeBack;
  private double going;
  private double after;

  /**
   * @param keepMoments whether to tell the moments apart, for a final look
   * @param endMinute bait minute at which the record looked at ends
   */
  FadeTally(FadeGeometry geometry, boolean keepMoments, double endMinute) {
    this.geometry = geometry;
    this.endMinute = endMinute;
    moments = keepMoments ? new double[geometry.record.size()] : null;
  }

  /** Takes in a history of steps whose last rate is Gamma(shape, rate). */
  void add(FadePath path, int end, double shape, double rate, double logGamma, double weight) {
    double earlier =
        path.before() == 0 ? 0 : ChangePointGamma.lower(shape, path.before() * rate, logGamma);
    notComeBack += weight * earlier;
    if (moments == null) {
      double level = path.levelBefore(end);
      if (level > path.before()) {
        faded +=
            weight * Math.max(0, ChangePointGamma.lower(shape, level * rate, logGamma) - earlier);
      }
      return;
    }
    double below = earlier;
    double share = geometry.share;
    double nextLogGamma = logGamma + Math.log(shape);
    double meanBelow =
        path.before() == 0
            ? 0
            : ChangePointGamma.lower(shape + 1, path.before() * rate, nextLogGamma);
    for (int i = 0; i < path.moments().length && path.moments()[i] < end; i++) {
      int moment = path.moments()[i];
      double level = path.levels()[i];
      double upTo = ChangePointGamma.lower(shape, level * rate, logGamma);
      double meanUpTo = ChangePointGamma.lower(shape + 1, level * rate, nextLogGamma);
      double mass = Math.max(0, upTo - below);
      faded += weight * mass;
      moments[moment] += weight * mass;
      going += weight * mass * level / share;
      double lastRate = shape / rate * Math.max(0, meanUpTo - meanBelow);
      double changeAt = geometry.edge(Math.max(path.change(), moment));
      double minutes = endMinute - geometry.edge(moment);
      after += weight * (mass * path.between()[i] + lastRate * (endMinute - changeAt)) / minutes;
      below = upTo;
      meanBelow = meanUpTo;
    }
  }

  /** Whether moments are told apart. */
  boolean keepsMoments() {
    return moments != null;
  }

  /** Takes in curves that faded at one moment, with this going rate and mean rate after it. */
  void add(int moment, double mass, double goingRate, double rateAfter) {
    faded += mass;
    going += mass * goingRate;
    after += mass * rateAfter;
    if (moments != null) {
      moments[moment] += mass;
    }
  }

  /** Takes in curves that had faded before the spell. */
  void addNotComeBack(double mass) {
    notComeBack += mass;
  }

  /** Share of curves that faded in the spell. */
  double faded() {
    return Math.min(1, faded);
  }

  /** Share of curves that had faded before the spell and did not come back in it. */
  double notComeBack() {
    return Math.min(1, notComeBack);
  }

  /** Mean going rate at the moment, of the curves that faded. */
  double goingRate() {
    return going / faded;
  }

  /** Mean rate from the moment on, of the curves that faded. */
  double rateAfter() {
    return after / faded;
  }

  /** Share of curves by the bin they faded in. */
  double[] moments() {
    return moments == null ? new double[0] : moments.clone();
  }
}
