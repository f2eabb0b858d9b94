package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** In the bar of what is picked, one gesture is one step, and what is given up is none. */
@ExtendWith(ApplicationExtension.class)
class OneGestureTest extends WindowHarness {
  private Session before;

  @BeforeEach
  void openReplay() {
    open("Replay");
    robot.interact(() -> bench.hindsight(true));
    before = session();
  }

  private SessionEvent event(String id) {
    return session().events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  private <T extends Node> T named(String words, Class<T> type) {
    return type.cast(robot.lookup((Node n) -> words.equals(n.getAccessibleText())).query());
  }

  private ComboBox<?> kinds() {
    return node("event-kind", ComboBox.class);
  }

  private void openByKey(ComboBox<?> box) throws TimeoutException {
    robot.interact(box::requestFocus);
    robot.push(KeyCode.DOWN);
    waitUntil(box::isShowing);
  }

  @Test
  void goingThroughTheKindsIsOneStepOfTheKindTheListIsClosedOn() throws Exception {
    robot.interact(() -> bench.picking().pick("c2"));
    openByKey(kinds());
    robot.push(KeyCode.DOWN).push(KeyCode.DOWN).push(KeyCode.DOWN);
    assertEquals(before, session(), "nothing is chosen while the list is open");
    robot.push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(EventKind.LANDED, event("c2").kind());
    assertEquals(List.of("Change cast to landed"), desk.kept);
    robot.interact(() -> bench.editing().undo());
    assertEquals(before, session());
  }

  @Test
  void escapeLeavesTheKindAndWhatIsPicked() throws Exception {
    robot.interact(() -> bench.picking().pick("c2"));
    openByKey(kinds());
    robot.push(KeyCode.DOWN).push(KeyCode.ESCAPE);
    waitUntil(() -> !kinds().isShowing());
    assertEquals(before, session());
    assertEquals(EventKind.CAST, kinds().getValue());
    assertEquals(Set.of("c2"), bench.state().selection().events());
    assertEquals(List.of(), desk.kept);
  }

  @Test
  void goingThroughTheLinesIsOneStep() throws Exception {
    robot.interact(() -> bench.picking().pick("w0"));
    ComboBox<?> lines = named("Line of what is picked", ComboBox.class);
    openByKey(lines);
    robot.push(KeyCode.UP).push(KeyCode.DOWN).push(KeyCode.DOWN);
    assertEquals(before, session());
    robot.push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("short", event("w0").lineId());
    assertEquals(List.of("Put to Short line"), desk.kept);
  }

  @Test
  void goingThroughTheReasonsIsOneStep() throws Exception {
    robot.interact(() -> bench.picking().pick("m1"));
    ComboBox<?> reasons = node("event-reason", ComboBox.class);
    openByKey(reasons);
    robot.push(KeyCode.DOWN).push(KeyCode.DOWN);
    assertEquals(before, session());
    robot.push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(List.of("Reason of move"), desk.kept);
  }

  @Test
  void aTimeTypedIsTakenWhenTheFieldIsLeft() throws Exception {
    robot.interact(() -> bench.picking().pick("w0"));
    robot.push(KeyCode.ENTER);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("10:31:30").push(KeyCode.TAB);
    waitUntil(() -> event("w0").at() == minute(31.5));
    assertEquals(List.of("Move landed"), desk.kept);
    assertTrue(kinds().isFocused(), "the key went on to the next field");
  }

  @Test
  void escapePutsBackWhatStoodThere() {
    robot.interact(() -> bench.picking().pick("w0"));
    robot.push(KeyCode.ENTER);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("10:31:30").push(KeyCode.ESCAPE);
    TextField time = node("event-time", TextField.class);
    assertEquals("10:30:00", time.getText());
    assertTrue(time.isFocused());
    robot.push(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(time.isFocused());
    assertEquals(before, session());
    assertEquals(List.of(), desk.kept);
  }

  @Test
  void aNoteTypedIsKeptWhenAnotherEventIsPicked() throws Exception {
    robot.interact(() -> bench.picking().pick("w0"));
    TextField note = named("Words on the event", TextField.class);
    robot.clickOn(note).write("big one");
    TimelinePane pane = node("timeline", TimelinePane.class);
    robot.interact(() -> bench.picking().pick("w1"));
    robot.interact(pane::requestFocus);
    waitUntil(() -> "big one".equals(event("w0").note()));
    assertEquals(List.of("Note on landed"), desk.kept);
    assertEquals(Set.of("w1"), bench.state().selection().events());
  }

  @Test
  void aClickOnTheTimelineTakesTheKeysOutOfTheBar() throws Exception {
    robot.interact(() -> bench.picking().pick("c2"));
    openByKey(kinds());
    robot.push(KeyCode.DOWN).push(KeyCode.ENTER);
    TimelinePane pane = node("timeline", TimelinePane.class);
    var layout = requireNonNull(pane.layoutProperty().get());
    robot.clickOn(pane.localToScreen(layout.xOf(minute(90)) + 2, layout.lanes().get(0).stringY()));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(bench.state().selection().events().contains("w10"), "another is picked");
    assertTrue(pane.isFocused());
  }

  @Test
  void theFieldsStayUnderThePointerWhileAShiftIsTyped() {
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1", "w2")));
    WaitForAsyncUtils.waitForFxEvents();
    TextField shift = node("bulk-shift", TextField.class);
    double x = shift.localToScreen(shift.getBoundsInLocal()).getMinX();
    robot.clickOn(shift).write("+1:30");
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(x, shift.localToScreen(shift.getBoundsInLocal()).getMinX());
  }

  @Test
  void theLanesStayWhereTheyAreWhenSomethingIsPicked() {
    TimelinePane pane = node("timeline", TimelinePane.class);
    var lanes = requireNonNull(pane.layoutProperty().get()).lanes();
    for (List<String> ids : List.of(List.of("w0"), List.of("m1"), List.of("w0", "w1", "w2"))) {
      robot.interact(() -> bench.picking().pickAll(ids));
      WaitForAsyncUtils.waitForFxEvents();
      robot.interact(() -> pane.getScene().getRoot().layout());
      assertEquals(lanes, requireNonNull(pane.layoutProperty().get()).lanes(), ids::toString);
    }
  }
}
