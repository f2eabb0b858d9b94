package org.fadeline.figure;

/**
 * Height of a rate in a lane: even up to a top value, then drawn together, so that no upper limit
 * is ever cut off and no wide band of a short spell squeezes the curve.
 *
 * @param top the last value on the even part, per hour
 * @param floor y of zero
 * @param height from zero to infinity, pixels
 */
record RateScale(double top, double floor, double height) {
  /** Share of the height that the even part takes. */
  static final double EVEN = 0.8;

  double y(double rate) {
    if (rate <= top) {
      return floor - height * EVEN * rate / top;
    }
    return floor - height * (EVEN + (1 - EVEN) * (1 - top / rate));
  }

  private static final double[] STEPS = {
    10, 20, 30, 40, 60, 80, 100, 120, 160, 200, 240, 320, 400, 480, 600, 800
  };

  /** Returns the first of a fixed ladder of tops at or above a value; from 800 up it doubles. */
  static double ladder(double value) {
    for (double step : STEPS) {
      if (value <= step) {
        return step;
      }
    }
    double step = 1600;
    while (step < value) {
      step *= 2;
    }
    return step;
  }
}
