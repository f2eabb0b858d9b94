package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.ScrollEvent;
import org.fadeline.demo.LargeSessions;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.model.EventKind;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Which part of the match is shown: zoom and pan by pointer and by key. */
@ExtendWith(ApplicationExtension.class)
class TimelineViewTest extends WindowHarness {
  @BeforeEach
  void openReplay() {
    open("Replay");
    robot.interact(() -> bench.hindsight(true));
  }

  private ReplayScreen replay() {
    return (ReplayScreen) screen("Replay");
  }

  private TimelineLayout layout() {
    WaitForAsyncUtils.waitForFxEvents();
    return requireNonNull(((TimelinePane) replay().timeline()).layoutProperty().get());
  }

  private Range shown() {
    WaitForAsyncUtils.waitForFxEvents();
    return replay().shown();
  }

  /** Turns the wheel over minute 90 of the whole; headless, the robot's wheel has its own sign. */
  private void wheel(double delta, boolean shift) {
    TimelineLayout now = layout();
    // An event without a source is told its place in the scene.
    Point2D in = replay().timeline().localToScene(now.xOf(minute(90)), now.plotArea().getCenterY());
    double x = in.getX();
    double y = in.getY();
    robot.interact(
        () ->
            replay()
                .timeline()
                .fireEvent(
                    new ScrollEvent(
                        ScrollEvent.SCROLL,
                        x,
                        y,
                        x,
                        y,
                        shift,
                        false,
                        false,
                        false,
                        false,
                        false,
                        0,
                        delta,
                        0,
                        delta,
                        ScrollEvent.HorizontalTextScrollUnits.NONE,
                        0,
                        ScrollEvent.VerticalTextScrollUnits.NONE,
                        0,
                        0,
                        null)));
  }

  /** The clock's figures stand on one line, and the playhead's cap lies below it. */
  @Test
  void theTimeUnderThePlayheadStaysReadable() {
    robot.interact(() -> bench.transport().toStart());
    TimelineLayout now = layout();
    javafx.scene.Node cap = replay().timeline().lookup(".playhead");
    assertTrue(cap.isVisible());
    assertTrue(cap.getBoundsInParent().getMinY() >= now.axisBaseline());
    assertTrue(cap.getBoundsInParent().getHeight() >= 8, "and is still seen");
  }

  @Test
  void theWheelZoomsAndTheTimeUnderThePointerStays() {
    double x = layout().xOf(minute(90));
    long millis = shown().millis();
    wheel(160, false);
    assertTrue(shown().millis() < millis, "closer");
    double pixel = shown().millis() / layout().plotArea().getWidth();
    assertEquals((double) minute(90), (double) layout().instantAt(x), 2 * pixel);
    wheel(-1600, false);
    assertEquals(replay().whole(), shown(), "farther ends at the whole match");
  }

  @Test
  void keysZoomAboutThePlayheadAndBackToAll() {
    robot.interact(() -> bench.transport().seek(minute(60)));
    double share = share(minute(60));
    robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
    assertEquals(replay().whole().millis() / 2.0, (double) shown().millis(), 1);
    assertEquals(share, share(minute(60)), 1e-6, "the playhead stays where it stood");
    robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
    robot.push(KeyCode.CONTROL, KeyCode.MINUS);
    assertEquals(replay().whole().millis() / 2.0, (double) shown().millis(), 2);
    robot.push(KeyCode.DIGIT0);
    assertEquals(replay().whole(), shown());
  }

  private double share(long instant) {
    return (instant - shown().from()) / (double) shown().millis();
  }

  @Test
  void zoomsOntoWhatIsPicked() {
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w5")));
    robot.push(KeyCode.Z);
    Range shown = shown();
    assertTrue(shown.holds(minute(30)) && shown.holds(minute(60)));
    assertTrue(shown.millis() <= 40 * 60_000, "and little else: " + shown.millis());
  }

