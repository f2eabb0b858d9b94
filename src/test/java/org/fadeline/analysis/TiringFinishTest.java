package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import org.fadeline.analysis.Course.Pace;
import org.junit.jupiter.api.Test;

/** The finish where the line may be tiring, beside the one at a lasting rate. */
class TiringFinishTest {
  /** A fish at each of the given minutes, cast in at 10:00 and after each. */
  private static Pace at(int minute, double... fish) {
    Log log = Log.from("10:00", "15:00").cast("10:00", "shallow");
    for (double m : fish) {
      LocalTime time = LocalTime.of(10, 0).plusSeconds(Math.round(m * 60));
      log.landed(time.toString(), "shallow", 1000).cast(time.plusSeconds(20).toString(), "shallow");
    }
    long at = Log.millis("10:00") + minute * 60_000L;
    return Reviewer.review(log.session(), ReviewSettings.DEFAULT).course().pace().stream()
        .filter(p -> p.at() == at)
        .findFirst()
        .orElseThrow();
  }

  private static double[] everyFive(int until) {
    double[] fish = new double[until / 5];
    for (int i = 0; i < fish.length; i++) {
      fish[i] = 2.5 + 5 * i;
    }
    return fish;
  }

  @Test
  void anEvenRecordIsTakenForSteadyAndFinishesMuchTheSame() {
    Pace pace = at(240, everyFive(240));
    assertTrue(pace.tiring().chance() < 0.2, () -> "chance " + pace.tiring().chance());
    assertEquals(pace.fish().median(), pace.tiring().fish().median(), 1);
    assertEquals(pace.fish().low(), pace.tiring().fish().low(), 1);
    assertEquals(pace.fish().high(), pace.tiring().fish().high(), 1);
    assertFalse(pace.tiringTells());
  }

  /** Expected fish by minute m are 30·(1 − 2^(−m/40)): a fish each time it passes a half. */
  @Test
  void aTiringRecordHoldsTheEndOfItsCurveWhereALastingRateDoesNot() {
    double[] fish = new double[26];
    for (int k = 0; k < fish.length; k++) {
      fish[k] = -40 * Math.log(1 - (k + 0.5) / 30) / Math.log(2);
    }
    Pace pace = at(112, fish);
    assertEquals(26, pace.fishSoFar());
    assertTrue(pace.tiring().chance() > 0.65, () -> "chance " + pace.tiring().chance());
    assertTrue(pace.tiringTells());
    assertTrue(pace.fish().low() > pace.tiring().fish().low());
    assertTrue(pace.fish().median() > pace.tiring().fish().median());
    assertTrue(pace.tiring().fish().low() <= 30 && 30 <= pace.tiring().fish().high());
    assertTrue(pace.fish().low() > 30, () -> "at a lasting rate " + pace.fish());
  }

  @Test
  void theFinishIsNeverBelowWhatIsCaught() {
    Pace pace = at(100, everyFive(60));
    assertTrue(pace.tiring().fish().low() >= pace.fishSoFar());
    Course.Finish weight = pace.tiring().weight();
    assertTrue(weight != null && weight.low() >= pace.weightSoFarG());
  }

  /** Back after an hour elsewhere the decline starts afresh: it tells nothing at first. */
  @Test
  void aVisitAfterARestStartsAfresh() {
    Log log = Log.from("10:00", "15:00").cast("10:00", "shallow");
    for (int k = 0; k < 12; k++) {
      LocalTime time = LocalTime.of(10, 0).plusSeconds(Math.round(60.0 * k * k * 0.45 + 30));
      log.landed(time.toString(), "shallow", 1000).cast(time.plusSeconds(20).toString(), "shallow");
    }
    log.move("11:20", "shallow").cast("11:21", "edge").move("12:20", "edge");
    log.cast("12:20", "shallow");
    Review review = Reviewer.review(log.session(), ReviewSettings.DEFAULT);
    double before = chance(review, "11:19");
    double after = chance(review, "12:21");
    assertTrue(before > 0.7, () -> "chance " + before);
    assertEquals(0.5, after, 0.05);
  }

  private static double chance(Review review, String clock) {
    return review.course().pace().stream()
        .filter(p -> p.at() == Log.millis(clock))
        .findFirst()
        .orElseThrow()
        .tiring()
        .chance();
  }
}
