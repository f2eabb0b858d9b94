package org.fadeline.io;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * How to read a file that does not say everything itself.
 *
 * @param date date of all in for a CSV of clock times, or null for a stated default
 * @param zone time zone of a CSV, or null for the machine's, stated in a warning
 * @param mapping how the columns of a CSV are called, or null for the names of the format
 * @param skipBad whether to use the good rows or events where others are bad; otherwise one error
 *     refuses the file
 */
public record ReadOptions(
    @Nullable LocalDate date,
    @Nullable ZoneId zone,
    @Nullable CsvMapping mapping,
    boolean skipBad) {
  /** Nothing stated, all or nothing. */
  public static final ReadOptions DEFAULT = new ReadOptions(null, null, null, false);

  /** Returns options with a date and a zone, all or nothing. */
  public static ReadOptions of(@Nullable LocalDate date, @Nullable ZoneId zone) {
    return new ReadOptions(date, zone, null, false);
  }

  /** Returns these options with a mapping. */
  public ReadOptions withMapping(@Nullable CsvMapping newMapping) {
    return new ReadOptions(date, zone, newMapping, skipBad);
  }

  /** Returns these options, using the good part of a file or not. */
  public ReadOptions withSkipBad(boolean newSkipBad) {
    return new ReadOptions(date, zone, mapping, newSkipBad);
  }
}
