package org.fadeline.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fadeline.model.Session;

/**
 * The whole review of one session.
 *
 * @param session the record it rests on
 * @param settings the settings it rests on
 * @param summary totals and the record's grade
 * @param lines one entry for each line of the session, in its order
 * @param stays one entry for every spell of the match, faded or not, in time order
 * @param course what runs along the whole match
 */
public record Review(
    Session session,
    ReviewSettings settings,
    Summary summary,
    List<LineReview> lines,
    List<StayOrGo> stays,
    Course course) {
  /** Copies the lists. */
  public Review {
    lines = List.copyOf(lines);
    stays = List.copyOf(stays);
  }

  /** Returns the entry of the line with the given id, or empty. */
  public Optional<LineReview> line(String id) {
    return lines.stream().filter(l -> l.line().id().equals(id)).findFirst();
  }

  /**
   * Returns the place of the line with the given id among all lines, from 0; -1 for no such line.
   */
  public int indexOf(String id) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).line().id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  /** Returns every spell of the match in time order. */
  public List<Spell> spells() {
    return lines.stream()
        .flatMap(l -> l.spells().stream())
        .sorted(Comparator.comparingLong(s -> s.span().from()))
        .toList();
  }

  /**
   * Totals of a session.
   *
   * @param caught bites, fish and weight of the whole match
   * @param weightFrom where the weight comes from
   * @param grade what kind of record it is
   * @param clockPrecisionS seconds to which its times are given: 300, 60, or 1 or finer
   * @param unassignedMinutes minutes of the match that belong to no line although the record shows
   *     no move
   */
  public record Summary(
      Caught caught,
      WeightFrom weightFrom,
      Grade grade,
      double clockPrecisionS,
      double unassignedMinutes) {}

  /** Where a weight comes from. */
  public enum WeightFrom {
    /** Guessed on the bank. */
    ESTIMATED("estimated"),
    /** Read off scales, fish by fish. */
    WEIGHED("weighed"),
    /** Estimates scaled to the weigh-in: a word of the format, which this program never writes. */
    SCALED("scaled");

    private final String word;

    WeightFrom(String word) {
      this.word = word;
    }

    /** Returns the word used in files and on screen. */
    public String word() {
      return word;
    }
  }
}
