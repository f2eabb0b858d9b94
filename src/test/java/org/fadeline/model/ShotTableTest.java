package org.fadeline.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The approximate trade table of split shot, as suppliers print it. */
class ShotTableTest {
  /** 1.20 g is the figure printed with the trade table; the two floats are common practice. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "19×No.8 + 3×No.12|1.20",
        "19x8 + 3x12|1.20",
        "2x9|0.10",
        "6 x 8|0.36",
        "2 BB, 4 No.8|1.04",
        "SSG|1.6",
        "AAA and 2xBB|1.6",
        "1x1|0.3"
      })
  void weighsPatterns(String pattern, double grams) {
    assertEquals(grams, ShotTable.load(pattern).grams());
  }

  @Test
  void saysWhatTheFloatHasLeft() {
    assertEquals(0.04, ShotTable.load("6x8").spareFor(0.4), 1e-12);
    assertTrue(ShotTable.load("2xBB").spareFor(0.4) < 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "8", "6x7", "bulk", "6x8 + ", "x8", "6x8x2", "1000x8"})
  void refusesWhatIsNotAPattern(String pattern) {
    assertThrows(IllegalArgumentException.class, () -> ShotTable.load(pattern));
  }

  @Test
  void knowsTheSizesInBothSpellings() {
    assertEquals(0.06, ShotTable.load("No.8").grams());
    assertEquals(0.4, ShotTable.load("bb").grams());
    assertThrows(IllegalArgumentException.class, () -> ShotTable.load("No.7"));
  }
}
