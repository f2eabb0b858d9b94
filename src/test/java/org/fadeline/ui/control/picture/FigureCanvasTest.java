package org.fadeline.ui.control.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.fadeline.ui.state.ThreadTaskService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Drawing off the window's thread: shown when ready, and only what is still wanted. */
// openWindow, before each test, sets every field.
@SuppressWarnings("NullAway.Init")
class FigureCanvasTest {
  private final FxRobot robot = new FxRobot();
  private final List<Throwable> faults = new ArrayList<>();
  private ThreadTaskService tasks;
  private FigureCanvas canvas;
  private long empty;

  @BeforeEach
  void openWindow() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.setupStage(this::start);
    WaitForAsyncUtils.waitForFxEvents();
    empty = canvas.draws();
  }

  private void start(Stage stage) {
    tasks = new ThreadTaskService(Platform::runLater, faults::add);
    canvas = new FigureCanvas();
    stage.setScene(new Scene(new StackPane(canvas), 200, 100));
    stage.show();
  }

  @AfterEach
  void close() throws Exception {
    tasks.close();
    FxToolkit.cleanupStages();
  }

  private static FigureCanvas.Painter filled(Color colour) {
    return (g, w, h) -> {
      g.setColor(colour);
      g.fillRect(0, 0, (int) w, (int) h);
    };
  }

  private int middle() {
    return WaitForAsyncUtils.waitForAsyncFx(
        10_000, () -> canvas.snapshot(null, null).getPixelReader().getArgb(100, 50));
  }

  /** Waits until so many drawings were shown since the window came. */
  private void settle(long draws) throws Exception {
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> canvas.draws() >= empty + draws);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private FigureCanvas.Ahead ahead(boolean keepOld) {
    return new FigureCanvas.Ahead(tasks, keepOld);
  }

  @Test
  void isPaintedOffTheThreadOfTheWindowAndThenShown() throws Exception {
    AtomicBoolean onWindow = new AtomicBoolean(true);
    robot.interact(
        () ->
            canvas.showAhead(
                (g, w, h) -> {
                  onWindow.set(Platform.isFxApplicationThread());
                  filled(Color.RED).paint(g, w, h);
                },
                "red",
                ahead(true)));
    settle(1);
    assertFalse(onWindow.get());
    assertEquals(Color.RED.getRGB(), middle());
    assertEquals("red", canvas.getAccessibleText());
    assertTrue(faults.isEmpty(), faults::toString);
  }

  @Test
  void whatWasShownStaysOrGoesUntilTheNewOneIsReady() throws Exception {
    robot.interact(() -> canvas.show(filled(Color.BLUE), "blue"));
    settle(1);
    CountDownLatch go = new CountDownLatch(1);
    FigureCanvas.Painter slow =
        (g, w, h) -> {
          try {
            go.await();
          } catch (InterruptedException e) {
            return;
          }
          filled(Color.GREEN).paint(g, w, h);
        };
    robot.interact(() -> canvas.showAhead(slow, "green", ahead(true)));
    assertEquals(Color.BLUE.getRGB(), middle(), "the old one stays");
    robot.interact(() -> canvas.showAhead(slow, "green", ahead(false)));
    assertFalse(Color.BLUE.getRGB() == middle(), "the old one is gone at once");
    go.countDown();
    settle(2);
    assertEquals(Color.GREEN.getRGB(), middle());
  }

  @Test
  void whatIsNoLongerWantedIsNeverShown() throws Exception {
    CountDownLatch go = new CountDownLatch(1);
    robot.interact(
        () ->
            canvas.showAhead(
                (g, w, h) -> {
                  try {
                    go.await();
                  } catch (InterruptedException e) {
                    return;
                  }
                  filled(Color.RED).paint(g, w, h);
                },
                "red",
                ahead(true)));
    robot.interact(() -> canvas.show(filled(Color.BLUE), "blue"));
    settle(1);
    go.countDown();
    WaitForAsyncUtils.sleep(300, TimeUnit.MILLISECONDS);
    assertEquals(Color.BLUE.getRGB(), middle());
    assertEquals(1, canvas.draws() - empty);
  }
}
