package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.List;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What bears a finding out or limits it, and what a line gave when it was come back to. */
class StayNotesTest {
  /** Faded at 10:40, two bites in the 45 min after; back after half an hour: five bites in 30. */
  private static Log match() {
    Log log = Log.from("10:00", "15:00").cast("10:00", "short");
    for (int minute = 4; minute <= 40; minute += 4) {
      log.bite(LocalTime.of(10, minute - 2).toString(), "short");
    }
    log.bite("10:50", "short").bite("11:10", "short").move("11:25", "short");
    log.cast("11:25", "edge").move("11:55", "edge").cast("11:55", "short");
    for (int minute : new int[] {1, 6, 12, 20, 29}) {
      log.bite(LocalTime.of(11, 55).plusMinutes(minute).toString(), "short");
    }
    return log.bite("12:40", "short").move("12:50", "short");
  }

  private static Fade fade(
      double probability, String at, @Nullable String plainAt, double after, double going) {
    return fade(probability, at, plainAt, after, going, 0.8);
  }

  private static Fade fade(
      double probability,
      String at,
      @Nullable String plainAt,
      double after,
      double going,
      double level) {
    Fade.Moment moment =
        new Fade.Moment(Log.millis(at), Log.millis(at), Log.millis(at), 0.9, List.of());
    return new Fade(
        0,
        probability,
        moment,
        new Fade.Call(plainAt == null ? null : Log.millis(plainAt), level, List.of()),
        new Fade.Strength(going, 3.0, 1, Fade.Shape.STEP, after),
        "Faded");
  }

  private static StayNotes notes(Effort effort) {
    SentenceText words = new SentenceText(effort.session(), Units.LB_OZ_AND_METRES);
    return new StayNotes(words, new Fades(effort, ReviewSettings.DEFAULT, Grade.FULL, 1, words));
  }

  private static List<String> of(Fade fade, @Nullable PastPlain past) {
    Effort effort = match().effort();
    LineEffort line = effort.line("short").orElseThrow();
    return notes(effort).of(line, line.spells().get(0), fade, past, List.of(), null);
  }

  @Test
  void whatFollowedBearsAFadeOutOrIsTooLittle() {
    assertEquals(
        List.of("It had faded: the 45 bait minutes that followed bear it out."),
        of(fade(0.9, "10:40", null, 45, 15), null));
    assertEquals(
        List.of("Only 12 bait minutes followed that moment: whether it stayed faded was not seen."),
        of(fade(0.9, "10:40", null, 12, 15), null));
    assertEquals(
        List.of("30 bait minutes followed that moment."),
        of(fade(0.6, "10:40", null, 30, 15), null));
  }

  @Test
  void aCallBeforeTheMomentIsAnEarlyOne() {
    List<String> early = of(fade(0.9, "10:40", "10:35", 45, 15), null);
    assertEquals(
        "An early call: it looked plain by 10:35, before the moment that hindsight settles on.",
        early.get(1));
    List<String> later = of(fade(0.9, "10:40", "11:05", 45, 15), null);
    assertEquals(
        "It took until then to be plain because few bites say little: that is no fault.",
        later.get(1));
  }

  /** The shares of the methods document, at the levels that were tried; at others it says so. */
  @Test
  void howManyAreCalledThatAreNotThereIsToldAtEveryLevel() {
    assertTrue(falseCalls(0.8).endsWith(", 3 to 4 in 100 were called."), falseCalls(0.8));
    assertTrue(falseCalls(0.5).endsWith(", 16 to 22 in 100 were called."), falseCalls(0.5));
    assertTrue(
        falseCalls(0.65)
            .endsWith(
                ", 16 to 22 in 100 were called at 50% and 3 to 4 at 80%; at 65% it was not tried."),
        falseCalls(0.65));
  }

  private static String falseCalls(double level) {
    return of(fade(0.9, "10:40", "11:05", 45, 15, level), null).get(2);
  }

  /** 300 bait minutes on either side at 8 an hour, so 160 at 15. */
  @Test
  void aRecordTooShortToShowAHalvingSaysSo() {
    assertEquals(
        List.of(
            "This record could not show a halving: at 15 bites an hour that takes about 2 h 40 min"
                + " with a bait in before it and as much after, and there were 85 min in all."),
        of(fade(0.3, "10:40", null, 45, 15), null));
    assertEquals(List.of(), of(fade(0.3, "10:40", null, 45, 120), null));
  }

  @Test
  void withNoOtherLineFishedNothingIsKnownOfOne() {
    PastPlain past = new PastPlain(Log.millis("11:05"), 20, Caught.NOTHING, 0.0, null);
    List<String> notes = of(fade(0.9, "10:40", "11:05", 45, 15), past);
    assertEquals(
        "Nothing in this record says what another line gave.", notes.get(notes.size() - 1));
  }

  /** The example of the methods document: 2 in 45 min, then 5 in 30: 3.75 (0.61–39). */
  @Test
  void comingBackIsHeldAgainstTheFadedStretch() {
    Effort effort = match().effort();
    LineEffort line = effort.line("short").orElseThrow();
    Recovery recovery =
        notes(effort).recovery(line, line.spells().get(1), fade(0.9, "10:40", null, 45, 15));
    assertNotNull(recovery);
    assertEquals(new Recovery.Stretch(2, 45), recovery.before());
    assertEquals(new Recovery.Stretch(5, 30), recovery.after());
    assertEquals(30, recovery.awayMinutes());
    Double ratio = recovery.ratio();
    Double high = recovery.high();
    assertNotNull(ratio);
    assertNotNull(high);
    assertEquals(3.75, ratio, 1e-12);
    // R 4.2.2: poisson.test(c(5, 2), c(30, 45))$conf.int
    assertEquals(0.61392912, recovery.low(), 1e-7);
    assertEquals(39.38021516, high, 1e-6);
    assertEquals(
        "Come back to after 30 min: 5 bites in 30 min with a bait in, against 2 bites in 45 min"
            + " after it had faded, 3.8 times as many an hour (0.6–39.4): looks better, not shown."
            + " Before the fade it went at 15 an hour; what followed the fade was picked for being"
            + " low.",
        recovery.wording());
  }

  @Test
  void withoutAFadeBeforeThereIsNothingToHoldItAgainst() {
    Effort effort = match().effort();
    LineEffort line = effort.line("short").orElseThrow();
    StayNotes notes = notes(effort);
    assertNull(notes.recovery(line, line.spells().get(1), fade(0.4, "10:40", null, 45, 15)));
    assertNull(notes.recovery(line, line.spells().get(1), null));
    assertNull(notes.recovery(line, line.spells().get(0), fade(0.9, "10:40", null, 45, 15)));
  }
}
