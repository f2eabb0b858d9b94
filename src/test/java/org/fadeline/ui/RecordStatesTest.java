package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.input.KeyCode;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.TaskService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** What Replay and Review say of a record with nothing or hardly anything in it, or none yet. */
@ExtendWith(ApplicationExtension.class)
class RecordStatesTest extends WindowHarness {
  private final List<Throwable> thrown = new ArrayList<>();
  private boolean neverDone;

  @Override
  protected TaskService tasks() {
    return new OpensOnly(new DirectTaskService());
  }

  /** Works at once, but where it is told so never at anything but opening. */
  private final class OpensOnly implements TaskService {
    private final TaskService direct;

    OpensOnly(TaskService direct) {
      this.direct = direct;
    }

    @Override
    public <T> void submit(String channel, String title, Job<T> job, Answer<T> answer) {
      if (!neverDone || channel.equals("open")) {
        direct.submit(channel, title, job, answer);
      }
    }

    @Override
    public void cancel(String channel) {
      direct.cancel(channel);
    }

    @Override
    public void later(Runnable action) {
      direct.later(action);
    }

    @Override
    public ReadOnlyObjectProperty<List<Running>> runningProperty() {
      return direct.runningProperty();
    }

    @Override
    public void close() {
      direct.close();
    }
  }

  @BeforeEach
  void listen() {
    robot.interact(
        () -> Thread.currentThread().setUncaughtExceptionHandler((t, e) -> thrown.add(e)));
  }

  @AfterEach
  void nothingWasThrown() {
    assertEquals(List.of(), thrown);
  }

  private void put(List<SessionEvent> events) {
    desk.with("hand.session.json", HandMade.of(events));
  }

  private List<SessionEvent> some(String... ids) {
    Session whole = HandMade.session();
    return whole.events().stream().filter(e -> List.of(ids).contains(e.id())).toList();
  }

  /** Presses what plays, steps, seeks and changes the view. */
  private void useReplay() {
    for (KeyCode key :
        List.of(
            KeyCode.RIGHT,
            KeyCode.N,
            KeyCode.P,
            KeyCode.END,
            KeyCode.H,
            KeyCode.M,
            KeyCode.L,
            KeyCode.H,
            KeyCode.PERIOD,
            KeyCode.Z,
            KeyCode.DELETE,
            KeyCode.HOME)) {
      robot.push(key);
      WaitForAsyncUtils.waitForFxEvents();
    }
  }

  @Test
  void nothingOpen() {
    for (String screen : List.of("Replay", "Review")) {
      robot.interact(() -> window.showScreen(screen));
      WaitForAsyncUtils.waitForFxEvents();
      assertFalse(shows("Working out"));
    }
    useReplay();
  }

  @Test
  void onlyWhatWasSetUp() {
    put(List.of());
    open("Replay");
    assertTrue(shows("Nothing is logged in this match yet"));
    assertFalse(shows("Working out"));
    useReplay();
    robot.interact(() -> window.showScreen("Review"));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("No line was fished in this record, so there is nothing to judge."));
  }

  @Test
  void twoEvents() {
    put(some("c1", "s"));
    open("Replay");
    assertFalse(shows("Nothing is logged"));
    robot.push(KeyCode.END);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("2 lb 7 oz"), "one fish of 1,100 g");
    useReplay();
    robot.interact(() -> window.showScreen("Review"));
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(shows("nothing to judge"));
  }

  @Test
  void stillWorkingItOut() {
    neverDone = true;
    open("Replay");
    assertTrue(shows("Working out the review"));
    useReplay();
    robot.interact(() -> window.showScreen("Review"));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("Working out"));
  }
}
