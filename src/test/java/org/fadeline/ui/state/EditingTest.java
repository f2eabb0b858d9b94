package org.fadeline.ui.state;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.EventEdits;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.state.OpenSession.History;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One gesture, one named step; every step back and forth; the playhead and the pick stay. */
class EditingTest {
  private final FakeDesk desk = new FakeDesk().with("a.session.json", HandMade.session());
  private final Workbench bench =
      new Workbench(desk, Reviewer::review, new DirectTaskService(), () -> {});

  @BeforeEach
  void open() {
    bench.open(Path.of("a.session.json"));
  }

  private Session session() {
    return session(bench);
  }

  private static Session session(Workbench of) {
    return requireNonNull(of.state().open()).session();
  }

  private History history() {
    return history(bench);
  }

  private static History history(Workbench of) {
    return requireNonNull(of.state().open()).history();
  }

  private SessionEvent event(String id) {
    return event(bench, id);
  }

  private static SessionEvent event(Workbench of, String id) {
    return session(of).events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void movesUndoesAndRedoesAnEvent() {
    bench.transport().seek(minute(60));
    bench.picking().pick("w0");
    bench.editing().edit("Move landed", EventEdits.shift(Set.of("w0"), 120_000));
    assertEquals(minute(32), event("w0").at());
    assertEquals(new History("Move landed", null, true), history());
    assertEquals(minute(60), bench.state().playhead().at());
    assertEquals(Set.of("w0"), bench.state().selection().events());
    bench.editing().undo();
    assertEquals(HandMade.session().events(), session().events());
    assertEquals(new History(null, "Move landed", false), history());
    bench.editing().redo();
    assertEquals(minute(32), event("w0").at());
    assertEquals(List.of("Move landed"), desk.kept);
  }

  @Test
  void undoHasNoLimit() {
    // The review of nothing for every step: what is tested here are the steps.
    Review one = Reviewer.review(HandMade.session().withEvents(List.of()), ReviewSettings.DEFAULT);
    Workbench bench =
        new Workbench(desk, (s, settings, units) -> one, new DirectTaskService(), () -> {});
    bench.open(Path.of("a.session.json"));
    for (int i = 1; i <= 300; i++) {
      bench.editing().edit("Step " + i, EventEdits.note("w0", "note " + i));
    }
    assertEquals("note 300", event(bench, "w0").note());
    for (int i = 300; i >= 1; i--) {
      assertEquals("Step " + i, history(bench).undo());
      bench.editing().undo();
    }
    assertNull(history(bench).undo());
    assertEquals(HandMade.session().events(), session(bench).events());
    bench.editing().undo();
    assertEquals(HandMade.session().events(), session(bench).events());
  }

  @Test
  void aNewStepEndsWhatCouldBeDoneAgain() {
    bench.editing().edit("One", EventEdits.note("w0", "one"));
    bench.editing().undo();
    bench.editing().edit("Two", EventEdits.note("w0", "two"));
    assertNull(history().redo());
    bench.editing().redo();
    assertEquals("two", event("w0").note());
  }

  @Test
  void nothingChangedIsNoStep() {
    bench.editing().edit("Nothing", EventEdits.shift(Set.of("w0"), 0));
    assertNull(history().undo());
    assertTrue(desk.kept.isEmpty());
  }

  @Test
  void theReviewFollowsAnEdit() {
    int before = requireNonNull(bench.state().review().latest()).summary().caught().landed();
    bench.editing().edit("Delete landed", EventEdits.remove(Set.of("w0", "w0h", "w0c")));
    int after = requireNonNull(bench.state().review().latest()).summary().caught().landed();
    assertEquals(before - 1, after);
    assertFalse(bench.state().review().pending());
  }

  @Test
  void otherKindsKeepTheTimeTheLineAndTheFish() {
    bench.editing().edit("Change", EventEdits.kind(Set.of("w0"), EventKind.FOUL));
    SessionEvent foul = event("w0");
    assertEquals(EventKind.FOUL, foul.kind());
    assertEquals(minute(30), foul.at());
    assertEquals("shallow", foul.lineId());
    assertEquals(1400.0, requireNonNull(foul.fishOrNull()).grams());
    for (EventKind kind : EventKind.values()) {
      bench.editing().edit("Change", EventEdits.kind(Set.of("w0"), kind));
      assertEquals(kind, event("w0").kind());
      assertEquals(minute(30), event("w0").at());
    }
  }

  @Test
  void shiftsAndStretchesMany() {
    Set<String> ids = Set.of("w0", "w1", "w2");
    bench.editing().edit("Shift", EventEdits.shift(ids, -60_000));
    assertEquals(minute(29), event("w0").at());
    assertEquals(minute(41), event("w2").at());
    bench
        .editing()
        .edit("Stretch", EventEdits.stretch(ids, minute(29), minute(41), minute(29), minute(53)));
    assertEquals(minute(29), event("w0").at());
    assertEquals(minute(41), event("w1").at());
    assertEquals(minute(53), event("w2").at());
  }

  @Test
  void anEventMovedOutsideWidensTheRangeAndUndoNarrowsIt() {
    bench.transport().toEnd();
    bench.editing().edit("Move", EventEdits.shift(Set.of("y"), 2 * 3_600_000L));
    assertEquals(minute(360), bench.state().playhead().range().to());
    bench.transport().toEnd();
    bench.editing().undo();
    assertEquals(HandMade.ALL_OUT, bench.state().playhead().range().to());
    assertEquals(HandMade.ALL_OUT, bench.state().playhead().at());
  }

  @Test
  void aStepThatIsNotOnTheDiskIsSaidAndStays() {
    desk.full = true;
    bench.editing().edit("Note", EventEdits.note("w0", "x"));
    assertEquals("x", event("w0").note());
    assertTrue(requireNonNull(bench.state().activity().trouble()).detail().contains("no space"));
  }

  @Test
  void savingOverAFileChangedOutsideIsAskedFirst() {
    desk.changedOutside = true;
    assertTrue(bench.editing().save(false));
    Activity.Trouble trouble = requireNonNull(bench.state().activity().trouble());
    requireNonNull(trouble.offer()).action().run();
    assertEquals(List.of(false, true), desk.saves);
    assertEquals("Saved", bench.state().activity().message());
  }

  @Test
  void savedAsAnotherFileTheWorkGoesOnThere() {
    bench.editing().edit("Note", EventEdits.note("w0", "x"));
    bench.editing().saveAs(Path.of("b.session.json"));
    assertEquals("b.session.json", requireNonNull(bench.state().open()).source().name());
    assertEquals("x", event("w0").note());
    assertEquals(List.of("a.session.json"), desk.closed);
  }
}
