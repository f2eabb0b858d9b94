package org.fadeline.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Outcome;
import org.jspecify.annotations.Nullable;

/** Keepnets: what the angler guesses goes in, and what the scales say. */
final class DemoNets {
  /** Share of the limit, by estimate, at which a careful angler changes net. */
  private static final double CAREFUL = 0.84;

  private final DemoWater water;
  private final List<Keepnet> nets = new ArrayList<>();
  private final Random random;
  private final double factor;
  private final double limit;

  DemoNets(DemoWater water, Random random) {
    this.water = water;
    this.random = random;
    this.factor = 0.9 + 0.2 * random.nextDouble();
    NetLimit netLimit = water.rules().netLimit();
    this.limit = netLimit == null ? Double.POSITIVE_INFINITY : netLimit.grams();
    boolean silvers =
        water.lines().stream().anyMatch(line -> !isCarp(line.catches().fish().species()));
    if (silvers) {
      nets.add(new Keepnet(1, "silvers"));
    }
    nets.add(new Keepnet(nets.size() + 1, "carp"));
  }

  /** Returns what the angler takes a fish for: a steady factor and a scatter of 8%. */
  double estimate(double grams) {
    double guess = grams * factor * (1 + 0.08 * random.nextGaussian());
    double step = grams < 300 ? 5 : 50;
    return Math.max(step, step * Math.round(guess / step));
  }

  /** Puts a fish in its net and returns the number of a fresh net where one was needed. */
  @Nullable Integer put(String species, double grams, double estimate) {
    String holds = isCarp(species) ? "carp" : "silvers";
    Keepnet net = null;
    for (Keepnet candidate : nets) {
      if (candidate.holds.equals(holds)) {
        net = candidate;
      }
    }
    Integer fresh = null;
    if (net == null || net.estimated + estimate > CAREFUL * limit) {
      net = new Keepnet(nets.size() + 1, holds);
      nets.add(net);
      fresh = net.number;
    }
    net.estimated += estimate;
    net.grams += grams;
    return fresh;
  }

  List<Outcome.NetWeight> weighIn() {
    return nets.stream()
        .filter(net -> net.grams > 0)
        .map(net -> new Outcome.NetWeight(net.number, 10.0 * Math.round(net.grams / 10), net.holds))
        .toList();
  }

  Outcome.Result result() {
    double total = nets.stream().mapToDouble(net -> net.grams).sum();
    int place = 1 + random.nextInt(9);
    int peg = Integer.parseInt(Objects.requireNonNull(water.peg().number()));
    return new Outcome.Result(
        place,
        "B",
        (place + 3) / 4,
        24,
        List.of(neighbour(peg - 1, total), neighbour(peg + 1, total)));
  }

  private Outcome.NeighbourWeight neighbour(int peg, double total) {
    double grams = total * (0.4 + 0.8 * random.nextDouble());
    return new Outcome.NeighbourWeight(String.valueOf(peg), 10.0 * Math.round(grams / 10));
  }

  private static boolean isCarp(String species) {
    return species.equals("carp");
  }

  private static final class Keepnet {
    private final int number;
    private final String holds;
    private double grams;
    private double estimated;

    Keepnet(int number, String holds) {
      this.number = number;
      this.holds = holds;
    }
  }
}
