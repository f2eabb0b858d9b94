package org.fadeline.ui;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.stage.Stage;
import org.controlsfx.control.CheckComboBox;
import org.fadeline.analysis.Reviewer;
import org.fadeline.index.ManySessions;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.season.SeasonScreen;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.TaskService.Running;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;

/**
 * How long the JavaFX thread is busy from one pulse to the next in the real window while a season
 * of many sessions is opened, filtered and paged through: its own processor time; and how long by
 * the clock until tables and pictures are all there. A benchmark main, on a display:
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench.main=org.fadeline.ui.SeasonPulses -Dbench="10000 FOLDER"
 * </pre>
 */
public final class SeasonPulses {
  /** Pulses without anything going on after which a step is over. */
  private static final int QUIET = 8;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Workbench bench;
  private final MainWindow window;
  private final SeasonScreen season;
  private final List<Step> steps = new ArrayList<>();

  /** Something done, by the name it is told under. */
  private record Step(String name, Runnable action) {}

  /** Starts it with the number of sessions and the folder they are, or are made, in. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[1]);
    ManySessions.make(folder, Integer.parseInt(args[0]));
    Platform.startup(() -> new SeasonPulses(new Stage()).start(folder));
  }

  private SeasonPulses(Stage stage) {
    Fonts.load();
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    bench =
        new Workbench(
            new FakeDesk(),
            Reviewer::review,
            new ThreadTaskService(Platform::runLater, Throwable::printStackTrace),
            FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    PathChooser paths = new DialogPathChooser();
    season = new SeasonScreen(bench, preferences, navigation, paths);
    window = new MainWindow(stage, bench, preferences, List.of(season), paths);
  }

  private void start(Path folder) {
    window.show();
    window.showScreen("Season");
    // Once to warm up, then again, with what was open before put away.
    for (String run : List.of("first time: ", "again: ")) {
      steps.add(new Step(run + "open", () -> season.open(folder)));
      steps.add(new Step(run + "filter by water", () -> water(true)));
      steps.add(new Step(run + "no filter", () -> water(false)));
      for (Command page : season.commands().subList(4, season.commands().size())) {
        steps.add(new Step(run + "page " + page.title(), page.action()));
      }
      steps.add(new Step(run + "page Results", page("Results")));
      steps.add(new Step(run + "filter by wind", () -> wind(1)));
      steps.add(new Step(run + "no filter", () -> wind(0)));
    }
    new Pulses().start();
  }

  private Runnable page(String title) {
    return season.commands().stream()
        .filter(c -> c.title().equals(title))
        .map(Command::action)
        .findFirst()
        .orElseThrow();
  }

  private void water(boolean chosen) {
    Node box = window.scene().lookup("#season-waters");
    if (box instanceof CheckComboBox<?> waters) {
      if (chosen) {
        waters.getCheckModel().check(0);
      } else {
        waters.getCheckModel().clearCheck(0);
      }
    }
  }

  private void wind(int choice) {
    Node box = window.scene().lookup("#season-wind");
    if (box instanceof ComboBox<?> winds) {
      winds.getSelectionModel().select(choice);
    }
  }

  /** Takes step after step, each once the one before has come to rest. */
  private final class Pulses extends AnimationTimer {
    private final List<Long> busy = new ArrayList<>();
    private int step = -1;
    private int quiet;
    private long last;
    private long began;
    private long settled;

    /** When the tables were last seen still being made. */
    private long tables;

    @Override
    public void handle(long now) {
      long used = THREADS.getCurrentThreadCpuTime();
      if (step >= 0) {
        busy.add(used - last);
      }
      List<String> going =
          bench.tasks().runningProperty().get().stream().map(Running::title).toList();
      quiet = going.isEmpty() ? quiet + 1 : 0;
      if (going.stream()
          .anyMatch(title -> title.startsWith("Putting") || title.startsWith("Reading"))) {
        tables = System.nanoTime();
      }
      if (quiet == 1) {
        settled = System.nanoTime();
      }
      if (quiet > QUIET) {
        if (step >= 0) {
          tell();
        }
        next();
      }
      last = THREADS.getCurrentThreadCpuTime();
      Platform.requestNextPulse();
    }

    private void next() {
      busy.clear();
      quiet = 0;
      step++;
      if (step == steps.size()) {
        stop();
        season.close();
        bench.close();
        Platform.exit();
      } else {
        began = System.nanoTime();
        settled = began;
        tables = began;
        long before = THREADS.getCurrentThreadCpuTime();
        steps.get(step).action().run();
        busy.add(THREADS.getCurrentThreadCpuTime() - before);
      }
    }

    private void tell() {
      long longest = Collections.max(busy);
      long over = busy.stream().filter(b -> b > 16_000_000).count();
      System.out.printf(
          Locale.ROOT,
          "%-32s tables after %4.0f ms, all shown after %5.0f ms, longest %6.1f ms, over 16 ms: %d of %d%n",
          steps.get(step).name(),
          (tables - began) / 1e6,
          (settled - began) / 1e6,
          longest / 1e6,
          over,
          busy.size());
    }
  }
}
