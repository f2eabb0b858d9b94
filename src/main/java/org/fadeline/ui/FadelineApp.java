package org.fadeline.ui;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.ui.control.Fonts;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** The workbench as an application: puts the parts together and shows the window. */
public final class FadelineApp extends Application {
  private @Nullable Workbench bench;
  private @Nullable PreferenceKeeper keeper;

  /** Makes the application; JavaFX calls it. */
  public FadelineApp() {}

  @Override
  public void start(Stage stage) {
    Fonts.load();
    PreferenceFile file = PreferenceFile.ofUser();
    PreferenceKeeper kept = new PreferenceKeeper(file);
    keeper = kept;
    PreferenceStore preferences = new PreferenceStore(file.read(), kept::keep);
    Workbench workbench =
        new Workbench(
            new FileDesk(PreferenceFile.usualFolder()),
            Reviewer::review,
            new ThreadTaskService(Platform::runLater),
            FadelineApp::checkThread);
    bench = workbench;
    // A newcomer sees the whole match first; what was known then is one switch away.
    workbench.hindsight(true);
    Navigation navigation = new Navigation();
    MainWindow window =
        new MainWindow(
            stage, workbench, preferences, Screens.of(workbench, preferences, navigation));
    navigation.leadTo(window::showScreen);
    window.show();
    List<String> arguments = getParameters().getUnnamed();
    if (!arguments.isEmpty()) {
      workbench.open(Path.of(arguments.get(0)));
    }
  }

  /** Throws where it is not called on the JavaFX thread. */
  static void checkThread() {
    if (!Platform.isFxApplicationThread()) {
      throw new IllegalStateException("the workbench's state belongs to the JavaFX thread");
    }
  }

  @Override
  public void stop() {
    if (bench != null) {
      bench.close();
    }
    if (keeper != null) {
      keeper.close();
    }
  }
}
