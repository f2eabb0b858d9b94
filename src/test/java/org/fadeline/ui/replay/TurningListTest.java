package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.stage.Stage;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.ThemedScene;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A list with more turning points than it has pixels. */
@ExtendWith(ApplicationExtension.class)
class TurningListTest {
  private static final int MOVES = 500;
  private static final long STAY = 30_000;

  private final List<String> logged = new ArrayList<>();
  private final Handler listener =
      new Handler() {
        @Override
        public void publish(LogRecord entry) {
          logged.add(entry.getLoggerName() + ": " + entry.getMessage());
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
      };

  private final FxRobot robot = new FxRobot();
  private final Workbench bench = FakeDesk.opened(moves());
  private @Nullable TurningList turns;

  /** Back and forth between two lines. */
  private static Session moves() {
    Session frame = HandMade.session();
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 0; i < MOVES; i++) {
      String line = i % 2 == 0 ? "short" : "shallow";
      Stamp stamp = new Stamp("m" + i, frame.match().allIn() + i * STAY, line, null);
      events.add(new SessionEvent.Cast(stamp));
    }
    return frame.withEvents(events);
  }

  @Start
  void show(Stage stage) {
    Logger.getLogger("").addHandler(listener);
    TurningList made = new TurningList(bench);
    turns = made;
    stage.setScene(ThemedScene.of(made.view(), 320, 300));
    stage.show();
  }

  @AfterEach
  void stopListening() {
    Logger.getLogger("").removeHandler(listener);
  }

  private void seek(int move) {
    robot.interact(
        () -> {
          bench.transport().seek(bench.state().playhead().range().from() + move * STAY);
          requireNonNull(turns).show(bench.state());
        });
    WaitForAsyncUtils.waitForFxEvents(12);
  }

  private boolean isVisible(int index) {
    VirtualFlow<?> flow =
        (VirtualFlow<?>)
            requireNonNull((ListView<?>) requireNonNull(turns).view().lookup("#turning-points"))
                .lookup(".virtual-flow");
    return flow.getFirstVisibleCell().getIndex() <= index
        && index <= flow.getLastVisibleCell().getIndex();
  }

  /** Of moves close on each other only the last is sure to be followed, a moment later. */
  private void assertSeen(int index, int move) {
    try {
      WaitForAsyncUtils.waitFor(
          10,
          TimeUnit.SECONDS,
          () -> WaitForAsyncUtils.waitForAsyncFx(5_000, () -> isVisible(index)));
    } catch (TimeoutException never) {
      throw new AssertionError("move " + move, never);
    }
  }

  private int last() {
    return bench.state().turningPoints().size() - 1;
  }

  @Test
  void theLatestPointIsSeenHoweverThePlayheadCameThere() {
    for (int move : new int[] {480, 3, 250, 251, 252, 253, 254, 460, 470, 499, 100, 499}) {
      seek(move);
      assertEquals(move, last() + 1);
      assertSeen(last(), move);
    }
    assertEquals(List.of(), logged);
  }

  @Test
  void soItIsGoingBackStepByStep() {
    for (int move = 499; move > 330; move -= 7) {
      seek(move);
      assertEquals(move, last() + 1);
      assertSeen(last(), move);
    }
    assertEquals(List.of(), logged);
  }

  /** The list comes along a moment later; what is not known any more goes with the playhead. */
  @Test
  void aPointThatIsNotKnownAnyMoreIsHiddenAtOnce() {
    seek(300);
    assertSeen(299, 300);
    robot.interact(
        () -> {
          for (int move : new int[] {299, 298, 297}) {
            bench.transport().seek(bench.state().playhead().range().from() + move * STAY);
            requireNonNull(turns).show(bench.state());
            VirtualFlow<?> flow =
                (VirtualFlow<?>)
                    requireNonNull((ListView<?>) turns.view().lookup("#turning-points"))
                        .lookup(".virtual-flow");
            for (int i = move; i < flow.getCellCount(); i++) {
              var cell = flow.getVisibleCell(i);
              if (cell != null && cell.getGraphic() != null) {
                assertFalse(cell.getGraphic().isVisible(), "row " + i + " at move " + move);
                assertNull(cell.getAccessibleText());
              }
            }
          }
        });
    assertSeen(296, 297);
  }

  @Test
  void withHindsightTheCurrentOneIsSeen() {
    robot.interact(() -> bench.hindsight(true));
    for (int move : new int[] {400, 20, 300, 495, 10}) {
      seek(move);
      assertTrue(last() > 490);
      assertSeen(move - 1, move);
    }
    assertEquals(List.of(), logged);
  }
}
