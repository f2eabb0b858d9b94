package org.fadeline.io.open;

import java.nio.file.Path;
import java.util.Locale;
import org.fadeline.io.EventCsv;
import org.fadeline.io.FileText;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionReader;
import org.fadeline.io.notes.NoteFiles;
import org.fadeline.io.notes.NoteSession;

/** Reads session files of every kind, by the ending of the name. */
public final class SessionFiles {
  private SessionFiles() {}

  /**
   * Reads a session: {@code .csv} as event CSV, {@code .json} (so {@code .session.json} too) as
   * session JSON, {@code .vtt} and {@code .srt} as captions and {@code .txt} as shorthand, whose
   * events are proposals. The whole file is looked at before anything is returned. The options'
   * correction moves the times of everything but session JSON, whose times were correct once.
   */
  public static ReadResult read(Path path, ReadOptions options) {
    String name = FileText.nameOf(path).toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv")) {
      return corrected(path, EventCsv.read(path, options), options);
    }
    if (name.endsWith(".json")) {
      return SessionReader.read(path, options);
    }
    if (NoteSession.isNotes(path)) {
      return corrected(path, NoteFiles.read(path, options), options);
    }
    return ReadResult.refused(
        Problem.ofFile(
            FileText.nameOf(path),
            "the ending of the name tells no kind of session",
            "choose a file that ends in .session.json, .csv, .vtt, .srt or .txt"));
  }

  private static ReadResult corrected(Path path, ReadResult read, ReadOptions options) {
    return new ReadResult(
        read.session().map(s -> options.correction().applied(s, FileText.nameOf(path))),
        read.report(),
        read.readOnlyReason(),
        read.undated());
  }
}
