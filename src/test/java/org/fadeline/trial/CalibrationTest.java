package org.fadeline.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.demo.DemoWaters;
import org.fadeline.trial.GainTrial.Row;
import org.fadeline.trial.GainTrial.Score;
import org.junit.jupiter.api.Test;

/**
 * Small forms of the trials, seeded: claims of a review are borne out by the simulated truth. The
 * large forms, with other seeds, stand in the methods document.
 */
class CalibrationTest {
  @Test
  void whatMovingIsSaidToGiveIsBorneOut() {
    List<Row> rows = new ArrayList<>(GainTrial.onRates(RandomPlans.Course.CONSTANT, 100, 40));
    rows.addAll(GainTrial.onRates(RandomPlans.Course.WANDERING, 100, 20));
    rows.addAll(GainTrial.onWater(DemoWaters.waterA(), DemoWaters.planA(), 100, 8));
    Score score = Score.of(rows);
    assertTrue(score.gains() >= 12, score::toString);
    assertTrue(score.covered() >= 0.8 * score.gains(), score::toString);
    assertTrue(score.claims() >= 3, score::toString);
    assertTrue(score.right() >= 0.8 * score.claims(), score::toString);
  }

  /** Of 300 lines 0.05 is 15 and 0.95 is 285; bounds three and four standard errors off. */
  @Test
  void aLeavingTimeIsSeldomGivenForALineThatDoesNotFallAndItsLimitsHoldTheTruth() {
    LeavingTrial.Outcome even =
        LeavingTrial.run(new LeavingTrial.Kind(25, Double.POSITIVE_INFINITY, 4, false), 300, 7);
    assertTrue(even.given() <= 27, even::toString);
    LeavingTrial.Outcome falling =
        LeavingTrial.run(new LeavingTrial.Kind(25, 25, 4, false), 300, 7);
    assertTrue(falling.given() >= 150, falling::toString);
    assertTrue(falling.held() >= 0.9 * falling.given(), falling::toString);
  }

  @Test
  void recordsKeptAsPeopleKeepThemDoNotManufactureFades() {
    for (Kept kept : List.of(Kept.NO_CASTS, Kept.MOVES_AND_FISH, Kept.FISH_ONLY, Kept.FORGETTING)) {
      RecordTrial.Tally tally = RecordTrial.run(kept, false, 5000, 10);
      assertTrue(tally.flagged <= 2, () -> kept.words() + ": flagged " + tally.flagged);
      assertTrue(tally.sure <= 1, () -> kept.words() + ": sure " + tally.sure);
      double error = tally.rateError / tally.rates;
      assertTrue(error < 0.2, () -> kept.words() + ": rates out by " + error);
    }
  }

  @Test
  void aFallToAQuarterIsSeenInAFullRecordAndInOneWithoutCasts() {
    for (Kept kept : List.of(Kept.FULL, Kept.NO_CASTS)) {
      RecordTrial.Tally tally = RecordTrial.run(kept, true, 5000, 10);
      assertTrue(tally.flagged >= 5, () -> kept.words() + ": flagged " + tally.flagged);
      assertTrue(tally.held >= 0.7 * tally.intervals, () -> kept.words() + ": " + tally.held);
    }
  }

  @Test
  void theFinishToldOnAConstantLineHoldsTheFinish() {
    PaceTrial.Held steady = new PaceTrial.Held();
    PaceTrial.Held tiring = new PaceTrial.Held();
    for (PaceTrial.Tally tally : PaceTrial.onRates(RandomPlans.Course.CONSTANT, 5000, 16)) {
      steady.plus(tally.steady());
      tiring.plus(tally.tiring());
    }
    for (PaceTrial.Held held : new PaceTrial.Held[] {steady, tiring}) {
      assertTrue(held.told >= 40);
      assertTrue(held.fishHeld >= 0.85 * held.told, held.fishHeld + " of " + held.told);
      assertTrue(held.weightHeld >= 0.8 * held.weights, held.weightHeld + " of " + held.weights);
    }
  }

  @Test
  void onAWaterWhoseLinesTireTheFinishThatAllowsForItHoldsMoreOften() {
    PaceTrial.Held steady = new PaceTrial.Held();
    PaceTrial.Held tiring = new PaceTrial.Held();
    for (PaceTrial.Tally tally :
        PaceTrial.onWater(DemoWaters.waterB(), DemoWaters.planB(), 5000, 10)) {
      steady.plus(tally.steady());
      tiring.plus(tally.tiring());
    }
    assertTrue(tiring.fishHeld >= 0.8 * tiring.told, tiring.fishHeld + " of " + tiring.told);
    assertTrue(tiring.fishHeld > steady.fishHeld, tiring.fishHeld + " and " + steady.fishHeld);
  }

  /**
   * The truth the claims are held against, by hand: 40 bites an hour of bait time, none missed or
   * lost, 90 seconds a fish: a fish each 90 + 90 seconds, 20 an hour.
   */
  @Test
  void bitesBecomeFishByRenewal() {
    assertEquals(20, Counterfactual.landed(40, 0, 0, 90, 0), 1e-9);
    assertEquals(0, Counterfactual.landed(0, 0.3, 0.1, 90, 50), 1e-9);
  }
}
