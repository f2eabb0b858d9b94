package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Fade.Crossing;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** Where every cast is logged, what Review calls plain was told at the next whole minute. */
class PlainThenTest {
  @Test
  void aCallIsToldAtTheWholeMinuteAfterReviews() {
    List<String> reviewed = new ArrayList<>();
    List<String> told = new ArrayList<>();
    for (int seed = 1; seed <= 12; seed++) {
      gather(DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), seed), reviewed, told);
      gather(DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), seed), reviewed, told);
    }
    assertTrue(reviewed.size() > 15);
    assertEquals(reviewed, told);
  }

  private static void gather(Session session, List<String> reviewed, List<String> told) {
    Review review = Reviewer.review(session, ReviewSettings.DEFAULT);
    KnownThen known =
        KnownThen.of(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES, () -> false);
    crossings(review, session, reviewed);
    crossings(known.at(Long.MAX_VALUE), session, told);
  }

  /** As known then, it is told at the first whole minute of the match. */
  private static long wholeMinute(Session session, long at) {
    long allIn = session.match().allIn();
    return allIn - Math.floorDiv(allIn - at, 60_000) * 60_000;
  }

  private static void crossings(Review review, Session session, List<String> all) {
    for (LineReview line : review.lines()) {
      for (Fade fade : line.fades()) {
        for (Crossing crossing : fade.call().crossings()) {
          all.add(
              line.line().id()
                  + fade.spell()
                  + crossing.up()
                  + session.clock(wholeMinute(session, crossing.at())));
        }
      }
    }
  }
}
