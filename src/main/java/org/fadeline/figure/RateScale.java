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

  /** Returns the first of a fixed ladder of tops at or above a value: 10, 20, 40, 60, 80, 120, … */
  static double ladder(double value) {
    double step = 10;
    while (true) {
      for (double factor : new double[] {1, 2, 4, 6}) {
        if (value <= step * factor) {
          return step * factor;
        }
      }
      // 10, 20, 40, 60, then 80, 160, 320, 480, then 640, …
      step *= 8;
    }
  }
}
