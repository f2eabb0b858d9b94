package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fadeline.analysis.Effort.Became;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;

/** The bites and fish of one spell, in the order of its log. */
final class SpellMarks {
  final List<BiteMark> bites = new ArrayList<>();
  final List<FishMark> fish = new ArrayList<>();

  /** How many water events of the draft they are made of. */
  final int waterEvents;

  private final int index;
  private final boolean foulCounts;
  private final Map<String, Integer> orders;

  /**
   * @param index which spell of its line it is, from 0
   * @param orders place in the log of each event, by its id
   */
  SpellMarks(SpellDraft draft, int index, boolean foulCounts, Map<String, Integer> orders) {
    this.index = index;
    this.foulCounts = foulCounts;
    this.orders = orders;
    boolean opens = draft.opensWithFish();
    int openingOutcome = opens ? draft.hooks().get(0).outcome() : -1;
    boolean hookOpen = false;
    List<SessionEvent> water = draft.water();
    waterEvents = water.size();
    for (int i = 0; i < waterEvents; i++) {
      SessionEvent event = water.get(i);
      switch (event.kind()) {
        case CAST -> hookOpen = false;
        case BITE -> bites.add(bite(event, Became.MISSED, false));
        case HOOKED -> {
          dropSameBite(event);
          bites.add(bite(event, Became.HOOKED, opens && i == 0));
          hookOpen = true;
        }
        case LANDED, LOST, FOUL -> {
          outcome(event, i == openingOutcome, hookOpen);
          hookOpen = false;
        }
        default -> {}
      }
    }
  }

  private BiteMark bite(SessionEvent event, Became became, boolean opening) {
    int order = Objects.requireNonNull(orders.get(event.id()));
    return new BiteMark(event.at(), index, became, opening, order);
  }

  private void dropSameBite(SessionEvent hooked) {
    int last = bites.size() - 1;
    if (last >= 0
        && bites.get(last).became() == Became.MISSED
        && hooked.at() - bites.get(last).at() <= SessionEvent.Bite.SAME_AS_HOOKED_MILLIS) {
      bites.remove(last);
    }
  }

  private void outcome(SessionEvent event, boolean opening, boolean hookOpen) {
    Fish given = event.fishOrNull();
    int count = given == null ? 1 : given.count();
    Became became =
        switch (event.kind()) {
          case LANDED -> Became.LANDED;
          case LOST -> Became.LOST;
          default -> Became.FOUL;
        };
    int more = count;
    if (hookOpen) {
      int last = lastHooked();
      BiteMark hook = bites.get(last);
      bites.set(last, new BiteMark(hook.at(), index, became, opening, hook.order()));
      more--;
    }
    for (int i = 0; i < more; i++) {
      bites.add(bite(event, became, opening));
    }
    if (event.kind() == EventKind.LANDED || (event.kind() == EventKind.FOUL && foulCounts)) {
      Double grams = Objects.requireNonNull(given).grams();
      for (int i = 0; i < count; i++) {
        fish.add(new FishMark(event.at(), index, grams == null ? null : grams / count, opening));
      }
    }
  }

  private int lastHooked() {
    int i = bites.size() - 1;
    while (bites.get(i).became() != Became.HOOKED) {
      i--;
    }
    return i;
  }

  Caught caught() {
    return Caught.of(bites, fish);
  }
}
