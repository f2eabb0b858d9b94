package org.fadeline.ui.state;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;

/** Sessions by file name, without files. */
public final class FakeDesk implements Desk {
  private static final TaskService.Progress NO_PROGRESS =
      new TaskService.Progress() {
        @Override
        public void report(double done) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  private final Map<String, Session> sessions = new HashMap<>();

  /** Files already closed, by name. */
  public final List<String> closed = new ArrayList<>();

  /** Names of the steps kept, in order. */
  public final List<String> kept = new ArrayList<>();

  /** Whether the disk is full. */
  public boolean full;

  /** Whether somebody else changed the file. */
  public boolean changedOutside;

  /** Saves asked for: whether each was to overwrite. */
  public final List<Boolean> saves = new ArrayList<>();

  /** Puts a session on the desk. */
  public FakeDesk with(String name, Session session) {
    sessions.put(name, session);
    return this;
  }

  /** Returns a workbench with a session open that works at once, on the thread that asks. */
  public static Workbench opened(Session session) {
    Workbench bench =
        new Workbench(
            new FakeDesk().with("s.session.json", session),
            Reviewer::review,
            new DirectTaskService(),
            () -> {});
    bench.open(Path.of("s.session.json"));
    return bench;
  }

  @Override
  public Held open(Path path, TaskService.Progress progress) throws Refusal {
    Session session = sessions.get(path.getFileName().toString());
    if (session == null) {
      throw new Refusal(
          new Activity.Trouble(
              "No such file",
              "Nothing was changed.",
              List.of(new Activity.Problem(path.toString(), "is not there", "choose another")),
              null));
    }
    return new FakeRecord(session, path);
  }

  @Override
  public Held saveAs(Path path, Session session) {
    sessions.put(path.getFileName().toString(), session);
    return new FakeRecord(session, path);
  }

  @Override
  public Held begin(Path path, Session session) throws Refusal {
    if (sessions.containsKey(path.getFileName().toString())) {
      throw new Refusal(Activity.Trouble.of("There is a match of that name already", ""));
    }
    return saveAs(path, session);
  }

  @Override
  public Session look(Path path) throws Refusal {
    return open(path, NO_PROGRESS).session();
  }

  /** A record in memory that tells what it was asked. */
  private final class FakeRecord implements Held {
    private final MemoryRecord memory;
    private final String name;

    FakeRecord(Session session, Path path) {
      name = path.getFileName().toString();
      memory = new MemoryRecord(session, new OpenSession.Source(path, name, null), Notice.NONE);
    }

    @Override
    public Session session() {
      return memory.session();
    }

    @Override
    public OpenSession.Source source() {
      return memory.source();
    }

    @Override
    public OpenSession.History history() {
      return memory.history();
    }

    @Override
    public Notice notice() {
      return memory.notice();
    }

    @Override
    public CompletableFuture<?> append(Edit edit) {
      kept.add(edit.name());
      CompletableFuture<?> done = memory.append(edit);
      return full ? CompletableFuture.failedFuture(new IOException("no space")) : done;
    }

    @Override
    public Optional<CompletableFuture<?>> undo() {
      return memory.undo();
    }

    @Override
    public Optional<CompletableFuture<?>> redo() {
      return memory.redo();
    }

    @Override
    public Optional<CompletableFuture<Saved>> save(boolean overwrite) {
      saves.add(overwrite);
      return Optional.of(
          CompletableFuture.completedFuture(
              changedOutside && !overwrite
                  ? new Saved(false, true, "changed")
                  : new Saved(true, false, "")));
    }

    @Override
    public void close() {
      closed.add(name);
    }
  }
}
