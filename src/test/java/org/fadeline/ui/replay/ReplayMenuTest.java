package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TableView;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import org.fadeline.analysis.Course;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Menus by pointer and by keys on the timeline, the peg and tables; the peg by arrow keys. */
@ExtendWith(ApplicationExtension.class)
class ReplayMenuTest extends WindowHarness {
  private void seek(double minute) {
    robot.interact(() -> bench.transport().seek(minute(minute)));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void focus(String id) {
    robot.interact(() -> node(id, Node.class).requestFocus());
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Asks for a menu as the pointer does; the headless platform does not make the request. */
  private void rightClick(Node node, double x, double y) {
    robot.interact(
        () -> {
          Point2D scene = node.localToScene(x, y);
          Point2D screen = node.localToScreen(x, y);
          node.fireEvent(
              new ContextMenuEvent(
                  ContextMenuEvent.CONTEXT_MENU_REQUESTED,
                  scene.getX(),
                  scene.getY(),
                  screen.getX(),
                  screen.getY(),
                  false,
                  null));
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  private List<MenuItem> menu() {
    WaitForAsyncUtils.waitForFxEvents();
    return Window.getWindows().stream()
        .filter(w -> w instanceof ContextMenu && w.isShowing())
        .findFirst()
        .map(w -> List.copyOf(((ContextMenu) w).getItems()))
        .orElse(List.of());
  }

  private List<String> entries() {
    return menu().stream().map(MenuItem::getText).filter(Objects::nonNull).toList();
  }

  private void choose(String words) {
    MenuItem item =
        menu().stream().filter(i -> words.equals(i.getText())).findFirst().orElseThrow();
    robot.interact(item::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private SessionEvent event(String id) {
    return session().events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void byKeysTheMenuIsOfWhatIsPicked() {
    open("Replay");
    seek(100);
    robot.interact(() -> bench.picking().pick("s"));
    focus("timeline");
    robot.push(KeyCode.SHIFT, KeyCode.F10);
    choose("A second later");
    assertEquals(minute(8) + 1000, event("s").at());
    focus("timeline");
    robot.push(KeyCode.CONTEXT_MENU);
    choose("Playhead here");
    assertEquals((double) minute(8), (double) bench.state().playhead().at(), 40_000);
  }

  @Test
  void withNothingPickedItIsOfTheInstant() {
    open("Replay");
    seek(100);
    focus("timeline");
    robot.push(KeyCode.SHIFT, KeyCode.F10);
    assertFalse(entries().contains("Delete what is picked"));
    choose("Second cursor here");
    assertEquals(
        (double) minute(100), (double) requireNonNull(bench.state().selection().mark()), 40_000);
  }

  /** The arrows of an open menu are the menu's. */
  @Test
  void anOpenMenuHasTheKeys() {
    open("Replay");
    seek(100);
    focus("timeline");
    robot.push(KeyCode.SHIFT, KeyCode.F10);
    assertFalse(entries().isEmpty());
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.RIGHT);
    robot.push(KeyCode.M);
    assertEquals(minute(100), bench.state().playhead().at());
    assertNull(bench.state().selection().mark());
    robot.push(KeyCode.ESCAPE);
    assertTrue(entries().isEmpty());
    robot.push(KeyCode.M);
    assertEquals(minute(100), requireNonNull(bench.state().selection().mark()));
  }

  @Test
  void theListOfTurningPointsHasOne() {
    open("Replay");
    seek(200);
    ListView<?> list = node("turning-points", ListView.class);
    robot.interact(() -> list.getSelectionModel().select(0));
    focus("turning-points");
    robot.push(KeyCode.SHIFT, KeyCode.F10);
    choose("Go to it");
    assertEquals(
        bench.state().playhead().at(), ((Course.TurningPoint) list.getItems().get(0)).at());
  }

  @Test
  void aTableHasOneByKeysAndByPointer() {
    open("Review");
    robot.push(KeyCode.ALT, KeyCode.DIGIT6);
    WaitForAsyncUtils.waitForFxEvents();
    TableView<?> table = robot.lookup(".table-view").query();
    robot.interact(
        () -> {
          table.requestFocus();
          table.getSelectionModel().clearAndSelect(0);
        });
    robot.push(KeyCode.SHIFT, KeyCode.F10);
    assertTrue(entries().contains("Copy this row"), () -> entries().toString());
    robot.push(KeyCode.ESCAPE);
    rightClick(table, 40, 60);
    assertTrue(entries().contains("Copy the rows shown"));
  }

  @Test
  void thePegIsReachedByTabAndItsLinesAreMovedByArrows() {
    open("Replay");
    seek(60);
    Region peg = node("peg", Region.class);
    assertTrue(peg.isFocusTraversable());
    focus("peg");
    long playhead = bench.state().playhead().at();
    robot.push(KeyCode.RIGHT);
    // From left to right: shallow at −8°, the short line at 4°.
    assertTrue(
        peg.getAccessibleText().startsWith("Shallow, 14.5 m, 8° left"), peg.getAccessibleText());
    robot.push(KeyCode.RIGHT);
    assertTrue(peg.getAccessibleText().startsWith("Short line, 5 m, 4° right"));
    robot.push(KeyCode.SHIFT, KeyCode.UP);
    robot.push(KeyCode.SHIFT, KeyCode.RIGHT);
    Line.Place place = session().line("short").orElseThrow().place();
    assertEquals(5.5, requireNonNull(place.distanceM()));
    assertEquals(5, requireNonNull(place.bearingDegrees()));
    assertEquals(List.of("Place Short line", "Place Short line"), desk.kept);
    assertTrue(peg.getAccessibleText().startsWith("Short line, 5.5 m, 5° right"));
    assertEquals(playhead, bench.state().playhead().at(), "the arrows are the peg's");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(5, requireNonNull(session().line("short").orElseThrow().place().distanceM()));
    robot.push(KeyCode.SHIFT, KeyCode.F10);
    choose("Hide Short line on the timeline");
    assertEquals(Set.of("short"), bench.state().choices().hiddenLines());
  }
}
