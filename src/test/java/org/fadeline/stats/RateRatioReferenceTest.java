package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.fadeline.stats.ReferenceData.Expected;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rate pairs printed in R's help, Fay's vignettes and Boice &amp; Monson 1977. */
class RateRatioReferenceTest {
  static List<Expected> rows() {
    return ReferenceFamily.RATE_RATIO.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(Expected row) {
    CSVRecord data =
        ReferenceData.where(
                ReferenceData.rows(row.dataset()), "case", row.quantity().split(" ", 2)[0])
            .get(0);
    RateRatio ratio = of(data, 0.95);
    String quantity = row.quantity().split(" ", 2)[1];
    if (quantity.startsWith("ratio")) {
      assertNotNull(ratio.ratio());
      assertEquals(row.number(), ratio.ratio(), row.tolerance());
    } else if (quantity.startsWith("95% lower")) {
      assertEquals(row.number(), ratio.limits().low(), row.tolerance());
    } else if (quantity.startsWith("95% upper")) {
      assertEquals(row.number(), ratio.limits().high(), row.tolerance());
    } else if (quantity.startsWith("central two-sided p")) {
      assertEquals(row.number(), ratio.p(), row.tolerance());
      assertEquals(ratio.p() >= 0.05, ratio.limits().contains(1));
    } else {
      // Not offered, because it can contradict the limits; worked out here only to show that the
      // row is understood and that the p offered is another.
      assertTrue(quantity.startsWith("minimum-likelihood two-sided p"), quantity);
      assertEquals(row.number(), minimumLikelihood(data), row.tolerance());
      assertTrue(ratio.p() >= row.number());
    }
  }

  private static RateRatio of(CSVRecord row, double level) {
    return RateRatio.of(
        ReferenceData.number(row, "y1"),
        ReferenceData.number(row, "t1"),
        ReferenceData.number(row, "y2"),
        ReferenceData.number(row, "t2"),
        level);
  }

  private static double minimumLikelihood(CSVRecord row) {
    int first = (int) ReferenceData.number(row, "y1");
    int total = first + (int) ReferenceData.number(row, "y2");
    double t1 = ReferenceData.number(row, "t1");
    BinomialDistribution binomial =
        BinomialDistribution.of(total, t1 / (t1 + ReferenceData.number(row, "t2")));
    double seen = binomial.probability(first);
    double p = 0;
    for (int k = 0; k <= total; k++) {
      double here = binomial.probability(k);
      p += here <= seen * (1 + 1e-7) ? here : 0;
    }
    return p;
  }

  @Test
  void agreesWithR() {
    for (CSVRecord row : ReferenceData.rows("r/rate_ratios.csv")) {
      RateRatio ratio = of(row, ReferenceData.number(row, "level"));
      double low = ReferenceData.number(row, "low");
      double high = ReferenceData.number(row, "high");
      assertEquals(low, ratio.limits().low(), 1e-11 * low, row.toString());
      if (Double.isFinite(high)) {
        assertEquals(high, ratio.limits().high(), 1e-11 * high, row.toString());
      } else {
        assertEquals(high, ratio.limits().high());
      }
      assertEquals(
          ReferenceData.number(row, "central_p"), ratio.p(), 1e-12 * (1e-12 + ratio.p()) + 1e-30);
    }
  }

  /** The worked example of docs/methods.md: 2 in 45 minutes, then 5 in 30. */
  @Test
  void recoveryExample() {
    RateRatio ratio = RateRatio.of(5, 0.5, 2, 0.75, 0.95);
    assertNotNull(ratio.ratio());
    assertEquals(3.75, ratio.ratio(), 1e-12);
    assertEquals(0.61, ratio.limits().low(), 0.005);
    assertEquals(39, ratio.limits().high(), 0.5);
  }
}
