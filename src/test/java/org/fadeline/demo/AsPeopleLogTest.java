package org.fadeline.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.Test;

class AsPeopleLogTest {
  private static final Session FULL =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 3);

  private static long count(Session session, EventKind kind) {
    return session.events().stream().filter(event -> event.kind() == kind).count();
  }

  private static void onlyLost(Session session, Predicate<SessionEvent> lost) {
    assertEquals(FULL.events().stream().filter(lost.negate()).toList(), session.events());
    assertTrue(session.events().size() < FULL.events().size());
  }

  @Test
  void dropsCastsOrMissedBitesAlone() {
    onlyLost(AsPeopleLog.noCasts(FULL), event -> event.kind() == EventKind.CAST);
    onlyLost(AsPeopleLog.noMissedBites(FULL), event -> event.kind() == EventKind.BITE);
  }

  @Test
  void keepsMovesAndFishOrFishAlone() {
    Session moves = AsPeopleLog.movesAndFish(FULL);
    assertEquals(count(FULL, EventKind.MOVE), count(moves, EventKind.MOVE));
    assertEquals(count(FULL, EventKind.LANDED), count(moves, EventKind.LANDED));
    assertEquals(0, count(moves, EventKind.CAST) + count(moves, EventKind.FED));
    Session fish = AsPeopleLog.fishOnly(FULL);
    assertEquals(count(FULL, EventKind.LANDED) + 2, fish.events().size());
  }

  @Test
  void clickerCountsAddUpToTheFish() {
    Session counts = AsPeopleLog.clickerCounts(FULL, 30);
    int fish = 0;
    double grams = 0;
    for (SessionEvent event : counts.events()) {
      if (event instanceof SessionEvent.Count count) {
        fish += count.fish().count();
        grams += Objects.requireNonNull(count.fish().grams());
      }
    }
    assertEquals(count(FULL, EventKind.LANDED), fish);
    double landed =
        FULL.events().stream()
            .filter(event -> event.kind() == EventKind.LANDED)
            .mapToDouble(
                event ->
                    Objects.requireNonNullElse(
                        Objects.requireNonNullElse(event.fishOrNull(), Fish.ONE).grams(), 0.0))
            .sum();
    assertEquals(landed, grams, 1e-6);
    // Nine readings on the half hour within the match, seven moves, one at all out.
    assertEquals(9 + 7 + 1, count(counts, EventKind.COUNT));
  }

  @Test
  void roundsEveryTimeByAtMostHalfAStepAndKeepsTheOrder() {
    for (int minutes : new int[] {1, 5}) {
      Session rounded = AsPeopleLog.roundedTo(FULL, minutes);
      List<String> ids = new ArrayList<>();
      for (int i = 0; i < FULL.events().size(); i++) {
        SessionEvent event = rounded.events().get(i);
        ids.add(event.id());
        assertEquals(0, (event.at() - FULL.match().allIn()) % (minutes * 60_000L));
        assertTrue(Math.abs(event.at() - FULL.events().get(i).at()) <= minutes * 30_000L);
      }
      assertEquals(FULL.events().stream().map(SessionEvent::id).toList(), ids);
    }
  }

  @Test
  void forgetsAboutATenth() {
    Session some = AsPeopleLog.forgetting(FULL, 0.1, 5);
    double share = 1 - some.events().size() / (double) FULL.events().size();
    assertEquals(0.1, share, 0.05);
    assertEquals(some, AsPeopleLog.forgetting(FULL, 0.1, 5));
  }

  @Test
  void forgetsMissesOnlyAndMoreWhenBusy() {
    Session some = AsPeopleLog.missesForgottenWhenBusy(FULL, 5);
    List<SessionEvent> gone = new ArrayList<>(FULL.events());
    gone.removeAll(some.events());
    assertTrue(gone.size() > 3);
    assertTrue(gone.stream().allMatch(event -> event.kind() == EventKind.BITE));
    assertTrue(count(some, EventKind.BITE) > 0);
  }

  @Test
  void largeSessionsHaveTheSizeAskedFor() {
    Session large = LargeSessions.of(100_000, 1);
    assertEquals(100_000, large.events().size());
    assertEquals(100_000, large.events().stream().map(SessionEvent::id).distinct().count());
    assertTrue(count(large, EventKind.LANDED) > 10_000);
    assertTrue(count(large, EventKind.MOVE) > 100);
  }
}
