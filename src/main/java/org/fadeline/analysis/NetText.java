package org.fadeline.analysis;

import java.util.Locale;
import org.fadeline.analysis.NetState.Likely;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.RoughText;
import org.fadeline.model.Units;
import org.fadeline.stats.Interval;

/** A net and its limit in words. */
public final class NetText {
  private final Units units;

  /** Makes the words with weights in the given units. */
  public NetText(Units units) {
    this.units = units;
  }

  /** Returns how a net stands in a few words: "net 2 at 38–51 lb of 50 lb". */
  public String brief(NetState net) {
    NetLimit limit = net.limit();
    String of = limit == null ? "" : " of " + weight(limit.grams());
    String name = "net " + net.net() + (net.near() ? " near its limit, " : " at ");
    Likely likely = net.likely();
    if (likely == null) {
      return net.logged().fish() == 0
          ? "net " + net.net() + " empty"
          : "net " + net.net() + ": " + SentenceText.fish(net.logged().fish()) + ", no weight";
    }
    return name + range(likely) + of;
  }

  /** Returns the likely weight as a range, or as one weight where both ends read the same. */
  public String range(Likely likely) {
    String low = weight(likely.low());
    return low.equals(weight(likely.high()))
        ? low
        : RoughText.weights(likely.low(), likely.high(), units.weight());
  }

  private String weight(double grams) {
    return RoughText.weight(grams, units.weight());
  }

  /** Returns what a net's likely weight rests on, without a full stop. */
  public String restsOn(NetState net, EstimateError error) {
    Likely likely = net.likely();
    if (likely == null) {
      return "no weights to go by";
    }
    StringBuilder words = new StringBuilder();
    words.append(weight(net.logged().grams())).append(" logged");
    int without = net.logged().unweighed();
    if (without > 0) {
      words
          .append(", ")
          .append(SentenceText.fish(without))
          .append(" without a weight counted at ")
          .append(weight(likely.countedG() / without))
          .append(without == 1 ? "" : " each");
    }
    if (net.byScales()) {
      words.append(", put in line with the scales");
    } else if (likely.high() > likely.low()) {
      words.append("; ").append(allowance(error));
    }
    return words.toString();
  }

  private static String allowance(EstimateError error) {
    Interval times = error.factor().interval(ReviewSettings.FADE_LEVEL);
    return String.format(
        Locale.ROOT,
        "scales taken to say %.2f–%.2f times the estimates%s",
        times.low(),
        times.high(),
        earlier(error.matches()));
  }

  private static String earlier(int matches) {
    return matches == 0
        ? ""
        : matches == 1 ? ", as in an earlier match" : ", as in " + matches + " earlier matches";
  }

  /** Returns a net in a sentence or two. */
  public String full(NetState net, EstimateError error) {
    Likely likely = net.likely();
    if (likely == null) {
      return SentenceText.sentence(brief(net)) + ".";
    }
    NetLimit limit = net.limit();
    Double over = likely.over();
    String odds = over == null ? "" : over(over);
    return "Net "
        + net.net()
        + ": likely "
        + range(likely)
        + (limit == null ? "" : ", limit " + weight(limit.grams()) + odds)
        + ". "
        + SentenceText.sentence(restsOn(net, error))
        + ".";
  }

  private static String over(double chance) {
    long of = Math.round(chance * 100);
    return of < 1
        ? "; hardly over it"
        : of > 99 ? "; all but surely over it" : "; over it with a chance of " + of + "%";
  }

  /** Returns what makes a turning point of a net near its limit. */
  String turning(NetState net, EstimateError error) {
    Likely likely = net.likely();
    NetLimit limit = net.limit();
    if (likely == null || limit == null) {
      return "";
    }
    return range(likely)
        + " likely, limit "
        + weight(limit.grams())
        + "; "
        + restsOn(net, error)
        + "; your water's rules decide";
  }
}
