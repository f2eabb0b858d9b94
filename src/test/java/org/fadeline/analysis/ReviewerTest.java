package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.List;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Course.TurningKind;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.Test;

/** A review as a whole: what it says, and that no part looks where it must not. */
class ReviewerTest {
  private static final Session WATER_A =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 122);

  /** A line that gives a bite a minute for an hour and one in twenty minutes after. */
  private static Log deadAfterEleven() {
    Log log = Log.from("10:00", "13:00");
    LocalTime time = LocalTime.of(10, 0);
    while (time.isBefore(LocalTime.of(11, 0))) {
      log.cast(time.toString(), "shallow").bite(time.plusSeconds(110).toString(), "shallow");
      time = time.plusMinutes(2);
    }
    log.cast("11:00", "shallow");
    log.hooked("11:40", "shallow").landed("11:42", "shallow", 1500).cast("11:44", "shallow");
    log.hooked("11:50", "shallow").landed("11:52", "shallow", 1700).cast("11:54", "shallow");
    return log.move("12:10", "shallow").cast("12:12", "short").landed("12:30", "short", 900);
  }

  @Test
  void aFadeIsFoundPlacedAndCalledFromWhatHadBeenSeen() {
    Review review = Reviewer.review(deadAfterEleven().session(), ReviewSettings.DEFAULT);
    Fade fade = review.line("shallow").orElseThrow().fades().get(0);
    assertTrue(fade.probability() > 0.95, () -> "probability " + fade.probability());
    Fade.Moment moment = fade.moment();
    assertNotNull(moment);
    assertEquals(0, (moment.at() - Log.millis("11:00")) / 60_000.0, 3);
    Long plain = fade.call().plainAt();
    assertNotNull(plain);
    assertTrue(plain > Log.millis("11:05") && plain < Log.millis("11:40"));
    assertTrue(fade.verdict().startsWith("Faded around 1"), fade.verdict());
  }

  @Test
  void stayingPastPlainIsCountedFromWhatTheLineGaveAfterIt() {
    Review review = Reviewer.review(deadAfterEleven().session(), ReviewSettings.DEFAULT);
    StayOrGo stay = review.stays().get(0);
    StayOrGo.PastPlain past = stay.past();
    assertNotNull(past);
    assertEquals(2, past.caught().landed());
    assertEquals(3200, past.caught().weightG(), 1e-9);
    // The short line was fished next: no cost of moving, that move was paid for anyway.
    Double breakEven = past.breakEvenPerHour();
    assertNotNull(breakEven);
    assertEquals(2 / (past.minutes() / 60), breakEven, 1e-9);
    assertEquals(StayOrGo.Verdict.STAYED_PAST_PLAIN, stay.wording().verdict());
    assertTrue(stay.wording().text().contains("the short line had to give"));
  }

  @Test
  void theRollingRateIsFishOverHoursOfTheWindow() {
    Log log =
        Log.from("10:00", "12:00")
            .cast("10:00", "short")
            .landed("10:10", "short", 500)
            .landed("10:30", "short", 700)
            .move("10:40", "short");
    Review review = Reviewer.review(log.session(), ReviewSettings.DEFAULT);
    List<RollingPoint> points = review.course().rolling().get(0).points();
    assertEquals(120, points.size());
    // At 10:40 the window (10:10, 10:40] holds one fish: 10:10 has just slid out.
    RollingPoint at40 = points.get(39);
    assertEquals(Log.millis("10:40"), at40.at());
    assertEquals(1, at40.caught().landed());
    assertNotNull(at40.fish());
    assertEquals(2, at40.fish().perHour(), 1e-12);
    // Garwood 1936: one event at 95% is 0.02532 to 5.57164 (Pearson and Hartley, table 40).
    assertEquals(2 * 0.02532, at40.fish().low(), 1e-4);
    assertEquals(2 * 5.57164, at40.fish().high(), 1e-4);
    // At 11:08 two minutes of the window were fished: too few.
    assertNull(points.get(67).fish());
    assertEquals(2, points.get(67).fishedMinutes(), 1e-9);
  }

  @Test
  void everySpellHasItsEntryAndTotalsAddUp() {
    Review review = Reviewer.review(WATER_A, ReviewSettings.DEFAULT);
    assertEquals(review.spells().size(), review.stays().size());
    int landed =
        (int) WATER_A.events().stream().filter(SessionEvent.Landed.class::isInstance).count();
    assertEquals(landed, review.summary().caught().landed());
    int quarters = review.course().quarters().stream().mapToInt(q -> q.caught().landed()).sum();
    assertEquals(landed, quarters);
    double fished = review.spells().stream().mapToDouble(Spell::fishedHours).sum();
    double byQuarter =
        review.course().quarters().stream().mapToDouble(Course.Quarter::fishedMinutes).sum();
    assertEquals(fished * 60, byQuarter, 1e-6);
  }

  /** What could be known at an instant must not change with what came after it. */
  @Test
  void whatWasKnownThenDoesNotDependOnWhatCameLater() {
    Review whole = Reviewer.review(WATER_A, ReviewSettings.DEFAULT);
    long t = WATER_A.match().allIn() + 150 * 60_000L;
    List<SessionEvent> seen = WATER_A.events().stream().filter(e -> e.at() <= t).toList();
    Session until =
        WATER_A
            .withEvents(seen)
            .withMatch(
                new Match(
                    WATER_A.match().allIn(), WATER_A.match().allOut(), WATER_A.match().rules()));
    Review then = Reviewer.review(until, ReviewSettings.DEFAULT);
    for (int i = 0; i < whole.lines().size(); i++) {
      List<RollingPoint> a = whole.course().rolling().get(i).points().subList(0, 150);
      List<RollingPoint> b = then.course().rolling().get(i).points().subList(0, 150);
      for (int k = 0; k < 150; k++) {
        assertEquals(b.get(k).caught(), a.get(k).caught(), "minute " + (k + 1));
        assertEquals(b.get(k).fish(), a.get(k).fish(), "minute " + (k + 1));
      }
    }
    for (int i = 0; i < whole.course().pace().size(); i++) {
      Course.Pace pace = whole.course().pace().get(i);
      if (pace.at() < t - 60_000) {
        assertEquals(then.course().pace().get(i), pace);
      }
    }
    List<Course.TurningPoint> known =
        whole.course().turningPoints().stream()
            .filter(p -> !p.hindsight() && p.at() <= t && p.kind() != TurningKind.PLAIN)
            .toList();
    assertFalse(known.isEmpty());
    assertTrue(then.course().turningPoints().containsAll(known));
  }

  @Test
  void reviewingTwiceGivesTheSame() {
    assertEquals(
        Reviewer.review(WATER_A, ReviewSettings.DEFAULT),
        Reviewer.review(WATER_A, ReviewSettings.DEFAULT));
  }

  @Test
  void anEmptyRecordIsReviewedWithoutNumbers() {
    Review review = Reviewer.review(Log.from("10:00", "15:00").session(), ReviewSettings.DEFAULT);
    assertEquals(List.of(), review.stays());
    assertEquals(List.of(), review.course().pace());
    Log fedOnly = Log.from("10:00", "15:00").fed("10:00", "edge");
    LineReview edge =
        Reviewer.review(fedOnly.session(), ReviewSettings.DEFAULT).line("edge").orElseThrow();
    assertEquals(LineReview.Rates.NOT_FISHED, edge.rates());
  }
}
