package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random delayed-entry rows with ties, held against R's package survival. The values are written by
 * src/test/r/crosscheck.R; versions.csv beside them names the versions.
 */
class SurvivalCrossCheckTest {
  private static final List<CSVRecord> ROWS = ReferenceData.rows("r/survival_rows.csv");

  private static List<CSVRecord> set(int set) {
    return ReferenceData.where(ROWS, "set", Integer.toString(set));
  }

  private static FollowUp followUp(List<CSVRecord> rows) {
    return FollowUp.of(
        ReferenceData.column(rows, "entry"),
        ReferenceData.column(rows, "exit"),
        ReferenceData.marks(rows, "cause", "1"));
  }

  private static KaplanMeier curve(CSVRecord row) {
    SurvivalBand band =
        switch (row.get("band")) {
          case "log" -> SurvivalBand.LOG;
          case "log-log" -> SurvivalBand.LOG_LOG;
          case "plain" -> SurvivalBand.PLAIN;
          default -> throw new AssertionError(row);
        };
    return KaplanMeier.of(followUp(set(Integer.parseInt(row.get("set")))))
        .from(ReferenceData.number(row, "start"))
        .withBand(band, ReferenceData.number(row, "level"));
  }

  @Test
  void curvesAgree() {
    List<CSVRecord> expected = ReferenceData.rows("r/kaplan_meier.csv");
    assertTrue(expected.size() > 1000);
    for (CSVRecord row : expected) {
      KaplanMeier.Step step = curve(row).stepAt(ReferenceData.number(row, "time"));
      assertNotNull(step);
      assertEquals(ReferenceData.number(row, "time"), step.time());
      assertEquals(ReferenceData.number(row, "at_risk"), step.atRisk(), row.toString());
      assertEquals(ReferenceData.number(row, "events"), step.events(), row.toString());
      assertEquals(ReferenceData.number(row, "survival"), step.survival(), 1e-12, row.toString());
      Interval limits = step.limits();
      assertSame(row, "se", step.standardError());
      assertSame(row, "low", limits == null ? null : (Double) limits.low());
      assertSame(row, "high", limits == null ? null : (Double) limits.high());
    }
  }

  /** R's NA (and its NaN error where survival is 0) are null here. */
  private static void assertSame(CSVRecord row, String column, @Nullable Double got) {
    double expected = ReferenceData.number(row, column);
    if (Double.isNaN(expected)) {
      assertNull(got, row + " " + column);
    } else {
      assertNotNull(got, row + " " + column);
      assertEquals(expected, got, 1e-11, row + " " + column);
    }
  }

  @Test
  void mediansAgree() {
    for (CSVRecord row : ReferenceData.rows("r/medians.csv")) {
      KaplanMeier.Median median = curve(row).median();
      assertSame(row, "median", median.time());
      assertSame(row, "low", median.low());
      assertSame(row, "high", median.high());
    }
  }

  @Test
  void logRankAgrees() {
    for (CSVRecord row : ReferenceData.rows("r/log_rank.csv")) {
      LogRank test = test(row, row.get("by").equals("coxph"));
      assertNotNull(test.p());
      assertSame(row, "chisq", test.chiSquare());
      assertEquals(ReferenceData.number(row, "p"), test.p(), 1e-10, row.toString());
      if (!row.get("by").equals("coxph")) {
        assertSame(row, "observed", test.observed());
        assertSame(row, "expected", test.expected());
        assertSame(row, "variance", test.variance());
      }
    }
  }

  private static LogRank test(CSVRecord row, boolean untied) {
    int set = Integer.parseInt(row.get("set"));
    List<CSVRecord> rows = set(set);
    double[] exits =
        untied
            ? ReferenceData.column(
                ReferenceData.where(
                    ReferenceData.rows("r/untied_exits.csv"), "set", row.get("set")),
                "exit")
            : ReferenceData.column(rows, "exit");
    if (row.get("stratified").equals("0")) {
      return LogRank.of(group(rows, exits, "1", null), group(rows, exits, "2", null));
    }
    List<LogRank.Stratum> strata = new ArrayList<>();
    for (String stratum : List.of("1", "2", "3")) {
      strata.add(
          new LogRank.Stratum(group(rows, exits, "1", stratum), group(rows, exits, "2", stratum)));
    }
    return LogRank.stratified(strata);
  }

  private static FollowUp group(
      List<CSVRecord> rows, double[] exits, String group, @Nullable String stratum) {
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      CSVRecord row = rows.get(i);
      if (row.get("group").equals(group)
          && (stratum == null || row.get("stratum").equals(stratum))) {
        double event = row.get("cause").equals("1") ? 1 : 0;
        kept.add(new double[] {ReferenceData.number(row, "entry"), exits[i], event});
      }
    }
    boolean[] events = new boolean[kept.size()];
    for (int i = 0; i < events.length; i++) {
      events[i] = kept.get(i)[2] == 1;
    }
    return FollowUp.of(
        kept.stream().mapToDouble(r -> r[0]).toArray(),
        kept.stream().mapToDouble(r -> r[1]).toArray(),
        events);
  }

  /** Whole and given neither cause before a time. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void cumulativeIncidenceAgrees(int set) {
    List<CSVRecord> rows = set(set);
    int[] causes = rows.stream().mapToInt(r -> Integer.parseInt(r.get("cause"))).toArray();
    List<CSVRecord> ofSet =
        ReferenceData.where(
            ReferenceData.rows("r/aalen_johansen.csv"), "set", Integer.toString(set));
    List<String> starts = ofSet.stream().map(row -> row.get("start")).distinct().toList();
    assertEquals(2, starts.size());
    for (String start : starts) {
      List<CSVRecord> from = ReferenceData.where(ofSet, "start", start);
      AalenJohansen fit =
          AalenJohansen.of(
              ReferenceData.column(rows, "entry"),
              ReferenceData.column(rows, "exit"),
              causes,
              2,
              0.95,
              ReferenceData.number(from.get(0), "start"));
      for (int cause = 1; cause <= 2; cause++) {
        List<CSVRecord> expected = ReferenceData.where(from, "cause", Integer.toString(cause));
        List<AalenJohansen.Step> steps = fit.steps(cause);
        assertEquals(expected.size(), steps.size());
        for (int i = 0; i < steps.size(); i++) {
          checkIncidence(expected.get(i), steps.get(i));
        }
      }
    }
  }

  private static void checkIncidence(CSVRecord row, AalenJohansen.Step step) {
    assertEquals(ReferenceData.number(row, "time"), step.time());
    assertEquals(ReferenceData.number(row, "at_risk"), step.atRisk(), row.toString());
    assertEquals(ReferenceData.number(row, "incidence"), step.incidence(), 1e-12, row.toString());
    assertEquals(ReferenceData.number(row, "none"), step.survival(), 1e-12, row.toString());
    Interval limits = step.limits();
    if (!row.get("se").equals("NA")) {
      assertEquals(ReferenceData.number(row, "se"), step.standardError(), 1e-10, row.toString());
      if (limits != null) {
        assertEquals(ReferenceData.number(row, "low"), limits.low(), 1e-10, row.toString());
        assertEquals(ReferenceData.number(row, "high"), limits.high(), 1e-10, row.toString());
      }
    }
  }
}