  @Test
  void keysPanHalfAViewAndStopAtTheEnds() {
    robot.interact(() -> replay().show(new Range(minute(60), minute(100))));
    robot.push(KeyCode.PAGE_DOWN);
    assertEquals(new Range(minute(80), minute(120)), shown());
    robot.push(KeyCode.PAGE_UP);
    robot.push(KeyCode.PAGE_UP);
    assertEquals(new Range(minute(40), minute(80)), shown());
    for (int i = 0; i < 4; i++) {
      robot.push(KeyCode.PAGE_UP);
    }
    assertEquals(replay().whole().from(), shown().from());
    assertEquals(40 * 60_000, shown().millis());
  }

  @Test
  void aDragPansAndDoesNotMoveThePlayhead() {
    robot.interact(() -> replay().show(new Range(minute(120), minute(170))));
    long at = bench.state().playhead().at();
    TimelineLayout layout = layout();
    // In the short line's lane nothing lies between its fish at 15 and at 190 minutes.
    TimelineLayout.Lane lane = layout.lanes().get(1);
    Point2D from = replay().timeline().localToScreen(layout.xOf(minute(150)), lane.stringY());
    Point2D to = replay().timeline().localToScreen(layout.xOf(minute(140)), lane.stringY());
    robot.moveTo(from).press(MouseButton.PRIMARY);
    robot.moveTo(to).release(MouseButton.PRIMARY);
    double pixel = shown().millis() / layout.plotArea().getWidth();
    assertEquals((double) minute(130), (double) shown().from(), 2 * pixel);
    assertEquals(50 * 60_000, shown().millis());
    assertEquals(at, bench.state().playhead().at());
  }

  @Test
  void shiftAndTheWheelPan() {
    robot.interact(() -> replay().show(new Range(minute(60), minute(100))));
    wheel(-80, true);
    double pixel = 40 * 60_000 / layout().plotArea().getWidth();
    assertEquals(40 * 60_000, shown().millis());
    assertEquals(minute(60) + 80 * pixel, (double) shown().from(), 1, "later");
  }

  @Test
  void aRectangleWithShiftPicksWhatLiesInIt() {
    robot.interact(() -> replay().show(new Range(minute(20), minute(60))));
    TimelineLayout near = layout();
    TimelineLayout.Lane lane = near.lanes().get(0);
    double top = lane.plot().getMinY() + 2;
    double bottom = lane.plot().getMaxY() - 2;
    Point2D from = replay().timeline().localToScreen(near.xOf(minute(33)), top);
    Point2D to = replay().timeline().localToScreen(near.xOf(minute(45)), bottom);
    robot.press(KeyCode.SHIFT).moveTo(from).press(MouseButton.PRIMARY);
    robot.moveTo(to).release(MouseButton.PRIMARY).release(KeyCode.SHIFT);
    var picked = bench.state().selection().events();
    assertTrue(picked.contains("w1") && picked.contains("w2"), picked::toString);
    assertFalse(picked.contains("w0") || picked.contains("w3"), picked::toString);
  }

  @Test
  void anotherMatchIsShownWhole() {
    robot.interact(() -> replay().show(new Range(minute(60), minute(100))));
    desk.with(
        "next.session.json",
        HandMade.of(HandMade.session().events().stream().filter(e -> e.at() > minute(3)).toList()));
    robot.interact(() -> bench.open(Path.of("next.session.json")));
    assertEquals(replay().whole(), shown());
  }

  /** A match too large to be laid out within a frame is laid out all the same, edits included. */
  @Test
  void aLargeMatchIsLaidOutToo() {
    desk.with("large", LargeSessions.of(3000, 5));
    robot.interact(() -> bench.open(Path.of("large")));
    TimelineLayout before = layout();
    assertEquals(session().lines().size(), before.lanes().size());
    SessionEvent out =
        session().events().stream()
            .filter(e -> e.kind() == EventKind.FED)
            .findFirst()
            .orElseThrow();
    assertTrue(before.eventsIn(before.plotArea(), Knowledge.hindsight()).contains(out.id()));
    List<SessionEvent> rest = session().events().stream().filter(e -> !e.equals(out)).toList();
    robot.interact(() -> bench.editing().edit("Take one out", s -> s.withEvents(rest)));
    assertEquals(2999, session().events().size());
    TimelineLayout after = layout();
    assertFalse(after.eventsIn(after.plotArea(), Knowledge.hindsight()).contains(out.id()));
  }
}
