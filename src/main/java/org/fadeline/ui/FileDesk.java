package org.fadeline.ui;

import java.nio.file.Path;
import java.util.List;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionFiles;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.TaskService;

/** Opens session files. */
final class FileDesk implements Desk {
  @Override
  public Held open(Path path, TaskService.Progress progress) throws Refusal {
    ReadResult result = SessionFiles.read(path, ReadOptions.DEFAULT);
    List<Activity.Problem> problems =
        result.report().problems().stream().map(FileDesk::problem).toList();
    Session session =
        result
            .session()
            .orElseThrow(
                () ->
                    new Refusal(
                        new Activity.Trouble(
                            SessionPaths.bareName(path) + " could not be opened",
                            "Nothing was changed: neither the file nor what is open here.",
                            problems)));
    return new HeldSession(
        session,
        new OpenSession.Source(
            path, SessionPaths.bareName(path), result.readOnlyReason().orElse(null)),
        OpenSession.History.NONE,
        problems);
  }

  private static Activity.Problem problem(Problem p) {
    String field = p.field() == null || p.field().isEmpty() ? "" : ", " + p.field();
    return new Activity.Problem(p.file() + ", row " + p.row() + field, p.what(), p.whatToDo());
  }

  private record HeldSession(
      Session session,
      OpenSession.Source source,
      OpenSession.History history,
      List<Activity.Problem> problems)
      implements Held {
    @Override
    public void keep(Edit step) {}

    @Override
    public void close() {}
  }
}
