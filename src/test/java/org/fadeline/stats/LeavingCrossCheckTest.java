package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * From counts by minutes into a visit to a leaving time, held against R: the decline by glm, its
 * profile limits and the leaving time by uniroot on g′(x) = g(x)/(x + T), which knows no Lambert W.
 * The values are written by src/test/r/crosscheck.R; versions.csv beside them names the versions.
 */
class LeavingCrossCheckTest {
  static List<CSVRecord> sets() {
    return ReferenceData.rows("r/leaving.csv");
  }

  private static ChangePointBins bins(List<CSVRecord> rows) {
    return ChangePointBins.of(
        ReferenceData.column(rows, "count"), ReferenceData.column(rows, "hours"));
  }

  @ParameterizedTest
  @MethodSource("sets")
  void agrees(CSVRecord set) {
    List<CSVRecord> rows =
        ReferenceData.where(ReferenceData.rows("r/leaving_bins.csv"), "set", set.get("set"));
    double[] middles = ReferenceData.column(rows, "middle");
    DeclineFit plain = DeclineFit.of(bins(rows), middles);
    double phi = ReferenceData.number(set, "phi");
    DeclineFit wide = DeclineFit.of(bins(rows).dividedBy(phi), middles);
    assertEquals(ReferenceData.number(set, "start"), plain.startingRate(), 1e-6);
    assertEquals(ReferenceData.number(set, "decay"), plain.decay(), 1e-9);
    assertEquals(ReferenceData.number(set, "decay_low"), plain.decayLimits().low(), 1e-8);
    assertEquals(ReferenceData.number(set, "decay_high"), plain.decayLimits().high(), 1e-8);
    assertEquals(ReferenceData.number(set, "p"), plain.pDecline(), 1e-8);
    assertEquals(ReferenceData.number(set, "p_wide"), wide.pDecline(), 1e-8);
    checkLeave(set, "leave", plain.decay());
    checkLeave(set, "leave_low", plain.decayLimits().high());
    checkLeave(set, "leave_high", plain.decayLimits().low());
    checkLeave(set, "wide_low", wide.decayLimits().high());
    checkLeave(set, "wide_high", wide.decayLimits().low());
  }

  /** R has NA where the rate does not fall. */
  private static void checkLeave(CSVRecord set, String column, double decay) {
    double expected = ReferenceData.number(set, column);
    assertEquals(Double.isNaN(expected), decay <= 0, column);
    if (decay > 0) {
      double moving = ReferenceData.number(set, "moving");
      double found = MarginalValue.exponential(1, decay, moving).leaveAfter();
      assertEquals(expected, found, 1e-5 * expected, column);
    }
  }
}
