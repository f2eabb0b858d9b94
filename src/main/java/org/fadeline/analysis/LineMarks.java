package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.Line;
import org.jspecify.annotations.Nullable;

/**
 * Turns the drafts of one line into spells, bites and fish. Asked again while the log is being
 * read, it works out anew only what has changed since.
 */
final class LineMarks {
  private final Line line;
  private final boolean foulCounts;
  private final double handlingMillis;
  private final Map<String, Integer> orders;
  private final List<SpellDraft> drafts = new ArrayList<>();
  private final List<Made> made = new ArrayList<>();
  private @Nullable Handling handling;
  private @Nullable LineEffort built;
  private long builtOf;

  /** A spell as last made, and the state of the draft it was made of. */
  private record Made(Spell spell, SpellMarks marks, int changes) {}

  /**
   * @param handlingMillis what a fish takes where no cast is logged, 0 for nothing
   * @param orders place in the log of each event, by its id
   */
  LineMarks(Line line, boolean foulCounts, double handlingMillis, Map<String, Integer> orders) {
    this.line = line;
    this.foulCounts = foulCounts;
    this.handlingMillis = handlingMillis;
    this.orders = orders;
  }

  /** The drafts of the line's spells, in order, to be added to. */
  List<SpellDraft> drafts() {
    return drafts;
  }

  /**
   * Returns the time that a fish now in hand takes at the longest, from the hook on, or null where
   * the bait of the last spell is taken to be in the water. It holds as of the last {@link #build}.
   */
  @Nullable TimeSpan inHand() {
    SpellDraft last = drafts.get(drafts.size() - 1);
    List<SpellDraft.Hook> hooks = last.hooks();
    double longest = handling == null ? Double.NaN : handling.longestMillis();
    if (hooks.isEmpty() || Double.isNaN(longest)) {
      return null;
    }
    SpellDraft.Hook hook = hooks.get(hooks.size() - 1);
    long from = last.water().get(hook.start()).at();
    return hook.cast() >= 0 || hook.take() >= 0
        ? null
        : new TimeSpan(from, from + (long) Math.ceil(longest));
  }

  LineEffort build() {
    long changes = drafts.stream().mapToLong(SpellDraft::changes).sum();
    if (built == null || changes != builtOf) {
      built = make();
      builtOf = changes;
    }
    return built;
  }

  private LineEffort make() {
    Handling now = new Handling(drafts, handlingMillis);
    boolean sameHandling = handling != null && handling.agrees(now);
    handling = now;
    List<Spell> spells = new ArrayList<>();
    List<BiteMark> bites = new ArrayList<>();
    List<FishMark> fish = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      SpellDraft draft = drafts.get(i);
      Made before = i < made.size() ? made.get(i) : null;
      if (before == null || !sameHandling || before.changes != draft.changes()) {
        SpellMarks marks =
            before != null && before.marks.waterEvents == draft.water().size()
                ? before.marks
                : new SpellMarks(draft, i, foulCounts, orders);
        Spell spell = spell(draft, i, marks, now);
        // One object for as long as nothing of it changes: what is told at each minute shares it.
        Made next =
            new Made(
                before != null && before.spell.equals(spell) ? before.spell : spell,
                marks,
                draft.changes());
        if (before == null) {
          made.add(next);
        } else {
          made.set(i, next);
        }
      }
      spells.add(made.get(i).spell);
      bites.addAll(made.get(i).marks.bites);
      fish.addAll(made.get(i).marks.fish);
    }
    bites.sort(Comparator.comparingLong(BiteMark::at));
    fish.sort(Comparator.comparingLong(FishMark::at));
    return new LineEffort(line, spells, bites, fish);
  }

  private Spell spell(SpellDraft draft, int index, SpellMarks marks, Handling now) {
    List<TimeSpan> fished = draft.fishedSpans();
    return new Spell(
        line.id(),
        index,
        new TimeSpan(draft.start(), draft.end()),
        fished,
        SpanMath.without(fished, now.gaps(draft)),
        marks.caught(),
        draft.opensWithFish());
  }
}
