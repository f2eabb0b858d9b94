package org.fadeline.cli;

/** What the process tells its caller. */
final class ExitCode {
  /** Done, perhaps with warnings. */
  static final int DONE = 0;

  /** The input or output is at fault. */
  static final int INPUT = 1;

  /** Wrong usage. */
  static final int USAGE = 2;

  /** Our fault (EX_SOFTWARE of BSD sysexits.h). */
  static final int OURS = 70;

  private ExitCode() {}
}
