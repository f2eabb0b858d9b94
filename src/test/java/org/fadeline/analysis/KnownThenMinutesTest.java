package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** When a move is told, in a record of few events and in one of very many. */
class KnownThenMinutesTest {
  private static long spellsToldAt(Session session, String clock) {
    Review told =
        KnownThen.of(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES, () -> false)
            .at(Log.millis(clock));
    return told.lines().stream().mapToLong(line -> line.spells().size()).sum();
  }

  private static Session movedAfter(int bites) {
    Log log = Log.from("10:00", "10:10").cast("10:00", "short");
    for (int i = 0; i < bites; i++) {
      log = log.bite("10:01", "short");
    }
    return log.move("10:02:30", "long").cast("10:02:30", "long").session();
  }

  @Test
  void amongFewEventsAMoveIsToldAtOnce() {
    Session session = movedAfter(10);
    assertEquals(1, spellsToldAt(session, "10:02:29"));
    assertEquals(2, spellsToldAt(session, "10:02:30"));
  }

  @Test
  void amongVeryManyItIsToldAtTheEndOfItsMinute() {
    Session session = movedAfter(KnownThenBuilder.CROWDED);
    assertEquals(1, spellsToldAt(session, "10:02:30"));
    assertEquals(2, spellsToldAt(session, "10:03"));
  }
}
