package org.fadeline.analysis.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;

/** Two sessions on one axis, each way. */
class AlignmentTest {
  private static final Session TEN =
      SmallMatch.from("10:00", "15:00")
          .fed("10:10", "short", Feed.UNKNOWN)
          .fish("short", "10:00", "11:00", 1, 500)
          .session();
  private static final Session ELEVEN =
      SmallMatch.from("11:00", "16:00")
          .fed("11:30", "short", Feed.UNKNOWN)
          .fish("short", "11:00", "12:00", 1, 500)
          .session();

  private static double second(Alignment alignment, String clock) {
    return alignment.secondMinutes(SmallMatch.millis(clock));
  }

  @Test
  void eachModeLaysItsOwnInstantOnItself() {
    long at = SmallMatch.millis("12:00");
    assertEquals(720, Alignment.byClock(TEN, ELEVEN).firstMinutes(at));
    assertEquals(720, second(Alignment.byClock(TEN, ELEVEN), "12:00"));
    assertEquals(120, Alignment.byAllIn(TEN, ELEVEN).firstMinutes(at));
    assertEquals(60, second(Alignment.byAllIn(TEN, ELEVEN), "12:00"));
    assertEquals(110, Alignment.byFirstFed(TEN, ELEVEN).firstMinutes(at));
    assertEquals(30, second(Alignment.byFirstFed(TEN, ELEVEN), "12:00"));
    assertEquals(75, second(Alignment.byHand(TEN, ELEVEN, 15), "12:00"));
    Alignment byFish = Alignment.byEvents(TEN, "e2", ELEVEN, "e2");
    assertEquals(0, byFish.firstMinutes(SmallMatch.millis("11:00")));
    assertEquals(0, second(byFish, "12:00"));
    assertTrue(byFish.stated().contains("landed"), byFish.stated());
  }

  @Test
  void theModeIsStatedAsItIsSaid() {
    String byHand = "Laid on each other by hand: the second match's all in ";
    assertEquals(byHand + "34 min after the first's.", Alignment.byHand(TEN, ELEVEN, 34).stated());
    assertEquals(
        byHand + "2.5 min before the first's.", Alignment.byHand(TEN, ELEVEN, -2.5).stated());
    assertEquals(byHand + "on the first's.", Alignment.byHand(TEN, ELEVEN, 0).stated());
    Session match = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 122);
    String allIn =
        match.events().stream()
            .filter(e -> e.kind() == EventKind.ALL_IN)
            .findFirst()
            .orElseThrow()
            .id();
    assertEquals(
        "Laid on each other by a chosen event: all in in the first match, all in in the second.",
        Alignment.byEvents(match, allIn, match, allIn).stated());
  }

  @Test
  void instantsComeBackFromTheAxis() {
    Alignment alignment = Alignment.byFirstFed(TEN, ELEVEN);
    long at = SmallMatch.millis("12:34");
    assertEquals(at, alignment.firstInstant(alignment.firstMinutes(at)));
    assertEquals(at, alignment.secondInstant(alignment.secondMinutes(at)));
  }

  @Test
  void withoutAFeedAllInIsUsedAndSaidSo() {
    Session unfed =
        SmallMatch.from("10:00", "15:00").fish("short", "10:00", "11:00", 1, 500).session();
    Alignment alignment = Alignment.byFirstFed(TEN, unfed);
    assertEquals(Alignment.Mode.ALL_IN, alignment.mode());
    assertTrue(alignment.stated().contains("the second match logs no feed"), alignment.stated());
  }

  @Test
  void whatIsNotThereIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> Alignment.byEvents(TEN, "none", ELEVEN, "e1"));
    assertThrows(IllegalArgumentException.class, () -> Alignment.byHand(TEN, ELEVEN, 2000));
    assertThrows(IllegalArgumentException.class, () -> Alignment.byHand(TEN, ELEVEN, Double.NaN));
  }
}
