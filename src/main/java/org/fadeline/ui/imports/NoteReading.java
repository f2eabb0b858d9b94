package org.fadeline.ui.imports;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import org.fadeline.io.ClockCorrection;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.notes.NoteSession;
import org.fadeline.io.notes.Shorthand;
import org.fadeline.io.notes.Vocabulary;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;

/** Reads notes in the background, on the day and the lines of the match in hand. */
final class NoteReading {
  private static final String CHANNEL = "import-notes";
  private static final String TYPED = "typed notes";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Consumer<Draft> taken;

  /**
   * Makes the reading.
   *
   * @param taken is handed what was read; what cannot be used is told instead
   */
  NoteReading(Workbench bench, PreferenceStore preferences, Consumer<Draft> taken) {
    this.bench = bench;
    this.preferences = preferences;
    this.taken = taken;
  }

  /** Reads captions or a file of shorthand. */
  void file(Path file) {
    submit(FileText.nameOf(file), (frame, lines) -> NoteSession.read(file, frame, lines));
  }

  /** Reads shorthand that was typed, one event a line. */
  void typed(String text) {
    submit(TYPED, (frame, lines) -> NoteSession.ofShorthand(TYPED, text, frame, lines));
  }

  private interface Reader {
    NoteSession read(Shorthand.Frame frame, List<Line> lines);
  }

  private void submit(String name, Reader reader) {
    OpenSession open = bench.state().open();
    Session session = open == null ? null : open.session();
    List<Line> lines = session == null ? List.of() : session.lines();
    ZoneId zone = session == null ? ZoneId.systemDefault() : session.occasion().zone();
    Shorthand.Frame frame =
        new Shorthand.Frame(
            session == null ? LocalDate.now(zone) : session.occasion().date(),
            zone,
            session == null ? null : allIn(session),
            preferences.get().units().weight(),
            Vocabulary.of(lines));
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Reading " + name,
            progress -> Draft.of(name, reader.read(frame, lines)),
            new TaskService.Answer<>(
                this::take,
                failure ->
                    bench.report(
                        Trouble.unforeseen(
                            "The notes could not be read", failure, "Nothing was changed."))));
  }

  private static LocalTime allIn(Session session) {
    return session.clock(session.match().allIn()).toLocalTime();
  }

  /** Notes brought in before are moved as they were then. */
  private void take(Draft read) {
    if (read.session().events().isEmpty() && read.report().hasErrors()) {
      bench.report(trouble(read.name() + " could not be read", read.report()));
      return;
    }
    OpenSession open = bench.state().open();
    long before = open == null ? 0 : open.session().outcome().movedMillis(read.name());
    taken.accept(before == 0 ? read : read.corrected(before));
    if (before != 0) {
      bench.tell(
          "Times moved by " + new ClockCorrection(before) + ", as when it was last brought in");
    }
  }

  /** Returns the problems of notes, each with its place, under a title. */
  static Trouble trouble(String title, ImportReport report) {
    return new Trouble(
        title,
        "Nothing was changed: neither the file nor what is open here.",
        Activity.Problem.of(report),
        null);
  }
}
