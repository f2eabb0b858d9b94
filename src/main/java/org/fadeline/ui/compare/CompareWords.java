package org.fadeline.ui.compare;

import java.time.ZoneId;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.analysis.compare.LinePair;
import org.fadeline.analysis.compare.RatePair;
import org.fadeline.analysis.compare.RatioText;
import org.fadeline.model.Units;
import org.fadeline.stats.LogRank;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** How the screen says what a comparison holds. */
final class CompareWords {
  private CompareWords() {}

  /** Returns why two lines were paired. */
  static String why(LinePair pair) {
    return switch (pair.by()) {
      case NAME -> "the same name";
      case KIND -> "the same kind, near enough in place";
      case DISTANCE -> "the same place; kinds not known of both";
      case HAND -> "chosen by hand";
    };
  }

  /** Returns a ratio: "1.57", or a dash where there is none. */
  static String ratio(RatePair pair) {
    RatePair.Ratio ratio = pair.ratio();
    Double value = ratio == null ? null : ratio.value();
    return value == null ? "–" : RatioText.of(value);
  }

  /** Returns the limits from what was caught alone. */
  static String exact(RatePair pair) {
    return pair.ratio() == null ? "–" : RatioText.of(pair.ratio().fishing());
  }

  /** Returns the limits that allow for days differing by themselves. */
  static String wide(RatePair pair) {
    return pair.ratio() == null ? "–" : RatioText.of(pair.ratio().widest());
  }

  /** Returns the p-value where one may be given: with a spread between days that was learned. */
  static String p(RatePair pair) {
    Double p = pair.ratio() == null ? null : pair.ratio().p();
    return p == null ? "" : p(p);
  }

  static String p(double p) {
    return p < 0.001 ? "under 0.001" : String.format(Locale.ROOT, "%.3f", p);
  }

  /** Returns one session's rate with its limits. */
  static String rate(RatePair.Side side, boolean weight, Units units) {
    if (!(side.hours() > 0)) {
      return "not fished";
    }
    if (side.rate() == null) {
      return "–";
    }
    return weight
        ? Say.roughWeight(side.rate().perHour(), units)
            + " ("
            + Say.roughWeights(side.rate().low(), side.rate().high(), units)
            + ")"
        : Say.number(side.rate().perHour()) + " (" + Say.limits(side.rate()) + ")";
  }

  /** Returns a test's observed and expected: "7 of 4.2 expected". */
  static String observed(double observed, double expected) {
    return String.format(Locale.ROOT, "%.0f, of equal days %.1f", observed, expected);
  }

  static String test(LogRank test) {
    return test.p() == null || test.chiSquare() == null
        ? "too little to tell them apart"
        : String.format(Locale.ROOT, "χ² %.2f, p %s", test.chiSquare(), p(test.p()));
  }

  /** Returns when half the feeds had brought a bite. */
  static String half(FirstBite first) {
    FirstBite.Median median = first.median();
    if (median == null) {
      return first.curve().isEmpty() ? "too few feeds" : "not reached";
    }
    return Say.number(median.minutes())
        + " min ("
        + (median.low() == null ? "?" : Say.number(median.low()))
        + "–"
        + (median.high() == null ? "no limit" : Say.number(median.high()))
        + ")";
  }

  /** Returns what was put in. */
  static String feed(FeedPut feed) {
    if (feed.feeds() == 0) {
      return "no feed logged";
    }
    String amounts =
        feed.amounts().entrySet().stream()
            .map(e -> String.format(Locale.ROOT, "%.0f %s", e.getValue(), e.getKey().word()))
            .collect(Collectors.joining(", "));
    String without = feed.withoutAmount() > 0 ? feed.withoutAmount() + " with no amount" : "";
    String joined =
        amounts.isEmpty() || without.isEmpty() ? amounts + without : amounts + ", " + without;
    return Say.count(feed.feeds(), "feed") + ": " + joined;
  }

  static String spells(Side side, ZoneId zone) {
    return side.line().spells().stream()
        .map(s -> Say.shortClock(s.span().from(), zone) + "–" + Say.shortClock(s.span().to(), zone))
        .collect(Collectors.joining(", "));
  }

  static String fades(Side side) {
    return side.line().fades().stream()
        .map(Fade::verdict)
        .map(Say::capital)
        .collect(Collectors.joining("; "));
  }

  static String plain(Side side, ZoneId zone) {
    return side.line().fades().stream()
        .map(f -> f.call().plainAt())
        .filter(Objects::nonNull)
        .map(at -> Say.shortClock(at, zone))
        .collect(Collectors.joining(", "));
  }

  static String stays(Side side) {
    return side.stays().stream()
        .map(StayOrGo::wording)
        .map(w -> w.text())
        .collect(Collectors.joining(" "));
  }

  /** Returns what the wider limits allow for. */
  static String days(Comparison comparison) {
    return String.format(
        Locale.ROOT,
        "Ratios are first over second. The wider limits allow for days that differ by themselves"
            + " (spread %.2f of the log rate, %s).",
        comparison.setup().days().sigma(),
        comparison.setup().days().learned()
            ? "learned from your season"
            : "the usual value, not learned: so no p-value is given");
  }

  /** Returns a shift by hand: "+12 min". */
  static String shift(double minutes) {
    return String.format(Locale.ROOT, "%+.0f min", minutes);
  }

  /** Returns a name, or a dash where there is none. */
  static String or(@Nullable String text) {
    return text == null || text.isEmpty() ? "–" : text;
  }
}
