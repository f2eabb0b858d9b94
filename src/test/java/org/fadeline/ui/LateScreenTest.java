package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.start.FirstMatch;
import org.fadeline.ui.start.HeadStart;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.fadeline.ui.window.MainWindow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The window as it is started: with screens that are made late and a match read before it. */
// openWindow, before each test, sets every field.
@SuppressWarnings("NullAway.Init")
class LateScreenTest {
  private static final Path SAMPLE = Path.of("sample-sessions/evening-moves-and-fish.session.json");

  @TempDir private Path folder = Path.of("");

  private final FxRobot robot = new FxRobot();
  private Workbench bench;
  private List<LateScreen> late;
  private MainWindow window;

  @BeforeEach
  void openWindow() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.setupStage(this::start);
  }

  private void start(Stage stage) {
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    bench =
        new Workbench(
            new FileDesk(folder),
            Reviewer::review,
            new ThreadTaskService(Platform::runLater, failure -> {}),
            FadelineApp::checkThread);
    bench.hindsight(true);
    Navigation navigation = new Navigation();
    late = Screens.late(bench, preferences, navigation, new FakePaths());
    window = new MainWindow(stage, bench, preferences, List.copyOf(late), new FakePaths());
    navigation.leadTo(window::showScreen);
  }

  @AfterEach
  void closeWindow() throws Exception {
    FxToolkit.cleanupStages();
    robot.interact(bench::close);
  }

  private static void waitUntil(Callable<Boolean> condition) throws Exception {
    WaitForAsyncUtils.waitFor(
        60, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition).get());
  }

  private List<String> made() {
    return late.stream().filter(LateScreen::isMade).map(Screen::title).toList();
  }

  @Test
  void saysOfEachScreenWhatTheScreenSaysItself() {
    robot.interact(
        () ->
            assertEquals(
                late.stream().map(LateScreen::make).map(Screen::facts).toList(),
                late.stream().map(Screen::facts).toList()));
  }

  @Test
  void makesAScreenOnceItIsShownAndTheOthersInTurn() throws Exception {
    robot.interact(() -> window.show());
    assertEquals(List.of(), made());
    robot.interact(() -> window.showScreen("Season"));
    assertEquals(List.of("Season"), made());
    robot.interact(() -> Screens.makeInTurn(late));
    waitUntil(() -> made().size() == late.size());
  }

  @Test
  void showsAMatchReadBeforeTheWindowAtOnce() throws Exception {
    Path match = Files.copy(SAMPLE, folder.resolve("match.session.json"));
    HeadStart from = new HeadStart(match, new FileDesk(folder), Preferences.DEFAULT.units());
    Session session = from.held().session();
    Review review = from.review(session, ReviewSettings.DEFAULT, Preferences.DEFAULT.units());
    List<WorkbenchState> drawn = new ArrayList<>();
    robot.interact(
        () -> {
          bench.openWith(match, "Opening ", desk -> from.held());
          window.expectMatch();
          bench.install(from.ready().orElseThrow().held(), review);
          FirstMatch.note(bench, window.scene(), () -> drawn.add(bench.state()));
          window.show();
        });
    waitUntil(() -> !drawn.isEmpty());
    // The opening that was under way must not bring the match a second time.
    robot.interact(() -> assertSame(review, bench.state().review().latest()));
    assertEquals(1, drawn.size());
    assertSame(session, requireNonNull(drawn.get(0).open()).session());
    assertNull(drawn.get(0).activity().opening());
    assertEquals(List.of("Replay"), made());
    assertNull(drawn.get(0).review().known());
    robot.interact(bench::tellAsKnownThen);
    waitUntil(() -> bench.state().review().known() != null);
  }

  @Test
  void tellsOfAFileThatCannotBeUsedOnTheFirstScreen() throws Exception {
    Path damaged = Files.writeString(folder.resolve("x.session.json"), "{ \"format\": ");
    HeadStart from = new HeadStart(damaged, new FileDesk(folder), Preferences.DEFAULT.units());
    robot.interact(
        () -> {
          bench.openWith(damaged, "Opening ", desk -> from.held());
          window.expectMatch();
          assertTrue(from.ready().isEmpty());
          window.show();
        });
    waitUntil(() -> bench.state().activity().trouble() != null);
    waitUntil(() -> robot.lookup("Open a match…").tryQuery().isPresent());
  }
}
