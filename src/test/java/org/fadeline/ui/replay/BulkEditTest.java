package org.fadeline.ui.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class BulkEditTest {
  private static final ZoneId ZONE = ZoneId.of("Europe/London");
  private static final long NOON = Instant.parse("2026-08-08T11:00:00Z").toEpochMilli();

  private static Duration shift(String typed) {
    return Duration.ofMillis(BulkEdit.shift(typed, NOON, ZONE).orElseThrow());
  }

  @Test
  void aShiftIsTypedInMinutesAndSeconds() {
    assertEquals(Duration.ofSeconds(90), shift("+1:30"));
    assertEquals(Duration.ofSeconds(-5), shift("-0:05"));
    assertEquals(Duration.ofSeconds(3_723), shift("1:02:03"));
  }

  @Test
  void whatTheClockSaidAndTheTrueTimeMakeAShiftToo() {
    assertEquals(Duration.ofSeconds(-90), shift("11:42 was 11:40:30"));
    assertEquals(Duration.ofHours(1), shift("1142 was 12.42"));
    assertEquals(Duration.ofMinutes(20), shift("23:50 was 0:10"), "across midnight");
  }

  @Test
  void whatIsNeitherIsNoShift() {
    for (String typed : new String[] {"", "soon", "11:42 was", "25:00 was 11:00", "was 11:40"}) {
      assertTrue(BulkEdit.shift(typed, NOON, ZONE).isEmpty(), typed);
    }
  }
}
