package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.report.ReviewJson;
import org.fadeline.report.ReviewText;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/** Why a line was left, as logged with the move that ended the spell. */
class SpellReasonTest {
  private static List<StayOrGo> stays(Session session) {
    return Reviewer.review(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES).stays();
  }

  @Test
  void isThatOfTheMoveThatEndedTheSpell() {
    Session session = HandMade.session();
    List<StayOrGo> stays = stays(session);
    assertEquals("plan", stays.get(0).spell().reasonForLeaving(session));
    assertEquals("dead", stays.get(1).spell().reasonForLeaving(session));
    assertNull(stays.get(2).spell().reasonForLeaving(session), "fished to all out");
  }

  @Test
  void isNoneWhereTheMoveSaysNone() {
    Session session = HandMade.session();
    Session without =
        session.withEvents(
            session.events().stream()
                .map(
                    e ->
                        e instanceof SessionEvent.Move move
                            ? new SessionEvent.Move(move.stamp(), null)
                            : e)
                .toList());
    for (StayOrGo stay : stays(without)) {
      assertNull(stay.spell().reasonForLeaving(without));
    }
  }

  @Test
  void isToldInWordsAndInJson() {
    Review review =
        Reviewer.review(HandMade.session(), ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES);
    String text = ReviewText.toText(review, Units.LB_OZ_AND_METRES);
    assertEquals(2, text.split("Reason noted for leaving", -1).length - 1, text);
    String json = ReviewJson.toJson(review);
    assertEquals(1, json.split("\"reason\" ?: ?\"plan\"", -1).length - 1);
    assertEquals(1, json.split("\"reason\" ?: ?null", -1).length - 1);
  }
}
