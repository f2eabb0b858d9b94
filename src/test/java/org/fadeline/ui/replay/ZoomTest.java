package org.fadeline.ui.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.fadeline.replay.Playhead.Range;
import org.junit.jupiter.api.Test;

/** The part of the match shown. */
class ZoomTest {
  private static final Range WHOLE = new Range(1_000_000, 19_000_000);

  @Test
  void zoomingKeepsTheInstantUnderThePointer() {
    // Pointer a quarter of the way across: it stays there.
    Range view = Zoom.about(new Range(4_000_000, 8_000_000), WHOLE, 5_000_000, 0.5);
    assertEquals(new Range(4_500_000, 6_500_000), view);
  }

  @Test
  void zoomingOutEndsAtTheWhole() {
    assertEquals(WHOLE, Zoom.about(new Range(4_000_000, 8_000_000), WHOLE, 5_000_000, 100));
  }

  @Test
  void ontoWhatIsPickedShowsWhatLiesAboutIt() {
    assertEquals(
        new Range(4_850_000, 5_150_000), Zoom.onto(new Range(5_000_000, 5_000_000), WHOLE));
    assertEquals(
        new Range(4_950_000, 6_050_000), Zoom.onto(new Range(5_000_000, 6_000_000), WHOLE));
    Range early = new Range(1_000_000, 1_000_000);
    assertEquals(new Range(1_000_000, 1_300_000), Zoom.onto(early, WHOLE));
  }

  @Test
  void panningStopsAtTheEnds() {
    Range view = new Range(4_000_000, 8_000_000);
    assertEquals(new Range(1_000_000, 5_000_000), Zoom.pan(view, WHOLE, -9_000_000));
    assertEquals(new Range(15_000_000, 19_000_000), Zoom.pan(view, WHOLE, 90_000_000));
  }

  @Test
  void aPlayheadThatRunsOutOfViewTakesTheViewAlong() {
    Range view = new Range(4_000_000, 8_000_000);
    assertEquals(view, Zoom.showing(view, WHOLE, 8_000_000));
    assertTrue(Zoom.showing(view, WHOLE, 8_000_001).holds(8_000_001));
    assertTrue(Zoom.showing(view, WHOLE, 1_000_000).holds(1_000_000));
  }

  @Property(tries = 300, seed = "20260103")
  void theViewStaysInsideTheWholeAndNeverVanishes(
      @ForAll @LongRange(min = 1_000_000, max = 18_000_000) long from,
      @ForAll @LongRange(min = 20_000, max = 1_000_000) long length,
      @ForAll @DoubleRange(min = 0.01, max = 100) double factor,
      @ForAll @LongRange(min = 1_000_000, max = 19_000_000) long about) {
    Range view = Zoom.about(new Range(from, from + length), WHOLE, about, factor);
    assertTrue(view.from() >= WHOLE.from() && view.to() <= WHOLE.to(), () -> view.toString());
    assertTrue(view.millis() >= Zoom.CLOSEST, () -> view.toString());
  }
}
