package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.stats.ReferenceData.Expected;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Charnov 1976: leaving times for exponential and saturating gain. */
class MarginalValueReferenceTest {
  static List<Expected> rows() {
    return ReferenceFamily.MARGINAL_VALUE.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(Expected row) {
    if (row.dataset().equals("mvt_exponential_gain.csv")) {
      List<CSVRecord> cases = ReferenceData.rows(row.dataset());
      assertEquals(12, cases.size());
      cases.forEach(c -> checkExponential(c, row.tolerance()));
      return;
    }
    assertEquals("MVT with g=Gx/(x+k): x*=sqrt(k T); G=20,k=30,T=10", row.quantity());
    assertEquals(row.number(), MarginalValue.saturating(20, 30, 10).leaveAfter(), row.tolerance());
  }

  private static void checkExponential(CSVRecord row, double tolerance) {
    MarginalValue rule =
        MarginalValue.exponential(
            ReferenceData.number(row, "G"),
            ReferenceData.number(row, "c_per_min"),
            ReferenceData.number(row, "T_min"));
    assertEquals(ReferenceData.number(row, "x_star_min"), rule.leaveAfter(), tolerance);
    assertEquals(ReferenceData.number(row, "rate_star_per_min"), rule.rate(), tolerance);
  }

  /** The worked example of docs/methods.md: 14/h with half-life 40 min, moving 5, 12, 25 min. */
  @Test
  void leavingExample() {
    double decay = Math.log(2) / 40;
    double gain = 14 / 60.0 / decay;
    assertEquals(22, MarginalValue.exponential(gain, decay, 5).leaveAfter(), 0.5);
    assertEquals(34, MarginalValue.exponential(gain, decay, 12).leaveAfter(), 0.5);
    assertEquals(47, MarginalValue.exponential(gain, decay, 25).leaveAfter(), 0.5);
  }
}
