package org.fadeline.analysis;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.List;
import org.fadeline.analysis.LineOrWater.Against;
import org.fadeline.analysis.LineOrWater.Part;
import org.fadeline.analysis.LineOrWater.Verdict;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Whether the line went quiet or the water; counts and minutes are worked out by hand. */
class LineOrWaterTest {
  private static final long FADED = Log.millis("11:00");

  /** The short line gives a bite every 150 s from 10:00 to 11:00, then none until it is left. */
  private static Log fadedAtEleven() {
    Log log = Log.from("10:00", "15:00").cast("10:00", "short");
    bites(log, "short", "10:02:30", 24, 150);
    return log.move("11:30", "short");
  }

  private static void bites(Log log, String line, String first, int count, int everySeconds) {
    LocalTime time = LocalTime.parse(first);
    for (int i = 0; i < count; i++) {
      log.bite(time.plusSeconds((long) i * everySeconds).toString(), line);
    }
  }

  private static Log neighbours(Log log, String first, int count, int everySeconds) {
    LocalTime time = LocalTime.parse(first);
    for (int i = 0; i < count; i++) {
      long at = Log.millis(time.plusSeconds((long) i * everySeconds).toString());
      log.add(
          new SessionEvent.Neighbour(
              new Stamp("n" + first + i, at, null, null), "13", new Fish(1, null, null, false)));
    }
    return log;
  }

  private static LineOrWater asked(Log log) {
    return requireNonNull(asked(log, 0.9));
  }

  private static @Nullable LineOrWater asked(Log log, double probability) {
    Effort effort = log.effort();
    Fade fade =
        new Fade(
            0,
            probability,
            new Fade.Moment(FADED, FADED, FADED, 0.9, List.of()),
            new Fade.Call(null, 0.8, List.of()),
            new Fade.Strength(24.0, 0.0, 1, Fade.Shape.STEP, 30),
            "faded");
    SentenceText words = new SentenceText(effort.session(), Units.LB_OZ_AND_METRES);
    Grade grade = RecordGrade.of(effort.session());
    return new LineOrWaterReview(effort, grade, words).of(effort.spells().get(0), fade);
  }

  private static Part part(LineOrWater answer, LineOrWater.Source source) {
    return answer.parts().stream().filter(p -> p.source() == source).findFirst().orElseThrow();
  }

  @Test
  void anotherLineThatGivesAsMuchPointsToTheLine() {
    Log log = fadedAtEleven().cast("11:30", "edge");
    bites(log, "edge", "11:32:30", 24, 150);
    LineOrWater answer = asked(log.move("12:31", "edge"));
    assertEquals(Verdict.LINE, answer.verdict());
    Against against = requireNonNull(part(answer, LineOrWater.Source.OTHER_LINES).against());
    assertEquals(24, against.count());
    assertEquals(1.0, against.hours(), 1e-9);
    assertEquals(24, against.before());
    assertEquals(1.0, against.hoursBefore(), 1e-9);
    assertEquals(1.0, requireNonNull(against.ratio()), 1e-9);
    // Equal counts: the limits are each other's inverse, and rule out a half.
    assertEquals(1, against.low() * against.high(), 1e-9);
    assertTrue(against.low() > 0.5 && against.low() < 0.6, "low " + against.low());
  }

  @Test
  void anotherLineWithoutABitePointsToTheWater() {
    LineOrWater answer = asked(fadedAtEleven().cast("11:30", "edge").move("12:30", "edge"));
    assertEquals(Verdict.WATER, answer.verdict());
    Against against = requireNonNull(part(answer, LineOrWater.Source.OTHER_LINES).against());
    // None of 24: the upper Clopper–Pearson limit is 1 − 0.025^(1/24); equal hours, so its odds.
    double share = 1 - Math.pow(0.025, 1 / 24.0);
    assertEquals(share / (1 - share), against.high(), 1e-9);
    assertEquals(0, against.low(), 1e-12);
  }

  @Test
  void aBriefLookElsewhereSettlesNothing() {
    LineOrWater answer = asked(fadedAtEleven().cast("11:30", "edge").move("11:40", "edge"));
    assertEquals(Verdict.CANNOT_TELL, answer.verdict());
    assertTrue(answer.text().startsWith("This record cannot tell"), answer.text());
    assertNull(part(answer, LineOrWater.Source.OTHER_LINES).against());
    assertNull(part(answer, LineOrWater.Source.NEIGHBOURS).against());
  }

  @Test
  void neighboursWhoGoQuietTooPointToTheWater() {
    Log log = neighbours(Log.from("10:00", "15:00").cast("10:00", "short"), "10:31", 12, 120);
    bites(log, "short", "10:02:30", 24, 150);
    LineOrWater answer = asked(log.move("11:30", "short"));
    assertEquals(Verdict.WATER, answer.verdict());
    Against against = requireNonNull(part(answer, LineOrWater.Source.NEIGHBOURS).against());
    assertEquals(0, against.count());
    assertEquals(12, against.before());
    assertEquals(0.5, against.hours(), 1e-9);
    assertEquals(0.5, against.hoursBefore(), 1e-9);
  }

  @Test
  void signsThatDisagreeSettleNothing() {
    Log log = neighbours(Log.from("10:00", "15:00").cast("10:00", "short"), "10:31", 12, 120);
    bites(log, "short", "10:02:30", 24, 150);
    log.move("11:30", "short").cast("11:30", "edge");
    bites(log, "edge", "11:32:30", 24, 150);
    LineOrWater answer = asked(log);
    assertEquals(Verdict.CANNOT_TELL, answer.verdict());
    assertTrue(answer.text().startsWith("The signs disagree"), answer.text());
  }

  @Test
  void whatIsUsualAtTheHourIsNeverClaimedFromOneMatch() {
    Log log = fadedAtEleven();
    log.add(new SessionEvent.Weather(new Stamp("wind", Log.millis("11:10"), null, "wind got up")));
    Part hour = part(asked(log), LineOrWater.Source.HOUR);
    assertEquals(Verdict.CANNOT_TELL, hour.verdict());
    assertTrue(hour.text().contains("cannot be seen from one match"), hour.text());
    assertTrue(hour.text().contains("11:10 wind got up"), hour.text());
  }

  @Test
  void withoutAFadeNothingIsAsked() {
    assertNull(asked(fadedAtEleven(), 0.49));
  }
}
