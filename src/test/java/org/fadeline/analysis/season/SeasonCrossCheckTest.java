package org.fadeline.analysis.season;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.season.SessionSummary.FirstBiteRow;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.stats.Interval;
import org.fadeline.stats.LogRank;
import org.fadeline.stats.RatioBootstrap;
import org.fadeline.stats.ReferenceData;
import org.junit.jupiter.api.Test;

/**
 * A season's first bites and limits, held against R's packages survival and boot. The values are
 * written by src/test/r/season.R; season_versions.csv beside them names the versions.
 */
class SeasonCrossCheckTest {
  private static Season season() {
    Map<String, Map<String, List<FirstBiteRow>>> sessions = new LinkedHashMap<>();
    for (CSVRecord row : ReferenceData.rows("r/season_rows.csv")) {
      sessions
          .computeIfAbsent(row.get("session"), s -> new LinkedHashMap<>())
          .computeIfAbsent(row.get("line"), l -> new ArrayList<>())
          .add(
              new FirstBiteRow(
                  null,
                  ReferenceData.number(row, "entry"),
                  ReferenceData.number(row, "exit"),
                  row.get("event").equals("1"),
                  true));
    }
    List<SessionSummary> summaries = new ArrayList<>();
    sessions.forEach(
        (number, lines) ->
            summaries.add(
                Summaries.session(
                    LocalDate.of(2026, 1, 1).plusDays(Long.parseLong(number)).toString(),
                    "pool",
                    lines.entrySet().stream()
                        .map(line -> Summaries.line(line.getKey(), line.getValue()))
                        .toArray(LineSummary[]::new))));
    return SeasonBuilder.build(summaries, SeasonFilter.ALL);
  }

  private static Season.FirstBiteGroup group(Season season, String line) {
    return season.firstBites().stream()
        .filter(g -> g.by() == Season.By.LINE && g.name().equals(line))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void eachKindOfLineIsTestedAgainstTheOthersWithinSessions() {
    Season season = season();
    assertEquals(30, season.sessions().size());
    for (CSVRecord row : ReferenceData.rows("r/season_tests.csv")) {
      LogRank test = group(season, row.get("line")).againstOthers();
      assertEquals(ReferenceData.number(row, "observed"), test.observed());
      assertEquals(ReferenceData.number(row, "expected"), test.expected(), 1e-10);
      assertEquals(ReferenceData.number(row, "expected_other"), test.expectedOther(), 1e-10);
      assertEquals(ReferenceData.number(row, "chi_square"), requireNonNull(test.chiSquare()), 1e-9);
    }
  }

  @Test
  void curvesAndMediansAgree() {
    Season season = season();
    for (CSVRecord row : ReferenceData.rows("r/season_tests.csv")) {
      Season.Curve curve = requireNonNull(group(season, row.get("line")).curve());
      assertEquals(ReferenceData.number(row, "from"), curve.fromMinute());
      assertEquals(
          ReferenceData.number(row, "median"), requireNonNull(curve.medianMinutes()), 1e-10);
      List<CSVRecord> expected =
          ReferenceData.where(ReferenceData.rows("r/season_curves.csv"), "line", row.get("line"));
      assertEquals(expected.size(), curve.steps().size());
      for (int i = 0; i < expected.size(); i++) {
        FirstBite.Step step = curve.steps().get(i);
        assertEquals(ReferenceData.number(expected.get(i), "time"), step.minutes());
        assertEquals(ReferenceData.number(expected.get(i), "at_risk"), step.atRisk());
        assertEquals(ReferenceData.number(expected.get(i), "events"), step.bites());
        assertEquals(ReferenceData.number(expected.get(i), "survival"), step.survival(), 1e-12);
      }
    }
  }

  /**
   * Both draw at random, 200,000 times: the ends differ by at most 1% of the interval's width. BCa
   * limits of five sessions are left out: one draw in 26 is all five sessions and ties with the
   * estimate, which R's bias leaves out and ours counts by half (as scipy's does).
   */
  @Test
  void limitsFromDrawingWholeSessionsAgree() {
    List<CSVRecord> data = ReferenceData.rows("r/season_boot_data.csv");
    for (CSVRecord row : ReferenceData.rows("r/season_boot_limits.csv")) {
      List<CSVRecord> sessions = ReferenceData.where(data, "set", row.get("set"));
      RatioBootstrap drawn =
          RatioBootstrap.of(
              ReferenceData.column(sessions, "fish"),
              ReferenceData.column(sessions, "hours"),
              0.95,
              200_000,
              20_260_106L);
      assertEquals(ReferenceData.number(row, "estimate"), drawn.estimate(), 1e-12);
      assertClose(row, "percentile", drawn.percentile());
      if (sessions.size() > 5) {
        assertClose(row, "bca", requireNonNull(drawn.corrected()));
      }
    }
  }

  private static void assertClose(CSVRecord row, String sort, Interval got) {
    double low = ReferenceData.number(row, sort + "_low");
    double high = ReferenceData.number(row, sort + "_high");
    double most = 0.01 * (high - low);
    assertTrue(
        Math.abs(got.low() - low) <= most && Math.abs(got.high() - high) <= most,
        () -> row + " " + sort + ": " + got);
  }
}
