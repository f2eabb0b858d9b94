package org.fadeline.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.fadeline.io.ClockCorrection;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.notes.NoteSession;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How a session is read, the same for every command. */
final class Reading {
  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "date of all in, for a CSV of clock times")
  private @Nullable LocalDate date;

  @Option(
      names = "--zone",
      paramLabel = "ZONE",
      description = "time zone of a CSV, such as Europe/London")
  private @Nullable ZoneId zone;

  @Option(
      names = "--map",
      paramLabel = "FILE",
      description = "how the columns of a CSV are called: a mapping file")
  private @Nullable Path map;

  /** Reads a session, telling every problem on the error stream. */
  Session read(Console console, Path file) {
    return read(console, file, ClockCorrection.NONE);
  }

  /** Reads a session whose device's clock was wrong, telling every problem. */
  Session read(Console console, Path file, ClockCorrection correction) {
    ReadResult result = SessionFiles.read(file, options(console).withCorrection(correction));
    tell(console, result);
    return result.session().orElseThrow(InputFault::new);
  }

  /** Reads a session to be judged: proposals from notes must be accepted by somebody first. */
  Session readAccepted(Console console, Path file) {
    if (NoteSession.isNotes(file)) {
      throw new InputFault(
          file
              + ":1:1: notes hold only proposed events; convert them to a .session.json, look"
              + " through its events, then use that");
    }
    return read(console, file);
  }

  /** Reads without judging: what the file holds and everything wrong with it. */
  ReadResult result(Console console, Path file) {
    return SessionFiles.read(file, options(console));
  }

  static void tell(Console console, ReadResult result) {
    for (Problem problem : result.report().problems()) {
      console.err().println(problem);
    }
    int unlisted = result.report().unlisted();
    if (unlisted > 0) {
      console.err().println("… and " + unlisted + " more like these");
    }
    result.readOnlyReason().ifPresent(reason -> console.err().println(reason));
  }

  /** Returns what the options say of files that do not say everything themselves. */
  ReadOptions options(Console console) {
    return ReadOptions.of(date, zone).withMapping(map == null ? null : mapping(console, map));
  }

  private static CsvMapping mapping(Console console, Path file) {
    CsvMapping.Loaded loaded = CsvMapping.load(file);
    loaded.report().problems().forEach(console.err()::println);
    return loaded.mapping().orElseThrow(InputFault::new);
  }
}
