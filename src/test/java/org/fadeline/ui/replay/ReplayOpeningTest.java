package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.file.Path;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Session;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A match that is opened is drawn, whichever part of the window hears of it first. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class ReplayOpeningTest {
  private final FakeDesk desk = new FakeDesk();
  private Workbench bench;
  private ReplayScreen screen;

  @Start
  void start(Stage stage) {
    Fonts.load();
    bench = new Workbench(desk, Reviewer::review, new DirectTaskService(), () -> {});
    // The window hears of a match before its screens do, and turns to Replay.
    Watch.part(
        bench.stateProperty(),
        WorkbenchState::open,
        open -> {
          if (open != null) {
            screen.shown(true);
          }
        });
    screen =
        new ReplayScreen(
            bench,
            new PreferenceStore(Preferences.DEFAULT, changed -> {}),
            new DialogPathChooser());
    stage.setScene(new Scene((Parent) screen.view(), 1200, 700));
    stage.show();
    bench.hindsight(true);
  }

  @AfterEach
  void closeWindows() throws Exception {
    FxToolkit.cleanupStages();
  }

  private static Session shorter(Session session) {
    return session.withEvents(session.events().subList(0, session.events().size() / 2));
  }

  private void install(FxRobot robot, String name, Session session) {
    robot.interact(
        () -> {
          Desk.Held held = desk.saveAs(Path.of(name), session);
          bench.install(held, Reviewer.review(held.session(), bench.state().choices().settings()));
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void aMatchThatComesWithItsReviewIsDrawn(FxRobot robot) {
    install(robot, "a", HandMade.session());
    isDrawn();
    install(robot, "b", shorter(HandMade.session()));
    isDrawn();
  }

  private void isDrawn() {
    TimelinePane pane = (TimelinePane) screen.timeline();
    assertNotNull(pane.layoutProperty().get(), "the timeline is blank");
    Range whole = OpenSession.rangeOf(requireNonNull(bench.state().open()).session());
    assertEquals(whole, screen.shown());
  }
}
