package org.fadeline.ui.state;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;

/** Sessions by file name, without files. */
public final class FakeDesk implements Desk {
  private final Map<String, Session> sessions = new HashMap<>();

  /** Files already closed, by name. */
  public final List<String> closed = new java.util.ArrayList<>();

  /** Names of the steps kept, in order. */
  public final List<String> kept = new java.util.ArrayList<>();

  /** Puts a session on the desk. */
  public FakeDesk with(String name, Session session) {
    sessions.put(name, session);
    return this;
  }

  @Override
  public Held open(Path path, TaskService.Progress progress) throws Refusal {
    Session session = sessions.get(path.getFileName().toString());
    if (session == null) {
      throw new Refusal(
          new Activity.Trouble(
              "No such file",
              "Nothing was changed.",
              List.of(new Activity.Problem(path.toString(), "is not there", "choose another"))));
    }
    return held(session, path);
  }

  /** Returns a session in hand. */
  public Held held(Session session, Path path) {
    return new Held() {
      @Override
      public Session session() {
        return session;
      }

      @Override
      public OpenSession.Source source() {
        return new OpenSession.Source(path, path.getFileName().toString(), null);
      }

      @Override
      public OpenSession.History history() {
        return OpenSession.History.NONE;
      }

      @Override
      public List<Activity.Problem> problems() {
        return List.of();
      }

      @Override
      public void keep(Edit step) {
        kept.add(step.name());
      }

      @Override
      public void close() {
        closed.add(path.getFileName().toString());
      }
    };
  }
}
