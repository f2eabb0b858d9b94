package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead.Motion;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.WindowHarness;
import org.fadeline.ui.state.Transport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Playing, stepping, looping and the speeds, by key and by button. */
@ExtendWith(ApplicationExtension.class)
class TransportTest extends WindowHarness {
  @BeforeEach
  void openReplay() {
    open("Replay");
    robot.interact(() -> bench.hindsight(true));
  }

  private long at() {
    return bench.state().playhead().at();
  }

  private Motion motion() {
    return bench.state().playhead().motion();
  }

  private ToggleButton toggle(String words) {
    return robot
        .lookup((Node n) -> n instanceof ToggleButton b && words.equals(b.getAccessibleText()))
        .query();
  }

  private void seek(double minute) {
    robot.interact(() -> bench.transport().seek(minute(minute)));
  }

  @Test
  void aQuietLineCautionsOfPowerLines() {
    String caution = "Keep 30 m from power lines";
    assertTrue(
        robot
            .lookup((Node n) -> n instanceof Label l && l.getText().startsWith(caution))
            .tryQuery()
            .filter(n -> n.isVisible() && n.getScene() != null)
            .isPresent());
  }

  @Test
  void stepsVisitEveryInstantWithAnEventBothWays() {
    List<Long> instants =
        session().events().stream().map(SessionEvent::at).distinct().sorted().toList();
    robot.push(KeyCode.HOME);
    for (Long instant : instants.subList(1, 8)) {
      robot.push(KeyCode.RIGHT);
      assertEquals(instant, at());
    }
    for (int i = 6; i >= 0; i--) {
      robot.push(KeyCode.LEFT);
      assertEquals(instants.get(i), at());
    }
  }

  @Test
  void turningPointsAreVisitedInOrderBothWays() {
    List<Long> points =
        requireNonNull(bench.state().review().latest()).course().turningPoints().stream()
            .map(TurningPoint::at)
            .filter(t -> t > HandMade.ALL_IN)
            .distinct()
            .sorted()
            .toList();
    assertTrue(points.size() > 3);
    robot.push(KeyCode.HOME);
    for (Long point : points) {
      robot.push(KeyCode.N);
      assertEquals(point, at());
    }
    robot.push(KeyCode.N);
    assertEquals(points.get(points.size() - 1), at(), "after the last it stays");
    for (int i = points.size() - 2; i >= 0; i--) {
      robot.push(KeyCode.CONTROL, KeyCode.LEFT);
      assertEquals(points.get(i), at());
    }
  }

  @Test
  void asKnownThenTheNextTurningPointIsNotGivenAway() {
    seek(30);
    robot.interact(() -> bench.hindsight(false));
    robot.push(KeyCode.N);
    assertEquals(minute(30), at());
    assertTrue(
        String.valueOf(bench.state().activity().message()).contains("still to come"),
        "and that is said");
  }

  @Test
  void aLoopRunsToItsEndAndComesBack() throws Exception {
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w2")));
    robot.push(KeyCode.L);
    assertEquals(new Range(minute(30), minute(42)), motion().loop());
    assertTrue(toggle("Loop what is picked, or between the two cursors").isSelected());
    seek(41);
    robot.interact(() -> bench.transport().speed(600));
    robot.push(KeyCode.SPACE);
    waitUntil(() -> at() < minute(36));
    assertTrue(at() >= minute(30), "it starts again at the start of the stretch");
    assertTrue(motion().playing(), "and goes on");
    robot.push(KeyCode.SPACE);
    robot.push(KeyCode.L);
    assertNull(motion().loop());
  }

  @Test
  void twoCursorsMakeALoopToo() {
    seek(50);
    robot.push(KeyCode.M);
    seek(40);
    robot.push(KeyCode.L);
    assertEquals(new Range(minute(40), minute(50)), motion().loop());
  }

