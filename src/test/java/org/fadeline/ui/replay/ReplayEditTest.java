package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Every change on the replay is one named step, taken back and done again. */
@ExtendWith(ApplicationExtension.class)
class ReplayEditTest extends WindowHarness {
  @BeforeEach
  void openReplay() {
    open("Replay");
    robot.interact(() -> bench.hindsight(true));
  }

  private SessionEvent event(String id) {
    return session().events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  private Node named(String words) {
    return robot.lookup((Node n) -> words.equals(n.getAccessibleText())).query();
  }

  /** The change made is one step of this name; undone and redone by key it is back and there. */
  private void oneStep(String name, Session before) {
    Session after = session();
    assertNotEquals(before, after);
    var history = requireNonNull(bench.state().open()).history();
    assertEquals(name, history.undo());
    assertEquals(List.of(name), desk.kept, "one step is kept");
    robot.interact(() -> screen("Replay").takeFocus());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, session());
    assertEquals("Undone: " + name, bench.state().activity().message());
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    assertEquals(after, session());
  }

  private Menu lineMenu(int index) {
    MenuButton menu = node("lines-menu", MenuButton.class);
    return (Menu) menu.getItems().get(index);
  }

  @Test
  void lanesChangePlaces() {
    Session before = session();
    Menu first = lineMenu(0);
    assertTrue(first.getItems().get(1).isDisable(), "the first cannot go up");
    robot.interact(() -> first.getItems().get(2).fire());
    assertEquals(List.of("short", "shallow"), session().lines().stream().map(Line::id).toList());
    assertEquals("Short line", lineMenu(0).getText());
    oneStep("Move Shallow", before);
  }

  private void typeName(String name) throws Exception {
    // The dialog waits for an answer, so it is opened later and not waited for.
    Platform.runLater(() -> lineMenu(0).getItems().get(3).fire());
    waitUntil(() -> robot.lookup(".dialog-pane .text-field").tryQuery().isPresent());
    TextField field = robot.lookup(".dialog-pane .text-field").query();
    assertEquals("Shallow", field.getText());
    Button ok =
        robot.lookup((Node n) -> n instanceof Button b && b.isDefaultButton()).queryButton();
    robot.interact(() -> field.setText(name));
    robot.interact(ok::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void aLaneIsRenamedInItsDialog() throws Exception {
    Session before = session();
    typeName("Far margin");
    assertEquals("Far margin", session().lines().get(0).name());
    assertEquals("Far margin", lineMenu(0).getText());
    oneStep("Rename Shallow", before);
  }

  @Test
  void aBlankNameIsNone() throws Exception {
    Session before = session();
    typeName("  ");
    assertEquals(before, session());
  }

  @Test
  void anEventBecomesOneOfAnotherKind() {
    Session before = session();
    robot.interact(() -> bench.picking().pick("w0"));
    choose("event-kind", EventKind.LOST);
    assertEquals(EventKind.LOST, event("w0").kind());
    assertEquals(Set.of("w0"), bench.state().selection().events(), "it stays picked");
    oneStep("Change landed to lost", before);
  }

  @Test
  void severalEventsGoToAnotherLine() {
    Session before = session();
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1")));
    @SuppressWarnings("unchecked") // as the inspector makes it
    ComboBox<Optional<Line>> lines = (ComboBox<Optional<Line>>) named("Line of what is picked");
    robot.interact(() -> lines.setValue(before.line("short")));
    assertEquals("short", event("w0").lineId());
    assertEquals("short", event("w1").lineId());
    assertEquals("shallow", event("w2").lineId());
    oneStep("Put to Short line", before);
  }

  @Test
  void deleteTakesOutAllThatIsPickedAtOnce() {
    Session before = session();
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1", "w2")));
    robot.push(KeyCode.DELETE);
    assertEquals(before.events().size() - 3, session().events().size());
    assertEquals(Set.of(), bench.state().selection().events());
    oneStep("Delete 3 events", before);
  }

  @Test
  void aShiftOfSeveralIsShownFirst() {
    Session before = session();
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1", "w2")));
    assertTrue(shows("10:30:00–10:42:00"));
    TextField by = node("bulk-shift", TextField.class);
    robot.clickOn(by).write("+1:30");
    assertTrue(shows("10:30:00–10:42:00 becomes 10:31:30–10:43:30"));
    assertEquals(before, session(), "only shown so far");
    robot.push(KeyCode.ENTER);
    assertEquals(minute(31.5), event("w0").at());
    assertEquals(minute(43.5), event("w2").at());
    oneStep("Shift 3 events", before);
  }

  @Test
  void aStretchOfSeveralIsShownFirst() {
    Session before = session();
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1", "w2")));
    Node to = named("Stretch so that the last event comes to lie at a time");
    robot.clickOn(to).write("10:54");
    assertTrue(shows("10:30:00–10:42:00 becomes 10:30:00–10:54:00"));
    assertEquals(before, session(), "only shown so far");
    robot.push(KeyCode.ENTER);
    // 12 minutes become 24: what lay in the middle lies in the middle.
    assertEquals(minute(30), event("w0").at());
    assertEquals(minute(42), event("w1").at());
    assertEquals(minute(54), event("w2").at());
    oneStep("Stretch 3 events", before);
  }

  @Test
  void aStretchThatWouldTurnTheOrderRoundIsRefused() {
    Session before = session();
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1")));
    Node to = named("Stretch so that the last event comes to lie at a time");
    robot.clickOn(to).write("10:20");
    assertFalse(shows("becomes"));
    robot.push(KeyCode.ENTER);
    assertEquals(before, session());
    assertTrue(shows("Type a time after the first event"));
  }

  @Test
  void keysMoveWhatIsPickedBySeconds() {
    Session before = session();
    robot.interact(() -> bench.picking().pick("w0"));
    robot.push(KeyCode.ALT, KeyCode.RIGHT);
    assertEquals(minute(30) + 1000, event("w0").at());
    oneStep("Move landed", before);
  }

  @Test
  void theInspectorKeepsTheFocusAfterAChange() {
    robot.interact(() -> bench.picking().pick("w0"));
    robot.push(KeyCode.ENTER);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("10:31:30").push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(minute(31.5), event("w0").at());
    assertTrue(node("event-time", TextField.class).isFocused(), "the next change is a Tab away");
    ComboBox<?> kinds = node("event-kind", ComboBox.class);
    robot.interact(kinds::requestFocus);
    choose("event-kind", EventKind.LOST);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(node("event-kind", ComboBox.class).isFocused());
  }

  @Test
  void afterDeletingByButtonTheFocusIsOnTheTimeline() {
    robot.interact(() -> bench.picking().pick("w0"));
    Node delete = named("Delete what is picked");
    robot.interact(delete::requestFocus);
    robot.push(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(session().events().stream().anyMatch(e -> e.id().equals("w0")));
    assertTrue(node("timeline", Region.class).isFocused());
  }

  @Test
  void theLastChangesAreTakenBackOneByOne() {
    Session before = session();
    robot.interact(() -> bench.picking().pick("w0"));
    for (int i = 0; i < 5; i++) {
      robot.push(KeyCode.ALT, KeyCode.RIGHT);
    }
    assertEquals(minute(30) + 5000, event("w0").at());
    for (int i = 4; i >= 0; i--) {
      robot.push(KeyCode.CONTROL, KeyCode.Z);
      assertEquals(minute(30) + 1000L * i, event("w0").at());
    }
    assertEquals(before, session());
  }
}
