package org.fadeline.ui.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** Keys pressed in a field belong to the field: none plays, steps, deletes or undoes. */
@ExtendWith(ApplicationExtension.class)
class FieldKeysTest extends WindowHarness {
  private static final KeyCode[] PLAIN = {
    KeyCode.SPACE,
    KeyCode.R,
    KeyCode.H,
    KeyCode.N,
    KeyCode.P,
    KeyCode.M,
    KeyCode.L,
    KeyCode.Z,
    KeyCode.G,
    KeyCode.DIGIT0,
    KeyCode.EQUALS,
    KeyCode.MINUS,
    KeyCode.PERIOD,
    KeyCode.COMMA,
    KeyCode.LEFT,
    KeyCode.RIGHT,
    KeyCode.HOME,
    KeyCode.END,
    KeyCode.BACK_SPACE,
    KeyCode.DELETE
  };

  @BeforeEach
  void openReplay() {
    open("Replay");
    robot.interact(
        () -> {
          bench.hindsight(true);
          bench.transport().seek(HandMade.minute(60));
        });
  }

  private void typeEverything() {
    Playhead before = bench.state().playhead();
    Session session = session();
    var selection = bench.state().selection();
    for (KeyCode key : PLAIN) {
      robot.push(key);
      assertEquals(before, bench.state().playhead(), key.getName());
      assertEquals(session, session(), key.getName());
      assertEquals(selection, bench.state().selection(), key.getName());
      assertTrue(bench.state().choices().hindsight(), key.getName());
    }
  }

  @Test
  void inTheNote() {
    robot.interact(() -> bench.picking().pick("m1"));
    TextField note =
        robot.lookup((Node n) -> "Words on the event".equals(n.getAccessibleText())).query();
    robot.interact(note::requestFocus);
    typeEverything();
    assertTrue(note.isFocused());
  }

  @Test
  void inTheReasonWhichIsChosenOrTyped() {
    robot.interact(() -> bench.picking().pick("m1"));
    ComboBox<?> reason = node("event-reason", ComboBox.class);
    robot.interact(reason::requestFocus);
    typeEverything();
    robot.push(KeyCode.CONTROL, KeyCode.A);
    assertEquals(1, bench.state().selection().events().size(), "Ctrl+A is the text's");
    robot.write("no bites");
    robot.push(KeyCode.ENTER);
    SessionEvent.Move move =
        (SessionEvent.Move)
            session().events().stream().filter(e -> e.id().equals("m1")).findFirst().orElseThrow();
    assertEquals("no bites", move.reason());
  }

  @Test
  void inTheTypedTime() {
    robot.push(KeyCode.G);
    typeEverything();
  }

  /** A key held a little long repeats itself; the field it led into is still empty. */
  @Test
  void theKeyThatLeadsIntoAFieldIsNotTypedThere() {
    TextField time = node("typed-time", TextField.class);
    Node timeline = node("timeline", Node.class);
    robot.interact(timeline::requestFocus);
    for (int i = 0; i < 3; i++) {
      robot.interact(
          () -> {
            Node focus = timeline.getScene().getFocusOwner();
            Event.fireEvent(
                focus,
                new KeyEvent(
                    KeyEvent.KEY_PRESSED, "g", "g", KeyCode.G, false, false, false, false));
            Node then = timeline.getScene().getFocusOwner();
            Event.fireEvent(
                then,
                new KeyEvent(
                    KeyEvent.KEY_TYPED, "g", "", KeyCode.UNDEFINED, false, false, false, false));
          });
    }
    assertTrue(time.isFocused());
    assertEquals("", time.getText());
    robot.push(KeyCode.DIGIT1);
    robot.write("1:00");
    assertTrue(time.getText().endsWith("1:00"), "typing goes on after the key was let go");
  }

  @Test
  void inTheFilterOfATable() {
    open("Review");
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    TextField filter =
        robot
            .lookup((Node n) -> "Show only rows that hold this text".equals(n.getAccessibleText()))
            .query();
    robot.interact(filter::requestFocus);
    typeEverything();
    assertNull(bench.state().activity().trouble());
  }
}
