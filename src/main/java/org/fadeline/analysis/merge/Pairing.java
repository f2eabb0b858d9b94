package org.fadeline.analysis.merge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** Finds which events of two records tell of the same thing, and how far their clocks differ. */
final class Pairing {
  /** How far apart two clocks are looked for. */
  private static final long FARTHEST_MILLIS = 30 * 60_000L;

  /** Within this, differences of time count as one and the same. */
  private static final long CLOSE_MILLIS = 10_000;

  /** Fewer events than these in step say nothing of the clocks. */
  private static final int FEWEST = 5;

  private static final double LEAST_SHARE = 0.3;

  /** Events looked at for each of the other record, so that many at one instant stay quick. */
  private static final int MOST_CANDIDATES = 64;

  private Pairing() {}

  /**
   * One event of each record.
   *
   * @param mine its place in the first list
   * @param theirs its place in the second list
   */
  record Pair(int mine, int theirs) {}

  private record Candidate(int mine, int theirs, long cost) {}

  /** What may be taken for the same thing. */
  interface Likeness {
    /** Returns whether two events can tell of the same thing, times apart. */
    boolean alike(SessionEvent mine, SessionEvent theirs);
  }

  /** Returns whether two events are of one kind and of lines that do not speak against it. */
  static boolean sameKind(SessionEvent mine, SessionEvent theirs) {
    return mine.kind() == theirs.kind() && linesAgree(mine, theirs);
  }

  static boolean linesAgree(SessionEvent mine, SessionEvent theirs) {
    return mine.lineId() == null
        || theirs.lineId() == null
        || mine.lineId().equals(theirs.lineId());
  }

  /** Returns the pairs within a tolerance, the closest first, each event in one at most. */
  static List<Pair> pairs(
      List<SessionEvent> mine, List<SessionEvent> theirs, long tolerance, Likeness likeness) {
    List<Candidate> candidates = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < mine.size(); i++) {
      SessionEvent one = mine.get(i);
      while (from < theirs.size() && theirs.get(from).at() < one.at() - tolerance) {
        from++;
      }
      int taken = 0;
      for (int j = from;
          j < theirs.size()
              && theirs.get(j).at() <= one.at() + tolerance
              && taken < MOST_CANDIDATES;
          j++) {
        if (likeness.alike(one, theirs.get(j))) {
          candidates.add(new Candidate(i, j, Math.abs(one.at() - theirs.get(j).at())));
          taken++;
        }
      }
    }
    candidates.sort(Comparator.comparingLong(Candidate::cost).thenComparingInt(Candidate::mine));
    boolean[] usedMine = new boolean[mine.size()];
    boolean[] usedTheirs = new boolean[theirs.size()];
    List<Pair> pairs = new ArrayList<>();
    for (Candidate candidate : candidates) {
      if (!usedMine[candidate.mine] && !usedTheirs[candidate.theirs]) {
        usedMine[candidate.mine] = true;
        usedTheirs[candidate.theirs] = true;
        pairs.add(new Pair(candidate.mine, candidate.theirs));
      }
    }
    pairs.sort(Comparator.comparingInt(Pair::mine));
    return pairs;
  }

  /**
   * Returns how far the second record's clock is ahead, from the difference of time that most
   * events have in common; empty where too few are in step.
   */
  static Optional<ClockOffset> offset(List<SessionEvent> mine, List<SessionEvent> theirs) {
    List<SessionEvent> first = mine.stream().filter(e -> tells(e.kind())).toList();
    List<SessionEvent> second = theirs.stream().filter(e -> tells(e.kind())).toList();
    long[] differences = differences(first, second);
    if (differences.length == 0) {
      return Optional.empty();
    }
    long centre = densest(differences);
    List<SessionEvent> shifted = second.stream().map(e -> e.retimed(at -> at - centre)).toList();
    List<Pair> inStep = pairs(first, shifted, CLOSE_MILLIS, Pairing::sameKind);
    if (inStep.size() < FEWEST
        || inStep.size() < LEAST_SHARE * Math.min(first.size(), second.size())) {
      return Optional.empty();
    }
    long[] exact =
        inStep.stream()
            .mapToLong(p -> second.get(p.theirs()).at() - first.get(p.mine()).at())
            .sorted()
            .toArray();
    long median = exact[exact.length / 2];
    long[] spread = Arrays.stream(exact).map(d -> Math.abs(d - median)).sorted().toArray();
    return Optional.of(new ClockOffset(median, inStep.size(), spread[spread.length / 2]));
  }

  private static boolean tells(EventKind kind) {
    return switch (kind) {
      case HOOKED, LANDED, LOST, FOUL, MOVE, FED -> true;
      default -> false;
    };
  }

  private static long[] differences(List<SessionEvent> mine, List<SessionEvent> theirs) {
    List<Long> all = new ArrayList<>();
    int from = 0;
    for (SessionEvent one : mine) {
      while (from < theirs.size() && theirs.get(from).at() < one.at() - FARTHEST_MILLIS) {
        from++;
      }
      for (int j = from;
          j < theirs.size() && theirs.get(j).at() <= one.at() + FARTHEST_MILLIS;
          j++) {
        SessionEvent other = theirs.get(j);
        if (sameKind(one, other)) {
          all.add(other.at() - one.at());
          if (weighAlike(one.fishOrNull(), other.fishOrNull())) {
            // Two estimates of one fish agree; of two fish, seldom.
            all.add(other.at() - one.at());
            all.add(other.at() - one.at());
          }
        }
      }
    }
    return all.stream().mapToLong(Long::longValue).sorted().toArray();
  }

  private static boolean weighAlike(@Nullable Fish a, @Nullable Fish b) {
    return a != null
        && b != null
        && a.grams() != null
        && b.grams() != null
        && Math.abs(a.grams() - b.grams()) <= 0.1 * Math.max(a.grams(), b.grams());
  }

  /**
   * Returns the middle of the window that holds the most differences; the one nearest 0 of equals.
   */
  private static long densest(long[] sorted) {
    int best = 0;
    long centre = 0;
    int to = 0;
    for (int from = 0; from < sorted.length; from++) {
      while (to < sorted.length && sorted[to] - sorted[from] <= 2 * CLOSE_MILLIS) {
        to++;
      }
      long middle = sorted[from + (to - from) / 2];
      if (to - from > best || (to - from == best && Math.abs(middle) < Math.abs(centre))) {
        best = to - from;
        centre = middle;
      }
    }
    return centre;
  }
}
