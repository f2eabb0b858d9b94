package org.fadeline.analysis.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.SessionSummary.FirstBiteRow;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.stats.KaplanMeier;
import org.junit.jupiter.api.Test;

/** What is worked out once or in one pass against the same done one by one. */
class SeasonColumnsTest {
  private static final int PARTS = 4;

  /** Whole minutes, so that many fall together, and curves that stand at one half. */
  private static List<SessionSummary> season(long seed, int sessions) {
    Random random = new Random(seed);
    List<SessionSummary> season = new ArrayList<>();
    for (int s = 0; s < sessions; s++) {
      List<LineSummary> lines = new ArrayList<>();
      for (String kind : List.of("short", "long", "margin")) {
        List<FirstBiteRow> rows = new ArrayList<>();
        for (int row = random.nextInt(4); row > 0; row--) {
          double entry = random.nextInt(4);
          rows.add(
              new FirstBiteRow(
                  random.nextBoolean() ? "corn" : "meat",
                  entry,
                  entry + random.nextInt(9),
                  random.nextInt(3) > 0,
                  true));
        }
        lines.add(Summaries.line(kind, rows));
      }
      season.add(
          Summaries.session(
              String.format("2026-%02d-%02d", 1 + s / 28, 1 + s % 28),
              "pool",
              lines.toArray(LineSummary[]::new)));
    }
    return season;
  }

  @Test
  void mediansOfPartsOfTheSessionsAreThoseOfTheirCurves() {
    int found = 0;
    int missing = 0;
    for (long seed = 0; seed < 60; seed++) {
      SeasonColumns columns = new SeasonColumns(season(seed, 12));
      SeasonColumns.Held held = columns.held(SeasonFilter.ALL);
      FirstBiteRows rows =
          FirstBiteRows.of(held, columns.rowGroup, columns.groups.length)[(int) seed % 3];
      int[] part = new int[12];
      for (int s = 0; s < part.length; s++) {
        part[s] = s % PARTS;
      }
      double from = seed % 2 == 0 ? Double.NEGATIVE_INFINITY : 2;
      double[] medians = rows.mediansOfParts(part, PARTS, from);
      for (int p = 0; p < PARTS; p++) {
        int[] times = new int[part.length];
        for (int s = p; s < part.length; s += PARTS) {
          times[s] = 1;
        }
        Double median = KaplanMeier.of(rows.drawn(times), from).medianTime();
        assertEquals(median == null ? Double.NaN : median, medians[p], "seed " + seed);
        found += median == null ? 0 : 1;
        missing += median == null ? 1 : 0;
      }
    }
    assertTrue(found > 100 && missing > 10, found + " and " + missing);
  }

  /** A filter by lines tells what a season that never had the other lines tells. */
  @Test
  void groupsAreTestedAmongTheLinesHeldAlone() {
    List<SessionSummary> all = season(7, 40);
    List<SessionSummary> stripped =
        all.stream()
            .map(
                s ->
                    new SessionSummary(
                        s.about(),
                        s.result(),
                        s.lines().stream().filter(l -> !l.group().equals("margin")).toList()))
            .toList();
    SeasonFilter two = new SeasonFilter(Set.of(), Set.of(), Set.of("short", "long"), null, null);
    List<FirstBiteGroup> filtered = SeasonBuilder.build(all, two).firstBites();
    List<FirstBiteGroup> without = SeasonBuilder.build(stripped, SeasonFilter.ALL).firstBites();
    List<FirstBiteGroup> unfiltered = SeasonBuilder.build(all, SeasonFilter.ALL).firstBites();
    assertEquals(without.size(), filtered.size());
    for (int g = 0; g < without.size(); g++) {
      FirstBiteGroup expected = without.get(g);
      FirstBiteGroup got = filtered.get(g);
      assertEquals(expected.name(), got.name());
      assertEquals(expected.againstOthers().observed(), got.againstOthers().observed(), 1e-9);
      assertEquals(expected.againstOthers().expected(), got.againstOthers().expected(), 1e-9);
      assertEquals(expected.againstOthers().variance(), got.againstOthers().variance(), 1e-9);
    }
    FirstBiteGroup whole =
        unfiltered.stream().filter(g -> g.name().equals("short")).findFirst().orElseThrow();
    FirstBiteGroup part =
        filtered.stream().filter(g -> g.name().equals("short")).findFirst().orElseThrow();
    assertTrue(whole.againstOthers().variance() > part.againstOthers().variance());
  }
}