  @Test
  void withNothingToLoopTheButtonStaysUpAndSaysWhy() {
    ToggleButton loop = toggle("Loop what is picked, or between the two cursors");
    robot.interact(loop::fire);
    assertNull(motion().loop());
    assertNotNull(bench.state().activity().message());
    assertFalse(loop.isSelected(), "nothing is looped");
  }

  @Test
  void playsBackwardsToTheStartAndStops() throws Exception {
    seek(2);
    robot.push(KeyCode.R);
    assertTrue(toggle("Play backwards").isSelected());
    robot.interact(() -> bench.transport().speed(600));
    robot.push(KeyCode.SPACE);
    waitUntil(() -> !motion().playing());
    assertEquals(HandMade.ALL_IN, at());
  }

  /** Clicked, a button keeps no keys: Space plays and does not press it again. */
  @Test
  void afterAClickOnAButtonSpacePlays() {
    seek(100);
    robot.clickOn(toggle("Play backwards"));
    assertTrue(motion().reverse());
    robot.push(KeyCode.SPACE);
    assertTrue(motion().playing() && motion().reverse());
    robot.push(KeyCode.SPACE);
    robot.clickOn(toggle("Speed: 10×"));
    robot.push(KeyCode.SPACE);
    assertTrue(motion().playing());
    robot.push(KeyCode.SPACE);
    robot.clickOn("with hindsight");
    robot.clickOn("as known then");
    robot.push(KeyCode.SPACE);
    assertTrue(motion().playing() && !bench.state().choices().hindsight());
    robot.push(KeyCode.SPACE);
    assertFalse(motion().playing());
  }

  @Test
  void reachedByTabAButtonIsPressedBySpace() {
    seek(100);
    ToggleButton reverse = toggle("Play backwards");
    robot.interact(reverse::requestFocus);
    robot.push(KeyCode.SPACE);
    assertTrue(motion().reverse());
    assertFalse(motion().playing());
  }

  @Test
  void playsToTheEndAndStops() throws Exception {
    seek(298);
    robot.interact(() -> bench.transport().speed(600));
    robot.push(KeyCode.SPACE);
    waitUntil(() -> !motion().playing());
    assertEquals(HandMade.ALL_OUT, at());
    robot.push(KeyCode.SPACE);
    assertTrue(at() < HandMade.ALL_OUT && motion().playing(), "again from the start");
  }

  @Test
  void keysGoThroughEverySpeedAndTheBarShowsIt() {
    robot.interact(() -> bench.transport().speed(1));
    for (int speed : Transport.SPEEDS) {
      assertEquals(speed, motion().speed());
      assertEquals(List.of(speed + "×"), speedsShown());
      robot.push(KeyCode.EQUALS);
    }
    assertEquals(600, motion().speed(), "the fastest stays");
    robot.push(KeyCode.MINUS);
    assertEquals(300, motion().speed());
    ToggleButton ten = toggle("Speed: 10×");
    robot.interact(ten::fire);
    assertEquals(10, motion().speed());
  }

  private List<String> speedsShown() {
    return robot
        .lookup(
            (Node n) -> n instanceof ToggleButton b && b.isSelected() && b.getText().endsWith("×"))
        .queryAllAs(ToggleButton.class)
        .stream()
        .map(ToggleButton::getText)
        .collect(Collectors.toList());
  }

  @Test
  void aTimeIsTypedInSeveralWays() {
    for (String typed : new String[] {"12:48", "12.48", "1248", "12:48:00"}) {
      seek(0);
      type("typed-time", typed);
      assertEquals(minute(168), at(), typed);
    }
    type("typed-time", "23:00");
    assertEquals(HandMade.ALL_OUT, at(), "beyond the end the end is nearest");
  }

  @Test
  void theSliderScrubsAndItsArrowsAreItsOwn() {
    Slider scrub = node("scrub", Slider.class);
    robot.interact(
        () -> {
          scrub.requestFocus();
          scrub.setValue(3600);
        });
    assertEquals(minute(60), at());
    robot.push(KeyCode.RIGHT);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(minute(61), at(), "a minute, not the next event");
  }
}
