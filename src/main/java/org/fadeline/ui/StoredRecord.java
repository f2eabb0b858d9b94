package org.fadeline.ui;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fadeline.io.SessionNames;
import org.fadeline.io.store.SaveResult;
import org.fadeline.io.store.SessionStore;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.OpenSession;

/** A session with its file and its journal. */
final class StoredRecord implements Desk.Held {
  private final SessionStore store;
  private final Desk.Notice notice;

  StoredRecord(SessionStore store, Desk.Notice notice) {
    this.store = store;
    this.notice = notice;
  }

  @Override
  public Session session() {
    return store.session();
  }

  @Override
  public OpenSession.Source source() {
    return new OpenSession.Source(
        store.document(), SessionNames.bare(store.document()), store.readOnlyReason().orElse(null));
  }

  @Override
  public OpenSession.History history() {
    return new OpenSession.History(
        store.undoName().orElse(null), store.redoName().orElse(null), store.isUnsaved());
  }

  @Override
  public Desk.Notice notice() {
    return notice;
  }

  @Override
  public CompletableFuture<?> append(Edit edit) {
    return store.append(edit);
  }

  @Override
  public Optional<CompletableFuture<?>> undo() throws IOException {
    return store.undo().map(kept -> kept);
  }

  @Override
  public Optional<CompletableFuture<?>> redo() throws IOException {
    return store.redo().map(kept -> kept);
  }

  @Override
  public Optional<CompletableFuture<Desk.Saved>> save(boolean overwrite) {
    return Optional.of(
        store
            .save(overwrite)
            .thenApply(
                result ->
                    new Desk.Saved(
                        result.isSaved(),
                        result.status() == SaveResult.Status.CHANGED_OUTSIDE,
                        result.message())));
  }

  @Override
  public void close() {
    try {
      store.close();
    } catch (IOException failure) {
      // Every edit was written when it was made; only tidying up failed.
      Logger.getLogger("org.fadeline").log(Level.FINE, "closing a session", failure);
    }
  }
}
