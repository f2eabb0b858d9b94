package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import org.fadeline.io.Sessions;
import org.fadeline.model.Edit;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/**
 * A little work on a document: edits, undo, redo, saves, in a fixed order, noting what was
 * acknowledged and what the session was at each sequence.
 */
final class StoreScript {
  static final Path FILE = Path.of("/folder/match.session.json");
  static final Path APP_DATA = Path.of("/app-data");

  /** The session at each sequence. */
  final Map<Long, Session> states = new TreeMap<>();

  /** Highest sequence acknowledged; -1 before the document was created. */
  long acknowledged = -1;

  /** Saves that were reported done. */
  int saves;

  private final StoreSettings settings;
  private @Nullable SessionStore store;

  StoreScript(Storage storage) {
    this.settings = settings(storage);
  }

  static StoreSettings settings(Storage storage) {
    return new StoreSettings(
        APP_DATA,
        Clock.fixed(Instant.parse("2026-08-15T12:00:00Z"), ZoneOffset.UTC),
        Runnable::run,
        storage);
  }

  SessionStore store() {
    if (store == null) {
      throw new IllegalStateException("not created");
    }
    return store;
  }

  void run() throws IOException {
    Session start = Sessions.small();
    states.put(start.document().sequence(), start);
    store = StoreOpener.create(FILE, start, settings);
    acknowledged = start.document().sequence();
    note(1);
    note(2);
    lines();
    save();
    note(3);
    undo();
    undo();
    redo();
    save();
    note(4);
    outcome();
    undo();
    save();
    undo();
    note(5);
  }

  /** A shorter piece of work with a record of every kind. */
  void runShort() throws IOException {
    Session start = Sessions.small();
    start = start.withEvents(start.events().subList(0, 2));
    states.put(start.document().sequence(), start);
    store = StoreOpener.create(FILE, start, settings);
    note(1);
    note(6);
    save();
    note(2);
    undo();
    redo();
    note(3);
  }

  private void note(int number) {
    Session now = store().session();
    Stamp stamp = new Stamp("n" + number, Sessions.at("11:0" + number + ":00"), null, "note");
    edit(Edit.add("Add note", now, new SessionEvent.Note(stamp)));
  }

  private void lines() {
    Session now = store().session();
    edit(Edit.between("Rename", now, now.withLines(now.lines().subList(0, 2))));
    Session again = store().session();
    edit(
        Edit.between(
            "Swap", again, again.withLines(List.of(again.lines().get(1), again.lines().get(0)))));
  }

  private void outcome() {
    Session now = store().session();
    edit(Edit.between("Clear weigh-in", now, now.withOutcome(Outcome.UNKNOWN)));
  }

  private void edit(Edit edit) {
    await(store().append(edit));
  }

  private void undo() throws IOException {
    await(store().undo().orElseThrow());
  }

  private void redo() throws IOException {
    await(store().redo().orElseThrow());
  }

  /** The writer runs in this thread, so the future is complete. */
  private void await(CompletableFuture<Long> future) {
    states.put(store().session().document().sequence(), store().session());
    if (!future.isCompletedExceptionally()) {
      acknowledged = future.join();
    }
  }

  private void save() {
    CompletableFuture<SaveResult> future = store().save(false);
    if (!future.isCompletedExceptionally() && future.join().isSaved()) {
      saves++;
    }
  }

  static List<String> names(Map<Path, byte[]> files) {
    return new ArrayList<>(files.keySet().stream().map(Path::toString).sorted().toList());
  }
}
