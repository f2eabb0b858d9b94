package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The reason of a move: shown in the stay-or-go list, changed where the move is picked. */
class ReasonForLeavingTest extends WindowHarness {
  private @Nullable String reason() {
    SessionEvent move =
        session().events().stream().filter(e -> e.id().equals("m2")).findFirst().orElseThrow();
    return move.reasonOrNull();
  }

  @Test
  void theListOfStaysTellsIt() {
    open("Review");
    assertTrue(shows("reason noted: plan"));
    assertTrue(shows("reason noted: dead"));
  }

  @Test
  void isChosenOrTypedWhereTheMoveIsPicked() throws Exception {
    open("Replay");
    robot.interact(() -> bench.picking().pick("m2"));
    choose("event-reason", "resting");
    assertEquals("resting", reason());
    choose("event-reason", "boats on the far bank");
    assertEquals("boats on the far bank", reason());
    robot.interact(() -> bench.editing().undo());
    waitUntil(() -> "resting".equals(reason()));
    choose("event-reason", "");
    assertNull(reason());
  }
}
