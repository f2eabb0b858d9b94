package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What each pad puts in the record, by the pointer and the words said afterwards. */
class LogPadsTest extends WindowHarness {
  @BeforeEach
  void openLog() {
    open("Log");
  }

  private void pad(String id) {
    robot.clickOn(node("pad-" + id, Button.class));
  }

  private void say(String words) throws Exception {
    robot.push(KeyCode.ENTER);
    waitUntil(() -> node("log-detail", TextField.class).isFocused());
    type("log-detail", words);
  }

  private List<SessionEvent> added() {
    return session().events().stream()
        .filter(e -> HandMade.session().events().stream().noneMatch(o -> o.id().equals(e.id())))
        .toList();
  }

  private <T extends SessionEvent> T only(Class<T> kind) {
    assertEquals(1, added().size());
    return assertInstanceOf(kind, added().get(0));
  }

  private String line(int place) {
    return session().lines().get(place).id();
  }

  @Test
  void aClickOnAPadWhileWordsAreTypedHandsTheKeysBackToThePads() throws Exception {
    pad("1-cast");
    robot.push(KeyCode.ENTER);
    waitUntil(() -> node("log-detail", TextField.class).isFocused());
    pad("1-bite");
    assertFalse(node("log-detail", TextField.class).isFocused());
    robot.push(KeyCode.W);
    assertEquals(
        List.of(EventKind.CAST, EventKind.BITE, EventKind.CAST),
        added().stream().map(SessionEvent::kind).toList());
    assertEquals("", node("log-detail", TextField.class).getText());
  }

  @Test
  void aMoveCarriesItsReason() throws Exception {
    pad("1-move");
    assertNull(only(SessionEvent.Move.class).reason());
    say("dead");
    SessionEvent.Move move = only(SessionEvent.Move.class);
    assertEquals("dead", move.reason());
    assertEquals(line(0), move.lineId());
  }

  @Test
  void theClickerPressedAgainCountsUpAndTakesAWeight() throws Exception {
    pad("count");
    pad("count");
    pad("count");
    assertEquals(3, only(SessionEvent.Count.class).fish().count());
    say("5 fish 2lb");
    SessionEvent.Count count = only(SessionEvent.Count.class);
    assertEquals(5, count.fish().count());
    // The international pound, exactly (Weights and Measures Act 1985, Schedule 1).
    assertEquals(2 * 453.59237, requireNonNull(count.fish().grams()), 1e-9);
  }

  @Test
  void feedingThatRepeatsItselfIsAPattern() throws Exception {
    pad("2-fed");
    assertEquals(Feed.UNKNOWN, only(SessionEvent.Fed.class).feed());
    say("6 pellets every 40s");
    Feed feed = only(SessionEvent.Fed.class).feed();
    assertEquals(line(1), only(SessionEvent.Fed.class).lineId());
    assertEquals(new Feed.Amount(6, Feed.Unit.PIECES), feed.amount());
    assertEquals(new Feed.Pattern(40, null), feed.pattern());
  }

  @Test
  void aRigChangeBelongsToTheLineInUse() {
    pad("2-cast");
    pad("change");
    SessionEvent change = added().get(1);
    assertEquals(EventKind.CHANGE, change.kind());
    assertEquals(line(1), change.lineId());
  }

  @Test
  void aNeighboursFishIsNoneOfOnesOwn() throws Exception {
    pad("neighbour");
    say("peg 14 carp 6lb");
    SessionEvent.Neighbour neighbour = only(SessionEvent.Neighbour.class);
    assertEquals("14", neighbour.peg());
    assertNull(neighbour.lineId());
    assertEquals(6 * 453.59237, requireNonNull(neighbour.fish().grams()), 1e-9);
    assertEquals("carp", neighbour.fish().species());
  }

  @Test
  void anInterruptionEndsByTheSamePad() {
    pad("stopped");
    robot.push(KeyCode.RIGHT);
    pad("stopped");
    assertEquals(
        List.of(EventKind.STOPPED, EventKind.RESUMED),
        added().stream().map(SessionEvent::kind).toList());
    assertEquals(10_000, added().get(1).at() - added().get(0).at());
  }

  @Test
  void severalAtOneInstantKeepTheOrderOfThePresses() {
    pad("2-fed");
    pad("1-landed");
    pad("net");
    pad("2-cast");
    assertEquals(1, added().stream().map(SessionEvent::at).distinct().count());
    assertEquals(
        List.of(EventKind.FED, EventKind.LANDED, EventKind.NET, EventKind.CAST),
        added().stream().map(SessionEvent::kind).toList());
  }

  @Test
  void wordsThatAreWrongKeepNobodyFromLoggingOn() throws Exception {
    pad("1-landed");
    say("8 44");
    assertTrue(shows("The event itself is logged"));
    pad("2-cast");
    assertEquals(2, added().size());
    assertFalse(shows("The event itself is logged"));
    robot.push(KeyCode.Q);
    assertEquals(3, added().size());
  }
}
