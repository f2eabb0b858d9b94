package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.demo.AsPeopleLog;
import org.fadeline.model.Fish;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.replay.Readout.Card;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said at the playhead, and that none of it rests on what came later. */
class ReadoutTest {
  private static Readout at(Workbench bench, double minute) {
    bench.transport().seek(minute(minute));
    return Readout.of(bench.state(), Units.LB_OZ_AND_METRES).orElseThrow();
  }

  private static Card card(Readout readout, String line) {
    return readout.cards().stream().filter(c -> c.lineId().equals(line)).findFirst().orElseThrow();
  }

  @Test
  void clockTimeToGoAndWeight() {
    Readout r = at(FakeDesk.opened(HandMade.session()), 15);
    assertEquals("10:15:00", r.clock());
    assertEquals("4 h 45 min to go", r.toGo().head());
    assertEquals("fishing the short line", r.toGo().note());
    // 1100 g + 900 g = 4.409 lb: 4 lb 7 oz to the ounce.
    assertEquals("4 lb 7 oz", r.weight().head());
    assertEquals("2 fish, estimated", r.weight().note());
  }

  /** Cupping in the middle of a stay: the line has not been left. */
  @Test
  void aRigOutForAWhileIsNotALineLeft() {
    Session session = HandMade.session();
    long at = session.match().allIn() + 12 * 60_000L;
    List<SessionEvent> events = new ArrayList<>(session.events());
    events.add(new SessionEvent.Off(new Stamp("off", at, "short", null), null));
    Readout r = at(FakeDesk.opened(session.withEvents(events)), 12.5);
    assertEquals("rig out", r.toGo().note());
    assertEquals("rig out", card(r, "short").now());
  }

  @Test
  void aLineLeftSaysWhenAndHowLongItRested() {
    Card left = card(at(FakeDesk.opened(HandMade.session()), 60), "short");
    assertEquals("left 10:25, rested 35 min", left.now());
    // 2000 g in the 24 min from 10:01 are 5000 g an hour: 11 lb.
    assertEquals("gave 11 lb an hour", left.rests());
    // The last bite was missed at minute 18, before the line was left at 25.
    assertEquals("fed 60 min, bite 42 min ago", left.since());
  }

  @Test
  void aLineNotFishedYetSaysSo() {
    Card waiting = card(at(FakeDesk.opened(HandMade.session()), 15), "shallow");
    assertEquals("", waiting.now());
    assertEquals("not fished yet, fed 10 min ago", waiting.since());
  }

  /** Fish alone do not say where a bait was between them. */
  @Test
  void fishAloneDoNotSayThatALineWasNotFished() {
    Session session = HandMade.session();
    List<SessionEvent> fish =
        session.events().stream().filter(SessionEvent.Landed.class::isInstance).toList();
    Card waiting = card(at(FakeDesk.opened(session.withEvents(fish)), 15), "shallow");
    assertEquals("", waiting.since());
  }

  @Test
  void aLineBeingFishedSaysItsRateWithWhatItRestsOn() {
    Card fishing = card(at(FakeDesk.opened(HandMade.session()), 90), "shallow");
    assertTrue(fishing.fishing());
    assertTrue(fishing.now().endsWith(")") && fishing.now().contains(" an hour ("), fishing.now());
    // Fish at minutes 66, 72, 78, 84 and 90 lie in the half hour up to minute 90.
    assertTrue(fishing.rests().endsWith("5 fish in 30 min"), fishing.rests());
    assertTrue(fishing.since().endsWith("bite 30 s ago"), fishing.since());
  }

  @Test
  void noFishIsNeverARateOfNought() {
    Card fishing = card(at(FakeDesk.opened(HandMade.session()), 170), "shallow");
    assertEquals("no fish in 30 min", fishing.now());
    // 3.689 / 0.5 h = 7.4: the exact upper limit for none (Garwood 1936).
    assertEquals("up to 7.4 an hour not ruled out", fishing.rests());
  }

  @Test
  void aFinishSaysThatItTakesTheRateAsLasting() {
    Readout r = at(FakeDesk.opened(HandMade.session()), 298);
    assertEquals("by all out at this rate, 9 times in 10", r.pace().note());
  }

  @Test
  void aFinishThatTiringWouldChangeIsToldBothWays() {
    String note = at(FakeDesk.opened(HandMade.session()), 90).pace().note();
    assertTrue(note.matches("at this rate, 9 in 10; [0-9]+–[0-9]+ lb if it tires"), note);
  }

  @Test
  void aLineIsNamedInASentenceAsEverywhereElse() {
    Readout r = at(FakeDesk.opened(HandMade.session()), 90);
    assertEquals("fishing the shallow line", r.toGo().note());
  }

