package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fadeline.analysis.Effort.Became;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/** Turns the drafts of one line into spells, bites and fish. */
final class LineMarks {
  private final Session session;
  private final Line line;
  private final List<SpellDraft> drafts;
  private final Map<String, Integer> orders;
  private final List<BiteMark> bites = new ArrayList<>();
  private final List<FishMark> fish = new ArrayList<>();

  /**
   * @param orders place in the log of each event, by its id
   */
  LineMarks(Session session, Line line, List<SpellDraft> drafts, Map<String, Integer> orders) {
    this.session = session;
    this.line = line;
    this.drafts = drafts;
    this.orders = orders;
  }

  /**
   * @param handlingMillis what a fish takes where no cast is logged, 0 for nothing
   */
  LineEffort build(double handlingMillis) {
    Handling handling = new Handling(drafts, handlingMillis);
    List<Spell> spells = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      spells.add(spell(drafts.get(i), i, handling));
    }
    bites.sort(Comparator.comparingLong(BiteMark::at));
    fish.sort(Comparator.comparingLong(FishMark::at));
    return new LineEffort(line, spells, bites, fish);
  }

  private Spell spell(SpellDraft draft, int index, Handling handling) {
    int firstBite = bites.size();
    int firstFish = fish.size();
    boolean opens = draft.opensWithFish();
    int openingOutcome = opens ? draft.hooks().get(0).outcome() : -1;
    boolean hookOpen = false;
    List<SessionEvent> water = draft.water();
    for (int i = 0; i < water.size(); i++) {
      SessionEvent event = water.get(i);
      switch (event.kind()) {
        case CAST -> hookOpen = false;
        case BITE -> bites.add(bite(event, index, Became.MISSED, false));
        case HOOKED -> {
          dropSameBite(event, firstBite);
          bites.add(bite(event, index, Became.HOOKED, opens && i == 0));
          hookOpen = true;
        }
        case LANDED, LOST, FOUL -> {
          outcome(event, index, i == openingOutcome, hookOpen);
          hookOpen = false;
        }
        default -> {}
      }
    }
    List<TimeSpan> fished = draft.fishedSpans();
    return new Spell(
        line.id(),
        index,
        new TimeSpan(draft.start(), draft.end()),
        fished,
        SpanMath.without(fished, handling.gaps(draft)),
        Caught.of(bites.subList(firstBite, bites.size()), fish.subList(firstFish, fish.size())),
        opens);
  }

  private BiteMark bite(SessionEvent event, int index, Became became, boolean opening) {
    int order = Objects.requireNonNull(orders.get(event.id()));
    return new BiteMark(event.at(), index, became, opening, order);
  }

  private void dropSameBite(SessionEvent hooked, int firstBite) {
    int last = bites.size() - 1;
    if (last >= firstBite
        && bites.get(last).became() == Became.MISSED
        && hooked.at() - bites.get(last).at() <= SessionEvent.Bite.SAME_AS_HOOKED_MILLIS) {
      bites.remove(last);
    }
  }

  private void outcome(SessionEvent event, int index, boolean opening, boolean hookOpen) {
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
      bites.add(bite(event, index, became, opening));
    }
    boolean counts =
        event.kind() == EventKind.LANDED
            || (event.kind() == EventKind.FOUL && session.match().rules().foulHookedCounts());
    if (counts) {
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
}
