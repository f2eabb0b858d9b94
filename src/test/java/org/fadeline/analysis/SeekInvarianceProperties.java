package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.analysis.Course.Pace;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Fade.Crossing;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoPlan;
import org.fadeline.demo.DemoWater;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * What a whole review says was known at a moment is what the review of the record up to that moment
 * says: nothing shown as known then rests on what came later.
 */
class SeekInvarianceProperties {
  @Property(tries = 12, seed = "20260101", shrinking = ShrinkingMode.OFF)
  void whatWasKnownThenDoesNotDependOnWhatCameLater(
      @ForAll @IntRange(min = 0, max = 2) int which,
      @ForAll @IntRange(min = 1, max = 100_000) int seed,
      @ForAll @IntRange(min = 30, max = 290) int minute) {
    Session session = DemoMatch.generate(water(which), plan(which), seed);
    long until = castAfter(session, session.match().allIn() + minute * 60_000L);
    Session upTo =
        session.withEvents(session.events().stream().filter(e -> e.at() <= until).toList());
    Review whole = Reviewer.review(session, ReviewSettings.DEFAULT);
    Review then = Reviewer.review(upTo, ReviewSettings.DEFAULT);
    assertEquals(crossings(whole, until), crossings(then, until));
    assertEquals(rolling(whole, until), rolling(then, until));
    assertEquals(pace(whole, until), pace(then, until));
  }

  /** Returns a moment with the bait in the water and nothing open: the next cast. */
  private static long castAfter(Session session, long from) {
    return session.events().stream()
        .filter(e -> e.kind() == EventKind.CAST && e.at() >= from)
        .mapToLong(SessionEvent::at)
        .findFirst()
        .orElse(from);
  }

  private static List<Crossing> crossings(Review review, long until) {
    return review.lines().stream()
        .flatMap(l -> l.fades().stream())
        .flatMap(f -> f.call().crossings().stream())
        .filter(c -> c.at() <= until)
        .toList();
  }

  private static List<RollingPoint> rolling(Review review, long until) {
    return review.course().rolling().stream()
        .flatMap(r -> r.points().stream())
        .filter(p -> p.at() <= until)
        .toList();
  }

  private static List<Pace> pace(Review review, long until) {
    return review.course().pace().stream().filter(p -> p.at() <= until).toList();
  }

  private static DemoWater water(int which) {
    return switch (which) {
      case 0 -> DemoWaters.waterA();
      case 1 -> DemoWaters.waterB();
      default -> DemoWaters.waterC();
    };
  }

  private static DemoPlan plan(int which) {
    return switch (which) {
      case 0 -> DemoWaters.planA();
      case 1 -> DemoWaters.planB();
      default -> DemoWaters.planC();
    };
  }
}
