package org.fadeline.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.model.Session;

/**
 * The event CSV (RFC 4180, UTF-8, header row), both ways.
 *
 * <p>Only the columns {@code time} and {@code event} are needed. What the file leaves open (date,
 * zone, start and finish) is taken from the options, or from defaults that a warning states.
 */
public final class EventCsv {
  private static final Pattern DATE_IN_NAME =
      Pattern.compile("(?<!\\d)(\\d{4}-\\d{2}-\\d{2})(?!\\d)");

  private EventCsv() {}

  /** Is told how far the reading of a file is. */
  @FunctionalInterface
  public interface Watcher {
    /** Nobody looks. */
    Watcher NONE = (done, of) -> {};

    /**
     * Is told now and then.
     *
     * @throws java.util.concurrent.CancellationException to end the reading, of which nothing stays
     */
    void rows(int done, int of);
  }

  /** Reads a file. */
  public static ReadResult read(Path path, ReadOptions options) {
    return read(path, options, Watcher.NONE);
  }

  /**
   * Reads a file.
   *
   * @throws java.util.concurrent.CancellationException where the watcher ends it
   */
  public static ReadResult read(Path path, ReadOptions options, Watcher watcher) {
    ImportReport.Collector problems = new ImportReport.Collector();
    String text = FileText.read(path, problems);
    String name = FileText.nameOf(path);
    return text == null
        ? ReadResult.refused(problems.report())
        : parse(name, text, options, problems, otherDate(name, lastChange(path)), watcher);
  }

  /**
   * Reads text.
   *
   * @param name of the file, for messages, the title and, where it holds one, the date
   */
  public static ReadResult parse(String name, String text, ReadOptions options) {
    CsvFrame.Dated today =
        new CsvFrame.Dated(LocalDate.now(ZoneId.systemDefault()), "today's", true);
    return parse(
        name, text, options, new ImportReport.Collector(), otherDate(name, today), Watcher.NONE);
  }

  private static ReadResult parse(
      String name,
      String text,
      ReadOptions options,
      ImportReport.Collector problems,
      CsvFrame.Dated otherDate,
      Watcher watcher) {
    if (text.isBlank()) {
      problems.add(
          Problem.ofFile(name, "the file is empty", "choose another file, or open a backup"));
      return ReadResult.refused(problems.report());
    }
    int zero = text.indexOf('\0');
    if (zero >= 0) {
      int row = 1 + (int) text.substring(0, zero).chars().filter(c -> c == '\n').count();
      problems.add(
          Problem.warning(
              name, row, "there is a NUL sign in the text", "check the row; it is kept as it is"));
    }
    CsvMapping mapping = options.mapping();
    CsvTable table =
        CsvTable.parse(name, text, mapping == null ? CsvMapping.NONE : mapping, problems);
    return table == null
        ? ReadResult.refused(problems.report())
        : new CsvImport(table, options, problems, watcher)
            .session(titleOf(name), SessionReader.idFrom(text), otherDate);
  }

  private static String titleOf(String name) {
    return name.replaceFirst("(?i)\\.csv$", "");
  }

  /** Returns the date that the name of a file holds, or empty. */
  public static Optional<LocalDate> dateIn(String name) {
    Matcher matcher = DATE_IN_NAME.matcher(name);
    try {
      return matcher.find() ? Optional.of(ClockTimes.date(matcher.group(1))) : Optional.empty();
    } catch (Refused notADate) {
      return Optional.empty();
    }
  }

  private static CsvFrame.Dated otherDate(String name, CsvFrame.Dated otherwise) {
    return dateIn(name)
        .map(date -> new CsvFrame.Dated(date, "that in the file's name", false))
        .orElse(otherwise);
  }

  private static CsvFrame.Dated lastChange(Path path) {
    ZoneId zone = ZoneId.systemDefault();
    try {
      Instant changed = Files.getLastModifiedTime(path).toInstant();
      return new CsvFrame.Dated(
          changed.atZone(zone).toLocalDate(), "that of the file's last change", true);
    } catch (IOException e) {
      return new CsvFrame.Dated(LocalDate.now(zone), "today's", true);
    }
  }

  /** Returns the session's events as CSV text. */
  public static String write(Session session) {
    return CsvExport.write(session);
  }

  /**
   * Returns the rows that could not be used as CSV text, with the header, or empty text where there
   * are none.
   */
  public static String rejects(ImportReport report) {
    return CsvExport.rejects(report.rejects());
  }
}
