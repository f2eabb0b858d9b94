package org.fadeline.analysis.compare;

import java.util.Locale;
import org.fadeline.stats.Interval;

/** How ratios of rates are written, the same on screen, in figures and in reports. */
public final class RatioText {
  /** From here on hundredths are noise, and rounding to them would show "10.00". */
  private static final double WHOLE_FROM = 9.95;

  private RatioText() {}

  /** Returns a ratio, above 0: "1.57", "12", or "no limit" for an infinite one. */
  public static String of(double ratio) {
    return Double.isInfinite(ratio)
        ? "no limit"
        : String.format(Locale.ROOT, ratio < WHOLE_FROM ? "%.2f" : "%.0f", ratio);
  }

  /** Returns the limits of a ratio: "0.84–2.93". */
  public static String of(Interval limits) {
    return of(limits.low()) + "–" + of(limits.high());
  }
}
