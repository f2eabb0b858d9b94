package org.fadeline.ui.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;

/**
 * How long ago this process began.
 *
 * <p>Linux tells when in ticks since the machine was started. Java makes an instant of that by
 * adding the start of the machine, which it knows in whole seconds only, and so is wrong by up to a
 * second; here the ticks are held against the machine's own count instead.
 */
final class ProcessAge {
  private static final Path STAT = Path.of("/proc/self/stat");
  private static final Path UPTIME = Path.of("/proc/uptime");

  /** Linux tells times of processes in hundredths of a second, whatever it counts in. */
  private static final int MILLIS_PER_TICK = 10;

  /** Which word after the name in brackets is the start: the twenty-second of all. */
  private static final int START_AFTER_NAME = 19;

  private ProcessAge() {}

  /** Returns the age of this process, milliseconds, or empty where the system does not tell. */
  static OptionalLong millis() {
    try {
      if (Files.isReadable(STAT) && Files.isReadable(UPTIME)) {
        return OptionalLong.of(millis(Files.readString(STAT), Files.readString(UPTIME)));
      }
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException otherwise) {
      // Asked of Java below.
    }
    return ProcessHandle.current()
        .info()
        .startInstant()
        .map(began -> OptionalLong.of(Duration.between(began, Instant.now()).toMillis()))
        .orElseGet(OptionalLong::empty);
  }

  /**
   * Returns the age of a process, milliseconds.
   *
   * @param stat what Linux tells of the process
   * @param uptime what it tells of the time since the machine was started, seconds
   */
  static long millis(String stat, String uptime) {
    // The name of a process may hold blanks and brackets.
    String[] afterName = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
    long ticks = Long.parseLong(afterName[START_AFTER_NAME]);
    double up = Double.parseDouble(uptime.substring(0, uptime.indexOf(' ')));
    return Math.round(up * 1000) - ticks * MILLIS_PER_TICK;
  }
}
