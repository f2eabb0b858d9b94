package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.stats.ReferenceData.Expected;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Log-rank tests of Freireich 1963, Miller 1981 and Channing House. */
class LogRankReferenceTest {
  static List<Expected> rows() {
    return ReferenceFamily.LOG_RANK.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(Expected row) {
    LogRank test = test(row.dataset());
    assertNotNull(test.chiSquare());
    assertNotNull(test.p());
    String quantity = row.quantity();
    double got;
    if (quantity.contains("chisq")) {
      got = test.chiSquare();
    } else if (quantity.contains("expected") || quantity.endsWith(": E")) {
      got = test.expected();
    } else if (quantity.contains("variance") || quantity.endsWith(": V")) {
      got = test.variance();
    } else if (quantity.endsWith(": O")) {
      got = test.observed();
    } else if (quantity.endsWith("p")) {
      got = test.p();
    } else {
      throw new AssertionError(quantity);
    }
    assertEquals(row.number(), got, row.tolerance());
  }

  private static LogRank test(String dataset) {
    List<CSVRecord> rows = ReferenceData.rows(dataset);
    return switch (dataset) {
      case "freireich_6mp.csv" ->
          LogRank.of(
              KaplanMeierReferenceTest.fromZero(rows, "group", "6MP"),
              KaplanMeierReferenceTest.fromZero(rows, "group", "placebo"));
      case "aml_miller.csv" ->
          LogRank.of(
              KaplanMeierReferenceTest.fromZero(rows, "group", "Maintained"),
              KaplanMeierReferenceTest.fromZero(rows, "group", "Nonmaintained"));
      case "channing_house.csv" ->
          LogRank.of(
              KaplanMeierReferenceTest.channing("male"),
              KaplanMeierReferenceTest.channing("female"));
      default -> throw new AssertionError(dataset);
    };
  }
}
