package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fadeline.analysis.FishWeights.Sort;
import org.fadeline.analysis.NetScale.Logged;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/** Goes through a log in order and keeps what each net holds. */
final class NetRun {
  private final FishWeights weights = new FishWeights();
  private final Map<Integer, NetSum> nets = new HashMap<>();
  private int net = 1;
  private String line = "";
  private int fishSinceCount;
  private double gramsSinceCount;
  private final List<Without> withoutSinceCount = new ArrayList<>();

  /** Fish without a weight, until a count may give them one. */
  private record Without(int net, Sort sort, int count) {}

  NetRun() {
    sum(net);
  }

  /** Returns what the log put into each net that was in use, by its number. */
  SortedMap<Integer, Logged> logged() {
    SortedMap<Integer, Logged> logged = new TreeMap<>();
    nets.forEach((number, sum) -> logged.put(number, sum.logged()));
    return logged;
  }

  /** Returns the number of the net in use. */
  int net() {
    return net;
  }

  /** Returns what a net holds so far. */
  NetSum sum(int number) {
    return nets.computeIfAbsent(number, n -> new NetSum());
  }

  /** Returns what fish have weighed so far. */
  FishWeights weights() {
    return weights;
  }

  /** Takes in the next event; returns whether it changed the net or what it holds. */
  boolean take(SessionEvent event) {
    if (event.kind().group() == EventKind.Group.WATER && event.lineId() != null) {
      line = event.lineId();
    }
    Fish fish = event.fishOrNull();
    switch (event.kind()) {
      case NET -> {
        Integer number = ((SessionEvent.Net) event).net();
        net = number == null ? net + 1 : Math.max(1, number);
        sum(net);
        return true;
      }
      case LANDED, FOUL -> {
        return fish != null && land(sortOf(event, fish), fish);
      }
      case COUNT -> {
        return fish != null && count(sortOf(event, fish), fish);
      }
      default -> {
        return false;
      }
    }
  }

  private Sort sortOf(SessionEvent event, Fish fish) {
    return new Sort(fish.species(), event.lineId() == null ? line : event.lineId());
  }

  private boolean land(Sort sort, Fish fish) {
    fishSinceCount += fish.count();
    Double grams = fish.grams();
    if (grams == null) {
      withoutSinceCount.add(new Without(net, sort, fish.count()));
    } else {
      gramsSinceCount += grams;
    }
    put(sort, fish);
    return true;
  }

  /** A count stands for what it tells beyond the fish logged one by one since the last. */
  private boolean count(Sort sort, Fish fish) {
    int more = Math.max(0, fish.count() - fishSinceCount);
    Double grams = fish.grams();
    if (grams == null) {
      put(sort, new Fish(more, fish.species(), null, false));
    } else {
      int weighedNow = more;
      for (Without each : withoutSinceCount) {
        // Fish logged without a weight are weighed by the count, as far as this net holds them.
        if (each.net == net) {
          sum(net).addWithout(each.sort, -each.count);
          weighedNow += each.count;
        }
      }
      double beyond = Math.max(0, grams - gramsSinceCount);
      int count = Math.min(100_000, weighedNow);
      put(sort, new Fish(count, fish.species(), beyond, fish.weighed()));
    }
    fishSinceCount = 0;
    gramsSinceCount = 0;
    withoutSinceCount.clear();
    return true;
  }

  private void put(Sort sort, Fish fish) {
    Double grams = fish.grams();
    if (grams == null) {
      sum(net).addWithout(sort, fish.count());
    } else {
      sum(net).add(fish.count(), grams, fish.weighed());
      weights.add(sort, fish);
    }
  }
}
