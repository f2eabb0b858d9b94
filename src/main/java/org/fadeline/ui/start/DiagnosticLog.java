package org.fadeline.ui.start;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.logging.FileHandler;
import java.util.logging.Formatter;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.fadeline.figure.ProgramVersion;

/**
 * A log of starts and failures for whoever mends them. It stays on this machine: a few files of at
 * most {@value #LARGEST_BYTES} bytes in the user's folder, never sent. It holds no part of a match
 * beyond what the text of a failure quotes.
 *
 * <p>Where the folder cannot be written there is no log and nothing else changes.
 */
public final class DiagnosticLog implements AutoCloseable {
  private static final int LARGEST_BYTES = 400_000;
  private static final int FILES = 3;

  private final Path folder;
  private final Logger logger = Logger.getAnonymousLogger();

  /**
   * Begins a log.
   *
   * @param folder where its files stand; made if missing
   */
  public DiagnosticLog(Path folder) {
    this.folder = folder;
    logger.setUseParentHandlers(false);
    try {
      Files.createDirectories(folder);
      FileHandler handler =
          new FileHandler(
              folder.resolve("fadeline-%u.%g.log").toString(), LARGEST_BYTES, FILES, true);
      handler.setFormatter(new Lines());
      logger.addHandler(handler);
    } catch (IOException | SecurityException noLog) {
      logger.setLevel(Level.OFF);
    }
  }

  /** Returns the folder of the log's files. */
  public Path folder() {
    return folder;
  }

  /** Notes that the program starts, and on what. */
  public void started() {
    say(
        "started "
            + ProgramVersion.NAME
            + " on Java "
            + Runtime.version()
            + ", "
            + System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch"));
  }

  /** Notes that something was reached, and how long after the process began. */
  public void reached(String what) {
    ProcessAge.millis().ifPresent(age -> say(what + " " + age + " ms after the start"));
  }

  /** Notes a failure that nobody foresaw, with where it came from. */
  public void failed(Throwable failure) {
    logger.log(Level.SEVERE, "unforeseen", failure);
  }

  private void say(String what) {
    logger.log(Level.INFO, what);
  }

  @Override
  public void close() {
    for (var handler : logger.getHandlers()) {
      handler.close();
    }
  }

  /** One line a record, in universal time; a failure's trace follows it. */
  private static final class Lines extends Formatter {
    private static final DateTimeFormatter AT =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss.SSS 'Z'").withZone(ZoneOffset.UTC);

    @Override
    public String format(LogRecord record) {
      StringWriter text = new StringWriter();
      PrintWriter out = new PrintWriter(text);
      out.println(AT.format(record.getInstant()) + "  " + record.getMessage());
      if (record.getThrown() != null) {
        record.getThrown().printStackTrace(out);
      }
      return text.toString();
    }
  }
}
