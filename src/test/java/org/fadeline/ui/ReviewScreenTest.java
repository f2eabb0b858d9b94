package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.fadeline.analysis.OtherSettings;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.ui.control.Fonts;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The review: findings, tables, lessons that lead into the replay, settings that review again. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class ReviewScreenTest {
  private Workbench bench;
  private MainWindow window;

  @Start
  void start(Stage stage) {
    Fonts.load();
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    bench =
        new Workbench(
            new FakeDesk().with("a.session.json", HandMade.session()),
            Reviewer::review,
            new DirectTaskService(),
            FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    window = new MainWindow(stage, bench, preferences, Screens.of(bench, preferences, navigation));
    navigation.leadTo(window::showScreen);
    window.show();
    bench.open(Path.of("a.session.json"));
    window.showScreen("Review");
  }

  @AfterEach
  void closeWindows() throws Exception {
    FxToolkit.cleanupStages();
  }

  private Review review() {
    return requireNonNull(bench.state().review().latest());
  }

  private static boolean shows(FxRobot robot, String text) {
    return !robot
        .lookup(
            n ->
                n instanceof Label label
                    && org.testfx.util.NodeQueryUtils.isVisible().test(label)
                    && label.getText().contains(text))
        .queryAll()
        .isEmpty();
  }

  @Test
  void everyStayIsListedWithItsWords(FxRobot robot) {
    assertEquals(3, review().stays().size());
    review().stays().forEach(stay -> assertTrue(shows(robot, stay.wording().text())));
  }

  @Test
  void aFindingLeadsIntoTheReplayAtItsMinute(FxRobot robot) {
    Button go =
        robot
            .lookup((Node n) -> n instanceof Button b && b.getText().startsWith("Replay from"))
            .query();
    robot.interact(go::fire);
    assertEquals(review().stays().get(0).spell().span().from(), bench.state().playhead().at());
    assertFalse(robot.lookup("#timeline").queryAll().isEmpty());
  }

  @Test
  void theEvidenceOfAFadeAsksWhetherItWasTheWater(FxRobot robot) {
    StayOrGo faded =
        review().stays().stream().filter(s -> s.quiet() != null).findFirst().orElseThrow();
    Node card = robot.lookup(faded.wording().text()).query().getParent();
    robot.interact(card::requestFocus);
    robot.push(KeyCode.ENTER);
    assertTrue(shows(robot, requireNonNull(faded.quiet()).text()));
    assertTrue(shows(robot, "No neighbour's fish are noted."));
  }

  @Test
  void theTablesHoldEveryLineAndEveryFish(FxRobot robot) {
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    TableView<?> lines = robot.lookup(".table-view").query();
    assertEquals(2, lines.getItems().size());
    robot.push(KeyCode.ALT, KeyCode.DIGIT6);
    TableView<?> fish = robot.lookup(".table-view").query();
    assertEquals(16, fish.getItems().size(), "2 + 12 + 2 fish were landed");
  }

  @Test
  void otherSettingsReviewAgain(FxRobot robot) {
    robot.push(KeyCode.ALT, KeyCode.DIGIT8);
    assertTrue(shows(robot, "This is a full record"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT9);
    TableView<?> moved = robot.lookup(".table-view").query();
    assertEquals(
        OtherSettings.of(review().session(), review().settings()).rows().size(),
        moved.getItems().size());
    assertTrue(shows(robot, "One setting changed at a time."));
    Set<ToggleButton> fish =
        robot
            .lookup((Node n) -> n instanceof ToggleButton b && b.getText().equals("50%"))
            .queryAllAs(ToggleButton.class);
    robot.interact(() -> fish.iterator().next().fire());
    assertEquals(0.5, review().settings().callLevel());
  }
}
