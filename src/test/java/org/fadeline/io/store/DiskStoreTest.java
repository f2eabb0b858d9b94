package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.Sessions;
import org.fadeline.model.Document;
import org.fadeline.model.Edit;
import org.fadeline.model.Fish;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The store on a real disk. */
class DiskStoreTest {
  @TempDir Path folder;

  private Path document() {
    return folder.resolve("match.session.json");
  }

  private Path appData() {
    return folder.resolve("app-data");
  }

  private SessionStore create() throws IOException {
    return SessionStore.create(document(), Sessions.small(), appData());
  }

  private SessionStore.Opened open() throws IOException {
    return SessionStore.open(document(), appData());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> String.valueOf(f.getFileName())).sorted().toList();
    }
  }

  private static Edit note(Session session, int number) {
    Stamp stamp = new Stamp("n" + number, Sessions.at("11:00:00") + number, null, "n");
    return Edit.add("Add note " + number, session, new SessionEvent.Note(stamp));
  }

  @Test
  void aClosedAndSavedDocumentLeavesOnlyItselfItsHistoryAndItsBackups() throws IOException {
    SessionStore store = create();
    store.append(note(store.session(), 1)).join();
    assertTrue(store.isUnsaved());
    assertTrue(names().contains("match.session.json.journal"), () -> "no journal");
    assertTrue(store.save(false).join().isSaved());
    assertFalse(store.isUnsaved());
    Session last = store.session();
    store.close();
    assertEquals(
        List.of("match.session.json", "match.session.json.backups", "match.session.json.journal"),
        names());
    SessionStore again = open().store().orElseThrow();
    assertEquals(last, again.session());
    assertEquals(2, again.backups().size());
    again.close();
  }

  @Test
  void aDocumentSavedWithoutAnEditLeavesNoJournal() throws IOException {
    SessionStore store = create();
    assertTrue(store.save(false).join().isSaved());
    store.close();
    assertEquals(List.of("match.session.json", "match.session.json.backups"), names());
  }

  @Test
  void everyStepCanBeTakenBackHoweverOftenTheDocumentWasSavedAndClosed() throws IOException {
    SessionStore store = create();
    Session start = store.session();
    for (int i = 1; i <= 9; i++) {
      store.append(note(store.session(), i)).join();
      if (i % 3 == 0) {
        assertTrue(store.save(false).join().isSaved());
        store.close();
        SessionStore.Opened opened = open();
        assertTrue(opened.recovered().isEmpty(), "nothing to tell: all was saved");
        store = opened.store().orElseThrow();
        assertFalse(store.isUnsaved());
        assertEquals("Add note " + i, store.undoName().orElseThrow());
      }
    }
    Session all = store.session();
    for (int i = 9; i >= 4; i--) {
      store.undo().orElseThrow().join();
    }
    assertTrue(store.save(false).join().isSaved());
    store.close();
    store = open().store().orElseThrow();
    assertEquals("Add note 4", store.redoName().orElseThrow(), "what was undone stays undone");
    while (store.canUndo()) {
      store.undo().orElseThrow().join();
    }
    assertEquals(start.events(), store.session().events());
    while (store.canRedo()) {
      store.redo().orElseThrow().join();
    }
    assertEquals(all.events(), store.session().events());
    store.close();
  }

  @Test
  void aSavedFileChangedOutsideOpensWithoutTheOldStepsAndWithoutAWord() throws IOException {
    SessionStore store = create();
    store.append(note(store.session(), 1)).join();
    assertTrue(store.save(false).join().isSaved());
    Session outside = store.session().withEvents(store.session().events().subList(0, 1));
    store.close();
    Files.write(folder.resolve("match.session.json"), SessionWriter.toBytes(outside));
    SessionStore.Opened opened = open();
    assertTrue(opened.recovered().isEmpty(), "no edit was lost");
    SessionStore again = opened.store().orElseThrow();
    assertEquals(outside, again.session());
    assertFalse(again.canUndo());
    again.append(note(again.session(), 2)).join();
    again.close();
    assertEquals("Add note 2", open().store().orElseThrow().undoName().orElseThrow());
  }

  @Test
  void savingWithoutAnEditGivesTheSameBytes() throws IOException {
    SessionStore store = create();
    byte[] before = Files.readAllBytes(document());
    assertTrue(store.save(false).join().isSaved());
    assertEquals(-1, Arrays.mismatch(before, Files.readAllBytes(document())));
    store.close();
  }

  @Test
  void unsavedEditsComeBackAndCanStillBeUndone() throws IOException {
    SessionStore store = create();
    Session start = store.session();
    store.append(note(store.session(), 1)).join();
    store.append(note(store.session(), 2)).join();
    store.close();
    SessionStore.Opened opened = open();
    SessionStore again = opened.store().orElseThrow();
    assertEquals(2, opened.recovered().orElseThrow().edits());
    assertEquals("Add note 2", again.undoName().orElseThrow());
    again.undo().orElseThrow().join();
    again.undo().orElseThrow().join();
    assertFalse(again.canUndo());
    assertEquals(start.events(), again.session().events());
    assertEquals("Add note 1", again.redoName().orElseThrow());
    again.close();
  }

  @Test
  void undoReachesBackOverSavesAndFarBeyondWhatMemoryHolds() throws IOException {
    SessionStore store = create();
    Session start = store.session();
    for (int i = 1; i <= 300; i++) {
      var unused = store.append(note(store.session(), i));
      if (i == 100) {
        assertTrue(store.save(false).join().isSaved());
      }
    }
    Session end = store.session();
    for (int i = 1; i <= 300; i++) {
      store.undo().orElseThrow().join();
    }
    assertEquals(start.events(), store.session().events());
    assertTrue(store.undo().isEmpty());
    for (int i = 1; i <= 300; i++) {
      store.redo().orElseThrow().join();
    }
    assertEquals(end.events(), store.session().events());
    store.close();
  }

  @Test
  void editsThatTheDiskHasNotTakenYetCanBeUndone() throws IOException {
    Deque<Runnable> waiting = new ArrayDeque<>();
    StoreSettings settings =
        new StoreSettings(appData(), Clock.systemUTC(), waiting::add, DiskStorage.DISK);
    SessionStore store = StoreOpener.create(document(), Sessions.small(), settings);
    Session start = store.session();
    for (int i = 1; i <= 200; i++) {
      var unused = store.append(note(store.session(), i));
    }
    waiting.remove().run();
    for (int i = 1; i <= 200; i++) {
      var unused = store.undo().orElseThrow();
    }
    assertEquals(start.events(), store.session().events());
    waiting.forEach(Runnable::run);
    Session end = store.session();
    assertEquals(end, open(settings));
  }

  /** What a program that starts after a power cut finds: the lock is gone. */
  private Session open(StoreSettings settings) throws IOException {
    Path copy = folder.resolve("copy");
    Files.createDirectories(copy);
    for (String name : List.of("match.session.json", "match.session.json.journal")) {
      Files.copy(folder.resolve(name), copy.resolve(name));
    }
    StoreSettings direct =
        new StoreSettings(settings.appData(), settings.clock(), Runnable::run, DiskStorage.DISK);
    return StoreOpener.open(copy.resolve("match.session.json"), direct)
        .store()
        .orElseThrow()
        .session();
  }

  @Test
  void aNewDocumentOfTheSameNameKeepsTheUnsavedEditsOfTheOldOneAside() throws IOException {
    SessionStore store = create();
    store.append(note(store.session(), 1)).join();
    store.close();
    byte[] journal = Files.readAllBytes(folder.resolve("match.session.json.journal"));
    create().close();
    assertEquals(
        -1,
        Arrays.mismatch(
            journal, Files.readAllBytes(folder.resolve("match.session.json.journal.damaged"))));
  }

  @Test
  void aSecondOpenerGetsReadOnly() throws IOException {
    SessionStore store = create();
    SessionStore second = open().store().orElseThrow();
    assertTrue(second.readOnlyReason().orElseThrow().contains("open elsewhere"));
    Edit edit = note(second.session(), 1);
    assertThrows(IllegalStateException.class, () -> second.append(edit));
    second.close();
    store.append(note(store.session(), 1)).join();
    store.close();
    SessionStore third = open().store().orElseThrow();
    assertTrue(third.readOnlyReason().isEmpty());
    third.close();
  }

  @Test
  void anEditThatCouldNotBeReadAgainIsRefusedAndChangesNothing() throws IOException {
    SessionStore store = create();
    Session now = store.session();
    Stamp stamp = new Stamp("bad", now.match().allIn(), null, "half \uD83D");
    Edit surrogate = Edit.add("Add", now, new SessionEvent.Note(stamp));
    assertThrows(IllegalArgumentException.class, () -> store.append(surrogate));
    Edit twice = Edit.add("Add", now, new SessionEvent.Note(now.events().get(0).stamp()));
    assertThrows(IllegalArgumentException.class, () -> store.append(twice));
    Outcome outside =
        new Outcome(List.of(), null, List.of(new Outcome.Media("../../etc/passwd", 0, 1)));
    Edit escaping = Edit.between("Add film", now, now.withOutcome(outside));
    assertThrows(IllegalArgumentException.class, () -> store.append(escaping));
    Edit none =
        Edit.add(
            "Add",
            now,
            new SessionEvent.Landed(
                new Stamp("z", now.match().allIn(), "short", null),
                new Fish(0, null, null, false)));
    assertThrows(IllegalArgumentException.class, () -> store.append(none));
    assertEquals(now, store.session());
    assertTrue(store.save(false).join().isSaved());
    store.close();
  }

  @Test
  void aHandMadeFileGetsItsIdentityWithTheFirstSave() throws IOException {
    String json =
        """
        {"format": "fadeline-session", "version": 1, "zone": "Europe/London",
         "match": {"allIn": "2026-08-15T10:00", "allOut": "2026-08-15T15:00"},
         "lines": [{"id": "a"}], "events": [{"at": "2026-08-15T10:05", "kind": "note"}]}
        """;
    Files.writeString(document(), json);
    SessionStore store = open().store().orElseThrow();
    store.append(note(store.session(), 1)).join();
    Session edited = store.session();
    store.close();
    SessionStore again = open().store().orElseThrow();
    assertEquals(edited, again.session());
    assertTrue(again.save(false).join().isSaved());
    again.close();
    Session saved = SessionReader.read(document()).session().orElseThrow();
    assertEquals(edited, saved);
    assertEquals(1, saved.document().sequence());
  }

  @Test
  void whatCannotBeReadIsNotOpenedAndNothingIsLeftBehind() throws IOException {
    Files.writeString(document(), "{\"format\": ");
    SessionStore.Opened opened = open();
    assertTrue(opened.store().isEmpty());
    assertTrue(opened.read().report().hasErrors());
    assertEquals(List.of("match.session.json"), names());
    assertTrue(
        SessionStore.open(folder.resolve("none.session.json"), appData())
            .read()
            .report()
            .hasErrors());
  }

  @Test
  void tenBackupsAndOneADayForFourteenDaysAreKept() throws IOException {
    Instant first = Instant.parse("2026-08-01T09:00:00Z");
    Backups backups = new Backups(DiskStorage.DISK, folder.resolve("b"));
    Session session = Sessions.small();
    int sequence = 0;
    Instant at = first;
    for (int day = 0; day < 30; day++) {
      for (int save = 0; save < 4; save++) {
        at = first.plus(Duration.ofDays(day)).plus(Duration.ofHours(save));
        session = session.withDocument(Document.of("d", ++sequence));
        backups.add(SessionWriter.toBytes(session), at.toEpochMilli());
        backups.prune(at.toEpochMilli());
      }
    }
    List<Path> kept = backups.newestFirst();
    // The last ten are those of the last two and a half days; eleven more days have one each.
    assertEquals(10 + 11, kept.size(), () -> kept.toString());
    Session newest = SessionReader.read(kept.get(0)).session().orElseThrow();
    assertEquals(sequence, newest.document().sequence());
  }

  @Test
  void theLastGoodBackupIsNeverDeleted() throws IOException {
    Backups backups = new Backups(DiskStorage.DISK, folder.resolve("b"));
    long at = Instant.parse("2026-01-01T09:00:00Z").toEpochMilli();
    byte[] good = SessionWriter.toBytes(Sessions.small());
    backups.add(good, at);
    for (int i = 1; i <= 40; i++) {
      long later = at + Duration.ofDays(30).toMillis() + i * 1000L;
      backups.add(("damaged " + i).getBytes(StandardCharsets.UTF_8), later);
      backups.prune(later);
    }
    assertTrue(backups.withHash(SessionWriter.hashOf(good)).isPresent());
    assertEquals(11, backups.newestFirst().size());
  }

  @Test
  void aFolderThatCannotBeWrittenKeepsItsJournalInTheAppDataFolder() throws IOException {
    create().close();
    // Root may write anywhere, so the real disk is asked through a view of it that says no.
    Storage readOnly = new ReadOnlyStorage(folder);
    StoreSettings settings =
        new StoreSettings(
            appData(), Clock.fixed(Instant.EPOCH, ZoneOffset.UTC), Runnable::run, readOnly);
    SessionStore store = StoreOpener.open(document(), settings).store().orElseThrow();
    store.append(note(store.session(), 1)).join();
    Session edited = store.session();
    SaveResult refused = store.save(false).join();
    assertEquals(SaveResult.Status.FAILED, refused.status());
    assertTrue(refused.message().contains("save under another name"), refused.message());
    store.close();
    SessionStore again = StoreOpener.open(document(), settings).store().orElseThrow();
    assertEquals(edited, again.session());
    again.close();
  }
}
