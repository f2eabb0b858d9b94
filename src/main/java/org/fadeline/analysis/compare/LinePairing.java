package org.fadeline.analysis.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * Which line of one session is held against which of the other, each line at most once: by hand
 * first, then by name, then by kind, then by place alone.
 *
 * @param pairs in the order of the first session's lines
 * @param onlyFirst lines of the first session without a counterpart
 * @param onlySecond lines of the second session without a counterpart
 */
public record LinePairing(List<LinePair> pairs, List<Line> onlyFirst, List<Line> onlySecond) {
  /** Lines of one kind are paired up to this many metres apart … */
  private static final double KIND_METRES = 3;

  /** … or this share of the nearer one's distance, whichever is more. */
  private static final double KIND_SHARE = 0.5;

  /** Half a pole section: lines of unknown kind within it are at the same place. */
  private static final double SAME_PLACE_METRES = 0.75;

  /** Copies the lists. */
  public LinePairing {
    pairs = List.copyOf(pairs);
    onlyFirst = List.copyOf(onlyFirst);
    onlySecond = List.copyOf(onlySecond);
  }

  /**
   * A choice of the angler.
   *
   * @param firstLine id of a line of the first session, or null to keep the other without
   *     counterpart
   * @param secondLine id of a line of the second session, or null to keep the other without
   *     counterpart
   */
  public record Choice(@Nullable String firstLine, @Nullable String secondLine) {}

  /** Pairs the lines by themselves. */
  public static LinePairing automatic(Session first, Session second) {
    return of(first, second, List.of());
  }

  /**
   * Pairs the lines, the angler's choices first.
   *
   * @throws IllegalArgumentException if a choice names a line that its session does not have, or
   *     one chosen before
   */
  public static LinePairing of(Session first, Session second, List<Choice> choices) {
    Matcher matcher = new Matcher(first.lines(), second.lines());
    choices.forEach(matcher::choose);
    matcher.match(LinePair.By.NAME, (a, b) -> name(a).equals(name(b)) ? gapOrZero(a, b) : null);
    matcher.match(LinePair.By.KIND, LinePairing::kindGap);
    matcher.match(LinePair.By.DISTANCE, LinePairing::placeGap);
    return matcher.result();
  }

  private static String name(Line line) {
    return line.name().strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  private static double gapOrZero(Line a, Line b) {
    Double gap = gap(a, b);
    return gap == null ? 0 : gap;
  }

  private static @Nullable Double kindGap(Line a, Line b) {
    if (a.kind() == null || b.kind() == null || !a.kind().equalsIgnoreCase(b.kind())) {
      return null;
    }
    Double gap = gap(a, b);
    Double one = a.place().distanceM();
    Double other = b.place().distanceM();
    if (gap == null || one == null || other == null) {
      // Not known to lie apart: after every pair whose places are known.
      return 1e6;
    }
    return gap <= Math.max(KIND_METRES, KIND_SHARE * Math.min(one, other)) ? gap : null;
  }

  private static @Nullable Double placeGap(Line a, Line b) {
    if (a.kind() != null && b.kind() != null) {
      return null;
    }
    Double gap = gap(a, b);
    return gap != null && gap <= SAME_PLACE_METRES ? gap : null;
  }

  /**
   * Returns how far apart two lines lie, metres: across the swim where both bearings are known, by
   * distance out alone otherwise; null where a distance is missing.
   */
  private static @Nullable Double gap(Line a, Line b) {
    Double one = a.place().distanceM();
    Double other = b.place().distanceM();
    if (one == null || other == null) {
      return null;
    }
    Double left = a.place().bearingDegrees();
    Double right = b.place().bearingDegrees();
    if (left == null || right == null) {
      return Math.abs(one - other);
    }
    double cosine = Math.cos(Math.toRadians(left - right));
    return Math.sqrt(Math.max(0, one * one + other * other - 2 * one * other * cosine));
  }

  /** How far apart two lines are, or null where they do not go together. */
  @FunctionalInterface
  private interface Gap {
    @Nullable Double between(Line a, Line b);
  }

  /** Takes pairs off two lists of lines, nearest first. */
  private static final class Matcher {
    private final List<Line> first;
    private final List<Line> second;
    private final List<Line> freeFirst;
    private final List<Line> freeSecond;
    private final List<Line> keptFirst = new ArrayList<>();
    private final List<Line> keptSecond = new ArrayList<>();
    private final List<LinePair> pairs = new ArrayList<>();

    Matcher(List<Line> first, List<Line> second) {
      this.first = first;
      this.second = second;
      this.freeFirst = new ArrayList<>(first);
      this.freeSecond = new ArrayList<>(second);
    }

    void choose(Choice choice) {
      Line one = choice.firstLine() == null ? null : take(freeFirst, choice.firstLine(), "first");
      Line other =
          choice.secondLine() == null ? null : take(freeSecond, choice.secondLine(), "second");
      if (one != null && other != null) {
        pairs.add(new LinePair(one, other, LinePair.By.HAND));
      } else if (one != null) {
        keptFirst.add(one);
      } else if (other != null) {
        keptSecond.add(other);
      }
    }

    private static Line take(List<Line> free, String id, String which) {
      Line line =
          free.stream()
              .filter(l -> l.id().equals(id))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "no line " + id + " left to pair in the " + which + " session"));
      free.remove(line);
      return line;
    }

    private record Candidate(Line first, Line second, double gap, int order) {}

    void match(LinePair.By by, Gap gaps) {
      List<Candidate> candidates = new ArrayList<>();
      for (Line one : freeFirst) {
        for (Line other : freeSecond) {
          Double gap = gaps.between(one, other);
          if (gap != null) {
            // Ties go by the sum of places in the lists: the same whichever session comes first.
            int order = first.indexOf(one) + second.indexOf(other);
            candidates.add(new Candidate(one, other, gap, order));
          }
        }
      }
      candidates.sort(
          Comparator.comparingDouble(Candidate::gap).thenComparingInt(Candidate::order));
      for (Candidate candidate : candidates) {
        if (freeFirst.contains(candidate.first) && freeSecond.contains(candidate.second)) {
          freeFirst.remove(candidate.first);
          freeSecond.remove(candidate.second);
          pairs.add(new LinePair(candidate.first, candidate.second, by));
        }
      }
    }

    LinePairing result() {
      pairs.sort(Comparator.comparingInt(p -> first.indexOf(p.first())));
      keptFirst.addAll(freeFirst);
      keptSecond.addAll(freeSecond);
      keptFirst.sort(Comparator.comparingInt(first::indexOf));
      keptSecond.sort(Comparator.comparingInt(second::indexOf));
      return new LinePairing(pairs, keptFirst, keptSecond);
    }
  }
}
