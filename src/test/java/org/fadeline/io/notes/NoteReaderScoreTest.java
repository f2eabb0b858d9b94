package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * How well spoken notes are read: precision and recall of events by kind and line, on the sets used
 * for tuning and on a fresh one, written by somebody who had not seen the reader.
 *
 * <p>{@code -Dfadeline.notes=print} prints the figures and every note that was read otherwise than
 * expected.
 */
class NoteReaderScoreTest {
  private static NoteScores print(NoteScores scores) {
    if ("print".equals(System.getProperty("fadeline.notes"))) {
      scores.misses.forEach(System.out::println);
      System.out.println(scores + System.lineSeparator() + scores.reliability());
    }
    return scores;
  }

  @Test
  void tuningSet() {
    NoteScores scores = print(Objects.requireNonNull(NoteScores.of("/notes/tuning.csv")));
    assertTrue(scores.notes >= 100);
    assertTrue(scores.precision() >= 0.97, scores.toString());
    assertTrue(scores.recall() >= 0.97, scores.toString());
    assertTrue(scores.rightInAll >= 0.95 * scores.expected, scores.toString());
  }

  /** Held back once; used for tuning since the fresh set took its place. */
  @Test
  void formerHeldBackSet() {
    NoteScores scores = print(Objects.requireNonNull(NoteScores.of("/notes/heldback.csv")));
    assertTrue(scores.notes >= 100);
    assertTrue(scores.precision() >= 0.8, scores.toString());
    assertTrue(scores.recall() >= 0.75, scores.toString());
  }

  /**
   * Prints figures alone, so that nobody tunes on single notes. The bounds only catch a reader that
   * broke; the figures are published as they come.
   */
  @Test
  void freshSet() {
    NoteScores scores = Objects.requireNonNull(NoteScores.of("/notes/fresh.csv"));
    if ("print".equals(System.getProperty("fadeline.notes"))) {
      System.out.println("fresh: " + scores + System.lineSeparator() + scores.reliability());
    }
    assertTrue(scores.notes >= 120);
    assertTrue(scores.precision() >= 0.5, scores.toString());
    assertTrue(scores.recall() >= 0.5, scores.toString());
  }

  /** The scoring itself: a set that expects the wrong thing must score badly. */
  @Test
  void scoringTellsRightFromWrong() {
    NoteScores scores = Objects.requireNonNull(NoteScores.of("/notes/wrong.csv"));
    assertEquals(4, scores.notes);
    assertEquals(5, scores.expected);
    assertEquals(1, scores.rightKindAndLine);
    assertEquals(3, scores.rightKind);
    assertEquals(0, scores.rightInAll);
  }
}
