package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * How well spoken notes are read: precision and recall of events by kind and line, on the set used
 * for tuning and on one written by somebody who had not seen the reader.
 *
 * <p>{@code -Dfadeline.notes=print} prints the figures and every note that was read otherwise than
 * expected.
 */
class NoteReaderScoreTest {
  private static NoteScores print(NoteScores scores) {
    if ("print".equals(System.getProperty("fadeline.notes"))) {
      scores.misses.forEach(System.out::println);
      System.out.println(scores);
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

  /** The bounds only catch a reader that broke; the figures are published as they come. */
  @Test
  void heldBackSet() {
    NoteScores found = NoteScores.of("/notes/heldback.csv");
    Assumptions.assumeTrue(found != null, "no held-back set here yet");
    NoteScores scores = print(Objects.requireNonNull(found));
    assertTrue(scores.notes >= 100);
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
