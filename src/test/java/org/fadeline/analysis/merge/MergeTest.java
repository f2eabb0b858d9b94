package org.fadeline.analysis.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.fadeline.analysis.merge.Clash.Choice;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/** Two records of one match. */
class MergeTest {
  private static final Units UNITS = Units.LB_OZ_AND_METRES;
  private static final Session MINE = HandMade.session();

  private static Session changed(UnaryOperator<SessionEvent> change) {
    return MINE.withEvents(MINE.events().stream().map(change).toList());
  }

  private static SessionEvent only(String id, SessionEvent event, SessionEvent instead) {
    return event.id().equals(id) ? instead : event;
  }

  private static SessionEvent event(Session session, String id) {
    return session.events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  private static Session plus(SessionEvent... more) {
    List<SessionEvent> events = new ArrayList<>(MINE.events());
    events.addAll(List.of(more));
    return MINE.withEvents(events);
  }

  private static Session merged(Merge merge, Choice choice) {
    Session session = merge.session(c -> choice, UNITS);
    assertEquals(
        session.events().size(),
        new HashSet<>(session.events().stream().map(SessionEvent::id).toList()).size(),
        "ids stay unique");
    return session;
  }

  @Test
  void aRecordWithItselfIsItself() {
    Merge merge = Merge.of(MINE, MINE, null);
    assertEquals(0, merge.offset().millis());
    assertEquals(List.of(), merge.clashes());
    assertEquals(List.of(), merge.added());
    assertEquals(MINE.events().size(), merge.same());
    assertEquals(MINE, merged(merge, Choice.MINE));
  }

  @Test
  void theOffsetOfTheClocksIsFoundFromTheEvents() {
    for (long ahead : new long[] {-7 * 60_000L, -45_000, 95_000, 20 * 60_000L}) {
      // Each of the friend's times is also off by up to four seconds, in a fixed pattern.
      int[] i = {0};
      Session theirs = changed(e -> e.retimed(at -> at + ahead + (i[0]++ * 37 % 9 - 4) * 1000L));
      Merge merge = Merge.of(MINE, theirs, null);
      assertTrue(Math.abs(ahead - merge.offset().millis()) <= 2000, "ahead by " + ahead);
      assertTrue(merge.offset().inStep() >= 20, "" + merge.offset());
      assertEquals(List.of(), merge.added());
      assertEquals(List.of(), merge.clashes());
    }
  }

  @Test
  void clocksOfUnrelatedRecordsAreNotCompared() {
    Session theirs =
        MINE.withEvents(
            List.of(
                new SessionEvent.Landed(
                    new Stamp("x", HandMade.minute(50), "short", null), Fish.ONE)));
    Merge merge = Merge.of(MINE, theirs, null);
    assertEquals(0, merge.offset().inStep());
    assertTrue(merge.remarks().get(0).contains("Too few"));
  }

  @Test
  void twoWeightsOfOneFishClashAndNeitherIsLost() {
    SessionEvent lighter =
        new SessionEvent.Landed(event(MINE, "z").stamp(), new Fish(1, "carp", 1000.0, false));
    Merge merge = Merge.of(MINE, changed(e -> only("z", e, lighter)), null);
    assertEquals(List.of(Clash.Kind.WEIGHT), merge.clashes().stream().map(Clash::kind).toList());
    SessionEvent mine = event(merged(merge, Choice.MINE), "z");
    assertEquals(1200.0, Objects.requireNonNull(mine.fishOrNull()).grams());
    assertTrue(String.valueOf(mine.note()).contains("2 lb 3 oz"), mine.note());
    SessionEvent theirs = event(merged(merge, Choice.THEIRS), "z");
    assertEquals(1000.0, Objects.requireNonNull(theirs.fishOrNull()).grams());
    assertTrue(String.valueOf(theirs.note()).contains("2 lb 10 oz"), theirs.note());
    assertEquals(MINE.events().size() + 1, merged(merge, Choice.BOTH).events().size());
  }

  @Test
  void aFishLandedInOneAndLostInTheOtherClashes() {
    SessionEvent lost = new SessionEvent.Lost(event(MINE, "z").stamp(), "carp");
    Merge merge = Merge.of(MINE, changed(e -> only("z", e, lost)), null);
    assertEquals(List.of(Clash.Kind.FATE), merge.clashes().stream().map(Clash::kind).toList());
    assertEquals(List.of(), merge.added());
  }

  @Test
  void aFishToldHalfAMinuteApartMayBeOneOrTwo() {
    Session theirs = changed(e -> e.id().equals("z") ? e.retimed(at -> at + 40_000) : e);
    Merge merge = Merge.of(MINE, theirs, null);
    assertEquals(List.of(Clash.Kind.TWICE), merge.clashes().stream().map(Clash::kind).toList());
    assertEquals(MINE.events().size(), merged(merge, Choice.MINE).events().size());
    assertEquals(MINE.events().size() + 1, merged(merge, Choice.BOTH).events().size());
  }

  @Test
  void whatOneTellsAloneIsTaken() {
    SessionEvent sign =
        new SessionEvent.Sign(new Stamp("f1", HandMade.minute(200.5), "short", "fizzing"));
    Merge merge = Merge.of(MINE, plus(sign), null);
    assertEquals(1, merge.added().size());
    Session both = merged(merge, Choice.MINE);
    assertEquals("fizzing", event(both, "f1-2").note(), "the id was taken");
  }

  @Test
  void aMissingWeightAndReasonAreFilledIn() {
    Session mine =
        changed(
            e ->
                e.id().equals("z")
                    ? new SessionEvent.Landed(e.stamp(), new Fish(1, null, null, false))
                    : e.id().equals("m1") ? new SessionEvent.Move(e.stamp(), null) : e);
    Merge merge = Merge.of(mine, MINE, null);
    assertEquals(List.of(), merge.clashes());
    assertEquals(MINE, merged(merge, Choice.MINE));
  }

  @Test
  void aCountOverSingleFishIsToldAndKeptAsANote() {
    SessionEvent count =
        new SessionEvent.Count(
            new Stamp("n", HandMade.minute(290), null, null), new Fish(17, null, 24_000.0, false));
    Merge merge = Merge.of(MINE, plus(count), null);
    assertEquals(List.of(Clash.Kind.COUNT), merge.clashes().stream().map(Clash::kind).toList());
    SessionEvent note = event(merged(merge, Choice.MINE), "n");
    assertEquals(EventKind.NOTE, note.kind());
    assertTrue(String.valueOf(note.note()).contains("count 17"), note.note());
  }

  @Test
  void linesAreTheSameByNameAndNewOnesAreTaken() {
    List<Line> lines = new ArrayList<>();
    lines.add(MINE.lines().get(0));
    lines.add(new Line("s2", "SHORT LINE", null, "s2", Line.Place.UNKNOWN, Line.Rig.UNKNOWN));
    lines.add(Line.named("short", "Whip"));
    Session theirs =
        changed(e -> "short".equals(e.lineId()) ? e.withStamp(e.stamp().withLine("s2")) : e)
            .withLines(lines);
    Merge merge = Merge.of(MINE, theirs, null);
    assertEquals(MINE.events().size(), merge.same());
    Session both = merged(merge, Choice.MINE);
    assertEquals(
        List.of("Shallow", "Short line", "Whip"), both.lines().stream().map(Line::name).toList());
    assertEquals("short-2", both.lines().get(2).id());
  }

  @Test
  void theWeighInIsFilledInOrTheDifferenceTold() {
    var net = new Outcome.NetWeight(1, 24_000, null);
    Session weighed = MINE.withOutcome(Outcome.UNKNOWN.withWeighIn(List.of(net)));
    assertEquals(
        List.of(net), merged(Merge.of(MINE, weighed, null), Choice.MINE).outcome().weighIn());
    Session other =
        MINE.withOutcome(
            Outcome.UNKNOWN.withWeighIn(List.of(new Outcome.NetWeight(1, 23_000, null))));
    assertTrue(
        Merge.of(weighed, other, null).remarks().stream().anyMatch(r -> r.contains("weigh-in")));
  }

  @Test
  void whatOneRecordLeavesOutOfAFishIsFilledInFromTheOther() {
    SessionEvent.Landed fish =
        (SessionEvent.Landed)
            MINE.events().stream()
                .filter(SessionEvent.Landed.class::isInstance)
                .findFirst()
                .orElseThrow();
    Session speciesAlone =
        changed(e -> only(fish.id(), e, fish.withFish(new Fish(1, "F1", null, false))));
    Session weightAlone =
        changed(e -> only(fish.id(), e, fish.withFish(new Fish(1, null, 900.0, true))));
    Fish whole = new Fish(1, "F1", 900.0, true);
    for (Merge merge :
        List.of(
            Merge.of(speciesAlone, weightAlone, null), Merge.of(weightAlone, speciesAlone, null))) {
      assertEquals(List.of(), merge.clashes());
      assertEquals(whole, event(merged(merge, Choice.MINE), fish.id()).fishOrNull());
    }
  }

  @Test
  void linesOfOneSpotStayOnOneSpot() {
    Line deck = Line.named("deck", "Deck");
    List<Line> more = new ArrayList<>(MINE.lines());
    more.add(deck);
    more.add(Line.named("up", "Up in the water").withSpot("deck"));
    more.add(Line.named("over", "Over the short line").withSpot("short"));
    Session merged = merged(Merge.of(MINE, MINE.withLines(more), null), Choice.MINE);
    assertEquals("deck", merged.line("up").orElseThrow().spot());
    assertEquals("deck", merged.line("deck").orElseThrow().spot());
    assertEquals("short", merged.line("over").orElseThrow().spot());
  }
}
