package org.fadeline.ui.log;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.log.LogClock;
import org.fadeline.log.Pad;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.Test;

/** The Log screen's doings without its view. */
class LogDeskTest {
  private static final Session MATCH =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 7);
  private static final long ALL_IN = MATCH.match().allIn();

  private final Workbench bench =
      new Workbench(
          new FakeDesk().with("a.session.json", MATCH),
          Reviewer::review,
          new DirectTaskService(),
          () -> {});
  private long now = ALL_IN;

  private LogDesk desk() {
    bench.open(Path.of("a.session.json"));
    LogDesk desk = new LogDesk(bench, () -> now);
    desk.takeUp(session());
    return desk;
  }

  private Session session() {
    return requireNonNull(bench.state().open()).session();
  }

  @Test
  void aMatchThatIsOnIsLoggedAsItHappensAtOnceAndNotJudged() {
    now = ALL_IN + 3_600_000;
    LogDesk desk = desk();
    assertEquals(LogClock.Source.LIVE, desk.clockProperty().get().source());
    assertTrue(bench.state().figuresBarred());
    desk.press(new Pad(EventKind.CAST, 0));
    assertEquals(now, desk.inHand().orElseThrow().at());
  }

  @Test
  void aMatchThatIsOverIsReadFromARecordingAndMayBeJudged() {
    now = MATCH.match().allOut() + 1;
    LogDesk desk = desk();
    assertEquals(LogClock.Source.RECORDING, desk.clockProperty().get().source());
    assertFalse(bench.state().figuresBarred());
    assertEquals(ALL_IN, desk.instant());
  }

  @Test
  void whatIsSaidIsOfTheEventInHandAndOfNoneWhereThereIsNone() {
    now = MATCH.match().allOut() + 1;
    LogDesk desk = desk();
    assertEquals("choose an event first", desk.say("3lb"));
    desk.press(new Pad(EventKind.LANDED, 1));
    assertNull(desk.say("2 carp 6lb"));
    // The international pound is 453.59237 g (Weights and Measures Act 1985, Schedule 1).
    assertEquals(
        new Fish(2, "carp", 6 * 453.59237, false), desk.inHand().orElseThrow().fishOrNull());
    desk.remove();
    assertTrue(desk.inHand().isEmpty());
    assertEquals(MATCH.events(), session().events());
  }
}
