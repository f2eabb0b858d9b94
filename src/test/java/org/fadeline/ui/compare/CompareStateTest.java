package org.fadeline.ui.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.LinePair;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;

/** What is chosen about a comparison, without a window. */
class CompareStateTest {
  private static final Session A = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 7);
  private static final Session B =
      DemoMatch.generate(DemoWaters.waterASecondDay(), DemoWaters.planASecondDay(), 8);

  private static LinePair pairOf(ComparisonSetup setup, Line first) {
    return setup.pairing().pairs().stream()
        .filter(p -> p.first().equals(first))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aChoiceByHandStandsBeforeWhatIsPairedByItself() {
    Line first = A.lines().get(0);
    Line second = B.lines().get(1);
    ComparisonSetup setup = CompareState.EMPTY.pair(first.id(), second.id()).setup(A, B);
    LinePair pair = pairOf(setup, first);
    assertEquals(second, pair.second());
    assertEquals(LinePair.By.HAND, pair.by());
    assertEquals("chosen by hand", CompareWords.why(pair));
  }

  @Test
  void aLineIsChosenOnceTheLastTimeCounts() {
    String first = A.lines().get(0).id();
    CompareState twice =
        CompareState.EMPTY
            .pair(first, B.lines().get(1).id())
            .pair(first, B.lines().get(2).id())
            .pair(A.lines().get(3).id(), B.lines().get(2).id());
    assertEquals(1, twice.choices().size(), "each line stands in one choice at most");
    assertEquals(B.lines().get(2), pairOf(twice.setup(A, B), A.lines().get(3)).second());
  }

  @Test
  void anUnpairedLineStaysAloneUntilPairedByItselfAgain() {
    Line first = A.lines().get(0);
    Line second = pairOf(CompareState.EMPTY.setup(A, B), first).second();
    CompareState apart = CompareState.EMPTY.unpair(first.id(), second.id());
    assertTrue(apart.setup(A, B).pairing().onlyFirst().contains(first));
    assertTrue(apart.setup(A, B).pairing().onlySecond().contains(second));
    assertEquals(CompareState.EMPTY.setup(A, B), apart.pairedByItself().setup(A, B));
  }

  @Test
  void choicesOfLinesThatAreGoneAreLeftOut() {
    CompareState state = CompareState.EMPTY.pair("gone", B.lines().get(0).id());
    assertEquals(CompareState.EMPTY.setup(A, B).pairing(), state.setup(A, B).pairing());
  }

  @Test
  void everyModeLaysWhatItSays() {
    for (Alignment.Mode mode : Laying.MODES) {
      Alignment alignment = Laying.USUAL.withMode(mode).of(A, B);
      assertEquals(mode, alignment.mode());
      assertTrue(alignment.stated().startsWith("Laid on each other "), alignment.stated());
    }
    Alignment byHand = Laying.USUAL.byHand(12).of(A, B);
    assertEquals(
        12, byHand.secondMinutes(B.match().allIn()) - byHand.firstMinutes(A.match().allIn()), 1e-9);
    assertEquals(1440, Laying.USUAL.byHand(5000).minutes(), "a day at most");
  }

  @Test
  void oneEventIsLaidOnAnother() {
    String one = A.events().get(5).id();
    String other = B.events().get(9).id();
    Alignment alignment = Laying.USUAL.onEvents(one, null).onEvents(null, other).of(A, B);
    assertEquals(A.events().get(5).at(), alignment.firstOrigin());
    assertEquals(B.events().get(9).at(), alignment.secondOrigin());
    Alignment gone = Laying.USUAL.onEvents("gone", other).of(A, B);
    assertEquals(A.events().get(0).at(), gone.firstOrigin(), "the first event stands for it");
  }
}
