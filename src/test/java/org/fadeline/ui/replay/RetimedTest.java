package org.fadeline.ui.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

class RetimedTest {
  /** Bites ten, twenty … sixty minutes after all in, called b1 to b6. */
  private static Session bites() {
    Session session = HandMade.session();
    String line = session.lines().get(0).id();
    List<SessionEvent> events =
        IntStream.rangeClosed(1, 6)
            .mapToObj(
                i ->
                    (SessionEvent)
                        new SessionEvent.Bite(
                            new Stamp("b" + i, session.match().allIn() + i * 600_000L, line, null)))
            .toList();
    return session.withEvents(events);
  }

  @Test
  void movingWithinTheGapPassesNothing() {
    Retimed retimed = Retimed.of(bites(), Set.of("b2", "b3"), at -> at + 300_000);
    assertEquals(new Retimed(2, 0, 0), retimed);
    assertTrue(retimed.words().isEmpty());
  }

  @Test
  void passingWhatStaysIsCounted() {
    Retimed retimed = Retimed.of(bites(), Set.of("b2", "b3"), at -> at + 660_000);
    assertEquals(new Retimed(2, 1, 0), retimed, "b3 passes b4, b2 stays behind it");
    assertEquals("1 of 2 would pass events that stay", retimed.words().orElseThrow());
  }

  @Test
  void allTogetherPassNothingButMayLeaveTheMatch() {
    Session session = bites();
    Set<String> all = Set.of("b1", "b2", "b3", "b4", "b5", "b6");
    Retimed retimed = Retimed.of(session, all, at -> at - 900_000);
    assertEquals(new Retimed(6, 0, 1), retimed);
    assertEquals("1 of 6 would leave the match", retimed.words().orElseThrow());
  }
}
