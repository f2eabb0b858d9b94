package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.fadeline.model.EventEdits;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Preferences;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** The window from outside: keys, pointer and what is seen. */
@ExtendWith(ApplicationExtension.class)
class WindowTest extends WindowHarness {
  private void open() {
    robot.interact(() -> bench.open(FILE));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private long at() {
    return bench.state().playhead().at();
  }

  private static ToggleButton tab(FxRobot robot, String title) {
    return robot
        .lookup(n -> n instanceof ToggleButton tab && tab.getText().equals(title))
        .queryAs(ToggleButton.class);
  }

  @Test
  void startsWithTheStartScreenAndReturnsToIt() throws Exception {
    assertTrue(shows("Replay a match"));
    open();
    assertFalse(shows("Replay a match"));
    assertTrue(shows("Invented Pool, peg 14"));
    robot.push(KeyCode.CONTROL, KeyCode.W);
    waitUntil(() -> shows("Replay a match"));
    assertNull(bench.state().open());
  }

  @Test
  void theFirstScreenIsOneKeyAwayAndLeavesTheMatchOpen() throws Exception {
    ToggleButton replay = tab(robot, "Replay");
    assertTrue(replay.isDisabled(), "nothing to replay yet");
    open();
    assertFalse(replay.isDisabled());
    robot.push(KeyCode.CONTROL, KeyCode.M);
    waitUntil(() -> shows("Replay a match"));
    assertTrue(tab(robot, "Matches").isSelected());
    assertEquals(HandMade.session(), session());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
    waitUntil(() -> replay.isSelected());
    robot.push(KeyCode.CONTROL, KeyCode.M);
    open();
    assertTrue(replay.isSelected(), "opening another match leads to it");
  }

  @Test
  void helpOpensAtTheScreenAndEscapePutsItAway() throws Exception {
    open();
    robot.push(KeyCode.F1);
    ListView<?> pages =
        robot.lookup(n -> "Pages of the manual".equals(n.getAccessibleText())).query();
    assertTrue(pages.getSelectionModel().getSelectedItem().toString().contains("file=replay.md"));
    robot.push(KeyCode.SPACE);
    assertFalse(bench.state().playhead().motion().playing(), "keys belong to the help");
    robot.push(KeyCode.ESCAPE);
    waitUntil(() -> robot.lookup(n -> n == pages).queryAll().isEmpty());
    robot.push(KeyCode.SPACE);
    assertTrue(bench.state().playhead().motion().playing(), "and are the screen's again");
  }

  @Test
  void keysMoveThePlayhead() throws Exception {
    open();
    robot.push(KeyCode.RIGHT);
    assertEquals(minute(1), at());
    robot.push(KeyCode.SHIFT, KeyCode.RIGHT);
    assertEquals(minute(2), at());
    robot.push(KeyCode.LEFT);
    assertEquals(minute(1), at());
    robot.push(KeyCode.END);
    assertEquals(HandMade.ALL_OUT, at());
    robot.push(KeyCode.HOME);
    assertEquals(HandMade.ALL_IN, at());
    robot.push(KeyCode.SPACE);
    assertTrue(bench.state().playhead().motion().playing());
    waitUntil(() -> at() > HandMade.ALL_IN + 30_000);
    robot.push(KeyCode.SPACE);
    assertFalse(bench.state().playhead().motion().playing());
    robot.push(KeyCode.R);
    assertTrue(bench.state().playhead().motion().reverse());
    robot.push(KeyCode.H);
    assertTrue(bench.state().choices().hindsight());
  }

  @Test
  void theClockAndWeightFollowThePlayhead() {
    open();
    robot.interact(() -> bench.transport().seek(minute(15)));
    assertTrue(shows("10:15:00"));
    assertTrue(shows("4 lb 7 oz"), "1100 g and 900 g make 4 lb 7 oz (2000 / 453.59237)");
    assertTrue(shows("2 fish"));
    assertTrue(shows("4 h 45 min to go"));
  }

  @Test
  void whatIsNotSavedIsSaidInFullInANarrowWindow() {
    open();
    assertEquals("", node("kept", Label.class).getText());
    robot.interact(
        () -> {
          window.scene().getWindow().setWidth(960);
          bench.editing().edit("Note", EventEdits.note("c1", "a note"));
        });
    WaitForAsyncUtils.waitForFxEvents();
    Label kept = node("kept", Label.class);
    assertEquals("not saved", kept.getText());
    assertTrue(kept.getWidth() >= Math.floor(kept.prefWidth(-1)), () -> "cut: " + kept.getWidth());
  }

  @Test
  void asKnownThenNothingLaterIsListedAndHindsightBringsIt() throws Exception {
    open();
    robot.interact(() -> bench.transport().seek(minute(30)));
    ListView<?> list = robot.lookup("#turning-points").query();
    waitUntil(() -> list.getItems().equals(bench.state().turningPoints()));
    int then = list.getItems().size();
    assertTrue(then > 0);
    robot.interact(() -> bench.hindsight(true));
    assertTrue(list.getItems().size() > then);
    robot.interact(() -> bench.hindsight(false));
    assertEquals(then, list.getItems().size());
  }

  @Test
  void aTurningPointChosenSeeks() throws Exception {
    open();
    robot.interact(() -> bench.transport().toEnd());
    ListView<?> list = robot.lookup("#turning-points").query();
    waitUntil(() -> list.getItems().equals(bench.state().turningPoints()));
    robot.interact(
        () -> {
          list.requestFocus();
          list.getFocusModel().focus(0);
        });
    robot.push(KeyCode.ENTER);
    assertEquals(
        requireNonNull(bench.state().review().latest()).course().turningPoints().get(0).at(), at());
  }

  @Test
  void textFieldsKeepTheirKeys() {
    open();
    robot.push(KeyCode.G);
    TextField field = robot.lookup("#typed-time").query();
    assertTrue(field.isFocused());
    robot.write("12:3");
    robot.push(KeyCode.SPACE);
    assertFalse(bench.state().playhead().motion().playing(), "Space belongs to the text");
    robot.push(KeyCode.HOME);
    assertEquals(HandMade.ALL_IN, at());
    assertEquals(0, field.getCaretPosition());
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("1230");
    robot.push(KeyCode.ENTER);
    assertEquals(minute(150), at());
    assertFalse(field.isFocused(), "once gone to, the keys are the screen's again");
    robot.push(KeyCode.G).push(KeyCode.ESCAPE);
    assertFalse(field.isFocused());
  }

  @Test
  void aTimeThatIsNoneIsSaid() {
    open();
    robot.push(KeyCode.G);
    robot.write("noon");
    robot.push(KeyCode.ENTER);
    assertEquals(HandMade.ALL_IN, at());
    assertNotNull(bench.state().activity().message());
  }

  @Test
  void theListOfKeysOpensAndCloses() {
    open();
    robot.push(KeyCode.SHIFT, KeyCode.SLASH);
    assertTrue(shows("Play or pause"));
    robot.push(KeyCode.ESCAPE);
    assertFalse(shows("Play or pause"));
  }

  @Test
  void everyCommandHasAKeyOfItsOwn() {
    open();
    List<String> keys =
        window.commands().stream().flatMap(c -> c.keys().stream()).map(k -> k.getName()).toList();
    assertEquals(keys.size(), keys.stream().distinct().count(), () -> "twice in " + keys);
  }

  @Test
  void troubleIsShownWithItsPlaceAndTheSessionStays() {
    open();
    robot.interact(() -> bench.open(Path.of("gone.csv")));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("No such file"));
    assertNotNull(bench.state().open());
    robot.push(KeyCode.ESCAPE);
    assertFalse(shows("No such file"));
    assertNull(bench.state().activity().trouble());
  }

