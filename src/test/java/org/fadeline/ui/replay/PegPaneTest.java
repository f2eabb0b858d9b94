package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.PegLayout;
import org.fadeline.figure.Theme;
import org.fadeline.model.Feed;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.WindowHarness;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** The peg in the window, the two cursors and the switch between then and hindsight. */
@ExtendWith(ApplicationExtension.class)
class PegPaneTest extends WindowHarness {
  private void seek(double minute) {
    robot.interact(() -> bench.transport().seek(minute(minute)));
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Returns how often the layer of the moment was drawn. */
  private long draws() {
    WaitForAsyncUtils.waitForFxEvents();
    return node("peg", Region.class).getChildrenUnmodifiable().stream()
        .filter(FigureCanvas.class::isInstance)
        .map(FigureCanvas.class::cast)
        .skip(1)
        .findFirst()
        .orElseThrow()
        .draws();
  }

  @Test
  void aFeedIsShownAtItsSecond() {
    List<SessionEvent> events = new ArrayList<>(HandMade.session().events());
    events.add(
        new SessionEvent.Fed(new Stamp("late", minute(7) + 7_000, "shallow", null), Feed.UNKNOWN));
    desk.with("hand.session.json", HandMade.session().withEvents(events));
    open("Replay");
    seek(7);
    long before = draws();
    robot.push(KeyCode.RIGHT);
    assertEquals(minute(7) + 7_000, bench.state().playhead().at());
    assertEquals(before + 1, draws(), "fresh feed is drawn when it goes in, not a while later");
  }

  @Test
  void aLineIsDraggedToWhereItLayAsOneStep() {
    open("Replay");
    Session before = session();
    Region peg = node("peg", Region.class);
    PegLayout layout =
        new PegFigure(
                before,
                ReplayFrame.at(before, 0),
                FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES))
            .layout(Math.floor(peg.getWidth()), Math.floor(peg.getHeight()));
    Line line = before.line("shallow").orElseThrow();
    var at = layout.pointOf(line).orElseThrow();
    var to = layout.pointOf(11, 0);
    Point2D from = peg.localToScreen(at.getX(), at.getY());
    robot.moveTo(from).press(MouseButton.PRIMARY);
    robot.moveTo(peg.localToScreen(to.getX(), to.getY())).release(MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    Line.Place place = session().line("shallow").orElseThrow().place();
    double pixel = 1 / layout.pixelsPerMetre();
    assertEquals(11, requireNonNull(place.distanceM()), 0.5 + 2 * pixel);
    assertEquals(List.of("Place Shallow"), desk.kept);
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, session());
  }

  @Test
  void twoCursorsAndTheirDifferenceAreShown() {
    open("Replay");
    seek(10);
    robot.push(KeyCode.M);
    seek(22.5);
    // 900 g is 1.984 lb.
    assertTrue(shows("12:30 since 10:10\n2 lb, 1 fish"));
    robot.push(KeyCode.M);
    assertFalse(shows("since 10:10"));
  }

  @Test
  void theSwitchIsSeenAndChangesWhatIsShown() {
    open("Replay");
    seek(60);
    ToggleButton then = button("Show: as known then");
    ToggleButton hindsight = button("Show: with hindsight");
    assertTrue(then.isSelected());
    assertFalse(hindsight.isSelected());
    assertTrue(covers() > 0, "what is to come is covered");
    String before = timeline();
    robot.push(KeyCode.H);
    assertTrue(hindsight.isSelected());
    assertFalse(then.isSelected());
    assertEquals(0, covers());
    assertNotEquals(before, timeline(), "a screen reader is told it too");
    assertFalse(shows("so far"));
    robot.interact(then::fire);
    assertTrue(shows("so far"));
    assertEquals(before, timeline());
  }

  private ToggleButton button(String words) {
    return robot.lookup((Node n) -> words.equals(n.getAccessibleText())).query();
  }

  private int covers() {
    return WaitForAsyncUtils.waitForAsyncFx(
        5_000,
        () ->
            (int)
                window.scene().getRoot().lookupAll(".future").stream()
                    .filter(n -> n.isVisible() && n.getParent().isVisible())
                    .count());
  }

  private String timeline() {
    WaitForAsyncUtils.waitForFxEvents();
    return String.valueOf(node("timeline", Region.class).getAccessibleText());
  }

  @Test
  void hoverSaysTheLineAndItsDistance() {
    open("Replay");
    seek(60);
    Region peg = node("peg", Region.class);
    PegLayout layout =
        new PegFigure(
                session(),
                ReplayFrame.at(session(), 0),
                FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES))
            .layout(Math.floor(peg.getWidth()), Math.floor(peg.getHeight()));
    var at = layout.pointOf(session().line("shallow").orElseThrow()).orElseThrow();
    robot.moveTo(peg.localToScreen(at.getX(), at.getY()));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(
        robot
            .from(peg)
            .lookup((Node n) -> n instanceof Label l && l.getText().contains("14.5 m"))
            .tryQuery()
            .isPresent());
  }
}
