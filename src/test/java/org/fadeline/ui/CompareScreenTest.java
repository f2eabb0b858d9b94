package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Two matches side by side: chosen, laid on each other, paired, replayed together. */
class CompareScreenTest extends WindowHarness {
  @TempDir Path folder;

  @BeforeEach
  void secondMatch() throws IOException {
    // The same match, every second fish of it.
    List<SessionEvent> events = new ArrayList<>();
    int fish = 0;
    for (SessionEvent event : HandMade.session().events()) {
      if (!(event instanceof SessionEvent.Landed) || fish++ % 2 == 0) {
        events.add(event);
      }
    }
    Session other = HandMade.of(events);
    Path file = folder.resolve("other-day.session.json");
    Files.write(file, SessionWriter.toBytes(other));
    robot.interact(() -> preferences.change(p -> p.withRecent(file.toString())));
  }

  private void openBoth() {
    open("Compare");
    row("Other day");
  }

  private void row(String title) {
    Button button =
        robot.lookup((Node n) -> n instanceof Button b && b.getText().equals(title)).query();
    robot.interact(button::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void key(KeyCode... codes) {
    robot.push(codes);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private String stated() {
    return node("stated", Label.class).getText();
  }

  @Test
  void withoutASecondMatchTheScreenSaysWhatItIsFor() {
    open("Compare");
    assertTrue(shows("Set another match beside this one"));
    assertTrue(shows("Two days differ in more than this"));
    assertTrue(shows("Other day"), "a recent match is offered");
  }

  @Test
  void whatDifferedMostIsToldWithItsCaution() {
    openBoth();
    assertFalse(shows("Set another match beside this one"));
    assertTrue(shows("16 fish"));
    assertTrue(shows("8 fish"));
    assertTrue(shows("One match of each cannot tell"));
    assertTrue(shows("With hindsight, as are rates, first bites and tables."));
    assertEquals("Laid on each other by time since all in.", stated());
  }

  @Test
  void aRefusedFileIsToldWithItsProblemsAndNothingChanges() throws IOException {
    Path broken = folder.resolve("broken.session.json");
    Files.writeString(broken, "{\"format\": \"fadeline-session\", \"version\": 1}");
    robot.interact(() -> preferences.change(p -> p.withRecent(broken.toString())));
    open("Compare");
    row("Broken");
    assertTrue(shows("cannot be compared with"));
    assertFalse(
        requireNonNull(bench.state().activity().trouble()).problems().isEmpty(),
        "each problem with its place");
    robot.interact(bench::dismissTrouble);
    assertTrue(shows("Set another match beside this one"));
  }

  @Test
  void theModeIsStatedAndShiftsByKey() {
    openBoth();
    key(KeyCode.ALT, KeyCode.SHIFT, KeyCode.DIGIT2);
    assertEquals("Laid on each other by the clock.", stated());
    key(KeyCode.ALT, KeyCode.RIGHT);
    assertTrue(stated().contains("by hand") && stated().contains("1 min after"), stated());
    type("shift", "-30");
    assertTrue(stated().contains("30 min before"), stated());
    assertTrue(shows("second 10:30"), "at all in of the first the second is half an hour on");
  }

  @Test
  void linesArePairedAndUnpairedByHand() {
    openBoth();
    key(KeyCode.ALT, KeyCode.DIGIT7);
    assertTrue(shows("the same name"));
    ComboBox<String> box = pairBox("shallow");
    robot.interact(() -> box.getSelectionModel().select(0));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("in the first match alone"));
    assertTrue(shows("in the second match alone"));
    robot.interact(() -> pairBox("shallow").getSelectionModel().select(1));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("chosen by hand"));
    press("pair-by-itself");
    assertFalse(shows("chosen by hand"));
  }

  @SuppressWarnings("unchecked") // the box holds names
  private ComboBox<String> pairBox(String line) {
    return node("pair-" + line, ComboBox.class);
  }

  @Test
  void theRatesTableHoldsEveryPairWithBothLimits() {
    openBoth();
    key(KeyCode.ALT, KeyCode.DIGIT4);
    TableView<?> table =
        robot.lookup(n -> n instanceof TableView && n.isVisible()).queryAs(TableView.class);
    assertEquals(9, table.getItems().size(), "all lines and two pairs: weight, fish, bites");
    assertTrue(shows("the usual value, not learned: so no p-value is given"));
    assertTrue(
        node("rates", Node.class).getAccessibleText().contains("allowing for days that differ"));
  }

  @Test
  void onePlayheadMovesBothAndHidesWhatWasNotKnown() {
    openBoth();
    robot.interact(
        () -> {
          bench.hindsight(false);
          bench.transport().seek(HandMade.minute(60));
        });
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("first 11:00  ·  second 11:00"));
    String first = node("first-timeline", Node.class).getAccessibleText();
    String second = node("second-timeline", Node.class).getAccessibleText();
    assertTrue(first.contains("as known at"), first);
    assertTrue(second.contains("as known at"), second);
    key(KeyCode.ALT, KeyCode.DIGIT3);
    String then = node("running", Node.class).getAccessibleText();
    assertTrue(then.contains("8 fish"), then);
    robot.interact(() -> bench.hindsight(true));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(node("running", Node.class).getAccessibleText().contains("16 fish"));
    key(KeyCode.SPACE);
    assertTrue(bench.state().playhead().motion().playing());
    key(KeyCode.SPACE);
  }

