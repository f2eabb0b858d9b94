package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.store.SessionStore;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.Desk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A match with edits that were not saved, opened through the window. */
class ChangedOutsideTest extends WindowHarness {
  @TempDir Path folder;

  @Override
  Desk desk() {
    return new FileDesk(folder.resolve("app-data"));
  }

  private Path file() {
    return folder.resolve("match.session.json");
  }

  /** Leaves a match with one edit in its journal alone; returns it as the journal has it. */
  private Session leaveUnsaved() throws Exception {
    Session match = HandMade.session();
    try (SessionStore store = SessionStore.create(file(), match, folder.resolve("app-data"))) {
      SessionEvent bite =
          new SessionEvent.Bite(
              new Stamp(
                  "kept", match.match().allIn() + 60_000, match.lines().get(0).id(), "journal"));
      store.append(Edit.add("Add bite", store.session(), bite)).join();
      return store.session();
    }
  }

  @Test
  void editsThatWereNotSavedAreBackAndSaidSo() throws Exception {
    Session kept = leaveUnsaved();
    robot.interact(() -> bench.open(file()));
    assertEquals(kept.events(), session().events());
    assertTrue(shows("1 edit until"));
    assertTrue(requireNonNull(bench.state().open()).history().unsaved());
  }

  @Test
  void ofAFileChangedOutsideBothRecordsAreOffered() throws Exception {
    Session kept = leaveUnsaved();
    Session outside = HandMade.session().withEvents(HandMade.session().events().subList(0, 3));
    byte[] written = SessionWriter.toBytes(outside);
    Files.write(file(), written);
    robot.interact(() -> bench.open(file()));
    assertEquals(outside.events(), session().events());
    assertTrue(shows("The file was changed outside Fadeline"));
    Trouble trouble = requireNonNull(bench.state().activity().trouble());
    assertTrue(trouble.detail().contains("with 3 events"), trouble.detail());
    assertTrue(
        trouble.detail().contains("has " + kept.events().size() + " events"), trouble.detail());
    robot.clickOn("Take the record kept here");
    waitUntil(() -> session().events().equals(kept.events()));
    assertNull(bench.state().activity().trouble());
    assertEquals(written.length, Files.size(file()), "nothing is written before it is saved");
    robot.interact(() -> bench.editing().undo());
    waitUntil(() -> session().events().equals(outside.events()));
  }
}
