package org.fadeline.ui;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.stream.LongStream;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.LargeSessions;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;

/**
 * How long the JavaFX thread is busy from one pulse to the next in the real window while a session
 * of many events is scrubbed, played at 600× and zoomed, as known then and with hindsight. What is
 * told is the thread's own processor time, so that other work on the machine does not count. A
 * benchmark main, on a display:
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench.main=org.fadeline.ui.PulseBenchmark -Dbench=100000
 * </pre>
 */
public final class PulseBenchmark {
  private static final int PULSES = 240;
  private static final int WARM_UP = 120;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Workbench bench;
  private final MainWindow window;
  private int phase;

  /** Starts it with the number of events. */
  public static void main(String[] args) {
    int events = Integer.parseInt(args[0]);
    Platform.startup(() -> new PulseBenchmark(new Stage(), events).start());
  }

  private PulseBenchmark(Stage stage, int events) {
    Fonts.load();
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    bench =
        new Workbench(
            new FakeDesk().with("large", LargeSessions.of(events, 5)),
            Reviewer::review,
            new ThreadTaskService(Platform::runLater, Throwable::printStackTrace),
            FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    window =
        new MainWindow(
            stage,
            bench,
            preferences,
            Screens.of(bench, preferences, navigation, new DialogPathChooser()),
            new DialogPathChooser());
    navigation.leadTo(window::showScreen);
  }

  private void start() {
    window.show();
    bench.open(Path.of("large"));
    window.showScreen("Replay");
    long began = System.nanoTime();
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        if (bench.state().review().known() != null) {
          stop();
          System.out.printf(
              Locale.ROOT, "known then worked out after %.1f s%n", (now - began) / 1e9);
          next();
        }
      }
    }.start();
  }

  private void next() {
    Range range = bench.state().playhead().range();
    switch (phase++) {
      case 0 -> measure("(warm-up)", WARM_UP, i -> scrub(range, i, WARM_UP));
      case 1 -> measure("scrub, as known then", PULSES, i -> scrub(range, i, PULSES));
      case 2 -> {
        play(range);
        measure("play at 600×, as known then", PULSES, i -> {});
      }
      case 3 -> {
        bench.transport().pause();
        measure("zoom, as known then", PULSES, this::zoom);
      }
      case 4 -> {
        bench.hindsight(true);
        measure("scrub, with hindsight", PULSES, i -> scrub(range, i, PULSES));
      }
      case 5 -> {
        play(range);
        measure("play at 600×, with hindsight", PULSES, i -> {});
      }
      case 6 -> {
        bench.transport().pause();
        measure("zoom, with hindsight", PULSES, this::zoom);
      }
      default -> {
        bench.close();
        Platform.exit();
      }
    }
  }

  private void play(Range range) {
    bench.transport().seek(range.from() + range.millis() / 4);
    bench.transport().speed(600);
    bench.transport().play();
  }

  /** Forth over the match and back, as a hand drags. */
  private void scrub(Range range, int pulse, int pulses) {
    double share = Math.abs(2.0 * pulse / pulses - 1);
    bench.transport().seek(range.from() + Math.round(share * range.millis()));
  }

  /** In and out again. */
  private void zoom(int pulse) {
    String title = pulse / 20 % 2 == 0 ? "Closer" : "Farther";
    window.screens().stream()
        .flatMap(s -> s.commands().stream())
        .filter(c -> c.title().equals(title))
        .map(Command::action)
        .findFirst()
        .orElseThrow()
        .run();
  }

  private void measure(String name, int pulses, IntConsumer at) {
    long[] busy = new long[pulses];
    new AnimationTimer() {
      private int pulse = -1;
      private long before;

      @Override
      public void handle(long now) {
        long cpu = THREADS.getCurrentThreadCpuTime();
        if (pulse >= 0) {
          busy[pulse] = cpu - before;
        }
        before = cpu;
        pulse++;
        if (pulse == pulses) {
          stop();
          tell(name, busy);
          Platform.runLater(PulseBenchmark.this::next);
        } else {
          at.accept(pulse);
        }
      }
    }.start();
  }

  private static void tell(String name, long[] nanos) {
    Arrays.sort(nanos);
    System.out.printf(
        Locale.ROOT,
        "%-30s median %5.1f ms, 99%% %5.1f ms, longest %5.1f ms, over 16 ms: %d of %d%n",
        name,
        nanos[nanos.length / 2] / 1e6,
        nanos[nanos.length * 99 / 100] / 1e6,
        nanos[nanos.length - 1] / 1e6,
        LongStream.of(nanos).filter(n -> n > 16_000_000).count(),
        nanos.length);
  }
}
