package org.fadeline.ui.replay;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.Session;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What one frame of the replay costs on the JavaFX thread: the state moves on by a sixtieth of a
 * second at 60×, every view follows and lays itself out. At the end it checks that the layers that
 * do not move were drawn no oftener than their own versions changed. Runs headless (Monocle).
 */
// JMH calls open before anything else, which sets every field.
@SuppressWarnings("NullAway.Init")
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
    value = 1,
    jvmArgsAppend = {
      "-Dglass.platform=Monocle",
      "-Dmonocle.platform=Headless",
      "-Dprism.order=sw",
      "-Djava.awt.headless=true"
    })
public class ReplayFrameBenchmark {
  private static final long FRAME_NANOS = 16_666_667;

  /** Events in the session; 0 for a match of the usual length. */
  @Param({"0", "10000"})
  public int events;

  private Workbench bench;
  private ReplayScreen screen;
  private StackPane root;
  private List<Long> drawnBefore;

  /** Opens a session in a window of 1280×780 and stands in its middle. */
  @Setup
  public void open() throws Exception {
    CountDownLatch ready = new CountDownLatch(1);
    Platform.startup(ready::countDown);
    ready.await();
    onFx(
        () -> {
          Fonts.load();
          Session session =
              events == 0
                  ? DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 122)
                  : LargeSessions.of(events, 1);
          bench =
              new Workbench(
                  new FakeDesk().with("a", session),
                  Reviewer::review,
                  new DirectTaskService(),
                  () -> {});
          screen =
              new ReplayScreen(
                  bench,
                  new PreferenceStore(Preferences.DEFAULT, changed -> {}),
                  new DialogPathChooser());
          root = new StackPane(screen.view());
          // Colours that the window's style sheet would give; without them each frame would warn.
          root.setStyle(
              "-fl-hairline: gray; -fl-line-0: blue; -fl-line-1: blue; -fl-line-2: blue;"
                  + " -fl-line-3: blue; -fl-line-4: blue;");
          Stage stage = new Stage();
          stage.setScene(new Scene(root, 1280, 780));
          stage.show();
          bench.open(Path.of("a"));
          bench.hindsight(true);
          screen.shown(true);
          root.applyCss();
          root.layout();
          bench.transport().seek(bench.state().playhead().range().from() + 3_600_000);
          bench.transport().speed(60);
          bench.transport().play();
          drawnBefore = screen.staticDraws();
        });
  }

  /** One frame. */
  @Benchmark
  public long frame() throws Exception {
    onFx(
        () -> {
          if (!bench.state().playhead().motion().playing()) {
            bench.transport().toStart();
            bench.transport().play();
          }
          bench.transport().advance(FRAME_NANOS);
          root.layout();
        });
    return bench.state().playhead().at();
  }

  /** Checks that thousands of frames with hindsight drew no static layer again. */
  @TearDown
  public void check() throws Exception {
    List<Long> after = screen.staticDraws();
    if (!after.equals(drawnBefore)) {
      throw new IllegalStateException(
          "static layers were drawn again: " + drawnBefore + " became " + after);
    }
  }

  private static void onFx(Runnable action) throws Exception {
    CountDownLatch done = new CountDownLatch(1);
    AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
    Platform.runLater(
        () -> {
          try {
            action.run();
          } catch (RuntimeException | Error e) {
            failure.set(e);
          }
          done.countDown();
        });
    done.await();
    Throwable thrown = failure.get();
    if (thrown != null) {
      throw new IllegalStateException(thrown);
    }
  }
}
