package org.fadeline.ui.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.LinePair;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.export.TalkMaterial;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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

  /** The comparison that a talk makes of what is put on it rests on what the screen rests on. */
  @ParameterizedTest
  @EnumSource
  void aTalkLaysAndPairsTwoMatchesAsTheScreenDoes(Alignment.Mode mode) {
    String firstEvent = A.events().get(9).id();
    Laying laying = new Laying(mode, -17.5, firstEvent, B.events().get(4).id());
    CompareState state =
        CompareState.EMPTY
            .withLaying(laying)
            .pair(A.lines().get(0).id(), B.lines().get(1).id())
            .pair(A.lines().get(1).id(), null);
    Review first = Reviewer.review(A, ReviewSettings.DEFAULT);
    Review second = Reviewer.review(B, ReviewSettings.DEFAULT);
    Picture picture =
        Picture.of(Picture.Kind.COMPARE_TIMELINES, "a", "b")
            .withManner(ComparePictures.manner(state, A, B));
    ComparisonSetup talk =
        new TalkMaterial(Map.of("a", first, "b", second))
            .comparison(picture, Units.KG_AND_METRES)
            .setup();
    assertEquals(state.setup(A, B), talk);
    assertEquals(mode, talk.alignment().mode());
  }

  @Test
  void anEventThatIsGoneIsRefusedRatherThanLaidOtherwise() {
    Review review = Reviewer.review(A, ReviewSettings.DEFAULT);
    Picture picture =
        Picture.of(Picture.Kind.COMPARE_CATCH, "a", "a")
            .withManner(
                Picture.Manner.USUAL
                    .withAlign(Picture.Align.EVENT)
                    .withChosen(new Picture.Chosen(0, "gone", "gone", List.of())));
    String said =
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new TalkMaterial(Map.of("a", review)).comparison(picture, Units.KG_AND_METRES))
            .getMessage();
    assertEquals("no event gone in the session", said);
  }
}
