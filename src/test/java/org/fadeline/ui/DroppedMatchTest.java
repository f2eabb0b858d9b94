package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** A file dropped on the window, where no screen takes it, is opened as a match. */
class DroppedMatchTest extends WindowHarness {
  @Test
  void theFirstOfTheFilesIsOpened() {
    desk.with("other.session.json", HandMade.session());
    // A screen that takes files itself would never let them reach the window.
    open("Replay");
    Path dropped = Path.of("other.session.json").toAbsolutePath();
    robot.interact(() -> Drops.drop(screen("Replay").view(), dropped, WindowHarness.FILE));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("other.session.json", requireNonNull(bench.state().open()).source().name());
    assertTrue(robot.lookup(".drop-ready").queryAll().isEmpty());
  }
}
