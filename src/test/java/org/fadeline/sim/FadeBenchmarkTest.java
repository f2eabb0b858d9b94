package org.fadeline.sim;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.Function;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;
import org.junit.jupiter.api.Test;

/**
 * A small part of {@link FadeBenchmark} with bounds that leave room for chance: the published
 * shares less or plus about three standard errors at these numbers of lines.
 */
class FadeBenchmarkTest {
  private static final int LINES = 25;

  private static FadeScore score(Function<SplittableRandom, SimulatedLine> scenario) {
    return FadeBenchmark.score(scenario, LINES, FadeOptions.DEFAULT.withDraws(400));
  }

  @Test
  void findsWhatStops() {
    FadeScore score = score(r -> SimulatedLine.step(r, 20, 2));
    assertTrue(score.flaggedAtHalf() >= 0.95, "flagged " + score.flaggedAtHalf());
    assertTrue(score.flaggedAtEight() >= 0.9, "at 0.8 " + score.flaggedAtEight());
    assertTrue(score.medianError() <= 6, "error " + score.medianError());
    assertTrue(score.cover() >= 0.78, "cover " + score.cover());
  }

  @Test
  void findsMostOfWhatFallsToAQuarter() {
    FadeScore score = score(r -> SimulatedLine.step(r, 12, 3));
    assertTrue(score.flaggedAtHalf() >= 0.77, "flagged " + score.flaggedAtHalf());
    assertTrue(score.medianError() <= 16, "error " + score.medianError());
    assertTrue(score.cover() >= 0.78, "cover " + score.cover());
  }

  @Test
  void seldomFindsWhatIsNotThere() {
    FadeScore even = score(r -> SimulatedLine.constant(r, 10));
    assertTrue(even.flaggedAtHalf() <= 0.18, "flagged " + even.flaggedAtHalf());
    assertTrue(even.flaggedAtEight() <= 0.1, "at 0.8 " + even.flaggedAtEight());
    FadeScore rising = score(r -> SimulatedLine.rising(r, 4, 14));
    assertTrue(rising.flaggedAtHalf() <= 0.1, "rising " + rising.flaggedAtHalf());
    FadeScore bunched = score(r -> SimulatedLine.bunched(r, 12));
    assertTrue(bunched.flaggedAtHalf() <= 0.35, "bunched " + bunched.flaggedAtHalf());
  }

  @Test
  void aRestedLineCanFadeTwice() {
    int both = 0;
    for (int i = 0; i < LINES; i++) {
      SimulatedLine line = SimulatedLine.rested(new SplittableRandom(77 + i), 24, 3, 24, 3);
      both +=
          FadePosterior.review(line.record(), FadeOptions.DEFAULT.withDraws(400)).stream()
                  .allMatch(fade -> fade.probability() >= 0.5)
              ? 1
              : 0;
    }
    assertTrue(both >= 0.15 * LINES, "both found in " + both + " of " + LINES);
  }

  @Test
  void aGapRuleFlagsMostLinesThatDoNotFade() {
    int flagged = 0;
    for (int i = 0; i < LINES; i++) {
      SimulatedLine line = SimulatedLine.constant(new SplittableRandom(5 + i), 10);
      flagged += Double.isNaN(SimpleRules.firstGap(line, 20)) ? 0 : 1;
    }
    assertTrue(flagged > LINES / 2, "flagged " + flagged);
  }
}
