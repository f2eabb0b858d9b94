package org.fadeline.io;

/** How to read a clock time that a clock change brought twice or never. */
public enum ClockChange {
  /** Refuse it, with both readings. */
  REFUSE,
  /** By the clock as it went before the change. */
  BEFORE,
  /** By the clock as it went after the change. */
  AFTER
}
