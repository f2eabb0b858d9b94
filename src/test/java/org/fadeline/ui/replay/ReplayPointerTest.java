package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Point2D;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Window;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The right button on timeline and peg with a real pointer: the headless platform never asks for a
 * menu.
 */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class ReplayPointerTest extends WindowHarness {
  @BeforeEach
  void openReplay() {
    open("Replay");
    robot.interact(() -> bench.transport().seek(minute(60)));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private TimelinePane pane() {
    return node("timeline", TimelinePane.class);
  }

  private TimelineLayout layout() {
    return requireNonNull(pane().layoutProperty().get());
  }

  private Point2D fish(String lineId, double minute) {
    TimelineLayout layout = layout();
    TimelineLayout.Lane lane =
        layout.lanes().stream().filter(l -> l.lineId().equals(lineId)).findFirst().orElseThrow();
    return pane().localToScreen(layout.xOf(minute(minute)) + 3, lane.stringY());
  }

  private static List<String> entries() {
    return Window.getWindows().stream()
        .filter(w -> w instanceof ContextMenu && w.isShowing())
        .flatMap(w -> ((ContextMenu) w).getItems().stream())
        .map(MenuItem::getText)
        .filter(Objects::nonNull)
        .toList();
  }

  private List<String> rightClick(Point2D at) throws TimeoutException {
    robot.moveTo(at).press(MouseButton.SECONDARY).release(MouseButton.SECONDARY);
    waitUntil(() -> !entries().isEmpty());
    return entries();
  }

  @Test
  void onAMarkItPicksIt() throws Exception {
    List<String> entries = rightClick(fish("shallow", 30));
    assertEquals(Set.of("w0"), bench.state().selection().events());
    assertTrue(entries.contains("Delete what is picked"), entries::toString);
  }

  @Test
  void onOneOfSeveralPickedItKeepsThem() throws Exception {
    robot.interact(() -> bench.picking().pickAll(List.of("w0", "w1")));
    rightClick(fish("shallow", 30));
    assertEquals(Set.of("w0", "w1"), bench.state().selection().events());
  }

  @Test
  void onAnotherMarkWhileTheMenuIsOpenItPicksThatOne() throws Exception {
    rightClick(fish("shallow", 54));
    // Left of the first, where its menu does not lie over it.
    rightClick(fish("shallow", 30));
    waitUntil(() -> bench.state().selection().events().equals(Set.of("w0")));
    assertTrue(entries().contains("Delete what is picked"));
  }

  @Test
  void onALaneItIsOfTheInstant() throws Exception {
    TimelineLayout layout = layout();
    double x = layout.xOf(minute(150));
    double y = layout.lanes().get(0).plot().getCenterY();
    List<String> entries = rightClick(pane().localToScreen(x, y));
    assertFalse(entries.contains("Delete what is picked"), entries::toString);
    choose("Second cursor here");
    assertEquals(
        (double) minute(150), (double) requireNonNull(bench.state().selection().mark()), 40_000);
  }

  @Test
  void deletingFromTheMenuIsOneStep() throws Exception {
    rightClick(fish("shallow", 30));
    choose("Delete what is picked");
    assertTrue(session().events().stream().noneMatch(e -> e.id().equals("w0")));
    robot.interact(() -> bench.editing().undo());
    assertTrue(session().events().stream().anyMatch(e -> e.id().equals("w0")));
  }

  @Test
  void onALineOfThePegItHidesThatLine() throws Exception {
    PegPane peg = node("peg", PegPane.class);
    Point2D line = spotOf(peg, "short");
    List<String> entries = rightClick(line);
    assertTrue(entries.contains("Hide Short line on the timeline"), entries::toString);
    choose("Hide Short line on the timeline");
    assertEquals(Set.of("short"), bench.state().choices().hiddenLines());
    rightClick(line);
    choose("Show Short line on the timeline");
    assertEquals(Set.of(), bench.state().choices().hiddenLines());
  }

  @Test
  void besideTheLinesOfThePegItIsOfThePicture() throws Exception {
    PegPane peg = node("peg", PegPane.class);
    List<String> entries = rightClick(peg.localToScreen(12, peg.getHeight() - 12));
    assertTrue(entries.stream().noneMatch(e -> e.startsWith("Hide ")), entries::toString);
  }

  private Point2D spotOf(PegPane peg, String lineId) {
    // By keys the menu opens at the line picked: its place is the line's.
    robot.interact(peg::requestFocus);
    while (!String.valueOf(peg.getAccessibleText()).startsWith(nameOf(lineId))) {
      robot.push(KeyCode.RIGHT);
      WaitForAsyncUtils.waitForFxEvents();
    }
    return peg.localToScreen(peg.menuPlace());
  }

  private String nameOf(String lineId) {
    return session().line(lineId).orElseThrow().name();
  }

  private void choose(String words) throws TimeoutException {
    MenuItem item =
        Window.getWindows().stream()
            .filter(w -> w instanceof ContextMenu && w.isShowing())
            .flatMap(w -> ((ContextMenu) w).getItems().stream())
            .filter(i -> words.equals(i.getText()))
            .findFirst()
            .orElseThrow();
    robot.clickOn(item.getStyleableNode());
    waitUntil(() -> entries().isEmpty());
  }
}
