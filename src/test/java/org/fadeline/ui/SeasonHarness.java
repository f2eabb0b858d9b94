package org.fadeline.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.control.TableView;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.season.SeasonScreen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A folder of two sessions and a torn file, open on the Season screen. */
// openWindow, before each test, sets every field.
@SuppressWarnings("NullAway.Init")
abstract class SeasonHarness extends WindowHarness {
  @TempDir Path folder;

  SeasonScreen season;

  @Override
  @BeforeEach
  protected void openWindow() throws Exception {
    write("one", DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 1));
    write("two", DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), 2));
    Files.writeString(folder.resolve("torn.session.json"), "{");
    FxToolkit.registerPrimaryStage();
    FxToolkit.setupStage(this::start);
    robot.interact(() -> window.showScreen("Season"));
    openFolder();
  }

  /** Opens the folder and waits until it is read. */
  void openFolder() throws Exception {
    robot.interact(() -> season.open(folder));
    settle(() -> shows("2 matches, 1 file with a problem") && !shows("Stop"));
  }

  @Override
  protected TaskService tasks() {
    return new ThreadTaskService(Platform::runLater, fault -> {});
  }

  private void start(Stage stage) {
    Fonts.load();
    preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    bench =
        new Workbench(new FileDesk(folder), Reviewer::review, tasks(), FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    season = new SeasonScreen(bench, preferences, navigation, paths);
    List<Screen> screens = new ArrayList<>(Screens.of(bench, preferences, navigation, paths));
    screens.replaceAll(screen -> screen instanceof SeasonScreen ? season : screen);
    window = new MainWindow(stage, bench, preferences, screens, paths);
    navigation.leadTo(window::showScreen);
    window.show();
  }

  /** Waits on the window's own thread: another one would see its nodes come and go. */
  final void settle(BooleanSupplier condition) throws Exception {
    waitUntil(() -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
  }

  final void write(String name, Session session) throws IOException {
    Files.writeString(folder.resolve(name + ".session.json"), SessionWriter.toJson(session));
  }

  final TableView<?> table() {
    return robot.lookup(".table-view").queryAs(TableView.class);
  }
}
