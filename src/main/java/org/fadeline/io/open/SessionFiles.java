package org.fadeline.io.open;

import java.nio.file.Path;
import java.util.Locale;
import org.fadeline.io.EventCsv;
import org.fadeline.io.FileText;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionReader;
import org.fadeline.io.notes.CaptionReader;
import org.fadeline.io.notes.CaptionSessions;

/** Reads session files of every kind, by the ending of the name. */
public final class SessionFiles {
  private SessionFiles() {}

  /**
   * Reads a session: {@code .csv} as event CSV, {@code .json} (so {@code .session.json} too) as
   * session JSON, {@code .vtt} and {@code .srt} as captions, whose events are proposals. The whole
   * file is looked at before anything is returned.
   */
  public static ReadResult read(Path path, ReadOptions options) {
    String name = FileText.nameOf(path).toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv")) {
      return EventCsv.read(path, options);
    }
    if (name.endsWith(".json")) {
      return SessionReader.read(path, options);
    }
    if (CaptionReader.isCaptions(path)) {
      return CaptionSessions.read(path, options);
    }
    return ReadResult.refused(
        Problem.ofFile(
            FileText.nameOf(path),
            "the ending of the name tells no kind of session",
            "choose a file that ends in .session.json, .csv, .vtt or .srt"));
  }
}
