package org.fadeline.ui;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.NodeQueryUtils;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window on files that are not there, and what tests ask of it. */
// openWindow, before each test, sets every field.
@SuppressWarnings("NullAway.Init")
public abstract class WindowHarness {
  static final Path FILE = Path.of("hand.session.json");

  protected final FakeDesk desk = new FakeDesk().with("hand.session.json", HandMade.session());
  protected final FakePaths paths = new FakePaths();
  protected final FxRobot robot = new FxRobot();
  protected Workbench bench;
  protected PreferenceStore preferences;
  protected MainWindow window;

  @BeforeEach
  protected void openWindow() throws Exception {
    // The extension of TestFX finds no start method in a class above the test's own.
    FxToolkit.registerPrimaryStage();
    FxToolkit.setupStage(this::start);
  }

  /** Returns where sessions are opened: here from memory. */
  Desk desk() {
    return desk;
  }

  /** Returns the preferences a start finds: here the defaults, kept nowhere. */
  protected PreferenceStore storedPreferences() {
    return new PreferenceStore(Preferences.DEFAULT, changed -> {});
  }

  /** Returns what does the background work: here at once, on the window's thread. */
  protected TaskService tasks() {
    return new DirectTaskService();
  }

  private void start(Stage stage) {
    Fonts.load();
    preferences = storedPreferences();
    bench = new Workbench(desk(), Reviewer::review, tasks(), FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    window =
        new MainWindow(
            stage, bench, preferences, Screens.of(bench, preferences, navigation, paths), paths);
    navigation.leadTo(window::showScreen);
    window.show();
  }

  @AfterEach
  void closeWindows() throws Exception {
    FxToolkit.cleanupStages();
    robot.interact(bench::close);
  }

  protected final void open(String screen) {
    robot.interact(() -> bench.open(FILE));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.showScreen(screen));
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Returns the screen of a title. */
  protected final Screen screen(String title) {
    return window.screens().stream().filter(s -> s.title().equals(title)).findFirst().orElseThrow();
  }

  protected final Session session() {
    return requireNonNull(bench.state().open()).session();
  }

  /** Returns the words of a stay as its card has them: its times stand in the card's heading. */
  static String told(StayOrGo stay) {
    String text = stay.wording().text().replaceFirst("^\\d\\d:\\d\\d–\\d\\d:\\d\\d: ", "");
    return Say.capital(text);
  }

  protected final void waitUntil(Callable<Boolean> condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, condition);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Returns whether a text is seen; asked on the window's thread, where no node comes or goes. */
  protected final boolean shows(String text) {
    return WaitForAsyncUtils.waitForAsyncFx(
        10_000,
        () ->
            !robot
                .lookup(
                    n ->
                        n instanceof Labeled label
                            && NodeQueryUtils.isVisible().test(label)
                            && String.valueOf(label.getText()).contains(text))
                .queryAll()
                .isEmpty());
  }

  protected final <T extends Node> T node(String id, Class<T> type) {
    // What lies in a scroll pane is part of the scene from the first pulse on.
    try {
      waitUntil(() -> robot.lookup("#" + id).tryQuery().isPresent());
    } catch (TimeoutException neverShown) {
      throw new AssertionError("nothing on the screen is called " + id, neverShown);
    }
    return robot.lookup("#" + id).queryAs(type);
  }

  /** Types a text into a field and leaves it with Enter. */
  protected final void type(String id, String text) {
    TextInputControl field = node(id, TextInputControl.class);
    robot.interact(
        () -> {
          field.requestFocus();
          field.setText(text);
          if (field instanceof TextField line) {
            line.fireEvent(new ActionEvent());
          }
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Chooses a value of a box. */
  protected final <T> void choose(String id, T value) {
    @SuppressWarnings("unchecked") // the test says which box it is
    ComboBox<T> box = node(id, ComboBox.class);
    robot.interact(() -> box.setValue(value));
    WaitForAsyncUtils.waitForFxEvents();
  }

  protected final void press(String id) {
    robot.interact(() -> node(id, ButtonBase.class).fire());
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Sets the limit of a net, lb, as an edit of the match held. */
  void limitOf(double pounds) {
    robot.interact(
        () ->
            bench
                .editing()
                .edit(
                    "limit",
                    s ->
                        s.withMatch(
                            s.match()
                                .withRules(
                                    s.match()
                                        .rules()
                                        .withNetLimit(
                                            new MatchRules.NetLimit(
                                                pounds * 453.59237, 0, "counts as nothing"))))));
    WaitForAsyncUtils.waitForFxEvents();
  }
}
