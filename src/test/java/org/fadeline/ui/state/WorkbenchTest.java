package org.fadeline.ui.state;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.Course;
import org.fadeline.analysis.Course.TurningKind;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.NetCourse;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The commands, one by one, without a toolkit. */
class WorkbenchTest {
  private final FakeDesk desk =
      new FakeDesk().with("a.session.json", HandMade.session()).with("b.session.json", other());
  private final List<ReviewSettings> reviewed = new ArrayList<>();
  private Workbench bench = new Workbench(desk, this::review, new DirectTaskService(), () -> {});

  private static Session other() {
    return HandMade.of(HandMade.session().events().subList(0, 5));
  }

  private Review review(Session session, ReviewSettings settings, Units units) {
    reviewed.add(settings);
    List<TurningPoint> points =
        List.of(
            new TurningPoint(minute(7.5), TurningKind.FIRST_BITE, "short", false, "First", ""),
            new TurningPoint(minute(60), TurningKind.FADED, "shallow", true, "Faded", ""),
            new TurningPoint(minute(120), TurningKind.PLAIN, "shallow", false, "Plain", ""));
    return new Review(
        session,
        settings,
        new Review.Summary(Caught.NOTHING, Review.WeightFrom.ESTIMATED, Grade.FULL, 1, 0),
        List.of(),
        List.of(),
        new Course(List.of(), List.of(), points, List.of(), List.of(), List.of(), NetCourse.NONE));
  }

  @BeforeEach
  void open() {
    bench.open(Path.of("a.session.json"));
  }

  private long at() {
    return bench.state().playhead().at();
  }

  @Test
  void opensAtAllInWithAReview() {
    assertEquals(HandMade.ALL_IN, at());
    assertNotNull(bench.state().review().latest());
    assertFalse(bench.state().review().pending());
  }

  @Test
  void aFileThatCannotBeReadLeavesTheSessionInHand() {
    bench.transport().seek(minute(30));
    OpenSession before = bench.state().open();
    bench.open(Path.of("missing.json"));
    assertSame(before, bench.state().open());
    assertEquals(minute(30), at());
    assertEquals(1, requireNonNull(bench.state().activity().trouble()).problems().size());
    assertNull(bench.state().activity().opening());
    bench.dismissTrouble();
    assertNull(bench.state().activity().trouble());
  }

  @Test
  void nobodySeesANewSessionWithAnOldPlayhead() {
    bench.transport().seek(minute(200));
    bench.picking().pick("z");
    List<String> torn = new ArrayList<>();
    bench
        .stateProperty()
        .addListener(
            (property, before, after) -> {
              boolean isNew = requireNonNull(after.open()).session().events().size() == 5;
              if (isNew
                  && (after.playhead().at() != HandMade.ALL_IN
                      || !after.selection().events().isEmpty())) {
                torn.add("old playhead or selection with the new session");
              }
            });
    bench.open(Path.of("b.session.json"));
    assertEquals(5, requireNonNull(bench.state().open()).session().events().size());
    assertEquals(List.of(), torn);
    assertEquals(List.of("a.session.json"), desk.closed);
  }

  @Test
  void stepsByEvent() {
    bench.transport().step(true);
    assertEquals(minute(1), at());
    bench.transport().step(true);
    assertEquals(minute(5), at());
    bench.transport().step(false);
    assertEquals(minute(1), at());
    bench.transport().step(false);
    assertEquals(minute(0), at());
    bench.transport().step(false);
    assertEquals(minute(0), at());
    bench.transport().seek(minute(241));
    bench.transport().step(true);
    assertEquals(HandMade.ALL_OUT, at());
  }

  @Test
  void noTurningPointAheadIsGoneToAsKnownThen() {
    bench.hindsight(false);
    bench.transport().turningPoint(true);
    assertEquals(minute(0), at());
    assertNotNull(bench.state().activity().message(), "says that it is still to come");
    bench.transport().seek(minute(200));
    bench.transport().turningPoint(false);
    assertEquals(minute(181), at(), "the move back");
    bench.transport().seek(minute(180));
    bench.transport().turningPoint(true);
    assertEquals(minute(180), at(), "what was known at 200 is not known at 180");
    bench.transport().seek(minute(26));
    bench.transport().turningPoint(false);
    assertEquals(minute(7.5), at(), "the first bite");
    bench.hindsight(true);
    bench.transport().turningPoint(true);
    assertEquals(minute(60), at());
    bench.transport().turningPoint(true);
    assertEquals(minute(120), at());
  }

