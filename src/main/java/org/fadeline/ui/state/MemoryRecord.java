package org.fadeline.ui.state;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.ui.state.OpenSession.History;
import org.jspecify.annotations.Nullable;

/**
 * A session without a file of its own, such as one imported from a table: edits live in memory
 * until it is saved as a session. A step holds what it changed and nothing else, so that many cost
 * little.
 */
public final class MemoryRecord implements Desk.Held {
  private final OpenSession.Source source;
  private final Desk.Notice notice;
  private final Deque<Edit> undo = new ArrayDeque<>();
  private final Deque<Edit> redo = new ArrayDeque<>();
  private Session session;

  /** Takes a session in hand. */
  public MemoryRecord(Session session, OpenSession.Source source, Desk.Notice notice) {
    this.session = session;
    this.source = source;
    this.notice = notice;
  }

  @Override
  public Session session() {
    return session;
  }

  @Override
  public OpenSession.Source source() {
    return source;
  }

  @Override
  public Desk.Notice notice() {
    return notice;
  }

  @Override
  public History history() {
    return new History(name(undo.peek()), name(redo.peek()), !undo.isEmpty());
  }

  private static @Nullable String name(@Nullable Edit edit) {
    return edit == null ? null : edit.name();
  }

  @Override
  public CompletableFuture<?> append(Edit edit) {
    session = edit.apply(session);
    undo.push(edit);
    redo.clear();
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public Optional<CompletableFuture<?>> undo() {
    if (undo.isEmpty()) {
      return Optional.empty();
    }
    Edit edit = undo.pop();
    session = edit.inverse().apply(session);
    redo.push(edit);
    return Optional.of(CompletableFuture.completedFuture(null));
  }

  @Override
  public Optional<CompletableFuture<?>> redo() {
    if (redo.isEmpty()) {
      return Optional.empty();
    }
    Edit edit = redo.pop();
    session = edit.apply(session);
    undo.push(edit);
    return Optional.of(CompletableFuture.completedFuture(null));
  }

  @Override
  public Optional<CompletableFuture<Desk.Saved>> save(boolean overwrite) {
    return Optional.empty();
  }

  @Override
  public void close() {}
}
