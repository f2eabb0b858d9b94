package org.fadeline.ui.weighin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NeighbourWeight;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Outcome.Result;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.fadeline.ui.control.form.Entry;
import org.jspecify.annotations.Nullable;

/** What can be typed at the weigh-in, as changes of the outcome. */
final class WeighInEntries {
  private static final Result NOTHING = new Result(null, null, null, null, List.of());

  private WeighInEntries() {}

  private static Result result(Outcome outcome) {
    return Objects.requireNonNullElse(outcome.result(), NOTHING);
  }

  private static Outcome with(Outcome outcome, Result result) {
    return outcome.withResult(result.equals(NOTHING) ? null : result);
  }

  /** Returns the weight of one net at the scales. */
  static Entry<Outcome> weight(int net) {
    return new Entry<>(
        "net-" + net + "-weight",
        "Net " + net + " at the scales",
        "not weighed",
        (o, units) -> weighed(o, net).map(w -> Weights.typed(w.grams(), units)).orElse(""),
        (o, text, units) -> withNet(o, net, text.isBlank() ? null : grams(text, units)));
  }

  private static double grams(String text, Units units) {
    return WeightText.grams(text, units.weight());
  }

  static Optional<NetWeight> weighed(Outcome outcome, int net) {
    return outcome.weighIn().stream().filter(w -> w.net() == net).findFirst();
  }

  private static Outcome withNet(Outcome outcome, int net, @Nullable Double grams) {
    String holds = weighed(outcome, net).map(NetWeight::holds).orElse(null);
    return withNet(outcome, net, grams == null ? null : new NetWeight(net, grams, holds));
  }

  private static Outcome withNet(Outcome outcome, int net, @Nullable NetWeight weight) {
    List<NetWeight> nets = new ArrayList<>(outcome.weighIn());
    nets.removeIf(w -> w.net() == net);
    if (weight != null) {
      nets.add(weight);
    }
    nets.sort(Comparator.comparingInt(NetWeight::net));
    return outcome.withWeighIn(nets);
  }

  /** Returns the outcome with other words for what a weighed net holds; blank words are none. */
  static Outcome holding(Outcome outcome, int net, @Nullable String holds) {
    String words = holds == null ? null : Entry.orNull(holds);
    return weighed(outcome, net)
        .map(w -> withNet(outcome, net, new NetWeight(net, w.grams(), words)))
        .orElse(outcome);
  }

  /** Returns where the angler came: the section and the match. */
  static List<Entry<Outcome>> placings() {
    return List.of(
        Entry.words(
            "section",
            "Section",
            "B",
            o -> result(o).section(),
            (o, text) -> with(o, result(o).withSection(text))),
        Entry.whole(
            "section-position",
            "Place in the section",
            "2",
            o -> result(o).sectionPosition(),
            (o, place) -> with(o, result(o).withSectionPosition(place))),
        Entry.whole(
            "position",
            "Place in the match",
            "5",
            o -> result(o).position(),
            (o, place) -> with(o, inField(result(o).withPosition(place)))),
        Entry.whole(
            "of",
            "Of how many",
            "24",
            o -> result(o).of(),
            (o, of) -> with(o, inField(result(o).withOf(of)))));
  }

  private static Result inField(Result result) {
    Integer position = result.position();
    Integer of = result.of();
    if (position != null && of != null && position > of) {
      throw new IllegalArgumentException("place " + position + " of " + of + " cannot be");
    }
    return result;
  }

  /** Returns the outcome with the weight of another peg put in, or put in another's place. */
  static Outcome withNeighbour(Outcome outcome, String peg, String weight, Units units) {
    String number = Entry.orNull(peg);
    if (number == null) {
      throw new IllegalArgumentException("the neighbour has no peg number");
    }
    List<NeighbourWeight> all = new ArrayList<>(result(outcome).neighbours());
    all.removeIf(n -> n.peg().equals(number));
    all.add(new NeighbourWeight(number, grams(weight, units)));
    return with(outcome, result(outcome).withNeighbours(all));
  }

  /** Returns the outcome without the weight of a peg. */
  static Outcome withoutNeighbour(Outcome outcome, String peg) {
    List<NeighbourWeight> all = new ArrayList<>(result(outcome).neighbours());
    all.removeIf(n -> n.peg().equals(peg));
    return with(outcome, result(outcome).withNeighbours(all));
  }

  static List<NeighbourWeight> neighbours(Outcome outcome) {
    return result(outcome).neighbours();
  }
}
