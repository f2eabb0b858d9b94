package org.fadeline.ui;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.start.DiagnosticLog;
import org.fadeline.ui.start.FirstMatch;
import org.fadeline.ui.start.HeadStart;
import org.fadeline.ui.start.StartArchive;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.PreferenceKeeper;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;
import org.jspecify.annotations.Nullable;

/** The workbench as an application: puts the parts together and shows the window. */
public final class FadelineApp extends Application {
  private static final long ARCHIVE_WAIT_MILLIS = 20_000;

  private static volatile @Nullable HeadStart headStart;

  private List<Screen> screens = List.of();
  private @Nullable Workbench bench;
  private @Nullable PreferenceKeeper keeper;
  private @Nullable DiagnosticLog log;

  /** Makes the application; JavaFX calls it. */
  public FadelineApp() {}

  /** Says what the next window starts from: JavaFX makes the application by itself. */
  static void startFrom(@Nullable HeadStart start) {
    headStart = start;
  }

  @Override
  public void start(Stage stage) {
    HeadStart from = headStart;
    Fonts.load();
    DiagnosticLog newLog = new DiagnosticLog(PreferenceFile.logFolder());
    log = newLog;
    newLog.started();
    PreferenceFile file = PreferenceFile.ofUser();
    PreferenceKeeper kept = new PreferenceKeeper(file);
    keeper = kept;
    PreferenceStore preferences = new PreferenceStore(file.read(), kept::keep);
    // Before the first control is made: it would read the usual style sheet for nothing.
    MainWindow.styleControls(preferences.get());
    Workbench workbench =
        new Workbench(
            FileDesk.ofUser(),
            from == null ? Reviewer::review : from::review,
            new ThreadTaskService(Platform::runLater, newLog::failed),
            FadelineApp::checkThread);
    bench = workbench;
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> tell(newLog, workbench, fault));
    // A newcomer sees the whole match first; what was known then is one switch away.
    workbench.hindsight(true);
    if (from != null) {
      workbench.openWith(from.path(), "Opening ", desk -> from.held());
    }
    Navigation navigation = new Navigation();
    PathChooser paths = new DialogPathChooser();
    List<LateScreen> all = Screens.late(workbench, preferences, navigation, paths);
    screens = List.copyOf(all);
    MainWindow window = new MainWindow(stage, workbench, preferences, screens, paths);
    navigation.leadTo(window::showScreen);
    Runnable rest =
        () -> {
          window.showIcon();
          workbench.tellAsKnownThen();
          Screens.makeInTurn(all);
        };
    FirstMatch.note(
        workbench, window.scene(), () -> newLog.reached("first match drawn with its review"));
    // Where the match is read by now it is drawn with the window, not after it, and nothing that
    // the drawing does not need is begun before.
    if (from != null && takes(window, workbench, from)) {
      FirstMatch.note(workbench, window.scene(), rest);
      window.show();
    } else {
      window.show();
      Platform.runLater(rest);
    }
    newLog.reached("window shown");
    renewStartArchive(newLog);
  }

  /** Takes the match the program was started on, if it is read within a moment. */
  private static boolean takes(MainWindow window, Workbench workbench, HeadStart from) {
    window.expectMatch();
    Optional<HeadStart.Ready> ready = from.ready();
    ready.ifPresent(match -> workbench.install(match.held(), match.review()));
    return ready.isPresent();
  }

  private static void tell(DiagnosticLog log, Workbench workbench, Throwable fault) {
    log.failed(fault);
    Platform.runLater(
        () ->
            workbench.report(
                Activity.Trouble.of(
                    "Something went wrong",
                    "Fadeline did not foresee this ("
                        + fault.getClass().getSimpleName()
                        + "). The record is as it was after the last step that was acknowledged;"
                        + " the details are in the diagnostic log (see About).")));
  }

  /** A packaged program that was moved makes its start archive anew, out of the way. */
  private static void renewStartArchive(DiagnosticLog log) {
    Optional<StartArchive> archive = StartArchive.ofProgram();
    if (archive.isEmpty()) {
      return;
    }
    Thread thread =
        new Thread(
            () -> {
              try {
                Thread.sleep(ARCHIVE_WAIT_MILLIS);
                if (archive.get().moved()) {
                  archive.get().make();
                }
              } catch (IOException failure) {
                log.failed(failure);
              } catch (InterruptedException ending) {
                Thread.currentThread().interrupt();
              }
            },
            "start-archive");
    thread.setDaemon(true);
    thread.start();
  }

  /** Throws where it is not called on the JavaFX thread. */
  static void checkThread() {
    if (!Platform.isFxApplicationThread()) {
      throw new IllegalStateException("the workbench's state belongs to the JavaFX thread");
    }
  }

  /** Returns what is in hand, for tests of the start; null before the window is made. */
  @Nullable Workbench bench() {
    return bench;
  }

  @Override
  public void stop() {
    screens.forEach(Screen::close);
    if (bench != null) {
      bench.close();
    }
    if (keeper != null) {
      keeper.close();
    }
    if (log != null) {
      log.close();
    }
  }
}
