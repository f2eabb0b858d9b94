package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.fadeline.io.ReadResult;
import org.fadeline.model.Document;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * A session's document: its file, its journal and its undo steps.
 *
 * <p>Every edit takes effect at once and is written to the journal by a thread of its own; the
 * returned future completes when the disk has it, so that neither a killed program nor a power cut
 * can lose it. Undo and redo are unlimited and are edits of the record like others. Methods may be
 * called from any one thread.
 */
public final class SessionStore implements AutoCloseable {
  private static final int RECENT = 64;

  /** A history larger than this, bytes, is not kept once all is saved: opening would read it. */
  private static final long LONGEST_HISTORY = 64L << 20;

  private final StoreSettings settings;
  private final DocumentFile file;
  private final Journal journal;
  private final History history;
  private final @Nullable String readOnlyReason;
  private final Map<Long, Edit> recent = new LinkedHashMap<>();
  private final Storage.@Nullable Lock lock;
  private Session session;
  private long savedSequence;

  SessionStore(
      StoreSettings settings,
      DocumentFile file,
      Recovery.Result state,
      Storage.@Nullable Lock lock,
      @Nullable String readOnlyReason) {
    this.settings = settings;
    this.file = file;
    this.journal = state.journal();
    this.history = state.history();
    this.session = state.session();
    this.lock = lock;
    this.readOnlyReason = readOnlyReason;
    this.savedSequence = file.savedSequence();
  }

  /**
   * What opening gave.
   *
   * @param store or empty where the file cannot be used
   * @param read the problems of the file
   * @param recovered what was found in its journal, or empty where there was nothing to tell
   */
  public record Opened(
      Optional<SessionStore> store, ReadResult read, Optional<Recovered> recovered) {}

  /**
   * Opens a session file with its journal. Where somebody else has it open, or a newer version
   * wrote it, it opens for reading only.
   *
   * @param document a {@code .session.json}
   * @param appData folder for the journal where the document's own folder cannot be written
   * @throws IOException if the disk fails; nothing was changed then
   */
  public static Opened open(Path document, Path appData) throws IOException {
    return StoreOpener.open(document, StoreSettings.of(appData));
  }

  /**
   * Saves a new session and opens it. A file of that name is replaced; its content is kept among
   * the backups.
   *
   * @throws IOException if it cannot be written
   */
  public static SessionStore create(Path document, Session session, Path appData)
      throws IOException {
    return StoreOpener.create(document, session, StoreSettings.of(appData));
  }

  /** Returns the session as it stands, with every edit. */
  public synchronized Session session() {
    return session;
  }

  /** Returns the file. */
  public Path document() {
    return file.path();
  }

  /** Returns why nothing can be changed, in words for the screen, or empty where it can. */
  public Optional<String> readOnlyReason() {
    return Optional.ofNullable(readOnlyReason);
  }

  /** Returns whether there are edits that the file does not hold yet. */
  public synchronized boolean isUnsaved() {
    return session.document().sequence() != savedSequence;
  }

  /** Returns the copies kept of what was saved, newest first. */
  List<Path> backups() throws IOException {
    return file.backups();
  }

  /** Returns whether there is an edit to undo. */
  synchronized boolean canUndo() {
    return history.canUndo();
  }

  /** Returns whether there is an edit to redo. */
  synchronized boolean canRedo() {
    return history.canRedo();
  }

  /** Returns the name of the edit that undo would take back, or empty. */
  public synchronized Optional<String> undoName() {
    return history.canUndo() ? nameOf(history.nextUndo()) : Optional.empty();
  }

  /** Returns the name of the edit that redo would do again, or empty. */
  public synchronized Optional<String> redoName() {
    return history.canRedo() ? nameOf(history.nextRedo()) : Optional.empty();
  }

