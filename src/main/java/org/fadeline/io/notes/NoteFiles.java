package org.fadeline.io.notes;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.model.Session;
import org.fadeline.model.Units;

/**
 * A file of notes as a session of its own: every event is a proposal, marked as such in its note
 * with its confidence.
 */
public final class NoteFiles {
  private NoteFiles() {}

  /**
   * Reads captions or shorthand; the options' date and zone place them. What is taken for granted
   * is said in warnings.
   */
  public static ReadResult read(Path file, ReadOptions options) {
    ZoneId zone = options.zone() == null ? ZoneId.systemDefault() : options.zone();
    LocalDate date = options.date() == null ? LocalDate.now(zone) : options.date();
    Shorthand.Frame frame =
        new Shorthand.Frame(date, zone, null, Units.Weight.LB_OZ, Vocabulary.of(List.of()));
    NoteSession notes = NoteSession.read(file, frame, List.of());
    if (notes.report().hasErrors() && !options.skipBad()) {
      return ReadResult.refused(notes.report());
    }
    String name = FileText.nameOf(file);
    ImportReport.Collector problems = new ImportReport.Collector();
    notes.report().problems().forEach(problems::add);
    boolean captions = CaptionReader.isCaptions(file);
    if (captions && options.correction().isNone()) {
      warn(
          problems,
          name,
          "captions carry no clock: the recording is taken to start at 10:00 on "
              + date
              + " in "
              + zone,
          "say when it started with --clock 10:00=10:58:20, and give the date and zone");
    } else if (options.date() == null) {
      warn(problems, name, "the date is taken to be " + date, "give the date and zone");
    }
    if (notes.session().events().isEmpty()) {
      warn(
          problems,
          name,
          "no note in it tells an event",
          "check that these are " + (captions ? "spoken " : "") + "notes of a match");
    }
    return new ReadResult(Optional.of(marked(notes)), problems.report(), Optional.empty());
  }

  private static void warn(
      ImportReport.Collector problems, String name, String what, String whatToDo) {
    problems.add(Problem.warning(name, 1, what, whatToDo));
  }

  private static Session marked(NoteSession notes) {
    return notes
        .session()
        .withEvents(
            notes.session().events().stream()
                .map(e -> SpokenNotes.marked(e, notes.confidence().getOrDefault(e.id(), 0.0)))
                .toList());
  }
}