  @Test
  void opensThroughTheStateOnlyOnItsThread() {
    assertFalse(Platform.isFxApplicationThread());
    Assertions.assertThrows(IllegalStateException.class, () -> bench.tell("hello"));
    assertEquals(Activity.QUIET, bench.state().activity());
  }

  @Test
  void otherUnitsAndThemesShowAtOnce() {
    open();
    robot.interact(
        () -> {
          bench.transport().seek(minute(15));
          preferences.change(p -> p.withUnits(Units.KG_AND_METRES));
        });
    assertTrue(shows("2.00 kg") || shows("2 kg"));
    for (Preferences.Look look : Preferences.Look.values()) {
      robot.interact(() -> preferences.change(p -> p.withLook(look)));
      assertTrue(shows("Invented Pool, peg 14"));
    }
  }

  @Test
  void whatIsPickedCanBeRetimedAndUndone() {
    open();
    robot.interact(() -> bench.picking().pick("w0"));
    robot.push(KeyCode.ENTER);
    TextField time = robot.lookup("#event-time").query();
    assertTrue(time.isFocused());
    assertEquals("10:30:00", time.getText());
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("10:31:30");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(
        HandMade.session().events(), session().events(), "Ctrl+Z inside a field is the field's");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("10:31:30");
    robot.push(KeyCode.ENTER);
    assertEquals(minute(31.5), eventAt("w0"));
    robot.push(KeyCode.ESCAPE);
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(minute(30), eventAt("w0"));
    robot.push(KeyCode.CONTROL, KeyCode.Y);
    assertEquals(minute(31.5), eventAt("w0"));
  }

