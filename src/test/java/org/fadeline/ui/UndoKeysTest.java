package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Ctrl+Z takes back the last step of the match on every screen that changes or judges it. */
@ExtendWith(ApplicationExtension.class)
class UndoKeysTest extends WindowHarness {
  @ParameterizedTest
  @ValueSource(strings = {"Replay", "Review", "Log", "Set up", "Import", "Weigh-in"})
  void theLastStepIsTakenBackAndMadeAgain(String screen) throws Exception {
    open(screen);
    var before = session();
    robot.interact(
        () ->
            bench
                .editing()
                .edit("Name it", s -> s.withOccasion(s.occasion().withTitle("Another name"))));
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    waitUntil(() -> session().equals(before));
    robot.push(KeyCode.CONTROL, KeyCode.Y);
    waitUntil(() -> "Another name".equals(session().occasion().title()));
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    waitUntil(() -> session().equals(before));
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    waitUntil(() -> "Another name".equals(session().occasion().title()));
  }

  @Test
  void inTheFieldWhereAStepWasTypedItIsTheStepThatIsTakenBack() throws Exception {
    open("Weigh-in");
    node("net-1-weight", TextField.class);
    robot.clickOn("#net-1-weight").write("8 4").push(KeyCode.ENTER);
    assertEquals(1, session().outcome().weighIn().size());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    waitUntil(() -> session().outcome().weighIn().isEmpty());
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    waitUntil(() -> session().outcome().weighIn().size() == 1);
  }

  @Test
  void wordsStillBeingTypedAreTakenBackFirst() {
    open("Weigh-in");
    type("net-1-weight", "8 4");
    robot.clickOn("#net-1-weight").push(KeyCode.END).write("x");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(1, session().outcome().weighIn().size());
  }

  @Test
  void onTheLogTooWordsStillBeingTypedAreTakenBackBeforeTheEventTheyAreOf() {
    open("Log");
    press("pad-1-landed");
    int logged = session().events().size();
    robot.clickOn("#log-detail").write("dead");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(logged, session().events().size());
  }

  @Test
  void aLinePutOnTheWaterWhileItsNameHasTheKeysIsTakenBack() throws Exception {
    open("Set up");
    press("line-row-short");
    var before = session();
    robot.clickOn("#line-name");
    Pane swim = node("swim", Pane.class);
    robot.interact(() -> press("add-line"));
    robot.clickOn(swim);
    assertTrue(session().lines().stream().anyMatch(l -> l.name().equals("New line")));
    robot.push(KeyCode.CONTROL, KeyCode.Z).push(KeyCode.CONTROL, KeyCode.Z);
    waitUntil(() -> session().equals(before));
  }
}
