package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * What was fished when: spells, bait time, bites and fish of every line.
 *
 * @param session the record
 * @param lines one entry for each line of the session, in its order
 * @param unassigned stretches that belong to no line although the record shows no move
 * @param warnings about the record
 */
public record Effort(
    Session session,
    List<LineEffort> lines,
    List<Unassigned> unassigned,
    List<Course.Warning> warnings) {
  /** Copies the lists. */
  public Effort {
    lines = List.copyOf(lines);
    unassigned = List.copyOf(unassigned);
    warnings = List.copyOf(warnings);
  }

  /** Works out the effort of a session; nothing is taken off where casts are not logged. */
  public static Effort of(Session session) {
    return of(session, HandlingTimes.NONE);
  }

  /** Works out the effort of a session, with handling times where casts are not logged. */
  public static Effort of(Session session, HandlingTimes handling) {
    return new EffortBuilder(session, handling).build();
  }

  /** Returns the effort on the line with the given id, or empty. */
  public Optional<LineEffort> line(String id) {
    return lines.stream().filter(l -> l.line().id().equals(id)).findFirst();
  }

  /** Returns every spell of the match in time order. */
  public List<Spell> spells() {
    List<Spell> all = new ArrayList<>();
    lines.forEach(l -> all.addAll(l.spells()));
    all.sort(Comparator.comparingLong(s -> s.span().from()));
    return all;
  }

  /**
   * Effort on one line.
   *
   * @param line the line
   * @param spells its spells in order
   * @param bites its bites in order of time, and so of spells
   * @param fish its fish that count, one entry a fish, in order of time, and so of spells
   */
  public record LineEffort(
      Line line, List<Spell> spells, List<BiteMark> bites, List<FishMark> fish) {
    /** Copies the lists. */
    public LineEffort {
      spells = List.copyOf(spells);
      bites = List.copyOf(bites);
      fish = List.copyOf(fish);
    }

    /** Returns all it gave. */
    Caught caught() {
      return spells.stream().map(Spell::caught).reduce(Caught.NOTHING, Caught::plus);
    }

    /** Returns what it gave in (after, upTo], epoch milliseconds. */
    Caught caught(long after, long upTo) {
      return Caught.of(bitesAt(after + 1, upTo), fishAt(after + 1, upTo));
    }

    /** Returns the bites dated in [from, to], epoch milliseconds. */
    List<BiteMark> bitesAt(long from, long to) {
      return SortedLists.between(bites, BiteMark::at, from, to);
    }

    /** Returns the fish landed in [from, to], epoch milliseconds. */
    List<FishMark> fishAt(long from, long to) {
      return SortedLists.between(fish, FishMark::at, from, to);
    }

    /** Returns the bites of a spell that go into its rates. */
    List<BiteMark> bitesOf(Spell spell) {
      return SortedLists.between(bites, BiteMark::spell, spell.index(), spell.index()).stream()
          .filter(bite -> !bite.opening())
          .toList();
    }

    /** Returns the fish of neighbouring spells, in order, that go into their rates. */
    List<FishMark> fishOf(List<Spell> neighbours) {
      if (neighbours.isEmpty()) {
        return List.of();
      }
      int first = neighbours.get(0).index();
      int last = neighbours.get(neighbours.size() - 1).index();
      return SortedLists.between(fish, FishMark::spell, first, last).stream()
          .filter(mark -> !mark.opening())
          .toList();
    }

    /** Returns when it was fished, in order. */
    List<TimeSpan> fishedSpans() {
      return spells.stream().flatMap(spell -> spell.fishedSpans().stream()).toList();
    }

    /** Returns the milliseconds of bait time in [from, to). */
    long baitMillis(long from, long to) {
      long millis = 0;
      for (Spell spell : spells) {
        if (spell.span().overlapMillis(from, to) > 0) {
          millis += SpanMath.overlapMillis(spell.baitSpans(), from, to);
        }
      }
      return millis;
    }
  }

  /** What became of a bite. */
  public enum Became {
    /** Nothing was hooked. */
    MISSED,
    /** Hooked; the outcome is not logged. */
    HOOKED,
    /** Landed. */
    LANDED,
    /** Lost. */
    LOST,
    /** Landed foul-hooked. */
    FOUL
  }

  /**
   * One bite.
   *
   * @param at when it showed, epoch milliseconds: the hook-up, else the outcome
   * @param spell index of its spell on the line
   * @param became what became of it
   * @param opening whether it opens a spell for which no cast is logged; left out of rates
   * @param order place in the log of the event that dates it, from 0
   */
  public record BiteMark(long at, int spell, Became became, boolean opening, int order) {
    LogPlace place() {
      return new LogPlace(at, order);
    }
  }

  /**
   * One fish that counts.
   *
   * @param at when it was landed, epoch milliseconds
   * @param spell index of its spell on the line
   * @param grams its weight, or null where none is given
   * @param opening whether it opens a spell for which no cast is logged; left out of rates
   */
  public record FishMark(long at, int spell, @Nullable Double grams, boolean opening) {}

  /**
   * A stretch between two lines with no move logged.
   *
   * @param span when
   * @param before the line fished before it
   * @param after the line fished after it
   */
  public record Unassigned(TimeSpan span, String before, String after) {}
}
