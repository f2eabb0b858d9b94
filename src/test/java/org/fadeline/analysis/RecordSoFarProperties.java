package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.replay.RoughLog;

/** A record read on, minute by minute, gives what the record cut there gives when read afresh. */
class RecordSoFarProperties {
  private static final HandlingTimes HANDLING = new HandlingTimes(Map.of("pole", 40.0));

  @Property(tries = 40, seed = "20260104", shrinking = ShrinkingMode.OFF)
  void readingOnIsReadingAfresh(@ForAll @IntRange(min = 1, max = 1_000_000) int seed) {
    Session whole = RoughLog.of(seed);
    long allIn = whole.match().allIn();
    long allOut = whole.match().allOut();
    RecordSoFar record = new RecordSoFar(whole, HANDLING);
    int spells = 0;
    for (long at = allIn - 300_000; at < allOut + 900_000; at += 127_000) {
      long now = at;
      List<SessionEvent> seen = whole.events().stream().filter(e -> e.at() <= now).toList();
      Session cut = whole.withEvents(seen);
      record.readTo(at);
      assertEquals(cut, record.cut());
      assertEquals(RecordGrade.of(cut), record.grade());
      assertEquals(RecordGrade.clockPrecisionSeconds(cut), record.clockPrecisionSeconds());
      assertEquals(Reviewer.weightFrom(cut), record.weightFrom());
      for (long end : new long[] {Math.max(allIn + 1000, Math.min(at, allOut)), allOut}) {
        Effort afresh = Effort.of(cut.withMatch(cut.match().withAllOut(end)), HANDLING);
        Effort readOn = record.effort(end);
        assertEquals(afresh.lines(), readOn.lines());
        assertEquals(afresh.unassigned(), readOn.unassigned());
        assertEquals(afresh.warnings(), readOn.warnings());
        spells += readOn.spells().size();
      }
    }
    assertTrue(spells > 20);
  }
}
