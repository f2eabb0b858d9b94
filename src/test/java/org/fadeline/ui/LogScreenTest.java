package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.event.EventType;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.fadeline.model.EventKind;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** The Log screen by keys and by pointer. */
@ExtendWith(ApplicationExtension.class)
class LogScreenTest extends WindowHarness {
  private int before;

  @BeforeEach
  void openLog() {
    open("Log");
    before = session().events().size();
  }

  private SessionEvent added() {
    assertEquals(before + 1, session().events().size());
    return session().events().stream()
        .filter(e -> HandMade.session().events().stream().noneMatch(o -> o.id().equals(e.id())))
        .findFirst()
        .orElseThrow();
  }

  private ToggleButton toggle(String words) {
    return robot
        .lookup(n -> n instanceof ToggleButton b && b.getText().equals(words))
        .queryAs(ToggleButton.class);
  }

  @Test
  void aKeyLogsAtTheClocksTimeAndUndoTakesItBack() {
    robot.push(KeyCode.RIGHT);
    robot.push(KeyCode.W);
    SessionEvent event = added();
    assertEquals(EventKind.CAST, event.kind());
    assertEquals(session().lines().get(1).id(), event.lineId());
    assertEquals(HandMade.ALL_IN + 10_000, event.at());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, session().events().size());
  }

  @Test
  void aPadLogsTheSameAndWordsSaidAfterwardsFillItIn() throws Exception {
    robot.clickOn(node("pad-1-landed", Button.class));
    assertEquals(EventKind.LANDED, added().kind());
    robot.push(KeyCode.ENTER);
    waitUntil(() -> node("log-detail", TextField.class).isFocused());
    robot.write("5lb 2oz");
    robot.push(KeyCode.ENTER);
    // 5 lb 2 oz at 0.45359237 kg a pound (Weights and Measures Act 1985, Schedule 1).
    assertEquals(
        5.125 * 453.59237, requireNonNull(requireNonNull(added().fishOrNull()).grams()), 1e-6);
    robot.push(KeyCode.Q);
    assertEquals(before + 2, session().events().size(), "the keys are the pads' again");
  }

  @Test
  void wordsThatAreNotUnderstoodAreToldAndCostNothing() {
    robot.push(KeyCode.DIGIT6);
    robot.push(KeyCode.ENTER);
    robot.write("8 44");
    robot.push(KeyCode.ENTER);
    Label error = node("log-detail-error", Label.class);
    assertTrue(error.isVisible() && error.getText().contains("The event itself is logged"));
    assertEquals("8 44", node("log-detail", TextField.class).getText());
    assertEquals(EventKind.LANDED, added().kind());
  }

  @Test
  void whateverWasPressedLastTheKeysAreThePads() throws Exception {
    robot.clickOn(toggle("As it happens")).clickOn(toggle("From a recording"));
    robot.push(KeyCode.SPACE);
    waitUntil(() -> node("log-play", Button.class).getText().equals("Pause"));
    robot.clickOn("#log-play");
    robot.push(KeyCode.DIGIT6);
    robot.push(KeyCode.ENTER);
    waitUntil(() -> node("log-detail", TextField.class).isFocused());
  }

  @Test
  void aKeyHeldDownIsOneEvent() {
    // What a held key sends: pressed again and again, let go once.
    robot.press(KeyCode.DIGIT1).press(KeyCode.DIGIT1).release(KeyCode.DIGIT1);
    robot.interact(
        () -> {
          for (int i = 0; i < 5; i++) {
            fire(KeyEvent.KEY_PRESSED);
          }
          fire(KeyEvent.KEY_RELEASED);
        });
    assertEquals(before + 2, session().events().size(), "two presses");
  }

  private void fire(EventType<KeyEvent> type) {
    var screen = screen("Log").view();
    screen.fireEvent(new KeyEvent(type, "", "", KeyCode.DIGIT2, false, false, false, false));
  }

  @Test
  void theEventInHandIsMovedPutOnAnotherLineAndTakenOut() {
    robot.push(KeyCode.DIGIT2);
    String first = added().lineId();
    robot.push(KeyCode.ALT, KeyCode.RIGHT);
    assertEquals(HandMade.ALL_IN + 10_000, added().at());
    robot.push(KeyCode.ALT, KeyCode.DOWN);
    assertFalse(requireNonNull(added().lineId()).equals(first));
    robot.push(KeyCode.DELETE);
    assertEquals(before, session().events().size());
  }

  @Test
  void whileTheMatchIsOnNothingIsJudged() throws Exception {
    robot.clickOn(toggle("As it happens"));
    waitUntil(() -> toggle("Review").isDisabled());
    assertTrue(toggle("Replay").isDisabled());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    assertTrue(toggle("Log").isSelected(), "no way round by the keyboard");
    robot.clickOn(toggle("From a recording"));
    waitUntil(() -> !toggle("Review").isDisabled());
  }

  @Test
  void rulesThatAllowFiguresLeaveThemInSight() throws Exception {
    robot.interact(
        () ->
            bench
                .editing()
                .edit(
                    "Allow figures",
                    s ->
                        s.withMatch(
                            s.match().withRules(s.match().rules().withLiveFiguresAllowed(true)))));
    robot.clickOn(toggle("As it happens"));
    waitUntil(() -> bench.state().choices().logging());
    assertFalse(toggle("Review").isDisabled());
  }

  @Test
  void aRecordingIsLaidAgainstTheMatchAtTheMomentSeen() throws Exception {
    robot.push(KeyCode.RIGHT);
    robot.clickOn(node("log-seen", TextField.class));
    robot.write("10:30:00");
    robot.push(KeyCode.ENTER);
    waitUntil(() -> node("log-clock", Label.class).getText().equals("10:30:00"));
  }

  @Test
  void twoMomentsOfTheRecordingTellItsDrift() throws Exception {
    seen("10:00:00");
    for (int i = 0; i < 60; i++) {
      robot.push(KeyCode.RIGHT);
    }
    // Ten minutes of the recording in 9 min 58 s of the match.
    seen("10:09:58");
    assertEquals("10:09:58", node("log-clock", Label.class).getText());
    assertTrue(shows("the camera gains 12.0 s an hour"));
    robot.push(KeyCode.LEFT);
    assertEquals("10:09:48", node("log-clock", Label.class).getText());
  }

  private void seen(String time) throws Exception {
    robot.clickOn(node("log-seen", TextField.class));
    robot.write(time);
    robot.push(KeyCode.ENTER);
    waitUntil(() -> node("log-clock", Label.class).getText().equals(time));
  }

  @Test
  void aRecordingPlaysPausesAndRunsAtItsSpeed() throws Exception {
    robot.push(KeyCode.SHIFT, KeyCode.RIGHT);
    robot.push(KeyCode.SHIFT, KeyCode.RIGHT);
    assertTrue(shows("4×"));
    String start = node("log-clock", Label.class).getText();
    robot.push(KeyCode.SPACE);
    assertTrue(shows("Pause"));
    waitUntil(() -> !node("log-clock", Label.class).getText().equals(start));
    robot.push(KeyCode.SPACE);
    assertTrue(shows("Play"));
    String stopped = node("log-clock", Label.class).getText();
    WaitForAsyncUtils.sleep(600, TimeUnit.MILLISECONDS);
    assertEquals(stopped, node("log-clock", Label.class).getText(), "it stands");
    robot.push(KeyCode.Q);
    assertEquals(stopped, session().clock(added().at()).format(CLOCK));
  }

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");

  @Test
  void loggingAsItHappensCautionsThatAidsMayBeRestricted() throws Exception {
    assertFalse(shows("Some matches restrict electronic aids"));
    robot.clickOn(toggle("As it happens"));
    waitUntil(() -> shows("Some matches restrict electronic aids"));
    assertTrue(shows("no rates or verdicts while the match is on"));
    assertTrue(shows("30 m from power lines"));
  }

  @Test
  void aMatchOfAnotherDayIsToldAndLoggingGoesOn() throws Exception {
    assertFalse(shows("will lie outside it"));
    robot.clickOn(toggle("As it happens"));
    waitUntil(() -> shows("will lie outside it"));
    robot.push(KeyCode.Q);
    assertEquals(before + 1, session().events().size());
    robot.clickOn(toggle("From a recording"));
    waitUntil(() -> !node("log-outside", Label.class).isVisible());
  }

  @Test
  void aPadsKeyIsChangedAndConflictsAreTold() throws Exception {
    Button sheet =
        robot
            .lookup(n -> n instanceof Button b && b.getText().equals("Keys of the pads…"))
            .queryButton();
    robot.clickOn(sheet);
    robot.clickOn(node("key-1-cast", Button.class));
    robot.push(KeyCode.B);
    waitUntil(() -> preferences.get().kept().containsValue("B"));
    Label conflicts = node("key-conflicts", Label.class);
    assertEquals("", conflicts.getText());
    robot.clickOn(node("key-2-lost", Button.class));
    robot.push(KeyCode.B);
    waitUntil(() -> !conflicts.getText().isEmpty());
    assertTrue(conflicts.isVisible() && conflicts.isManaged());
    String told = conflicts.getText();
    assertTrue(told.startsWith("B would do more than one thing: "), told);
    assertTrue(told.contains("lost, " + session().lines().get(1).name()), told);
    assertTrue(told.contains("cast, " + session().lines().get(0).name()), told);
    robot.clickOn(node("key-2-lost", Button.class));
    robot.push(KeyCode.SPACE);
    waitUntil(() -> conflicts.getText().contains("Play or pause the recording"));
    robot.clickOn(node("key-2-lost", Button.class));
    robot.push(KeyCode.BACK_SPACE);
    waitUntil(() -> conflicts.getText().isEmpty());
    assertEquals("none", node("key-2-lost", Button.class).getText());
    robot.push(KeyCode.ESCAPE);
    robot.push(KeyCode.B);
    assertEquals(EventKind.CAST, added().kind());
  }

  @Test
  void everyPadSaysWhatItLogsAndIsLargeEnoughForWetHands() {
    List<Button> pads =
        robot.lookup(".pad").queryAllAs(Button.class).stream().map(Button.class::cast).toList();
    assertEquals(10 * session().lines().size() + 10, pads.size());
    for (Button pad : pads) {
      assertTrue(pad.getHeight() >= 64, pad.getId() + " is " + pad.getHeight() + " high");
      assertFalse(pad.getAccessibleText().isBlank());
    }
    assertTrue(pads.stream().map(Labeled::getId).distinct().count() == pads.size());
  }
}
