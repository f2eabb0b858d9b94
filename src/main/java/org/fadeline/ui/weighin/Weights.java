package org.fadeline.ui.weighin;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.fadeline.analysis.NetScale;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.fadeline.ui.control.Say;

/** The weigh-in in words. */
final class Weights {
  private Weights() {}

  /** Returns a weight as it would be typed, in the unit of the window. */
  static String typed(double grams, Units units) {
    return WeightText.format(grams, units.weight());
  }

  /** Returns a weight in both units, that of the window first. */
  static String both(double grams, Units units) {
    Units.Weight other = units.weight() == Units.Weight.KG ? Units.Weight.LB_OZ : Units.Weight.KG;
    return WeightText.format(grams, units.weight()) + " · " + WeightText.format(grams, other);
  }

  /** Returns what the log put into a net. */
  static String logged(NetScale.Logged logged, Units units) {
    if (logged.fish() == 0 && logged.grams() <= 0) {
      return "nothing logged";
    }
    String fish = logged.fish() == 0 ? "" : Say.fish(logged.fish()) + ", ";
    if (logged.grams() <= 0) {
      return fish + "no weights";
    }
    return fish
        + Say.weight(logged.grams(), units)
        + (logged.unweighed() > 0 ? " (" + logged.unweighed() + " without a weight)" : "");
  }

  /** Returns a factor from the log to the scales, or why there is none. */
  static String factor(Double factor) {
    return String.format(Locale.ROOT, "×%.2f", factor);
  }

  /** Returns how a net stands to its limit. */
  static String standing(NetScale net, Units units) {
    NetLimit limit = net.limit();
    String by = Say.weight(Math.abs(net.overG()), units);
    String from = net.weighed() == null ? " by the log" : "";
    return switch (net.standing()) {
      case NO_LIMIT -> limit == null ? "no limit set" : "";
      case WITHIN -> by + " under" + from;
      case WITHIN_TOLERANCE -> by + " over, let pass" + from;
      case OVER ->
          by
              + " over"
              + from
              + (limit == null || limit.exceeding() == null ? "" : ": " + limit.exceeding());
    };
  }

  /** Returns the limit of a net in words. */
  static String limit(NetLimit limit, Units units) {
    String words = "Net limit " + Say.weight(limit.grams(), units);
    if (limit.toleranceGrams() > 0) {
      words += ", " + Say.weight(limit.toleranceGrams(), units) + " more let pass";
    }
    return words + (limit.exceeding() == null ? "." : "; over it: " + limit.exceeding() + ".");
  }

  /** Returns how the estimates stood to the scales, in whole sentences. */
  static String estimates(List<NetScale> nets, Units units) {
    NetScale.Total total = NetScale.total(nets);
    Double scales = total.scalesG();
    if (scales == null) {
      boolean some = nets.stream().anyMatch(n -> n.weighed() != null);
      return some
          ? "A net with fish in it has no weight from the scales yet, so the total is not known."
          : "No net was weighed yet. Weights everywhere are as logged on the bank.";
    }
    Double factor = total.factor();
    if (factor == null) {
      return total.logged().grams() <= 0
          ? "No single weights are logged, so there is nothing to hold against the scales."
          : total.logged().unweighed()
              + " fish are logged without a weight, so the log cannot be held against the scales.";
    }
    double percent = Math.abs(1 - 1 / factor) * 100;
    String off =
        percent < 0.5
            ? "The log and the scales agree to within half a percent."
            : "The log came to "
                + Say.number(percent)
                + "% "
                + (factor > 1 ? "less" : "more")
                + " than the scales.";
    return off
        + " Multiply by "
        + String.format(Locale.ROOT, "%.2f", Objects.requireNonNull(factor))
        + " to get from one to the other. Fish are shown as logged; nothing was scaled.";
  }
}