  @Test
  void aClockThatWasWrongIsPutRightForEveryEventAtOnce() {
    open();
    robot.interact(() -> bench.hindsight(true));
    List<SessionEvent> before = session().events();
    robot.push(KeyCode.CONTROL, KeyCode.A);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(before.size(), bench.state().selection().events().size());
    type("bulk-shift", "10:30 was 10:31:30");
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(
        before.stream().map(e -> e.at() + 90_000).toList(),
        session().events().stream().map(SessionEvent::at).toList());
    robot.interact(() -> bench.editing().undo());
    assertEquals(before, session().events());
  }

  @Test
  void fromHereOnAClockIsPutRightAndWhatPassesIsSaidBefore() {
    open();
    robot.interact(() -> bench.hindsight(true));
    List<SessionEvent> before = session().events();
    long here = before.get(before.size() / 2).at();
    robot.interact(() -> bench.transport().seek(here));
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.A);
    WaitForAsyncUtils.waitForFxEvents();
    long later = before.stream().filter(e -> e.at() >= here).count();
    assertEquals(later, bench.state().selection().events().size());
    robot.interact(() -> node("bulk-shift", TextField.class).setText("-2:00:00"));
    assertTrue(
        node("bulk-preview", Label.class).getText().contains("would pass events that stay"),
        node("bulk-preview", Label.class).getText());
    assertEquals(before, session().events(), "said before it is done");
    type("bulk-shift", "0:30");
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(
        before.stream().map(e -> e.at() + (e.at() >= here ? 30_000 : 0)).sorted().toList(),
        session().events().stream().map(SessionEvent::at).toList());
  }

  @Test
  void asKnownThenOnlyWhatIsKnownIsPicked() {
    open();
    robot.interact(
        () -> {
          bench.hindsight(false);
          bench.transport().seek(HandMade.minute(30));
        });
    robot.push(KeyCode.CONTROL, KeyCode.A);
    WaitForAsyncUtils.waitForFxEvents();
    long known = session().events().stream().filter(e -> e.at() <= HandMade.minute(30)).count();
    assertEquals(known, bench.state().selection().events().size());
  }

  @Test
  void deletesWhatIsPicked() {
    open();
    int before = session().events().size();
    robot.interact(() -> bench.picking().pick("w0"));
    robot.push(KeyCode.DELETE);
    assertEquals(before - 1, session().events().size());
    assertTrue(bench.state().selection().events().isEmpty());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, session().events().size());
  }

  private long eventAt(String id) {
    return session().events().stream()
        .filter(e -> e.id().equals(id))
        .findFirst()
        .orElseThrow()
        .at();
  }

  @Test
  void theCardsAtTheLanesFollowEveryMove() {
    open();
    robot.interact(() -> bench.transport().seek(minute(2)));
    robot.interact(() -> bench.transport().seek(minute(60)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("left 10:25, rested 35 min"));
    assertTrue(shows("gave 11 lb an hour"), "a row that was empty before");
  }

  @Test
  void lanesCanBeHiddenAndRenamed() {
    open();
    MenuButton menu = robot.lookup("#lines-menu").query();
    Menu first = (Menu) menu.getItems().get(0);
    assertEquals("Shallow", first.getText());
    CheckMenuItem shown = (CheckMenuItem) first.getItems().get(0);
    robot.interact(
        () -> {
          shown.setSelected(false);
          shown.fire();
        });
    assertEquals(Set.of("shallow"), bench.state().choices().hiddenLines());
    assertEquals("Lines, 1 hidden", menu.getText());
    Menu again = (Menu) menu.getItems().get(0);
    robot.interact(() -> again.getItems().get(2).fire());
    assertEquals("short", session().lines().get(0).id());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals("shallow", session().lines().get(0).id());
  }
}
