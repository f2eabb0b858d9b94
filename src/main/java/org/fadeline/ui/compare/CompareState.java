package org.fadeline.ui.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.LinePairing;
import org.fadeline.analysis.compare.LinePairing.Choice;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * Everything the screen shows besides the match in hand, at one moment.
 *
 * @param second the second session, or null while none is chosen
 * @param laying how the two are to be laid on each other
 * @param choices lines paired or kept apart by hand, each line at most once
 * @param work what came of it
 */
record CompareState(@Nullable Second second, Laying laying, List<Choice> choices, Work work) {
  /** Nothing chosen. */
  static final CompareState EMPTY = new CompareState(null, Laying.USUAL, List.of(), Work.NONE);

  /** Copies the list. */
  CompareState {
    choices = List.copyOf(choices);
  }

  /**
   * The second session.
   *
   * @param file where it was read from
   * @param review its review
   */
  record Second(Path file, Review review) {
    Session session() {
      return review.session();
    }
  }

  /**
   * What came of comparing.
   *
   * @param comparison the comparison shown, or null while there is none
   * @param secondKnown what could be told of its second match at each moment of that, or null
   *     before it is worked out
   * @param doing what is being done, in words, or null
   */
  record Work(
      @Nullable Comparison comparison, @Nullable KnownThen secondKnown, @Nullable String doing) {
    static final Work NONE = new Work(null, null, null);

    /** What was known of a match stays as long as the match and its settings do. */
    private @Nullable KnownThen knownOf(@Nullable Comparison other) {
      return comparison != null
              && other != null
              && comparison.second().settings().equals(other.second().settings())
              && comparison.second().session().equals(other.second().session())
          ? secondKnown
          : null;
    }
  }

  CompareState withSecond(@Nullable Second newSecond) {
    // Choices are about lines of the session before.
    return new CompareState(newSecond, Laying.USUAL, List.of(), Work.NONE);
  }

  CompareState withLaying(Laying newLaying) {
    return new CompareState(second, newLaying, choices, work);
  }

  CompareState withWork(@Nullable Comparison comparison, @Nullable String doing) {
    return new CompareState(
        second, laying, choices, new Work(comparison, work.knownOf(comparison), doing));
  }

  CompareState withSecondKnown(KnownThen known) {
    return new CompareState(second, laying, choices, new Work(work.comparison, known, work.doing));
  }

  /**
   * Pairs two lines by hand, or keeps one without counterpart; what was chosen for either before is
   * forgotten.
   *
   * @param first id of a line of the first session, or null
   * @param second id of a line of the second session, or null
   */
  CompareState pair(@Nullable String first, @Nullable String second) {
    List<Choice> kept = new ArrayList<>();
    for (Choice choice : choices) {
      boolean touches =
          (first != null && first.equals(choice.firstLine()))
              || (second != null && second.equals(choice.secondLine()));
      if (!touches) {
        kept.add(choice);
      }
    }
    kept.add(new Choice(first, second));
    return new CompareState(this.second, laying, kept, work);
  }

  /** Keeps both lines of a pair without counterpart. */
  CompareState unpair(String first, String second) {
    return pair(first, null).pair(null, second);
  }

  /** Pairs the lines by themselves again. */
  CompareState pairedByItself() {
    return new CompareState(second, laying, List.of(), work);
  }

  /** Returns the choices whose lines are still there. */
  List<Choice> choices(Session first, Session other) {
    return choices.stream()
        .filter(c -> c.firstLine() == null || first.line(c.firstLine()).isPresent())
        .filter(c -> c.secondLine() == null || other.line(c.secondLine()).isPresent())
        .toList();
  }

  /** Returns what a comparison of the two sessions rests on; choices of lines gone are left out. */
  ComparisonSetup setup(Session first, Session other) {
    return ComparisonSetup.usual(first, other)
        .withAlignment(laying.of(first, other))
        .withPairing(LinePairing.of(first, other, choices(first, other)));
  }
}
