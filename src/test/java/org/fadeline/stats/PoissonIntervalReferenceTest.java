package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.stats.ReferenceData.Expected;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Garwood 1936, Pearson &amp; Hartley table 40 and R's poisson.test, as the README says. */
class PoissonIntervalReferenceTest {
  static List<Expected> rows() {
    return ReferenceFamily.POISSON_LIMITS.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(Expected row) {
    if (row.dataset().equals("poisson_limits_table.csv")) {
      assertEquals("yes", row.expected());
      ReferenceData.rows(row.dataset()).forEach(PoissonIntervalReferenceTest::checkPrinted);
      return;
    }
    String[] words = row.quantity().split(" ", 2);
    CSVRecord data =
        ReferenceData.where(ReferenceData.rows(row.dataset()), "case", words[0]).get(0);
    double count = ReferenceData.number(data, "count");
    double exposure = ReferenceData.number(data, "exposure");
    Interval limits = PoissonInterval.atLevel(0.95).ofRate(count, exposure);
    double got =
        switch (words[1]) {
          case "rate" -> count / exposure;
          case "95% lower" -> limits.low();
          case "95% upper" -> limits.high();
          default -> throw new AssertionError(row.quantity());
        };
    assertEquals(row.number(), got, row.tolerance());
  }

  private static void checkPrinted(CSVRecord row) {
    double level = ReferenceData.number(row, "two_sided_level_for_same_formula");
    Interval limits = PoissonInterval.atLevel(level).ofCount(ReferenceData.number(row, "n"));
    assertExact(ReferenceData.number(row, "lower_exact"), limits.low(), row);
    assertExact(ReferenceData.number(row, "upper_exact"), limits.high(), row);
    if (row.get("side").equals("two")) {
      assertRounds(row.get("lower"), limits.low(), row);
    }
    assertRounds(row.get("upper"), limits.high(), row);
  }

  private static void assertExact(double expected, double got, CSVRecord row) {
    assertEquals(expected, got, 1e-13 * (1 + 10 * expected), row.toString());
  }

  /** The printed value is the exact one rounded, or out by at most one in its last digit. */
  private static void assertRounds(String printed, double got, CSVRecord row) {
    BigDecimal value = new BigDecimal(printed);
    BigDecimal off =
        BigDecimal.valueOf(got).setScale(value.scale(), RoundingMode.HALF_UP).subtract(value);
    assertEquals(0, off.signum(), row + " gives " + got);
  }

  @Test
  void theTableHasRows() {
    assertTrue(ReferenceData.rows("poisson_limits_table.csv").size() >= 40);
  }

  @Test
  void agreesWithR() {
    for (CSVRecord row : ReferenceData.rows("r/poisson_intervals.csv")) {
      double level = ReferenceData.number(row, "level");
      Interval limits =
          PoissonInterval.atLevel(level)
              .ofRate(ReferenceData.number(row, "count"), ReferenceData.number(row, "exposure"));
      double low = ReferenceData.number(row, "low");
      double high = ReferenceData.number(row, "high");
      assertEquals(low, limits.low(), 1e-12 * low, row.toString());
      // R keeps α/2 in the upper tail at 0 as well.
      assertEquals(high, limits.high(), 1e-12 * high, row.toString());
    }
  }

  @Test
  void fayAndFeuerLimitsAgreeWithR() {
    for (CSVRecord row : ReferenceData.rows("r/fay_feuer.csv")) {
      String[] words = row.get("weights").split(" ", -1);
      double[] weights = new double[words.length];
      for (int i = 0; i < words.length; i++) {
        weights[i] = Double.parseDouble(words[i]);
      }
      Interval limits =
          WeightedPoissonInterval.of(
                  weights,
                  ReferenceData.number(row, "exposure"),
                  ReferenceData.number(row, "level"))
              .orElseThrow();
      double low = ReferenceData.number(row, "low");
      double high = ReferenceData.number(row, "high");
      assertEquals(low, limits.low(), 1e-12 * low, row.toString());
      assertEquals(high, limits.high(), 1e-12 * high, row.toString());
    }
  }
}
