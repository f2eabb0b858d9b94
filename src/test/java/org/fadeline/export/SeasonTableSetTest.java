package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.PastPlain;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Tables of a season as they are written; the sums are done by hand. */
class SeasonTableSetTest {
  private static SessionSummary session(String date, @Nullable Behind behind) {
    return new SessionSummary(
        new SessionSummary.About(
            date, "Match", LocalDate.parse(date), true, null, 300, SessionSummary.Day.UNKNOWN),
        new SessionSummary.Result(
            Grade.FULL,
            1,
            400,
            new SessionSummary.Weights(WeightFrom.ESTIMATED, 0, null),
            List.of(),
            null),
        List.of(
            new SessionSummary.LineSummary(
                "Short",
                "short",
                List.of(new SessionSummary.Hour(0, 60, 1, 400)),
                List.of(),
                new FeedPut(0, 0, 0, Map.of(), Set.of()),
                behind)));
  }

  private static Behind behind(FadeFound... fades) {
    return new Behind(List.of(fades), List.of(), new SessionSummary.BunchingFound(0, 0));
  }

  private static List<List<@Nullable Object>> rows(String name) {
    SessionSummary stayed =
        session(
            "2026-05-01",
            behind(
                new FadeFound(0.9, 60.0, 80.0, 92, new PastPlain(12, 1, 400)),
                new FadeFound(0.85, 140.0, 170.0, 178, new PastPlain(8, 0, 0))));
    SessionSummary left = session("2026-06-01", behind(new FadeFound(0.1, null, null, 60, null)));
    SessionSummary unjudged = session("2026-07-01", null);
    return SeasonTableSet.of(SeasonBuilder.build(List.of(unjudged, left, stayed), SeasonFilter.ALL))
        .stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow()
        .rows();
  }

  @Test
  void aSessionNotYetJudgedIsEmptyAndNoStayIsNone() {
    assertEquals(
        List.of(
            Arrays.<Object>asList("2026-05-01", "Match", 2, 20.0, 1, 400.0),
            Arrays.<Object>asList("2026-06-01", "Match", 0, 0.0, 0, 0.0),
            Arrays.<Object>asList("2026-07-01", "Match", null, null, null, null)),
        rows("season-past-plain"));
  }

  @Test
  void fadesStandByKindOfLine() {
    assertEquals(
        List.of(Arrays.<Object>asList("short", 2, 3, 2, 100.0, 2, 20.0, 1, 400.0)),
        rows("season-fades"));
  }
}
