package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Learned;
import org.fadeline.index.SeasonFolder;
import org.fadeline.index.SeasonIndex;
import org.fadeline.io.ReadOptions;
import org.fadeline.model.Session;

/** Reads a folder of sessions and tells what is wrong with its files. */
final class SeasonReading {
  private SeasonReading() {}

  /** Returns the index of a folder, nothing read yet. */
  static SeasonIndex of(Path folder, ReadOptions options) {
    if (!Files.isDirectory(folder)) {
      throw new InputFault(
          folder
              + ":1:1: "
              + (Files.exists(folder) ? "not a folder" : "no such folder")
              + "; name a folder of sessions");
    }
    return new SeasonIndex(folder, options, ReviewSettings.DEFAULT);
  }

  static SeasonFolder read(Path folder, ReadOptions options) {
    return read(of(folder, options), folder);
  }

  static SeasonFolder read(SeasonIndex sessions, Path folder) {
    try {
      return sessions.read(SeasonIndex.Depth.WITH_FADES, SeasonIndex.Watcher.NONE);
    } catch (IOException e) {
      throw new InputFault(
          folder + ":1:1: cannot be read (" + e.getMessage() + "); check that you may read it");
    }
  }

  /**
   * Returns what the other sessions of a folder teach the review of some.
   *
   * @throws InputFault if there is none to learn from
   */
  static LearnedPriors priors(
      Console console, Path folder, ReadOptions options, List<Session> reviewed) {
    SeasonFolder found = read(folder, options);
    tell(console, found);
    return Learned.priors(reviewed, found.summaries())
        .orElseThrow(
            () ->
                new InputFault(
                    folder
                        + ":1:1: no other session to learn from; name a folder that holds some, or"
                        + " leave --season out"));
  }

  /** Tells what is wrong with the files of a folder, and which are there twice. */
  static void tell(Console console, SeasonFolder found) {
    for (SeasonFolder.Broken broken : found.broken()) {
      broken.problems().forEach(problem -> tell(console, broken.file(), problem.toString()));
    }
    for (SeasonFolder.Entry entry : found.entries()) {
      entry.warnings().forEach(warning -> tell(console, entry.file(), warning));
    }
    for (SeasonFolder.Copy copy : found.copies()) {
      console
          .err()
          .println(
              copy.file()
                  + ":1:1: warning: the same match as "
                  + copy.used()
                  + ", which was used; keep one of them in the folder");
    }
  }

  /** Tells a problem, which names its file alone, with the file's folder. */
  private static void tell(Console console, Path file, String problem) {
    Path parent = file.getParent();
    console.err().println((parent == null ? "" : parent + "/") + problem);
  }
}
