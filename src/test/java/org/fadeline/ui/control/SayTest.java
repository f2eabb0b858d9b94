package org.fadeline.ui.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words for numbers and times; expected values by hand. */
class SayTest {
  private static final ZoneId LONDON = ZoneId.of("Europe/London");
  private static final long NOON = Instant.parse("2026-08-08T11:00:00Z").toEpochMilli();

  @Test
  void clocksAreTwentyFourHours() {
    assertEquals("12:00:00", Say.clock(NOON, LONDON));
    assertEquals("15:30", Say.shortClock(NOON + 12_600_000, LONDON));
  }

  @ParameterizedTest
  @CsvSource({"40000,40 s", "99999,99 s", "100000,1 min", "5940000,99 min", "7920000,2 h 12 min"})
  void lengthsOfTime(long millis, String words) {
    assertEquals(words, Say.span(millis));
  }

  @Test
  void differences() {
    assertEquals("12:05", Say.difference(725_000));
    assertEquals("1:02:05", Say.difference(-3_725_000));
  }

  @ParameterizedTest
  @CsvSource({"12:48,48", "1248,48", "12.48,48", "12:48:30,48.5", "9:00,-180", "  12:48 ,48"})
  void typedTimes(String text, double minutesAfterNoon) {
    assertEquals(
        Optional.of(NOON + Math.round(minutesAfterNoon * 60_000)),
        Say.typedTime(text, NOON, LONDON));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "noon", "25:00", "12:60", "12", "12:4", "-1:00", "12:48:61"})
  void whatIsNoTimeIsRefused(String text) {
    assertTrue(Say.typedTime(text, NOON, LONDON).isEmpty());
  }

  @Test
  void aTimeAfterMidnightBelongsToTheNightNearest() {
    long late = Instant.parse("2026-08-08T22:30:00Z").toEpochMilli();
    assertEquals(
        Optional.of(Instant.parse("2026-08-08T23:15:00Z").toEpochMilli()),
        Say.typedTime("00:15", late, LONDON));
  }

  @Test
  void forecastsAreNoFinerThanTheyCanBeKnown() {
    // 49 kg is 108.03 lb and 74 kg 163.14 lb (1 lb = 0.45359237 kg, Weights and Measures Act 1985).
    assertEquals("108–163 lb", Say.roughWeights(49_000, 74_000, Units.LB_OZ_AND_METRES));
    assertEquals("49–74 kg", Say.roughWeights(49_000, 74_000, Units.KG_AND_METRES));
    assertEquals("2–163 lb", Say.roughWeights(1000, 74_000, Units.LB_OZ_AND_METRES));
    assertEquals("14 oz–25 lb", Say.roughWeights(400, 11_300, Units.LB_OZ_AND_METRES));
    assertEquals("1 lb 8 oz–3 lb 5 oz", Say.roughWeights(680, 1_500, Units.LB_OZ_AND_METRES));
  }
}