  @Test
  void afterAllOutNothingIsToGo() {
    Readout r = at(FakeDesk.opened(HandMade.session()), 300);
    assertEquals("all out", r.toGo().head());
    assertEquals("–", r.pace().head());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 7.5, 8, 14.9, 18, 25, 26, 40, 66, 100, 108.5, 150, 185, 239})
  void asKnownThenTheFutureChangesNothingLogged(double minute) {
    Session whole = HandMade.session();
    List<SessionEvent> known =
        whole.events().stream().filter(e -> e.at() <= minute(minute)).toList();
    Readout then = at(FakeDesk.opened(whole), minute);
    Readout truncated = at(FakeDesk.opened(HandMade.of(known)), minute);
    assertEquals(truncated.clock(), then.clock());
    assertEquals(truncated.toGo(), then.toGo());
    assertEquals(truncated.weight(), then.weight());
    assertEquals(truncated.cards(), then.cards());
  }

  /** Where no move is logged, only the next line's first fish tells that the last one was left. */
  @Test
  void asKnownThenALineSeemsFishedUntilTheNextSaysOtherwise() {
    Session whole = AsPeopleLog.fishOnly(HandMade.session());
    for (double minute : new double[] {12, 16, 20, 29.5, 31, 90, 110, 185, 189.5, 191, 235}) {
      List<SessionEvent> known =
          whole.events().stream().filter(e -> e.at() <= minute(minute)).toList();
      Readout then = at(FakeDesk.opened(whole), minute);
      Readout cut = at(FakeDesk.opened(whole.withEvents(known)), minute);
      assertEquals(cut.cards(), then.cards(), "minute " + minute);
      assertEquals(cut.pace(), then.pace(), "minute " + minute);
    }
  }

  @Test
  void laterEstimatesDoNotTellOnWhatWasWeighedBefore() {
    List<SessionEvent> events = new ArrayList<>();
    for (SessionEvent event : HandMade.session().events()) {
      boolean first = event.id().equals("s");
      events.add(
          first
              ? new SessionEvent.Landed(event.stamp(), new Fish(1, "carp", 1100.0, true))
              : event);
    }
    Workbench bench = FakeDesk.opened(HandMade.of(events));
    assertEquals("1 fish, weighed", at(bench, 10).weight().note());
    assertEquals("2 fish, estimated", at(bench, 16).weight().note());
  }

  /** The scales come out after all out. */
  @Test
  void theWeighInIsNeverShownAsKnownThen() {
    Session session = HandMade.session();
    Outcome weighed = new Outcome(List.of(new Outcome.NetWeight(1, 99_000, null)), null, List.of());
    Session whole =
        new Session(
            session.document(),
            session.occasion(),
            session.match(),
            session.lines(),
            session.events(),
            weighed);
    Workbench bench = FakeDesk.opened(whole);
    String scales = Say.weight(99_000, Units.LB_OZ_AND_METRES);
    bench.hindsight(false);
    for (double minute : new double[] {10, 100, 299, 300}) {
      assertFalse(at(bench, minute).toString().contains(scales), "minute " + minute);
    }
    bench.hindsight(true);
    assertTrue(at(bench, 10).weight().note().endsWith("scales at the end " + scales));
  }

  private static Session withNetLimit(Session session, double grams) {
    return session.withMatch(
        session
            .match()
            .withRules(
                session.match().rules().withNetLimit(new MatchRules.NetLimit(grams, 0, null))));
  }

  @Test
  void theNetStandsAgainstItsLimitAsARange() {
    Session session = withNetLimit(HandMade.session(), 9_000);
    Workbench bench = FakeDesk.opened(session);
    // 1100 g + 900 g: log sd 0.115, 3 lb 10 oz to 5 lb 5 oz nine times in ten.
    assertEquals(
        "2 fish, estimated; net 1 at 3 lb 10 oz–5 lb 5 oz of 20 lb", at(bench, 15).weight().note());
    Readout.Pair near = at(bench, 60).weight();
    assertTrue(
        near.note().matches(".*; net 1 near its limit, [0-9]+–[0-9]+ lb of 20 lb"), near.note());
    assertEquals(1, near.more().size());
    assertTrue(
        near.more()
            .get(0)
            .matches("Net 1: likely .* limit 20 lb; over it with a chance of [0-9]+%\\. .*"));
    assertTrue(near.more().get(0).endsWith("scales taken to say 0.85–1.18 times the estimates."));
    assertEquals("no fish", at(bench, 1).weight().note());
  }

  @Test
  void withHindsightTheNetStandsAsTheScalesSay() {
    Session session =
        withNetLimit(HandMade.session(), 30_000)
            .withOutcome(
                Outcome.UNKNOWN.withWeighIn(List.of(new Outcome.NetWeight(1, 22_679.6185, null))));
    Workbench bench = FakeDesk.opened(session);
    bench.hindsight(true);
    Readout.Pair end = at(bench, 290).weight();
    assertTrue(end.note().endsWith("estimated; net 1 at 50 lb of 66 lb"), end.note());
    assertEquals("Scales at the end 50 lb.", end.more().get(0));
    bench.hindsight(false);
    assertFalse(at(bench, 290).weight().toString().contains("scales at the end"));
  }

  @Test
  void turningPointsAreThoseKnownByThen() {
    Workbench bench = FakeDesk.opened(HandMade.session());
    for (int minute = 0; minute <= 300; minute += 5) {
      bench.transport().seek(minute(minute));
      WorkbenchState s = bench.state();
      assertTrue(
          s.turningPoints().stream().noneMatch(p -> p.hindsight() || p.at() > s.playhead().at()));
    }
    bench.hindsight(true);
    assertEquals(
        requireNonNull(bench.state().review().latest()).course().turningPoints(),
        bench.state().turningPoints());
  }

  @Test
  void thereAndBackSaysTheSame() {
    Workbench bench = FakeDesk.opened(HandMade.session());
    Readout first = at(bench, 90);
    at(bench, 250);
    at(bench, 3);
    assertEquals(first, at(bench, 90));
  }

  @Test
  void betweenTheCursors() {
    Workbench bench = FakeDesk.opened(HandMade.session());
    bench.transport().seek(minute(10));
    bench.picking().mark(minute(10));
    bench.transport().seek(minute(22.5));
    assertEquals(
        "12:30 since 10:10\n2 lb, 1 fish",
        Between.words(bench.state(), Units.LB_OZ_AND_METRES),
        "900 g is 1.984 lb: 2 lb to the ounce");
    bench.transport().seek(minute(5));
    assertEquals("5:00 before 10:10", Between.words(bench.state(), Units.LB_OZ_AND_METRES));
  }
}
