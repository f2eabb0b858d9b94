package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What there is to take home from a match. */
class LessonsTest {
  private static String taken(double gramsOfEachOfTwo) {
    Log log = Log.from("10:00", "12:00");
    log.cast("10:00", "short");
    for (int i = 1; i <= 6; i++) {
      log.landed("10:%02d".formatted(9 * i), "short", 500)
          .cast("10:%02d".formatted(9 * i), "short");
    }
    log.move("11:00", "long").cast("11:00", "long");
    log.landed("11:20", "long", gramsOfEachOfTwo).cast("11:20", "long");
    log.landed("11:40", "long", gramsOfEachOfTwo).cast("11:40", "long");
    return Reviewer.review(log.session(), ReviewSettings.DEFAULT).course().lessons().stream()
        .map(Course.Lesson::text)
        .collect(Collectors.joining(" "));
  }

  @Test
  void theLineThatPaidMostIsSaidToBeOneOfThoseWithFishEnough() {
    String beaten = taken(3000);
    assertTrue(
        beaten.contains(
            "Of the lines with 5 fish and 20 min or more, the short line paid most for its time"),
        beaten);
    String best = taken(400);
    assertTrue(best.contains("The short line paid most for its time"), best);
  }
}