  @Test
  void thePlayheadReachesWhereOnlyTheSecondMatchGoes() {
    openBoth();
    long end = bench.state().playhead().range().to();
    type("shift", "30");
    robot.interact(() -> bench.transport().toEnd());
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(end + 30 * 60_000, bench.state().playhead().at());
    robot.interact(() -> window.showScreen("Replay"));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(end, bench.state().playhead().range().to(), "the replay keeps to its own match");
    assertEquals(end, bench.state().playhead().at());
  }

  @Test
  void anEditOfTheFirstMatchComparesAgain() {
    openBoth();
    robot.interact(
        () -> bench.editing().edit("Take a fish out", s -> HandMade.of(without(s.events(), "z"))));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("15 fish"));
  }

  private static List<SessionEvent> without(List<SessionEvent> events, String id) {
    return events.stream().filter(e -> !e.id().equals(id)).toList();
  }

  @Test
  void unitsFollowTheOneSetting() {
    openBoth();
    assertTrue(shows(" lb"));
    robot.interact(() -> preferences.change(p -> p.withUnits(Units.KG_AND_METRES)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows(" kg"));
  }

  @Test
  void everyModeStatesHowTheTwoAreLaid() {
    openBoth();
    // As known then no later event is offered to lay on.
    robot.interact(() -> bench.hindsight(true));
    key(KeyCode.ALT, KeyCode.SHIFT, KeyCode.DIGIT3);
    assertTrue(stated().contains("first feed"), stated());
    key(KeyCode.ALT, KeyCode.SHIFT, KeyCode.DIGIT4);
    ComboBox<SessionEvent> events = eventBox("second-event");
    SessionEvent last = events.getItems().get(events.getItems().size() - 1);
    robot.interact(() -> events.setValue(last));
    WaitForAsyncUtils.waitForFxEvents();
    SessionEvent first = requireNonNull(eventBox("first-event").getValue());
    assertFalse(first.at() == last.at());
    assertTrue(stated().contains(last.kind().word()), stated());
    robot.interact(() -> bench.transport().seek(first.at()));
    WaitForAsyncUtils.waitForFxEvents();
    String then = Say.shortClock(last.at(), zone());
    assertTrue(shows("second " + then), "where one event is, the other is");
    key(KeyCode.ALT, KeyCode.SHIFT, KeyCode.DIGIT5);
    assertTrue(stated().contains("by hand"), stated());
    key(KeyCode.ALT, KeyCode.SHIFT, KeyCode.DIGIT1);
    assertEquals("Laid on each other by time since all in.", stated());
  }

  private ZoneId zone() {
    return session().occasion().zone();
  }

  @SuppressWarnings("unchecked") // the box holds events
  private ComboBox<SessionEvent> eventBox(String id) {
    return node(id, ComboBox.class);
  }

  @Test
  void theFigureShownIsPutOnTheTalk() {
    openBoth();
    key(KeyCode.ALT, KeyCode.DIGIT4);
    key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    key(KeyCode.ALT, KeyCode.DIGIT6);
    key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    key(KeyCode.ALT, KeyCode.DIGIT1);
    key(KeyCode.ALT, KeyCode.RIGHT);
    key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    robot.interact(() -> window.showScreen("Talk"));
    WaitForAsyncUtils.waitForFxEvents();
    var slides = node("slides", ListView.class);
    assertEquals(2, slides.getItems().size(), "no table, which is no picture");
    String laid = String.valueOf(node("slide", Node.class).getAccessibleText());
    assertTrue(laid.startsWith("Two matches, line by line."), laid);
    assertTrue(laid.contains("by hand: the second match's all in "), laid);
    assertTrue(laid.contains(" min after the first's."), laid);
    robot.interact(() -> slides.getSelectionModel().select(0));
    WaitForAsyncUtils.waitForFxEvents();
    String said = String.valueOf(node("slide", Node.class).getAccessibleText());
    assertTrue(said.startsWith("Rates of two matches."), said);
    assertTrue(said.contains("allowing for days that differ"), said);
  }
}
