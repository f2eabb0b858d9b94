package org.fadeline.analysis.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.junit.jupiter.api.Test;

/** Sessions that stand out, and feed against what came; sums done by hand. */
class StandingOutTest {
  private static SessionSummary fished(int day, int fish, double minutes, int feeds) {
    return Summaries.session(
        String.format("2026-05-%02d", day),
        "pool",
        new LineSummary(
            "short",
            "short",
            List.of(new Hour(0, minutes, fish, 100.0 * fish)),
            List.of(),
            new FeedPut(feeds, feeds, 0, Map.of(), Set.of()),
            null));
  }

  private static Season season(SessionSummary... sessions) {
    return SeasonBuilder.build(List.of(sessions), SeasonFilter.ALL);
  }

  /** Fish an hour 16, 25, 36, … : roots 4 to 6, median 5, MAD 1; 196 has root 14, 6.1 from it. */
  @Test
  void oneFarFromTheRestIsNamedWithWhatTheRestLieBetween() {
    List<SessionSummary> all = new ArrayList<>();
    int[] fish = {16, 16, 16, 25, 25, 25, 25, 36, 36, 36};
    for (int i = 0; i < fish.length; i++) {
      all.add(fished(i + 1, fish[i], 60, 0));
    }
    all.add(fished(20, 196, 60, 0));
    List<StandingOut> found =
        season(all.toArray(SessionSummary[]::new)).standing().stream()
            .filter(s -> s.measure() == StandingOut.Measure.FISH)
            .toList();
    assertEquals(List.of(new StandingOut(10, StandingOut.Measure.FISH, 196, 20.5, 36, 11)), found);
  }

  @Test
  void fewSessionsAndShortOnesNameNone() {
    List<SessionSummary> nine = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      nine.add(fished(i, 20 + i, 60, 0));
    }
    nine.add(fished(9, 900, 60, 0));
    assertEquals(List.of(), season(nine.toArray(SessionSummary[]::new)).standing());
    List<SessionSummary> many = new ArrayList<>();
    for (int i = 1; i <= 12; i++) {
      many.add(fished(i, 20 + i, 60, 0));
    }
    many.add(fished(20, 400, 59, 0));
    assertEquals(List.of(), season(many.toArray(SessionSummary[]::new)).standing());
  }

  @Test
  void sessionsFedLessAndMoreAreSetApartAtTheMiddleOne() {
    FeedGroup group =
        season(
                fished(1, 3, 60, 1),
                fished(2, 5, 60, 2),
                fished(3, 4, 120, 2),
                fished(4, 9, 60, 8),
                fished(5, 7, 60, 6))
            .feed()
            .get(0);
    FeedGroup.Share fewer = Objects.requireNonNull(group.fewer());
    FeedGroup.Share more = Objects.requireNonNull(group.more());
    assertEquals(List.of(0, 1, 2), fewer.sessions());
    assertEquals(List.of(3, 4), more.sessions());
    assertEquals(12 / 4.0, fewer.fish().perHour());
    assertEquals(800.0, more.weight().perHour());
    assertEquals(6, more.fewest());
    assertEquals(8, more.most());
    assertNull(more.fish().limits(), "two sessions tell no limits");
  }

  @Test
  void aKindNeverFedIsLeftOut() {
    assertEquals(List.of(), season(fished(1, 3, 60, 0)).feed());
  }
}
