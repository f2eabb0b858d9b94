package org.fadeline.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.RecordGrade;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;

/** A rule switched off in the log is off, and the others stay. */
class RuleOffTest {
  private static final Session FULL = RecordTrial.match(false, 40_001).session();

  @Test
  void withoutHandlingBaitTimeIsFishedTime() {
    Effort effort = Effort.of(RuleOff.HANDLING.of(FULL));
    double off = effort.lines().get(0).spells().get(0).baitHours();
    double fished = effort.lines().get(0).spells().get(0).fishedHours();
    assertEquals(fished, off, 0.001);
    assertNotEquals(fished, Effort.of(FULL).lines().get(0).spells().get(0).baitHours(), 0.1);
    assertEquals(
        Effort.of(FULL).lines().get(0).bites().size(), effort.lines().get(0).bites().size());
  }

  @Test
  void withoutTheOthersNothingIsUnassignedAndNoFishOpens() {
    Session fish = Kept.FISH_ONLY.of(FULL, 1);
    assertEquals(1, Effort.of(fish).unassigned().size());
    assertEquals(0, Effort.of(RuleOff.UNASSIGNED.of(fish)).unassigned().size());
    assertEquals(true, Effort.of(fish).lines().get(0).fish().get(0).opening());
    assertEquals(false, Effort.of(RuleOff.OPENING.of(fish)).lines().get(0).fish().get(0).opening());
  }

  @Test
  void withoutTheClockRuleTimesAreTakenAsExact() {
    Session rounded = Kept.ROUNDED_5.of(FULL, 1);
    assertEquals(rounded.events().size(), onTheMinute(rounded));
    assertEquals(2, onTheMinute(RuleOff.CLOCK.of(rounded)), "all in and all out");
    assertEquals(Grade.COUNTS, RecordGrade.of(Kept.CLICKER_15.of(FULL, 1)));
    assertEquals(
        Grade.MOVES_AND_FISH, RecordGrade.of(RuleOff.COUNTS.of(Kept.CLICKER_15.of(FULL, 1))));
  }

  private static long onTheMinute(Session session) {
    return session.events().stream().filter(e -> e.at() % 60_000 == 0).count();
  }
}
