package org.fadeline.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * Starts the window on a match, visits every screen and ends: so that the classes a start needs can
 * be listed for the start archive of a package. Needs no display where Monocle is on the class path
 * and chosen. The argument is the match.
 */
public final class StartRehearsal {
  private static final long SETTLED_MILLIS = 1_200;
  private static final int SCREENS = 9;

  private StartRehearsal() {}

  /** Runs the rehearsal. */
  public static void main(String[] args) throws Exception {
    System.setProperty("java.awt.headless", "true");
    CountDownLatch over = new CountDownLatch(1);
    Thread visitor = new Thread(() -> visit(over), "visitor");
    visitor.setDaemon(true);
    visitor.start();
    WorkbenchLauncher.launch(Optional.of(Path.of(args[0])));
    if (!over.await(1, TimeUnit.MINUTES)) {
      throw new IllegalStateException("the window never came");
    }
  }

  private static void visit(CountDownLatch over) {
    try {
      while (Window.getWindows().isEmpty()) {
        Thread.sleep(50);
      }
      Thread.sleep(2 * SETTLED_MILLIS);
      for (int i = 1; i <= SCREENS; i++) {
        KeyCode digit = KeyCode.valueOf("DIGIT" + i);
        Platform.runLater(() -> press(digit));
        Thread.sleep(SETTLED_MILLIS);
      }
      over.countDown();
      Platform.runLater(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void press(KeyCode key) {
    Window window = Window.getWindows().get(0);
    if (window instanceof Stage stage) {
      Event.fireEvent(
          stage.getScene(),
          new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, true, false, false));
    }
  }
}
