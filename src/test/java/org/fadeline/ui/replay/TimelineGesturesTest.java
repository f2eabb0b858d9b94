package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The pointer on the timeline: hover, pick, drag in time, scrub. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class TimelineGesturesTest {
  private Workbench bench;
  private ReplayScreen screen;

  @Start
  void start(Stage stage) {
    Fonts.load();
    bench =
        new Workbench(
            new FakeDesk().with("a", HandMade.session()),
            Reviewer::review,
            new DirectTaskService(),
            () -> {});
    screen =
        new ReplayScreen(
            bench,
            new PreferenceStore(Preferences.DEFAULT, changed -> {}),
            new DialogPathChooser());
    screen
        .view()
        .setStyle(
            "-fl-hairline: gray; -fl-line-0: blue; -fl-line-1: blue; -fl-line-2: blue;"
                + " -fl-line-3: blue; -fl-line-4: blue;");
    stage.setScene(new Scene((Parent) screen.view(), 1200, 700));
    stage.show();
    bench.open(Path.of("a"));
    bench.hindsight(true);
    screen.shown(true);
    // Near enough that a fish and its hook-up are many pixels apart, whatever the stage's size.
    screen.show(new Playhead.Range(minute(25), minute(45)));
  }

  @AfterEach
  void closeWindows() throws Exception {
    FxToolkit.cleanupStages();
  }

  private TimelinePane pane() {
    WaitForAsyncUtils.waitForFxEvents();
    return (TimelinePane) screen.timeline();
  }

  private TimelineLayout layout() {
    return requireNonNull(pane().layoutProperty().get());
  }

  /** Returns where a fish of a line stands on the screen: a little right of its instant. */
  private Point2D fish(String lineId, double minute) {
    TimelineLayout layout = layout();
    TimelineLayout.Lane lane =
        layout.lanes().stream().filter(l -> l.lineId().equals(lineId)).findFirst().orElseThrow();
    return pane().localToScreen(layout.xOf(minute(minute)) + 3, lane.stringY());
  }

  private long eventAt(String id) {
    return requireNonNull(bench.state().open()).session().events().stream()
        .filter(e -> e.id().equals(id))
        .findFirst()
        .orElseThrow()
        .at();
  }

  @Test
  void hoverShowsTheExactValues(FxRobot robot) {
    robot.moveTo(fish("shallow", 30));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(
        robot
            .lookup(n -> n instanceof Label l && l.getText().startsWith("10:30:00"))
            .tryQuery()
            .isPresent(),
        "the time to the second");
  }

  /**
   * As known then, a pointer that rests tells nothing of what is ahead once the playhead left it.
   */
  @Test
  void whatIsSaidBesideThePointerGoesWithThePlayhead(FxRobot robot) {
    robot.interact(
        () -> {
          bench.hindsight(false);
          bench.transport().seek(minute(44));
        });
    robot.moveTo(fish("shallow", 36));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(said(robot, "10:36:00"));
    robot.interact(() -> bench.transport().seek(minute(33)));
    assertFalse(said(robot, "10:36:00"), "it was not known yet");
    robot.interact(() -> bench.transport().seek(minute(40)));
    robot.moveTo(fish("shallow", 30));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(said(robot, "10:30:00"));
  }

  private static boolean said(FxRobot robot, String words) {
    return robot
        .lookup(
            n -> n instanceof Label l && l.getText().startsWith(words) && l.getParent().isVisible())
        .tryQuery()
        .isPresent();
  }

  @Test
  void clickPicksAndShiftExtends(FxRobot robot) {
    robot.clickOn(fish("shallow", 30));
    assertEquals(Set.of("w0"), bench.state().selection().events());
    robot.press(KeyCode.SHIFT);
    robot.clickOn(fish("shallow", 42));
    robot.release(KeyCode.SHIFT);
    Set<String> picked = bench.state().selection().events();
    assertTrue(picked.containsAll(Set.of("w0", "w1", "w2")), picked::toString);
  }

  @Test
  void aShiftClickThatMissesKeepsWhatIsPicked(FxRobot robot) {
    robot.clickOn(fish("shallow", 30));
    TimelineLayout layout = layout();
    robot.press(KeyCode.SHIFT);
    robot.clickOn(pane().localToScreen(layout.xOf(minute(40)), layout.plotArea().getMaxY() - 30));
    robot.release(KeyCode.SHIFT);
    assertEquals(Set.of("w0"), bench.state().selection().events());
  }

  @Test
  void aDragMovesAnEventInTimeAndIsOneStepToUndo(FxRobot robot) {
    Point2D from = fish("shallow", 30);
    Point2D to = fish("shallow", 33);
    robot.moveTo(from).press(MouseButton.PRIMARY);
    robot.moveTo(to).release(MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    // A pointer is no finer than a pixel.
    double pixel = 60_000 / (layout().xOf(minute(1)) - layout().xOf(minute(0)));
    assertEquals((double) minute(33), (double) eventAt("w0"), 2 * pixel);
    robot.interact(() -> bench.editing().undo());
    assertEquals(minute(30), eventAt("w0"));
  }

  @Test
  void aDragTellsTheTimeItWouldBeAndEscapeLeavesItWhereItWas(FxRobot robot) {
    robot.moveTo(fish("shallow", 30)).press(MouseButton.PRIMARY);
    robot.moveTo(fish("shallow", 33));
    WaitForAsyncUtils.waitForFxEvents();
    // A pointer is no finer than a pixel.
    assertTrue(said(robot, "10:33:0") || said(robot, "10:32:5"), "the time it would be");
    robot.push(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(said(robot, "10:33:0") || said(robot, "10:32:5"));
    robot.release(MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(minute(30), eventAt("w0"));
    assertEquals(Set.of("w0"), bench.state().selection().events(), "it stays picked");
  }

  @Test
  void aColumnIsPickedWholeAndADragThatBeginsOnItPans(FxRobot robot) {
    robot.interact(
        () ->
            bench
                .editing()
                .edit(
                    "Crowd",
                    s -> {
                      List<SessionEvent> all = new ArrayList<>(s.events());
                      for (int i = 0; i < 5; i++) {
                        Stamp stamp = new Stamp("x" + i, minute(40) + 2000L * i, "shallow", null);
                        all.add(new SessionEvent.Landed(stamp, new Fish(1, "carp", 900.0, false)));
                      }
                      all.sort(Comparator.comparingLong(SessionEvent::at));
                      return s.withEvents(all);
                    }));
    // A step of 15 s is the shortest that is 6 pixels wide here; its column stands at its end.
    Point2D column = fish("shallow", 40.25).subtract(1, 0);
    Playhead.Range shown = screen.shown();
    robot.moveTo(column).press(MouseButton.PRIMARY);
    robot.moveBy(-60, 0).release(MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(screen.shown().from() > shown.from(), "moved along");
    assertEquals(Set.of(), bench.state().selection().events());
    assertEquals(minute(40), eventAt("x0"));
    robot.interact(() -> screen.show(shown));
    robot.clickOn(column);
    assertEquals(Set.of("x0", "x1", "x2", "x3", "x4"), bench.state().selection().events());
    assertEquals(List.of("Crowd"), List.of(requireNonNull(bench.state().open()).history().undo()));
  }

  /** The headless platform never asks for a menu: the press alone has to pick. */
  @Test
  void aRightPressPicksTheMarkUnderItAndKeepsSeveralPicked(FxRobot robot) {
    robot.rightClickOn(fish("shallow", 30));
    assertEquals(Set.of("w0"), bench.state().selection().events());
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1")));
    robot.rightClickOn(fish("shallow", 30));
    assertEquals(Set.of("w0", "w1"), bench.state().selection().events());
    robot.rightClickOn(fish("shallow", 42));
    assertEquals(Set.of("w2"), bench.state().selection().events());
  }

  @Test
  void aRightPressOnNoMarkChangesNothing(FxRobot robot) {
    robot.interact(() -> bench.picking().pick("w1"));
    long at = bench.state().playhead().at();
    TimelineLayout layout = layout();
    robot.rightClickOn(
        pane().localToScreen(layout.xOf(minute(40)), layout.plotArea().getMaxY() - 30));
    assertEquals(Set.of("w1"), bench.state().selection().events());
    assertEquals(at, bench.state().playhead().at());
  }

  @Test
  void theClockScrubs(FxRobot robot) {
    TimelineLayout layout = layout();
    robot.clickOn(pane().localToScreen(layout.xOf(minute(40)), layout.plotArea().getMinY() - 8));
    assertEquals((double) minute(40), (double) bench.state().playhead().at(), 10_000);
  }

  private Point2D clock(double minute) {
    TimelineLayout layout = layout();
    return pane().localToScreen(layout.xOf(minute(minute)), layout.plotArea().getMinY() - 8);
  }

  private Playhead.@Nullable Range loop() {
    return bench.state().playhead().motion().loop();
  }

  @Test
  void shiftAndADragAlongTheClockLoopTheRangeDraggedOver(FxRobot robot) {
    robot.interact(() -> bench.transport().seek(minute(44)));
    robot.press(KeyCode.SHIFT);
    // From right to left: the ends are told and taken in order.
    robot.moveTo(clock(40)).press(MouseButton.PRIMARY).moveTo(clock(30));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(said(robot, "10:30:0") || said(robot, "10:29:5"), "the range is told meanwhile");
    assertNull(loop(), "not before it is let go");
    robot.release(MouseButton.PRIMARY).release(KeyCode.SHIFT);
    WaitForAsyncUtils.waitForFxEvents();
    double pixel = 60_000 / (layout().xOf(minute(1)) - layout().xOf(minute(0)));
    Playhead.Range loop = requireNonNull(loop());
    assertEquals((double) minute(30), (double) loop.from(), 2 * pixel);
    assertEquals((double) minute(40), (double) loop.to(), 2 * pixel);
    assertEquals(minute(44), bench.state().playhead().at(), "nothing else moved");
    assertFalse(said(robot, "10:30:0") || said(robot, "10:29:5"));
  }

  @Test
  void escapeLeavesALoopBeingDraggedUndone(FxRobot robot) {
    robot.press(KeyCode.SHIFT);
    robot.moveTo(clock(30)).press(MouseButton.PRIMARY).moveTo(clock(40));
    WaitForAsyncUtils.waitForFxEvents();
    robot.release(KeyCode.SHIFT).push(KeyCode.ESCAPE).release(MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    assertNull(loop());
  }
}