  private Optional<String> nameOf(long sequence) {
    try {
      return Optional.of(editOf(sequence).name());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Makes an edit.
   *
   * @return completes with the document's sequence when the disk has the edit; completes with an
   *     {@link IOException} when it could not be written: it is then still in effect, and is
   *     written with the next one
   * @throws IllegalArgumentException if the edit does not fit, or leads to a session that could not
   *     be read again; nothing was changed then
   * @throws IllegalStateException if the document is open for reading only
   */
  public synchronized CompletableFuture<Long> append(Edit edit) {
    checkWritable();
    Session after = next(edit.apply(session));
    KeptChecks.checkSession(after);
    long sequence = after.document().sequence();
    JournalRecord record = JournalRecord.edit(sequence, settings.clock().millis(), edit);
    KeptChecks.checkRecord(record);
    recent.put(sequence, edit);
    return take(after, record);
  }

  /**
   * Takes the last edit back.
   *
   * @return as {@link #append(Edit)}, or empty where there is nothing to undo
   * @throws IOException if the edit cannot be read from the journal; nothing was changed then
   */
  public synchronized Optional<CompletableFuture<Long>> undo() throws IOException {
    checkWritable();
    if (!history.canUndo()) {
      return Optional.empty();
    }
    long of = history.nextUndo();
    return Optional.of(step(JournalRecord.Act.UNDO, of, editOf(of).inverse()));
  }

  /**
   * Does the edit last taken back again.
   *
   * @return as {@link #append(Edit)}, or empty where there is nothing to redo
   * @throws IOException if the edit cannot be read from the journal; nothing was changed then
   */
  public synchronized Optional<CompletableFuture<Long>> redo() throws IOException {
    checkWritable();
    if (!history.canRedo()) {
      return Optional.empty();
    }
    long of = history.nextRedo();
    return Optional.of(step(JournalRecord.Act.REDO, of, editOf(of)));
  }

  private CompletableFuture<Long> step(JournalRecord.Act act, long of, Edit edit) {
    Session after = next(edit.apply(session));
    long sequence = after.document().sequence();
    return take(after, JournalRecord.step(act, sequence, settings.clock().millis(), of));
  }

  private CompletableFuture<Long> take(Session after, JournalRecord record) {
    session = after;
    history.note(record);
    CompletableFuture<Long> done = new CompletableFuture<>();
    settings
        .writer()
        .execute(
            () -> {
              try {
                synchronized (journal) {
                  journal.append(record);
                }
                forgetOld(record.sequence());
                done.complete(record.sequence());
              } catch (IOException | RuntimeException e) {
                done.completeExceptionally(e);
              }
            });
    return done;
  }

  /** Keeps memory flat: what the journal has, up to a sequence, need not be held here. */
  private synchronized void forgetOld(long written) {
    Iterator<Long> oldest = recent.keySet().iterator();
    for (int extra = recent.size() - RECENT; extra > 0; extra--) {
      if (oldest.next() > written) {
        return;
      }
      oldest.remove();
    }
  }

  private Edit editOf(long sequence) throws IOException {
    Edit edit = recent.get(sequence);
    if (edit != null) {
      return edit;
    }
    synchronized (journal) {
      return Objects.requireNonNull(journal.edit(sequence).edit());
    }
  }

  /**
   * Saves the session as it stands now. The file holds the old state or the new one at any moment.
   *
   * @param overwrite whether to replace a file that was changed outside (its content is kept among
   *     the backups)
   */
  public synchronized CompletableFuture<SaveResult> save(boolean overwrite) {
    checkWritable();
    Session snapshot = session;
    CompletableFuture<SaveResult> done = new CompletableFuture<>();
    settings
        .writer()
        .execute(
            () -> {
              try {
                SaveResult result;
                synchronized (journal) {
                  result = file.save(snapshot, journal, overwrite);
                }
                if (result.isSaved()) {
                  saved(snapshot);
                }
                done.complete(result);
              } catch (RuntimeException e) {
                done.completeExceptionally(e);
              }
            });
    return done;
  }

  private synchronized void saved(Session snapshot) {
    savedSequence = snapshot.document().sequence();
  }

  /** Returns whether the file is not as it was when it was read or saved last. */
  boolean isChangedOutside() throws IOException {
    return file.isChangedOutside();
  }

  /**
   * Closes the document. The journal stays: it brings back unsaved edits when the file is opened
   * again, and every step can still be undone then. Only where all is saved and the history is
   * empty, or larger than 64 MB, the journal goes.
   */
  @Override
  public void close() throws IOException {
    CompletableFuture<Void> drained = new CompletableFuture<>();
    settings.writer().execute(() -> drained.complete(null));
    drained.join();
    boolean allSaved = !isUnsaved();
    synchronized (journal) {
      try {
        if (readOnlyReason == null && allSaved && !isHistoryWorthKeeping()) {
          journal.remove();
        } else if (readOnlyReason == null) {
          journal.flush();
        }
      } finally {
        journal.close();
        if (lock != null) {
          lock.close();
        }
      }
    }
  }

  private synchronized boolean isHistoryWorthKeeping() {
    return (history.canUndo() || history.canRedo()) && journal.length() <= LONGEST_HISTORY;
  }

  private void checkWritable() {
    if (readOnlyReason != null) {
      throw new IllegalStateException(readOnlyReason);
    }
  }

  /** Returns the session with the next sequence. */
  static Session next(Session session) {
    Document document = session.document();
    return session.withDocument(
        new Document(document.id(), document.sequence() + 1, document.unknown()));
  }
}
