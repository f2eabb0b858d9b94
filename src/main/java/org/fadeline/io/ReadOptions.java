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
 * @param clockChange how to read clock times of a CSV that came twice or never
 * @param correction by how much the clock of the device that wrote a CSV or notes was wrong
 */
public record ReadOptions(
    @Nullable LocalDate date,
    @Nullable ZoneId zone,
    @Nullable CsvMapping mapping,
    boolean skipBad,
    ClockChange clockChange,
    ClockCorrection correction) {
  /** Nothing stated, all or nothing. */
  public static final ReadOptions DEFAULT =
      new ReadOptions(null, null, null, false, ClockChange.REFUSE, ClockCorrection.NONE);

  /** Returns options with a date and a zone, all or nothing. */
  public static ReadOptions of(@Nullable LocalDate date, @Nullable ZoneId zone) {
    return new ReadOptions(date, zone, null, false, ClockChange.REFUSE, ClockCorrection.NONE);
  }

  /** Returns these options with a mapping. */
  public ReadOptions withMapping(@Nullable CsvMapping newMapping) {
    return new ReadOptions(date, zone, newMapping, skipBad, clockChange, correction);
  }

  /** Returns these options, using the good part of a file or not. */
  public ReadOptions withSkipBad(boolean newSkipBad) {
    return new ReadOptions(date, zone, mapping, newSkipBad, clockChange, correction);
  }

  /** Returns these options with another date of all in, or none. */
  public ReadOptions withDate(@Nullable LocalDate newDate) {
    return new ReadOptions(newDate, zone, mapping, skipBad, clockChange, correction);
  }

  /** Returns these options with another time zone, or none. */
  public ReadOptions withZone(@Nullable ZoneId newZone) {
    return new ReadOptions(date, newZone, mapping, skipBad, clockChange, correction);
  }

  /** Returns these options with another way to read times that came twice or never. */
  public ReadOptions withClockChange(ClockChange newClockChange) {
    return new ReadOptions(date, zone, mapping, skipBad, newClockChange, correction);
  }

  /** Returns these options with the device's clock corrected otherwise. */
  public ReadOptions withCorrection(ClockCorrection newCorrection) {
    return new ReadOptions(date, zone, mapping, skipBad, clockChange, newCorrection);
  }
}