  @Test
  void whatIsPickedAndNotKnownYetIsDropped() {
    bench.hindsight(true);
    List<SessionEvent> events = requireNonNull(bench.state().open()).session().events();
    bench.picking().pickAll(List.of(events.get(0).id(), events.get(events.size() - 1).id()));
    bench.transport().seek(events.get(0).at());
    assertEquals(2, bench.state().selection().events().size(), "with hindsight both are known");
    bench.hindsight(false);
    assertEquals(Set.of(events.get(0).id()), bench.state().selection().events());
  }

  @Test
  void seeksAreClamped() {
    bench.transport().seek(0);
    assertEquals(HandMade.ALL_IN, at());
    bench.transport().nudge(Long.MAX_VALUE - HandMade.ALL_OUT);
    assertEquals(HandMade.ALL_OUT, at());
  }

  @Test
  void playsPausesAndReverses() {
    bench.transport().seek(minute(60));
    bench.transport().speed(60);
    bench.transport().advance(1_000_000_000L);
    assertEquals(minute(60), at());
    bench.transport().play();
    bench.transport().advance(1_000_000_000L);
    assertEquals(minute(61), at());
    bench.transport().reverse(true);
    bench.transport().advance(2_000_000_000L);
    assertEquals(minute(59), at());
    bench.transport().toggle();
    assertFalse(bench.state().playhead().motion().playing());
    bench.transport().faster(true);
    assertEquals(120, bench.state().playhead().motion().speed());
    bench.transport().faster(false);
    bench.transport().faster(false);
    assertEquals(10, bench.state().playhead().motion().speed());
  }

  @Test
  void loopsAreBroughtInsideTheMatch() {
    bench.transport().loop(new Range(0, minute(10)));
    assertEquals(new Range(HandMade.ALL_IN, minute(10)), bench.state().playhead().motion().loop());
    bench.transport().loop(null);
    assertNull(bench.state().playhead().motion().loop());
  }

  @Test
  void picksExtendsAndToggles() {
    bench.picking().pick("w0");
    bench.picking().extend(List.of("w1"));
    assertEquals(Set.of("w0", "w1c", "w1h", "w1"), bench.state().selection().events());
    bench.picking().extend(List.of("t"));
    assertTrue(bench.state().selection().events().containsAll(Set.of("t", "m1", "w0")));
    bench.picking().pick("nothing of that name");
    assertTrue(bench.state().selection().events().isEmpty());
    bench.picking().toggle(List.of("w0"));
    bench.picking().toggle(List.of("w1"));
    bench.picking().toggle(List.of("w0"));
    assertEquals(Set.of("w1"), bench.state().selection().events());
  }

  @Test
  void otherSettingsReviewAgainAndTheSameOnesDoNot() {
    ReviewSettings half =
        ReviewSettings.DEFAULT.withCallLevel(0.5).withMeasure(ReviewSettings.Measure.FISH);
    bench.settings(half);
    bench.settings(half);
    assertEquals(List.of(ReviewSettings.DEFAULT, half), reviewed);
  }

  @Test
  void commandsCheckTheirThread() {
    Workbench strict =
        new Workbench(
            desk,
            this::review,
            new DirectTaskService(),
            () -> {
              throw new IllegalStateException("not this thread");
            });
    assertThrows(IllegalStateException.class, () -> strict.transport().seek(1));
    assertThrows(IllegalStateException.class, () -> strict.open(Path.of("a.session.json")));
  }

  @Test
  void withoutASessionTransportDoesNothing() {
    bench.closeSession();
    bench.transport().play();
    bench.transport().step(true);
    bench.transport().turningPoint(false);
    assertEquals(WorkbenchState.EMPTY, bench.state());
    assertEquals(List.of("a.session.json"), desk.closed);
  }
}
